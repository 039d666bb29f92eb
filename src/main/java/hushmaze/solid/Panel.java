package hushmaze.solid;

import hushmaze.material.Board;
import java.util.List;

/**
 * A piece of board in its place.
 *
 * @param role where it belongs
 * @param number of the baffle, counted from 0; 0 for the shell
 * @param layer layer of the wall, counted from the inside; layer of a laminated baffle, counted from low y
 * @param board material
 * @param bounds block it fills
 * @param cutouts taken out of it
 * @param grooves sunk into it; none crosses another or a cut-out
 * @param stretch which of the stretches between seams it belongs to, counted from the near end; 0 if there is no seam in it
 */
public record Panel(
        Role role,
        int number,
        int layer,
        Board board,
        Cuboid bounds,
        List<Cutout> cutouts,
        List<Groove> grooves,
        int stretch)
        implements Part {
    public Panel {
        cutouts = List.copyOf(cutouts);
        grooves = List.copyOf(grooves);
    }

    /** A board without grooves. */
    public Panel(Role role, int number, int layer, Board board, Cuboid bounds, List<Cutout> cutouts) {
        this(role, number, layer, board, bounds, cutouts, List.of(), 0);
    }

    /** The same board with grooves. */
    public Panel grooved(List<Groove> more) {
        return new Panel(role, number, layer, board, bounds, cutouts, more, stretch);
    }

    /** What is left of it in a block, with the cut-outs and grooves in there. */
    Panel in(Cuboid block, List<Cutout> holes, List<Groove> sunk) {
        return new Panel(role, number, layer, board, block, holes, sunk, stretch);
    }

    @Override
    public double thickness() {
        return board.thickness();
    }

    @Override
    public double density() {
        return board.density();
    }

    @Override
    public String material() {
        return board.name();
    }
}
