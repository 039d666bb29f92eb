package hushmaze.sound.wave;

/** Spherical Bessel functions of the first kind. */
final class SphericalBessel {
    /** Orders above the last at which the recurrence downwards starts. */
    private static final int START_ABOVE = 24;

    private SphericalBessel() {}

    /** j_0(x) ... j_last(x) for x at or above zero. */
    static double[] upTo(int last, double x) {
        double[] out = new double[last + 1];
        if (x < 1e-12) {
            out[0] = 1;
            return out;
        }
        double j0 = Math.sin(x) / x;
        double j1 = (j0 - Math.cos(x)) / x;
        if (x > last + 1) {
            out[0] = j0;
            if (last > 0) {
                out[1] = j1;
            }
            for (int m = 1; m < last; m++) {
                out[m + 1] = (2 * m + 1) / x * out[m] - out[m - 1];
            }
            return out;
        }
        return downwards(out, x, j0, j1);
    }

    private static double[] downwards(double[] out, double x, double j0, double j1) {
        int last = out.length - 1;
        double above = 0;
        double here = 1e-250;
        double first = 0;
        for (int m = last + START_ABOVE; m > 0; m--) {
            double below = (2 * m + 1) / x * here - above;
            above = here;
            here = below;
            if (m - 1 <= last) {
                out[m - 1] = here;
            }
            if (m - 1 == 1) {
                first = here;
            }
            if (Math.abs(here) > 1e200) {
                above *= 1e-200;
                here *= 1e-200;
                first *= 1e-200;
                for (int i = 0; i <= last; i++) {
                    out[i] *= 1e-200;
                }
            }
        }
        double scale = Math.abs(j0) > Math.abs(j1) ? j0 / here : j1 / first;
        for (int i = 0; i <= last; i++) {
            out[i] *= scale;
        }
        return out;
    }
}
