package hushmaze.drawing.page;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Part;
import java.util.ArrayList;
import java.util.List;

/** What a plane through the box cuts of a part. */
final class Cutting {
    /**
     * A rectangle of a part in the plane.
     *
     * @param part it is cut from
     * @param block the part between two of its cut-outs
     */
    record Piece(Part part, Cuboid block) {}

    private Cutting() {}

    /** The pieces of a part that a plane across an axis cuts; none if it misses the part or runs along its faces. */
    static List<Piece> pieces(Part part, Axis across, double at) {
        Cuboid bounds = part.bounds();
        if (at <= bounds.low(across) || at >= bounds.high(across) || part.normal() == across) {
            return List.of();
        }
        boolean acrossU = part.normal().u() == across;
        Axis along = acrossU ? part.normal().v() : part.normal().u();
        double place = at - bounds.low(across);
        List<double[]> gaps = new ArrayList<>();
        for (Cutout c : part.cutouts()) {
            double from = acrossU ? c.u0() : c.v0();
            double to = acrossU ? c.u1() : c.v1();
            if (place > from && place < to) {
                gaps.add(acrossU ? new double[] {c.v0(), c.v1()} : new double[] {c.u0(), c.u1()});
            }
        }
        return between(part, along, gaps);
    }

    private static List<Piece> between(Part part, Axis along, List<double[]> gaps) {
        gaps.sort((a, b) -> Double.compare(a[0], b[0]));
        List<Piece> pieces = new ArrayList<>();
        double low = part.bounds().low(along);
        double from = low;
        for (double[] gap : gaps) {
            add(pieces, part, along, from, low + gap[0]);
            from = low + gap[1];
        }
        add(pieces, part, along, from, part.bounds().high(along));
        return pieces;
    }

    private static void add(List<Piece> pieces, Part part, Axis along, double from, double to) {
        double nothing = 1e-9;
        if (to - from > nothing) {
            pieces.add(new Piece(part, part.bounds().with(along, from, to)));
        }
    }
}
