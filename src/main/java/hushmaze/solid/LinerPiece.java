package hushmaze.solid;

import hushmaze.material.Liner;
import hushmaze.project.LinedFaces;
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

    /** Whether no other layer of liner lies over it. */
    public boolean isOutermost(LinedFaces faces) {
        int plies = switch (role) {
            case BACK, FRONT -> faces.broad();
            case FIRST_SIDE, LAST_SIDE -> faces.walls();
            case NEAR_END, FAR_END -> faces.ends();
            case BAFFLE -> faces.baffles();
        };
        return ply == plies - 1;
    }

    /** The part of its bounds next to the air, so many m deep. */
    public Cuboid face(double depth) {
        boolean airAbove = role == Role.BAFFLE ? layer == 1 : role.isLow();
        Axis normal = normal();
        return airAbove
                ? bounds.with(normal, bounds.high(normal) - depth, bounds.high(normal))
                : bounds.with(normal, bounds.low(normal), bounds.low(normal) + depth);
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
