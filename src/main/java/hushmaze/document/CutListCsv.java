package hushmaze.document;

import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.drawing.page.PartNames;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import java.util.List;
import java.util.stream.Collectors;

/**
 * A cut list as comma-separated values, boards then liner. Cut-outs are written as {@code length x width @ distance along
 * the length + distance along the width}, in millimetres, several separated by semicolons;
 * grooves the same way with their depth at the end, {@code length x width @ along + along x depth}; holes as {@code along +
 * along}.
 */
public final class CutListCsv {
    private static final List<String> HEAD = List.of(
            "mark",
            "quantity",
            "lengthMm",
            "widthMm",
            "thicknessMm",
            "material",
            "part",
            "cutouts",
            "grooves",
            "holes");

    private CutListCsv() {}

    /** The whole file. */
    public static String of(PathResult result) {
        return Csv.line(HEAD)
                + result.cutList().items().map(item -> line(item, result)).collect(Collectors.joining());
    }

    private static String line(CutItem item, PathResult result) {
        return Csv.line(List.of(
                item.mark(),
                Integer.toString(item.quantity()),
                Csv.millimetres(item.length()),
                Csv.millimetres(item.width()),
                Csv.millimetres(item.thickness()),
                item.material(),
                PartNames.of(item, result.path().box()),
                item.cutouts().stream().map(CutListCsv::cutout).collect(Collectors.joining(";")),
                item.grooves().stream().map(CutListCsv::groove).collect(Collectors.joining(";")),
                item.holes().stream()
                        .map(h -> Csv.millimetres(h.u()) + "+" + Csv.millimetres(h.v()))
                        .collect(Collectors.joining(";"))));
    }

    private static String groove(Groove g) {
        return cutout(new Cutout(g.u0(), g.v0(), g.u1(), g.v1())) + "x" + Csv.millimetres(g.depth());
    }

    private static String cutout(Cutout c) {
        return Csv.millimetres(c.u1() - c.u0())
                + "x"
                + Csv.millimetres(c.v1() - c.v0())
                + "@"
                + Csv.millimetres(c.u0())
                + "+"
                + Csv.millimetres(c.v0());
    }
}
