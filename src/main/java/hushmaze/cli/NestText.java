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
            CutSequence.of(plan).steps().forEach(step -> text.append(line(plan, step)));
        }
        for (SheetLayout.Offcut offcut : layout.offcuts()) {
            text.append(String.format(
                    Locale.ROOT,
                    "Offcut worth keeping: %s x %s mm from sheet %d%n",
                    millimetres(offcut.length()),
                    millimetres(offcut.width()),
                    offcut.sheet()));
        }
        return text.toString();
    }

    /** How good the layout is, for a person who waits. */
    static String verdict(SheetLayout layout) {
        int sheets = layout.sheets().size();
        StringBuilder text = new StringBuilder(sheets + (sheets == 1 ? " sheet" : " sheets"));
        text.append("; none can do with fewer than ").append(layout.lowerBound());
        if (layout.provedBest()) {
            text.append("; proved best");
        }
        layout.cost().ifPresent(cost -> text.append(String.format(Locale.ROOT, "; cost %.2f", cost)));
        text.append("; fence set ").append(layout.fenceSettings()).append(" times");
        return text.toString();
    }

    private static String line(SheetPlan plan, CutSequence.Step step) {
        return String.format(
                Locale.ROOT,
                "%5d  %-8s  fence %7s mm  %s -> %s + %s%s%n",
                step.number(),
                step.along() == Along.LENGTH ? "rip" : "crosscut",
                millimetres(step.fence()),
                name(step.from()),
                name(step.first()) + turned(plan, step.first()),
                name(step.second()) + turned(plan, step.second()),
                step.narrow() ? "  NARROW: use a push stick or cut from the wide side" : "");
    }

    private static String turned(SheetPlan plan, CutSequence.Piece piece) {
        return plan.turned(piece) ? " turned" : "";
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
