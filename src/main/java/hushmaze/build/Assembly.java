package hushmaze.build;

import hushmaze.material.Board;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;

/** Puts a box together from plates as they were cut, and keeps the worst of all joints. */
final class Assembly {
    /** Sums of sizes closer than this are equal, m. */
    private static final double SAME = 1e-9;

    private final Solid solid;
    private final Function<Panel, Plate> cut;
    private final ToDoubleFunction<Board> thick;
    private final double gasket;
    private double tight;
    private double step;

    /**
     * @param cut plate that was cut for a panel, lying as the panel does: its u to the right, its v upwards
     * @param thick real thickness of a board, m
     */
    Assembly(Solid solid, Function<Panel, Plate> cut, ToDoubleFunction<Board> thick) {
        this.solid = solid;
        this.cut = cut;
        this.thick = thick;
        this.gasket = solid.box().joinery().gasket();
        layers();
        baffles();
    }

    /** The worst joints. */
    PrintedFit fit() {
        return new PrintedFit(tight < SAME ? 0 : tight, step < SAME ? 0 : step);
    }

    private void layers() {
        int layers = solid.box().shell().size();
        double width = first(Role.NEAR_END, Role.FAR_END, Axis.Y);
        double length = first(Role.FIRST_SIDE, Role.LAST_SIDE, Axis.X);
        double height = first(Role.FIRST_SIDE, Role.LAST_SIDE, Axis.Z) + gasket;
        covers(size(Role.NEAR_END, 0, Axis.Z) + gasket, height);
        for (int layer = 0; layer < layers; layer++) {
            double under = layer == 0 ? 0 : 2 * thickness(layer - 1);
            width += under;
            height += under;
            double outside = width + 2 * thickness(layer);
            if (layer % 2 == 0) {
                // Broad faces over all, long sides over the ends.
                length = layer == 0 ? length : length + under + 2 * thickness(layer);
                broad(layer, length, outside, layer > 0 || layers == 1);
                covers(size(Role.FIRST_SIDE, layer, Axis.X), length);
                covers(size(Role.NEAR_END, layer, Axis.Y), width);
            } else {
                covers(size(Role.FIRST_SIDE, layer, Axis.X), length);
                covers(size(Role.NEAR_END, layer, Axis.Y), outside);
                double cover = layer + 1 < layers ? gasket : 0;
                covers(size(Role.NEAR_END, layer, Axis.Z) + cover, height + 2 * thickness(layer));
                framed(layer, width);
            }
        }
    }

    private double thickness(int layer) {
        return thick.applyAsDouble(solid.box().shell().get(layer));
    }

    /** Broad boards that run over the walls of their layer; the first cover does not where there is a frame. */
    private void broad(int layer, double length, double width, boolean cover) {
        for (Role role : cover ? List.of(Role.BACK, Role.FRONT) : List.of(Role.BACK)) {
            covers(size(role, layer, Axis.X), length);
            covers(size(role, layer, Axis.Y), width);
        }
    }

    /** Boards in the frame of the second layer's walls. */
    private void framed(int layer, double width) {
        double length = size(Role.FIRST_SIDE, layer, Axis.X);
        BiFunction<Role, Integer, Double> over =
                (role, of) -> Math.max(size(role, of, Axis.X) - length, size(role, of, Axis.Y) - width);
        tight = Math.max(tight, over.apply(Role.BACK, layer));
        tight = Math.max(tight, over.apply(Role.FRONT, layer));
        tight = Math.max(tight, over.apply(Role.FRONT, layer - 1));
    }

    private void covers(double was, double what) {
        step = Math.max(step, Math.abs(was - what));
    }

    /** Size of the first layer's walls across from each other: of the second if a port has opened the first. */
    private double first(Role wall, Role across, Axis axis) {
        return row(wall, 0, axis).isEmpty() ? size(across, 0, axis) : size(wall, 0, axis);
    }

    /**
     * Size of a wall in one layer; of one in stretches their sum and the gaskets between. A wall that a port opens from edge to
     * edge holds nothing apart: it is as large as designed, the port takes up the rest.
     */
    private double size(Role role, int layer, Axis axis) {
        List<Panel> row = row(role, layer, axis);
        if (row.isEmpty()) {
            return firstWall(axis);
        }
        double size = extent(row, axis);
        for (Panel piece : row) {
            size += side(piece, axis) - piece.bounds().size(axis);
        }
        return size;
    }

    /** The pieces of a wall in a row along an axis; none if they do not hold its ends apart. */
    private List<Panel> row(Role role, int layer, Axis axis) {
        List<Panel> row = new ArrayList<>();
        double between = 0;
        for (Panel piece : solid.panels()) {
            double end = row.isEmpty()
                    ? Double.NEGATIVE_INFINITY
                    : row.get(row.size() - 1).bounds().high(axis);
            // Pieces above and below a port stand for each other.
            if (piece.role() == role && piece.layer() == layer && piece.bounds().low(axis) > end - SAME) {
                between = row.isEmpty() ? 0 : Math.max(between, piece.bounds().low(axis) - end);
                row.add(piece);
            }
        }
        boolean mayBeOpen = layer == 0 && role.normal() != Axis.Z;
        boolean whole =
                !row.isEmpty() && between < gasket + SAME && (!mayBeOpen || extent(row, axis) > firstWall(axis) - SAME);
        return mayBeOpen && !whole ? List.of() : row;
    }

    /** Size of a wall of the first layer as designed. */
    private double firstWall(Axis axis) {
        double cavity = solid.cavity().size(axis);
        return switch (axis) {
            case X -> cavity + 2 * solid.box().shell().get(0).thickness();
            case Y -> cavity;
            case Z -> cavity - gasket;
        };
    }

    private static double extent(List<Panel> pieces, Axis axis) {
        return pieces.stream().mapToDouble(p -> p.bounds().high(axis)).max().orElseThrow()
                - pieces.stream().mapToDouble(p -> p.bounds().low(axis)).min().orElseThrow();
    }

    /** A panel's u is x, or y where x is its normal; its v is z, or y where z is its normal. */
    private double side(Panel panel, Axis axis) {
        Plate plate = cut.apply(panel);
        boolean alongU = axis == Axis.X || axis == Axis.Y && panel.normal() == Axis.X;
        return alongU ? plate.length() : plate.width();
    }

    private void baffles() {
        List<Cuboid> baffles = solid.baffles();
        double wall = first(Role.FIRST_SIDE, Role.LAST_SIDE, Axis.Z);
        for (int i = 0; i < baffles.size(); i++) {
            double depth = slot(i, baffles);
            for (Panel panel : solid.panels()) {
                if (panel.role() == Role.BAFFLE && panel.number() == i) {
                    double proud = side(panel, Axis.Z) - wall - depth;
                    tight = Math.max(tight, proud);
                    step = depth == 0 ? Math.max(step, -proud) : step;
                }
            }
        }
    }

    /** Finds whether a baffle goes into its grooves; how deep they are at least, 0 without any. */
    private double slot(int baffle, List<Cuboid> baffles) {
        double low = Double.NEGATIVE_INFINITY;
        double high = Double.POSITIVE_INFINITY;
        double depth = Double.POSITIVE_INFINITY;
        double stack =
                solid.box().baffleLayers() * thick.applyAsDouble(solid.box().baffleBoard());
        for (Panel panel : solid.panels()) {
            boolean back = panel.role() == Role.BACK;
            // The back begins at the outside of the first side, an end at its inside. What a port cuts off of an end is
            // free
            // to be moved until its groove is over the back's.
            double from = back ? -thickness(0) : panel.bounds().low(Axis.Y);
            boolean free = !back && from > SAME;
            Plate plate = cut.apply(panel);
            double across = back ? plate.width() : plate.length();
            for (Groove g : plate.grooves()) {
                double g0 = back ? g.v0() : g.u0();
                double g1 = back ? g.v1() : g.u1();
                if (nearest(from + (g0 + g1) / 2, baffles) == baffle) {
                    // Beside a port a groove may run out at the edge, where nothing stops the baffle.
                    double least = g0 < SAME ? Double.NEGATIVE_INFINITY : g0;
                    double most = g1 > across - SAME ? Double.POSITIVE_INFINITY : g1;
                    low = free ? low : Math.max(low, from + least);
                    high = free ? high : Math.min(high, from + most);
                    depth = Math.min(depth, g.depth());
                    tight = Math.max(tight, stack - (most - least));
                }
            }
        }
        if (depth == Double.POSITIVE_INFINITY) {
            return 0;
        }
        tight = Math.max(tight, stack - (high - low));
        return depth;
    }

    private static int nearest(double y, List<Cuboid> baffles) {
        int nearest = 0;
        for (int i = 1; i < baffles.size(); i++) {
            if (off(y, baffles.get(i)) < off(y, baffles.get(nearest))) {
                nearest = i;
            }
        }
        return nearest;
    }

    private static double off(double y, Cuboid baffle) {
        return Math.abs(y - (baffle.y0() + baffle.y1()) / 2);
    }
}
