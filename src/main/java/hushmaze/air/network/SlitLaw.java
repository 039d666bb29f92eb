package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A straight slit of some depth, such as the gap between a door and its frame.
 *
 * <p>Formula: Δp = 12 μ z / (L d³) Q + ρ C / (2 (L d)²) Q²; L length, d width, z depth in the direction of the air, μ
 * viscosity, ρ density; C = 1.5 without a bend, and 1 more for each bend.
 *
 * <p>Source: Baker, Sharples and Ward, Building and Environment 22(4), 1987, 293-304 (from memory); the first part is the
 * laminar flow between two plates, the second entry and exit. Range: widths of 1 to 10 mm (from memory). Accuracy: 20 %, our judgement; the width of a real gap is less sure. Differs from the source: none.
 *
 * @param length m
 * @param width m
 * @param depth m
 * @param bends in the direction of the air, 0 to 4
 * @param density of the air, kg/m³
 * @param viscosity of the air, Pa·s
 */
public record SlitLaw(double length, double width, double depth, int bends, double density, double viscosity)
        implements BranchLaw {
    private static final double STRAIGHT = 1.5;

    public SlitLaw {
        InvalidValue.within("length", length, 1e-3, 1000, Unit.METRE);
        InvalidValue.within("width", width, 1e-6, 1, Unit.MILLIMETRE);
        InvalidValue.within("depth", depth, 1e-4, 1, Unit.MILLIMETRE);
        InvalidValue.within("bends", bends, 0, 4);
        InvalidValue.within("density", density, 0.1, 2, Unit.KILOGRAM_PER_CUBIC_METRE);
        InvalidValue.within("viscosity", viscosity, 1e-6, 1e-4, Unit.NUMBER);
    }

    @Override
    public double flow(double pressureDifference) {
        double size = Math.abs(pressureDifference);
        double linear = 12 * viscosity * depth / (length * Math.pow(width, 3));
        double square = density * (STRAIGHT + bends) / (2 * Math.pow(length * width, 2));
        // the root of square q² + linear q = size that does not lose digits; its slope at zero is finite
        double flow = 2 * size / (linear + Math.sqrt(linear * linear + 4 * square * size));
        return Math.signum(pressureDifference) * flow;
    }
}
