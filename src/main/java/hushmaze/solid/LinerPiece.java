package hushmaze.solid;

import hushmaze.material.Liner;
import java.util.List;

/**
 * A piece of liner in its place.
 *
 * @param role what it is stuck to
 * @param number of the baffle it is stuck to, or of the pass or end stretch it covers, counted from 0
 * @param layer for a baffle 0 on the low-y face and 1 on the high-y face; else 0
 * @param ply which layer of liner it is of those on its face, 0 against the board
 * @param liner material
 * @param bounds block it fills
 * @param cutouts taken out of it
 * @param stretch which of the stretches between seams it belongs to, counted from the near end; 0 if there is no seam in it
 */
public record LinerPiece(
        Role role, int number, int layer, int ply, Liner liner, Cuboid bounds, List<Cutout> cutouts, int stretch)
        implements Part {
    public LinerPiece {
        cutouts = List.copyOf(cutouts);
    }

    /** A piece without a seam. */
    public LinerPiece(Role role, int number, int layer, int ply, Liner liner, Cuboid bounds, List<Cutout> cutouts) {
        this(role, number, layer, ply, liner, bounds, cutouts, 0);
    }

    /** What is left of it in a block, with the cut-outs in there. */
    LinerPiece in(Cuboid block, List<Cutout> holes) {
        return new LinerPiece(role, number, layer, ply, liner, block, holes, stretch);
    }

    @Override
    public double thickness() {
        return liner.thickness();
    }

    @Override
    public double density() {
        return liner.density();
    }

    @Override
    public String material() {
        return liner.name();
    }
}
