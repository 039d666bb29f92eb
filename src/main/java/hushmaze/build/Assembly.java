package hushmaze.build;

import hushmaze.material.Board;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
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
        double width = size(Role.NEAR_END, 0, Axis.Y);
        double length = size(Role.FIRST_SIDE, 0, Axis.X);
        double height = size(Role.FIRST_SIDE, 0, Axis.Z) + gasket;
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

    /** Size of a wall in one layer; of one in stretches their sum and the gaskets between. */
    private double size(Role role, int layer, Axis axis) {
        List<Panel> stretches = solid.panels().stream()
                .filter(p -> p.role() == role && p.layer() == layer)
                .toList();
        if (axis != Axis.X || role.normal() == Axis.X) {
            return side(stretches.get(0), axis);
        }
        double sum = 0;
        for (int i = 0; i < stretches.size(); i++) {
            sum += side(stretches.get(i), axis);
            sum += i == 0
                    ? 0
                    : stretches.get(i).bounds().x0()
                            - stretches.get(i - 1).bounds().x1();
        }
        return sum;
    }

    /** A panel's u is x, or y where x is its normal; its v is z, or y where z is its normal. */
    private double side(Panel panel, Axis axis) {
        Plate plate = cut.apply(panel);
        boolean alongU = axis == Axis.X || axis == Axis.Y && panel.normal() == Axis.X;
        return alongU ? plate.length() : plate.width();
    }

    private void baffles() {
        List<Cuboid> baffles = solid.baffles();
        double wall = size(Role.FIRST_SIDE, 0, Axis.Z);
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
        for (Panel panel : solid.panels()) {
            boolean back = panel.role() == Role.BACK;
            // The back begins at the outside of the first side, an end at its inside.
            double from = back ? -thickness(0) : 0;
            for (Groove g : cut.apply(panel).grooves()) {
                double g0 = from + (back ? g.v0() : g.u0());
                double g1 = from + (back ? g.v1() : g.u1());
                if (nearest((g0 + g1) / 2, baffles) == baffle) {
                    low = Math.max(low, g0);
                    high = Math.min(high, g1);
                    depth = Math.min(depth, g.depth());
                }
            }
        }
        if (depth == Double.POSITIVE_INFINITY) {
            return 0;
        }
        double stack =
                solid.box().baffleLayers() * thick.applyAsDouble(solid.box().baffleBoard());
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
