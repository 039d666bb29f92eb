package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Boards and liner as they are cut: what is left of a part beside all its cut-outs, each body that hangs together as a part of
 * its own, no larger than it must be. Where nothing is left there is no part: a port as high and wide as an end leaves none.
 */
final class Leftovers {
    /** Stretches shorter than this are nothing, m. */
    private static final double SAME = 1e-8;

    /** A part in a smaller block. */
    private interface Cut<P extends Part> {
        P in(Cuboid bounds, List<Cutout> cutouts);
    }

    private Leftovers() {}

    /** What is left of liner pieces. */
    static List<LinerPiece> liners(List<LinerPiece> whole) {
        List<LinerPiece> left = new ArrayList<>();
        whole.forEach(piece -> add(piece, piece::in, left));
        return left;
    }

    /** What is left of boards. */
    static List<Panel> panels(List<Panel> whole) {
        List<Panel> left = new ArrayList<>();
        whole.forEach(panel -> add(panel, (block, cutouts) -> panel.in(block, cutouts, grooves(panel, block)), left));
        return left;
    }

    private static <P extends Part> void add(P part, Cut<P> cut, List<P> into) {
        if (part.cutouts().isEmpty()) {
            into.add(part);
            return;
        }
        List<Cuboid> taken = part.cutouts().stream().map(part::space).toList();
        List<List<Cuboid>> bodies = new PartCells(part.bounds(), taken).bodies();
        for (List<Cuboid> body : bodies) {
            Cuboid bounds = around(body);
            if (bodies.size() == 1 && bounds.equals(part.bounds())) {
                into.add(part);
                return;
            }
            // One body may reach round another: that one is not part of it either.
            List<Cuboid> away = new ArrayList<>(taken);
            bodies.stream().filter(other -> other != body).forEach(away::addAll);
            List<Cutout> cutouts = new ArrayList<>();
            for (Cuboid block : away) {
                addWithin(Holes.cutout(block, bounds, part.normal()), bounds, part.normal(), cutouts);
            }
            into.add(cut.in(bounds, cutouts));
        }
    }

    private static Cuboid around(List<Cuboid> body) {
        Cuboid around = body.get(0);
        for (Cuboid block : body) {
            for (Axis axis : Axis.values()) {
                double low = Math.min(around.low(axis), block.low(axis));
                around = around.with(axis, low, Math.max(around.high(axis), block.high(axis)));
            }
        }
        return around;
    }

    private static void addWithin(Cutout c, Cuboid bounds, Axis normal, List<Cutout> into) {
        double u0 = Math.max(0, c.u0());
        double u1 = Math.min(bounds.size(normal.u()), c.u1());
        double v0 = Math.max(0, c.v0());
        double v1 = Math.min(bounds.size(normal.v()), c.v1());
        if (u1 - u0 > SAME && v1 - v0 > SAME) {
            into.add(new Cutout(u0, v0, u1, v1));
        }
    }

    private static List<Groove> grooves(Panel panel, Cuboid bounds) {
        List<Groove> grooves = new ArrayList<>();
        for (Groove g : panel.grooves()) {
            List<Cutout> within = new ArrayList<>();
            addWithin(Holes.cutout(panel.space(g), bounds, panel.normal()), bounds, panel.normal(), within);
            within.forEach(c -> grooves.add(new Groove(c.u0(), c.v0(), c.u1(), c.v1(), g.depth(), g.inLowFace())));
        }
        return grooves;
    }
}
