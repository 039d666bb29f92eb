package hushmaze.build;

import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.List;
import java.util.function.BiFunction;

/**
 * The box as it comes out when every board is cut to its printed size and put together in the order of assembly: the ends
 * set the width, the long sides the length, each layer is laid on the one before, boards of real thickness.
 *
 * <p>Formula: with p the printed size, t₀ the first board's thickness and so on, the inside is p(end) wide; the back must be
 * p(end) + 2 t₀ wide, the second layer's ends p(end) + 2 t₀ + 2 t₁; a board that goes into the second layer's frame must be no
 * longer than that layer's long sides and no wider than p(end) + 2 t₀. Heights likewise from the first layer's long sides, the
 * gasket and the boards below and above.
 *
 * <p>Source: geometry. Range: any box. Accuracy: exact, for boards of the thickness given and cuts as printed. Differs from the
 * source: none.
 *
 * @param tight most that a board is larger than the frame it goes into, m; 0 if all go in
 * @param step most that a board reaches beyond, or falls short of, what it covers, m
 */
public record PrintedFit(double tight, double step) {
    /** Sums of printed sizes closer than this are equal, m. */
    private static final double SAME = 1e-9;

    /** The fit of a box printed in these units. */
    public static PrintedFit of(Solid solid, UnitSystem units) {
        Assembly assembly = new Assembly(solid, units);
        assembly.check();
        return new PrintedFit(assembly.tight < SAME ? 0 : assembly.tight, assembly.step < SAME ? 0 : assembly.step);
    }

    /** Whether nothing is too large for its place. */
    public boolean closes() {
        return tight == 0;
    }

    /** Collects the worst of all joints. */
    private static final class Assembly {
        private final Solid solid;
        private final UnitSystem units;
        private double tight;
        private double step;

        Assembly(Solid solid, UnitSystem units) {
            this.solid = solid;
            this.units = units;
        }

        void check() {
            int layers = solid.box().shell().size();
            double width = size(Role.NEAR_END, 0, Axis.Y);
            double length = size(Role.FIRST_SIDE, 0, Axis.X);
            double height =
                    size(Role.FIRST_SIDE, 0, Axis.Z) + solid.box().joinery().gasket();
            covers(size(Role.NEAR_END, 0, Axis.Z) + solid.box().joinery().gasket(), height);
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
                    double cover = layer + 1 < layers ? solid.box().joinery().gasket() : 0;
                    covers(size(Role.NEAR_END, layer, Axis.Z) + cover, height + 2 * thickness(layer));
                    framed(layer, width);
                }
            }
        }

        private double thickness(int layer) {
            return solid.box().shell().get(layer).thickness();
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

        private void covers(double printed, double what) {
            step = Math.max(step, Math.abs(printed - what));
        }

        /** Printed size of a wall in one layer; of one in stretches their sum and the gaskets between. */
        private double size(Role role, int layer, Axis axis) {
            List<Panel> stretches = solid.panels().stream()
                    .filter(p -> p.role() == role && p.layer() == layer)
                    .toList();
            if (axis != Axis.X || role.normal() == Axis.X) {
                return printed(stretches.get(0).bounds().size(axis));
            }
            double sum = 0;
            for (int i = 0; i < stretches.size(); i++) {
                sum += printed(stretches.get(i).bounds().size(axis));
                sum += i == 0
                        ? 0
                        : stretches.get(i).bounds().x0()
                                - stretches.get(i - 1).bounds().x1();
            }
            return sum;
        }

        private double printed(double metres) {
            return metres + LengthFormat.roundingError(metres, units);
        }
    }
}
