package hushmaze.cli;

import hushmaze.build.CutNode.Along;
import hushmaze.build.CutSequence;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import java.util.Locale;

/** A sheet layout as a list of cuts a person can follow. */
final class NestText {
    private NestText() {}

    static String of(SheetLayout layout) {
        StringBuilder text = new StringBuilder();
        for (int i = 0; i < layout.sheets().size(); i++) {
            SheetPlan plan = layout.sheets().get(i);
            text.append(String.format(
                    Locale.ROOT,
                    "Sheet %d of %d: %s x %s mm, %d panels, %.1f %% waste%n",
                    i + 1,
                    layout.sheets().size(),
                    millimetres(plan.sheet().length()),
                    millimetres(plan.sheet().width()),
                    plan.panels().size(),
                    100 * plan.waste()));
            if (plan.trim() > 0) {
                text.append(String.format(
                        Locale.ROOT, "  trim %s mm off all four edges first%n", millimetres(plan.trim())));
            }
            CutSequence.of(plan).steps().forEach(step -> text.append(line(step)));
        }
        return text.toString();
    }

    private static String line(CutSequence.Step step) {
        return String.format(
                Locale.ROOT,
                "%5d  %-8s  fence %7s mm  %s -> %s + %s%n",
                step.number(),
                step.along() == Along.LENGTH ? "rip" : "crosscut",
                millimetres(step.fence()),
                name(step.from()),
                name(step.first()),
                name(step.second()));
    }

    private static String name(CutSequence.Piece piece) {
        String size = " (" + millimetres(piece.length()) + " x " + millimetres(piece.width()) + ")";
        return switch (piece.kind()) {
            case SHEET -> "sheet";
            case PART_SHEET -> "piece " + piece.name() + size;
            case PANEL -> "PANEL " + piece.name() + size;
            case OFFCUT -> "offcut" + size;
            case DUST -> "nothing";
        };
    }

    private static String millimetres(double metres) {
        return LengthFormat.bare(metres, UnitSystem.METRIC);
    }
}
