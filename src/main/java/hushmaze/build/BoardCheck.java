package hushmaze.build;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * How the sizes of a cut list follow the real thickness of a board, so that a person who measures the board before cutting
 * knows what moves. The clear sizes of the box stay as they are.
 *
 * <p>Formula: every cut size is a whole number of thicknesses plus what does not depend on the board; the number is found by
 * building the box again with the board a tenth of a millimetre thicker. Source: geometry of the solid. Range: any box that can be built
 * with the other board. Accuracy: exact. Differs from the source: none.
 *
 * @param board as the cut list has it
 * @param changes items of which a size follows the thickness, in their order
 * @param outer how many thicknesses the outside of the box follows, the same in all three directions
 */
public record BoardCheck(Board board, List<Change> changes, int outer) {
    private static final double STEP = 0.0001;
    private static final double WHOLE = 1e-3;

    /**
     * An item whose sizes move.
     *
     * @param item of the cut list
     * @param length how many thicknesses its length follows
     * @param width how many its width follows
     */
    public record Change(CutItem item, int length, int width) {}

    public BoardCheck {
        changes = List.copyOf(changes);
    }

    /** One check for every board of a box. */
    public static List<BoardCheck> of(Solid solid, CutList list) {
        Box box = solid.box();
        return Stream.concat(box.shell().stream(), box.passes() > 1 ? Stream.of(box.baffleBoard()) : Stream.empty())
                .distinct()
                .map(board -> of(solid, list, board))
                .toList();
    }

    private static BoardCheck of(Solid solid, CutList list, Board board) {
        try {
            return of(solid, list, board, STEP);
        } catch (InvalidValue tooThick) {
            // At a limit, of a groove or a seam: the same whole numbers come from a thinner board.
            return of(solid, list, board, -STEP);
        }
    }

    private static BoardCheck of(Solid solid, CutList list, Board board, double by) {
        Solid other = otherwise(solid.box(), board, by);
        List<Change> changes = new ArrayList<>();
        for (CutItem item : list.boards()) {
            int index = solid.panels().indexOf(item.parts().get(0));
            Panel then = other.panels().get(index);
            Panel now = solid.panels().get(index);
            int u = whole((then.uSize() - now.uSize()) / by);
            int v = whole((then.vSize() - now.vSize()) / by);
            boolean exchanged = item.turnings().get(0).exchange();
            if (u != 0 || v != 0) {
                changes.add(new Change(item, exchanged ? v : u, exchanged ? u : v));
            }
        }
        double outside = other.outer().size(Axis.X) - solid.outer().size(Axis.X);
        return new BoardCheck(board, changes, whole(outside / by));
    }

    /** The box with one board thicker by so much; its panels are in the same order. */
    private static Solid otherwise(Box box, Board board, double by) {
        UnaryOperator<Board> measured = b -> b.equals(board) ? withThickness(b, b.thickness() + by) : b;
        return SolidBuilder.build(
                box.ofBoards(box.shell().stream().map(measured).toList(), measured.apply(box.baffleBoard())));
    }

    /**
     * The same board of another real thickness.
     *
     * @throws InvalidValue if there is no such board
     */
    public static Board withThickness(Board b, double thickness) {
        return new Board(b.name(), thickness, b.density(), b.youngModulus(), b.lossFactor(), b.grain(), b.source());
    }

    private static int whole(double ratio) {
        if (Math.abs(ratio - Math.rint(ratio)) > WHOLE) {
            throw new IllegalStateException("a size follows the board by " + ratio);
        }
        return (int) Math.rint(ratio);
    }
}
