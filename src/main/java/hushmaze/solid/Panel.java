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
 */
public record Panel(Role role, int number, int layer, Board board, Cuboid bounds, List<Cutout> cutouts)
        implements Part {
    public Panel {
        cutouts = List.copyOf(cutouts);
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
