package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Liner as it is cut: what is left of a piece beside all its cut-outs, each part that hangs together as a piece of its own, no
 * larger than it must be. Where nothing is left there is no piece.
 */
final class LinerPieces {
    /** Stretches shorter than this are nothing, m. */
    private static final double SAME = 1e-8;

    private LinerPieces() {}

    /** All pieces that are left of the given ones. */
    static List<LinerPiece> left(List<LinerPiece> whole) {
        return whole.stream().flatMap(piece -> left(piece).stream()).toList();
    }

    private static List<LinerPiece> left(LinerPiece piece) {
        List<List<Cuboid>> bodies = PartCells.of(piece).bodies();
        List<LinerPiece> left = new ArrayList<>();
        for (List<Cuboid> body : bodies) {
            Cuboid bounds = around(body);
            if (bodies.size() == 1 && bounds.equals(piece.bounds())) {
                return List.of(piece);
            }
            // One body may reach round another: that one is not part of it either.
            List<Cuboid> away = new ArrayList<>(piece.taken());
            bodies.stream().filter(other -> other != body).forEach(away::addAll);
            left.add(piece.cut(bounds, cutouts(away, bounds, piece.normal())));
        }
        return left;
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

    private static List<Cutout> cutouts(List<Cuboid> away, Cuboid bounds, Axis normal) {
        Axis u = normal.u();
        Axis v = normal.v();
        List<Cutout> cutouts = new ArrayList<>();
        for (Cuboid block : away) {
            double u0 = Math.max(0, block.low(u) - bounds.low(u));
            double u1 = Math.min(bounds.size(u), block.high(u) - bounds.low(u));
            double v0 = Math.max(0, block.low(v) - bounds.low(v));
            double v1 = Math.min(bounds.size(v), block.high(v) - bounds.low(v));
            if (u1 - u0 > SAME && v1 - v0 > SAME) {
                cutouts.add(new Cutout(u0, v0, u1, v1));
            }
        }
        return cutouts;
    }
}
