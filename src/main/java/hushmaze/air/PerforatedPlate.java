package hushmaze.air;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A thin, sharp-edged perforated plate or grille across the path.
 *
 * <p>Loss coefficient on the velocity before the plate: ζ = (0.707 √(1-f) + 1 - f)² / f²; f free area over whole area. The
 * newer form has 0.707 (1-f)^0.375 in place of the root.
 *
 * <p>Source: Handbook of Hydraulic Resistance, diagram 8-1; both forms from memory. Range: Reynolds number in the holes
 * above 1e5; used at every Re; f from 0.05 to 1. Accuracy: the likely value is the older form; the range carried is 10 %
 * below it to 10 % above the newer form, our judgement. Differs from the source: thickness and shape of the holes are left
 * out.
 */
final class PerforatedPlate {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagram 8-1, from memory";
    private static final double SPREAD = 0.10;

    private PerforatedPlate() {}

    /** Loss coefficient on the velocity before the plate; the ratio is free over whole area. */
    static Zeta zeta(double freeAreaRatio) {
        double f = InvalidValue.within("freeAreaRatio", freeAreaRatio, 0.05, 1, Unit.NUMBER);
        double older = squared(0.707 * Math.sqrt(1 - f) + 1 - f) / (f * f);
        double newer = squared(0.707 * Math.pow(1 - f, 0.375) + 1 - f) / (f * f);
        return new Zeta(older * (1 - SPREAD), older, newer * (1 + SPREAD));
    }

    private static double squared(double x) {
        return x * x;
    }
}
