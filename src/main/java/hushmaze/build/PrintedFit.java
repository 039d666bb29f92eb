package hushmaze.build;

import hushmaze.material.Board;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Solid;

/**
 * How a box comes out when every board is cut to certain sizes and put together in the order of assembly: the ends
 * set the width, the long sides the length, each layer is laid on the one before, flush at the first side; baffles stand on
 * the back or in its grooves.
 *
 * <p>Formula: with p the printed size, t₀ the first board's thickness and so on, the inside is p(end) wide; the back must be
 * p(end) + 2 t₀ wide, the second layer's ends p(end) + 2 t₀ + 2 t₁; a board that goes into the second layer's frame must be no
 * longer than that layer's long sides and no wider than p(end) + 2 t₀. Heights likewise from the first layer's long sides, the
 * gasket and the boards below and above. A baffle goes through where the grooves in back and end overlap, seen from the first
 * side, and stands no higher than the walls of the first layer and the groove's depth.
 *
 * <p>Source: geometry. Range: any box. Accuracy: exact, for boards of the thickness given and cuts to size. Differs from the
 * source: none.
 *
 * @param tight most that a board is larger than the frame or the groove it goes into, m; 0 if all go in
 * @param step most that a board reaches beyond, or falls short of, what it covers, m
 */
public record PrintedFit(double tight, double step) {
    /** The fit of a box whose cut list is printed in these units. */
    public static PrintedFit of(Solid solid, CutList list, UnitSystem units) {
        PrintedSizes sizes = PrintedSizes.of(solid, list, units);
        return new Assembly(solid, sizes::of, Board::thickness).fit();
    }

    /** Whether nothing is too large for its place. */
    public boolean closes() {
        return tight == 0;
    }
}
