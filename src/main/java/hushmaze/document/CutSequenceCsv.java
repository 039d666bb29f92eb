package hushmaze.document;

import hushmaze.assess.PathResult;
import hushmaze.build.CutNode;
import hushmaze.build.CutSequence;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * The cuts of all sheets of a path as comma-separated values, one line a cut, in the order and with the numbers of the
 * drawings. Lengths are in millimetres, along the sheet's length; widths along its width. Sheets are counted through all
 * materials. First the trim comes off all four edges of a sheet: the piece "sheet" is what that leaves. A rip runs along the
 * sheet's length and divides the width, a crosscut divides the length. The fence setting is the size of the first piece; the
 * second is what is left beyond the kerf. Pieces are a "panel" with its mark, a "piece" to be cut further with a name of its
 * own on that sheet, an "offcut", or "nothing" where less than the kerf was left. A sheet that one panel fills has one line
 * without a cut.
 */
public final class CutSequenceCsv {
    private static final List<String> HEAD = List.of(
            "sheet",
            "material",
            "thicknessMm",
            "sheetName",
            "sheetLengthMm",
            "sheetWidthMm",
            "trimMm",
            "kerfMm",
            "cut",
            "direction",
            "of",
            "ofLengthMm",
            "ofWidthMm",
            "fenceMm",
            "narrow",
            "firstKind",
            "firstName",
            "firstLengthMm",
            "firstWidthMm",
            "firstTurned",
            "secondKind",
            "secondName",
            "secondLengthMm",
            "secondWidthMm",
            "secondTurned");
    /** Fields of a cut and of its second piece. */
    private static final int CUT_FIELDS = 7;

    private static final int PIECE_FIELDS = 5;

    private CutSequenceCsv() {}

    /** The whole file. */
    public static String of(PathResult result) {
        return of(result.layouts());
    }

    static String of(List<SheetLayout> layouts) {
        StringBuilder csv = new StringBuilder(Csv.line(HEAD));
        int number = 0;
        for (SheetLayout layout : layouts) {
            for (SheetPlan plan : layout.sheets()) {
                number++;
                sheet(csv, number, layout, plan);
            }
        }
        return csv.toString();
    }

    private static void sheet(StringBuilder csv, int number, SheetLayout layout, SheetPlan plan) {
        List<String> head = List.of(
                Integer.toString(number),
                layout.material(),
                Csv.millimetres(layout.thickness()),
                plan.sheet().name(),
                Csv.millimetres(plan.sheet().length()),
                Csv.millimetres(plan.sheet().width()),
                Csv.millimetres(plan.trim()),
                Csv.millimetres(plan.kerf()));
        List<CutSequence.Step> steps = CutSequence.of(plan).steps();
        if (steps.isEmpty() && plan.cuts() instanceof CutNode.Leaf leaf && !leaf.offcut()) {
            CutSequence.Piece whole =
                    new CutSequence.Piece(CutSequence.Kind.PANEL, leaf.mark(), leaf.length(), leaf.width());
            csv.append(line(head, blanks(CUT_FIELDS), piece(plan, whole), blanks(PIECE_FIELDS)));
        }
        steps.forEach(step -> csv.append(line(head, cut(step), piece(plan, step.first()), piece(plan, step.second()))));
    }

    private static List<String> cut(CutSequence.Step step) {
        CutSequence.Piece from = step.from();
        return List.of(
                Integer.toString(step.number()),
                step.along() == CutNode.Along.LENGTH ? "rip" : "crosscut",
                from.kind() == CutSequence.Kind.SHEET ? "sheet" : from.name(),
                Csv.millimetres(from.length()),
                Csv.millimetres(from.width()),
                Csv.millimetres(step.fence()),
                Boolean.toString(step.narrow()));
    }

    private static List<String> piece(SheetPlan plan, CutSequence.Piece piece) {
        String kind = switch (piece.kind()) {
            case SHEET -> "sheet";
            case PART_SHEET -> "piece";
            case PANEL -> "panel";
            case OFFCUT -> "offcut";
            case DUST -> "nothing";
        };
        String turned = piece.kind() == CutSequence.Kind.PANEL ? Boolean.toString(plan.turned(piece)) : "";
        return List.of(kind, piece.name(), Csv.millimetres(piece.length()), Csv.millimetres(piece.width()), turned);
    }

    private static List<String> blanks(int count) {
        return Stream.generate(() -> "").limit(count).toList();
    }

    @SafeVarargs
    private static String line(List<String>... groups) {
        List<String> fields = new ArrayList<>();
        for (List<String> group : groups) {
            fields.addAll(group);
        }
        return Csv.line(fields);
    }
}
