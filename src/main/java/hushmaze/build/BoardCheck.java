package hushmaze.build;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * How the sizes of a cut list follow the real thickness of a board, so that a person who measures the board before cutting
 * knows what moves. The clear sizes of the box stay as they are.
 *
 * <p>Formula: every cut size is a whole number of thicknesses plus what does not depend on the board; the number is found by
 * building the box again with the board a trifle thicker. Source: geometry of the solid. Range: any box that can be built
 * with the other board. Accuracy: exact. Differs from the source: none.
 *
 * @param board as the cut list has it
 * @param changes items of which a size follows the thickness, in their order
 * @param outer how many thicknesses the outside of the box follows
 * @param between how many boards of it stand between the passes
 */
public record BoardCheck(Board board, List<Change> changes, Outside outer, int between) {
    /** So much thicker is the board of the example, m. */
    public static final double EXAMPLE = 0.0004;

    /** Less than any rule between two parts of a box notices, and far more than numbers are rounded by, m. */
    private static final double STEP = 1e-10;

    private static final double WHOLE = 1e-3;

    /**
     * Parts of an item whose sizes move alike. Parts that are alike now need not be when the board is thicker.
     *
     * @param item of the cut list
     * @param parts of it
     * @param length how many thicknesses its length follows
     * @param width how many its width follows
     * @param features cut-outs and grooves of which something follows it, in the order of the item
     */
    public record Change(CutItem item, List<Part> parts, int length, int width, List<Feature> features) {
        public Change {
            parts = List.copyOf(parts);
            features = List.copyOf(features);
        }

        /** Whether the item itself is cut to another size. */
        public boolean resized() {
            return length != 0 || width != 0;
        }

        boolean isAny() {
            return resized() || !features.isEmpty();
        }
    }

    /**
     * A cut-out or groove and how many thicknesses its places and sizes follow, as the item is drawn.
     *
     * @param place as it is now
     * @param groove whether it is one
     * @param left of its distance from the left edge
     * @param below of its distance from the lower edge
     * @param length of its size to the right
     * @param width of its size upwards
     */
    public record Feature(Cutout place, boolean groove, int left, int below, int length, int width) {
        private boolean isAny() {
            return left != 0 || below != 0 || length != 0 || width != 0;
        }

        /** The place when the board is so much thicker, m. */
        public Cutout at(double more) {
            double u = place.u0() + left * more;
            double v = place.v0() + below * more;
            return new Cutout(
                    u, v, u + place.u1() - place.u0() + length * more, v + place.v1() - place.v0() + width * more);
        }
    }

    /**
     * Thicknesses in the outside of a box.
     *
     * @param length along the passes
     * @param width across them
     * @param height from back to front
     */
    public record Outside(int length, int width, int height) {}

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
            // At the thickest a board may be: the same whole numbers come from a thinner one.
            return of(solid, list, board, -STEP);
        }
    }

    private static BoardCheck of(Solid solid, CutList list, Board board, double by) {
        Solid other = otherwise(solid.box(), board, by);
        List<Change> changes = new ArrayList<>();
        for (CutItem item : list.boards()) {
            Map<Change, List<Part>> alike = new LinkedHashMap<>();
            for (int i = 0; i < item.quantity(); i++) {
                Panel now = (Panel) item.parts().get(i);
                Plate then = Plate.of(other.panels().get(solid.panels().indexOf(now)), List.of())
                        .turned(item.turnings().get(i));
                alike.computeIfAbsent(change(item, then, by), key -> new ArrayList<>())
                        .add(now);
            }
            alike.forEach((change, parts) -> {
                if (change.isAny()) {
                    changes.add(new Change(item, parts, change.length(), change.width(), change.features()));
                }
            });
        }
        Cuboid was = solid.outer();
        Cuboid is = other.outer();
        Outside outside = new Outside(
                whole((is.size(Axis.X) - was.size(Axis.X)) / by),
                whole((is.size(Axis.Y) - was.size(Axis.Y)) / by),
                whole((is.size(Axis.Z) - was.size(Axis.Z)) / by));
        Box box = solid.box();
        int between = board.equals(box.baffleBoard()) ? (box.passes() - 1) * box.baffleLayers() : 0;
        return new BoardCheck(board, changes, outside, between);
    }

    /** What of a plate has moved when the board is thicker; of no part in particular. */
    private static Change change(CutItem item, Plate then, double by) {
        List<Feature> features = new ArrayList<>();
        for (Cutout now : item.cutouts()) {
            then.cutouts().stream()
                    .filter(c -> near(now, c))
                    .findFirst()
                    .ifPresent(c -> features.add(feature(now, c, false, by)));
        }
        for (Groove groove : item.grooves()) {
            Cutout now = rectangle(groove);
            then.grooves().stream()
                    .map(BoardCheck::rectangle)
                    .filter(c -> near(now, c))
                    .findFirst()
                    .ifPresent(c -> features.add(feature(now, c, true, by)));
        }
        return new Change(
                item,
                List.of(),
                whole((then.length() - item.length()) / by),
                whole((then.width() - item.width()) / by),
                features.stream().filter(Feature::isAny).toList());
    }

    private static Cutout rectangle(Groove g) {
        return new Cutout(g.u0(), g.v0(), g.u1(), g.v1());
    }

    /** Whether two are the same one, before and after: they have moved by next to nothing. */
    private static boolean near(Cutout p, Cutout q) {
        return Math.abs(p.u0() - q.u0()) < Plate.SAME
                && Math.abs(p.v0() - q.v0()) < Plate.SAME
                && Math.abs(p.u1() - q.u1()) < Plate.SAME
                && Math.abs(p.v1() - q.v1()) < Plate.SAME;
    }

    private static Feature feature(Cutout now, Cutout then, boolean groove, double by) {
        return new Feature(
                now,
                groove,
                whole((then.u0() - now.u0()) / by),
                whole((then.v0() - now.v0()) / by),
                whole((then.u1() - then.u0() - now.u1() + now.u0()) / by),
                whole((then.v1() - then.v0() - now.v1() + now.v0()) / by));
    }

    /**
     * What comes of cutting to the exact sizes as they are from a board of another thickness.
     *
     * @param more how much thicker it is, m; less than zero if thinner
     */
    public PrintedFit ignored(Solid solid, double more) {
        return new Assembly(
                        solid,
                        panel -> Plate.of(panel, List.of()),
                        b -> b.equals(board) ? b.thickness() + more : b.thickness())
                .fit();
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
