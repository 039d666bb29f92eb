package hushmaze.build.fixing;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Allowable shear of one screw between a side piece and the timber, for normal load duration: the least of the six ways in
 * which screw and wood yield.
 *
 * <p>Formulas: Im = D ℓm Fem / Rd; Is = D ℓs Fes / Rd; II = k₁ D ℓs Fes / Rd; IIIm = k₂ D ℓm Fem / ((1 + 2 Re) Rd); IIIs =
 * k₃ D ℓs Fem / ((2 + Re) Rd); IV = D² / Rd √(2 Fem Fyb / (3 (1 + Re))); k₁ = (√(Re + 2 Re² (1 + Rt + Rt²) + Rt² Re³) - Re (1
 * + Rt)) / (1 + Re); k₂ = -1 + √(2 (1 + Re) + 2 Fyb (1 + 2 Re) D² / (3 Fem ℓm²)); k₃ = -1 + √(2 (1 + Re) / Re + 2 Fyb (2 +
 * Re) D² / (3 Fem ℓs²)); Re = Fem / Fes, Rt = ℓm / ℓs. D root diameter; ℓm, ℓs lengths in timber and side piece; Fem, Fes
 * dowel bearing strengths; Fyb bending strength of the screw. Rd = 4, 3.6 and 3.2 times Kθ for I, II and the others, Kθ = 1 +
 * θ/360° by the angle of the load to the grain; for root diameters below 1/4 in Rd = KD = 10 D + 0.5, at least 2.2 (D in
 * inches), and for nominal ones from 1/4 in that times Kθ.
 *
 * <p>Source: National Design Specification for Wood Construction, 12.3 (yield equations from memory). Range: one shear plane,
 * penetration at least 4 D. Accuracy: reproduces the read table of lag screws through steel plates after its rounding to 10
 * lb. Differs from the source: none.
 *
 * @param root diameter at the root of the thread, m
 * @param kTheta 1 for a load along the grain, 1.25 across it; used for nominal diameters from 1/4 in
 * @param inTimber length in the timber, m
 * @param inSide thickness of the side piece, m
 * @param timberBearing dowel bearing strength of the timber, Pa
 * @param sideBearing dowel bearing strength of the side piece, Pa
 * @param bending strength of the screw, Pa
 */
public record YieldLimit(
        double root,
        double kTheta,
        double inTimber,
        double inSide,
        double timberBearing,
        double sideBearing,
        double bending) {
    private static final double QUARTER = 0.25 * Pounds.INCH;
    private static final double SMALL = 0.17 * Pounds.INCH;

    public YieldLimit {
        InvalidValue.within("root", root, 0.002, 0.02, Unit.MILLIMETRE);
        InvalidValue.within("kTheta", kTheta, 1, 1.25, Unit.NUMBER);
        InvalidValue.within("inTimber", inTimber, 0.005, 0.4, Unit.MILLIMETRE);
        InvalidValue.within("inSide", inSide, 0.0005, 0.3, Unit.MILLIMETRE);
        InvalidValue.within("timberBearing", timberBearing, 1e6, 1e9, Unit.PASCAL);
        InvalidValue.within("sideBearing", sideBearing, 1e6, 1e9, Unit.PASCAL);
        InvalidValue.within("bending", bending, 1e7, 2e9, Unit.PASCAL);
    }

    /** Allowable shear, N. */
    public double shear() {
        double re = timberBearing / sideBearing;
        double rt = inTimber / inSide;
        double k1 =
                (Math.sqrt(re + 2 * re * re * (1 + rt + rt * rt) + rt * rt * re * re * re) - re * (1 + rt)) / (1 + re);
        double k2 = -1
                + Math.sqrt(2 * (1 + re)
                        + 2 * bending * (1 + 2 * re) * root * root / (3 * timberBearing * inTimber * inTimber));
        double k3 = -1
                + Math.sqrt(2 * (1 + re) / re
                        + 2 * bending * (2 + re) * root * root / (3 * timberBearing * inSide * inSide));
        double[] modes = {
            root * inTimber * timberBearing / reduction(4),
            root * inSide * sideBearing / reduction(4),
            k1 * root * inSide * sideBearing / reduction(3.6),
            k2 * root * inTimber * timberBearing / ((1 + 2 * re) * reduction(3.2)),
            k3 * root * inSide * timberBearing / ((2 + re) * reduction(3.2)),
            root * root / reduction(3.2) * Math.sqrt(2 * timberBearing * bending / (3 * (1 + re))),
        };
        double least = modes[0];
        for (double mode : modes) {
            least = Math.min(least, mode);
        }
        return least;
    }

    private double reduction(double large) {
        if (root >= QUARTER) {
            return large * kTheta;
        }
        double small = root <= SMALL ? 2.2 : 10 * root / Pounds.INCH + 0.5;
        return small * kTheta;
    }

    /** Dowel bearing strength along the grain for nominal diameters from 1/4 in, Pa: 11200 G psi. */
    public static double alongGrain(double gravity) {
        return 11_200 * gravity * Pounds.PSI;
    }

    /** Dowel bearing strength across the grain for nominal diameters from 1/4 in, Pa: 6100 G^1.45 / √D psi. */
    public static double acrossGrain(double gravity, double diameter) {
        return 6_100 * Math.pow(gravity, 1.45) / Math.sqrt(diameter / Pounds.INCH) * Pounds.PSI;
    }

    /** Dowel bearing strength for nominal diameters below 1/4 in, any direction, Pa: 16600 G^1.84 psi. */
    public static double smallScrews(double gravity) {
        return 16_600 * Math.pow(gravity, 1.84) * Pounds.PSI;
    }
}
