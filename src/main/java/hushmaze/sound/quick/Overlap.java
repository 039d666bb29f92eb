package hushmaze.sound.quick;

/**
 * Integrals of products of waves u'' = -p² u, v'' = -q² v over a stretch.
 *
 * <p>(p² - q²) ∫ u v = [u v' - u' v]; 2 q² ∫ u² = (u'² + q² u²) d - [u u'], where u'² + q² u² is the same everywhere. Where
 * the divisor is small the integral is taken by Gauss's rule.
 */
final class Overlap {
    private static final double SMALL = 1e-5;
    private static final double[] NODES = {
        0.1834346424956498, 0.5255324099163290, 0.7966664774136267, 0.9602898564975363
    };
    private static final double[] WEIGHTS = {
        0.3626837833783620, 0.3137066458778873, 0.2223810344533745, 0.1012285362903763
    };

    double re;
    double im;

    private final Wave u = new Wave();
    private final Wave v = new Wave();

    /** ∫ u² from its value and slope at both ends, a distance d apart. */
    void square(double qr, double qi, Wave a, Wave b, double d) {
        if ((Math.abs(qr) + Math.abs(qi)) * d * d < SMALL) {
            gauss(qr, qi, a, b, qr, qi, a, b, d);
            return;
        }
        double vr = a.valueRe * a.valueRe - a.valueIm * a.valueIm;
        double vi = 2 * a.valueRe * a.valueIm;
        double er = a.slopeRe * a.slopeRe - a.slopeIm * a.slopeIm + qr * vr - qi * vi;
        double ei = 2 * a.slopeRe * a.slopeIm + qr * vi + qi * vr;
        double br = b.valueRe * b.slopeRe - b.valueIm * b.slopeIm - a.valueRe * a.slopeRe + a.valueIm * a.slopeIm;
        double bi = b.valueRe * b.slopeIm + b.valueIm * b.slopeRe - a.valueRe * a.slopeIm - a.valueIm * a.slopeRe;
        divide(er * d - br, ei * d - bi, 2 * qr, 2 * qi);
    }

    /** ∫ u v from values and slopes at both ends, a distance d apart. */
    void product(double pr, double pi, Wave ua, Wave ub, double qr, double qi, Wave va, Wave vb, double d) {
        double dr = pr - qr;
        double di = pi - qi;
        if ((Math.abs(dr) + Math.abs(di)) * d * d < SMALL) {
            gauss(pr, pi, ua, ub, qr, qi, va, vb, d);
            return;
        }
        double tr = ub.valueRe * vb.slopeRe
                - ub.valueIm * vb.slopeIm
                - ub.slopeRe * vb.valueRe
                + ub.slopeIm * vb.valueIm
                - (ua.valueRe * va.slopeRe
                        - ua.valueIm * va.slopeIm
                        - ua.slopeRe * va.valueRe
                        + ua.slopeIm * va.valueIm);
        double ti = ub.valueRe * vb.slopeIm
                + ub.valueIm * vb.slopeRe
                - ub.slopeRe * vb.valueIm
                - ub.slopeIm * vb.valueRe
                - (ua.valueRe * va.slopeIm
                        + ua.valueIm * va.slopeRe
                        - ua.slopeRe * va.valueIm
                        - ua.slopeIm * va.valueRe);
        divide(tr, ti, dr, di);
    }

    private void divide(double ar, double ai, double br, double bi) {
        double size = br * br + bi * bi;
        re = (ar * br + ai * bi) / size;
        im = (ai * br - ar * bi) / size;
    }

    private void gauss(double pr, double pi, Wave ua, Wave ub, double qr, double qi, Wave va, Wave vb, double d) {
        int panels = 1 + (int) (Math.sqrt(Math.abs(pr) + Math.abs(pi)) * d / 2);
        double half = d / panels / 2;
        double sumRe = 0;
        double sumIm = 0;
        for (int panel = 0; panel < panels; panel++) {
            double middle = (2 * panel + 1) * half;
            for (int i = 0; i < 8; i++) {
                double at = middle + half * (i < 4 ? -NODES[i] : NODES[i - 4]);
                u.inside(pr, pi, ua, ub, d, at);
                v.inside(qr, qi, va, vb, d, at);
                double weight = half * WEIGHTS[i % 4];
                sumRe += weight * (u.valueRe * v.valueRe - u.valueIm * v.valueIm);
                sumIm += weight * (u.valueRe * v.valueIm + u.valueIm * v.valueRe);
            }
        }
        re = sumRe;
        im = sumIm;
    }
}
