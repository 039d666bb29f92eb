package hushmaze.air.network;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A crack by a power law.
 *
 * <p>Formula: Q = C Δp^n.
 *
 * <p>Source: the usual form of leakage laws, n from 0.5 to 1, likely 0.65 (from memory). Below 1e-4 Pa it is straightened.
 *
 * @param coefficient flow at 1 Pa, m³/s
 * @param exponent 0.5 to 1
 */
public record CrackLaw(double coefficient, double exponent) implements BranchLaw {
    public CrackLaw {
        InvalidValue.within("coefficient", coefficient, 1e-12, 1000, Unit.CUBIC_METRE_PER_SECOND);
        InvalidValue.within("exponent", exponent, 0.5, 1, Unit.NUMBER);
    }

    /**
     * The crack that lets a known flow through at a known difference.
     *
     * @param flow m³/s
     * @param pressure Pa
     * @param exponent 0.5 to 1
     */
    public static CrackLaw through(double flow, double pressure, double exponent) {
        InvalidValue.within("pressure", pressure, 1e-3, 1e5, Unit.PASCAL);
        return new CrackLaw(flow / Math.pow(pressure, exponent), exponent);
    }

    @Override
    public double flow(double pressureDifference) {
        return BranchLaw.power(coefficient, exponent, pressureDifference);
    }
}
