package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;

/**
 * Liner as it is cut: a piece that a cut-out goes across from edge to edge is what is left on either side of it, or nothing.
 */
final class LinerPieces {
    /** Places nearer than this are one, m. */
    private static final double SAME = 1e-9;

    private final List<LinerPiece> pieces = new ArrayList<>();

    private LinerPieces() {}

    /** All pieces that are left of the given ones. */
    static List<LinerPiece> left(List<LinerPiece> whole) {
        LinerPieces left = new LinerPieces();
        whole.forEach(left::add);
        return left.pieces;
    }

    private void add(LinerPiece piece) {
        for (Cutout c : piece.cutouts()) {
            if (c.v0() < SAME && c.v1() > piece.vSize() - SAME) {
                beside(piece, true, c.u0(), c.u1());
                return;
            }
            if (c.u0() < SAME && c.u1() > piece.uSize() - SAME) {
                beside(piece, false, c.v0(), c.v1());
                return;
            }
        }
        pieces.add(piece);
    }

    private void beside(LinerPiece piece, boolean alongU, double from, double to) {
        part(piece, alongU, 0, from);
        part(piece, alongU, to, alongU ? piece.uSize() : piece.vSize());
    }

    private void part(LinerPiece piece, boolean alongU, double from, double to) {
        if (to - from < SAME) {
            return;
        }
        Axis axis = alongU ? piece.normal().u() : piece.normal().v();
        double low = piece.bounds().low(axis);
        Cuboid bounds = piece.bounds().with(axis, low + from, low + to);
        List<Cutout> cutouts = Holes.between(piece.cutouts(), alongU, from, to);
        add(new LinerPiece(
                piece.role(), piece.number(), piece.layer(), piece.liner(), bounds, cutouts, piece.stretch()));
    }
}
