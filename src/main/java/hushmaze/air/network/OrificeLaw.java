package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A square-edged opening.
 *
 * <p>Formula: Q = 0.607 A √(2 Δp / ρ); A free area, Δp difference of pressure, ρ density.
 *
 * <p>Source: sizing law of transfer grilles, Building Science Corporation RR-0005, Q in cfm = 1.07 A in in² · √Δp in Pa, as
 * read; 0.607 computed from it at 1.2041 kg/m³. Range: turbulent flow; below 1e-4 Pa it is straightened. Accuracy: reproduces
 * the printed table. Differs from the source: none.
 *
 * @param area free area, m²
 * @param density of the air, kg/m³
 */
public record OrificeLaw(double area, double density) implements BranchLaw {
    /** Discharge coefficient of the sizing law. */
    public static final double DISCHARGE = 0.607;

    public OrificeLaw {
        InvalidValue.within("area", area, 1e-9, 1000, Unit.SQUARE_METRE);
        InvalidValue.within("density", density, 0.1, 2, Unit.KILOGRAM_PER_CUBIC_METRE);
    }

    /** Free area that lets a flow through at a difference, m². */
    public static double area(double flow, double pressureDifference, double density) {
        InvalidValue.within("pressureDifference", pressureDifference, STRAIGHT_BELOW, 1e5, Unit.PASCAL);
        return flow / (DISCHARGE * Math.sqrt(2 * pressureDifference / density));
    }

    @Override
    public double flow(double pressureDifference) {
        return BranchLaw.power(DISCHARGE * area * Math.sqrt(2 / density), 0.5, pressureDifference);
    }
}
