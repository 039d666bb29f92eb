package hushmaze.air.network;

import java.util.function.DoubleUnaryOperator;

/**
 * The place where a function changes its sign, kept between two bounds all the time: inverse quadratic steps where they are
 * safe, halving elsewhere.
 *
 * <p>Source: Chandrupatla, Advances in Engineering Software 28(3), 1997, 145-149 (from memory). Accuracy: the last few
 * digits of a double.
 */
final class Root {
    private static final int MAX_STEPS = 400;
    private static final double RELATIVE = 4 * Math.ulp(1.0);
    private static final double ABSOLUTE = 1e-18;

    private Root() {}

    /** The root between two places at which the function has opposite signs or is zero. */
    static double between(DoubleUnaryOperator f, double low, double high) {
        return between(f, low, high, ABSOLUTE);
    }

    /**
     * The same, no more exact than is asked for.
     *
     * @param exact how far off it may be
     */
    static double between(DoubleUnaryOperator f, double low, double high, double exact) {
        double a = high;
        double b = low;
        double fa = f.applyAsDouble(a);
        double fb = f.applyAsDouble(b);
        if (fa == 0 || fb == 0) {
            return fa == 0 ? a : b;
        }
        double t = 0.5;
        for (int i = 0; i < MAX_STEPS; i++) {
            double x = a + t * (b - a);
            double fx = f.applyAsDouble(x);
            double c = a;
            double fc = fa;
            if (Math.signum(fx) != Math.signum(fa)) {
                c = b;
                fc = fb;
                b = a;
                fb = fa;
            }
            a = x;
            fa = fx;
            double best = Math.abs(fa) < Math.abs(fb) ? a : b;
            double least = (RELATIVE * Math.abs(best) + exact) / Math.abs(b - a);
            if (fa == 0 || least > 0.5) {
                return best;
            }
            t = Math.min(1 - least, Math.max(least, step(a, b, c, fa, fb, fc)));
        }
        return a;
    }

    private static double step(double a, double b, double c, double fa, double fb, double fc) {
        double xi = (a - b) / (c - b);
        double phi = (fa - fb) / (fc - fb);
        boolean safe = phi * phi < xi && (1 - phi) * (1 - phi) < 1 - xi;
        if (!safe) {
            return 0.5;
        }
        return fa / (fb - fa) * fc / (fb - fc) + (c - a) / (b - a) * fa / (fc - fa) * fb / (fc - fb);
    }
}
