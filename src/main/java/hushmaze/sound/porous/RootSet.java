package hushmaze.sound.porous;

import java.util.Arrays;

/**
 * Roots of one {@link SlitEquation}, followed from frequency to frequency as a set.
 *
 * <p>Not safe for use by two threads at once.
 */
final class RootSet {
    private static final int ROUNDS = 40;
    private static final double CONVERGED = 1e-12;
    private static final double SAME = 1e-7;
    private static final int POINTS = 256;
    private static final int REPAIRS = 4;
    private static final int MOST_MISSING = 6;
    private static final int SHALLOWEST = 5;
    private static final int DEEPEST = 24;
    private static final double FINE = 0.5;

    private final SlitSection section;
    private final boolean soft;
    private final SlitEquation equation;
    private final double scale;
    private double[] re = new double[0];
    private double[] im = new double[0];
    private Complex air = new Complex(0, 0);
    private boolean whole;

    RootSet(SlitSection section, boolean soft) {
        this.section = section;
        this.soft = soft;
        this.equation = new SlitEquation(section, soft);
        double across = Math.PI / section.total();
        scale = across * across;
    }

    /** Moves the set to other media; whether every root came along. */
    boolean follow(SlitMedia media, int wanted) {
        equation.media(media);
        double shiftRe = media.airSquared().re() - air.re();
        double shiftIm = media.airSquared().im() - air.im();
        air = media.airSquared();
        if (re.length < wanted) {
            guess(media, wanted);
        } else {
            for (int i = 0; i < re.length; i++) {
                re[i] += shiftRe;
                im[i] += shiftIm;
            }
        }
        iterate();
        return whole;
    }

    int size() {
        return re.length;
    }

    Complex root(int i) {
        return new Complex(re[i], im[i]);
    }

    /** Keeps the roots nearest to ka². */
    void trim(int kept) {
        sort();
        if (re.length > kept) {
            re = Arrays.copyOf(re, kept);
            im = Arrays.copyOf(im, kept);
        }
    }

    /** Modes of the air between rigid walls and of the layers behind a soft face, those nearest to ka² first. */
    private void guess(SlitMedia media, int wanted) {
        int each = wanted + 1;
        double[][] all = new double[3 * each][];
        int n = 0;
        for (int i = 0; i < each; i++) {
            double across = (soft ? i + 0.5 : i) * Math.PI / section.width();
            all[n++] = new double[] {air.re() - across * across + 0.1 * across, air.im() - 0.2 * (1 + across)};
            for (int side = 0; side < 2; side++) {
                double depth = side == 0 ? section.low() : section.high();
                SlitMedia.Layer layer = side == 0 ? media.low() : media.high();
                if (depth > 0) {
                    double up = (i + (side == 0 ? 0.5 : 0.48)) * Math.PI / depth;
                    all[n++] = new double[] {
                        layer.squared().re() - up * up, layer.squared().im() - 0.1 * side * up
                    };
                }
            }
        }
        double[][] found = Arrays.copyOf(all, n);
        Arrays.sort(found, (a, b) -> Double.compare(distance(a[0], a[1]), distance(b[0], b[1])));
        re = new double[wanted];
        im = new double[wanted];
        for (int i = 0; i < wanted; i++) {
            re[i] = found[i][0];
            im[i] = found[i][1];
        }
    }

    private double distance(double zr, double zi) {
        return Complex.size(zr - air.re(), zi - air.im());
    }

    /** Ehrlich and Aberth: z -= N / (1 - N Σ 1/(z - zj)), N = F/F'. */
    private void iterate() {
        int n = re.length;
        boolean[] done = new boolean[n];
        boolean all = false;
        for (int round = 0; round < ROUNDS && !all; round++) {
            all = true;
            for (int i = 0; i < n; i++) {
                if (!done[i]) {
                    done[i] = step(i);
                    all &= done[i];
                }
            }
        }
        whole = all;
        keep(done);
    }

    private boolean step(int i) {
        equation.at(re[i], im[i]);
        double below = equation.slopeRe * equation.slopeRe + equation.slopeIm * equation.slopeIm;
        if (equation.re == 0 && equation.im == 0) {
            return true;
        }
        if (below == 0 || !Double.isFinite(below)) {
            return false;
        }
        double nr = (equation.re * equation.slopeRe + equation.im * equation.slopeIm) / below;
        double ni = (equation.im * equation.slopeRe - equation.re * equation.slopeIm) / below;
        double sr = 0;
        double si = 0;
        for (int j = 0; j < re.length; j++) {
            double dr = re[i] - re[j];
            double di = im[i] - im[j];
            double size = dr * dr + di * di;
            if (size > 0) {
                sr += dr / size;
                si -= di / size;
            }
        }
        double dr = 1 - (nr * sr - ni * si);
        double di = -(nr * si + ni * sr);
        double size = dr * dr + di * di;
        if (size < 1e-20) {
            dr = 1;
            di = 0;
            size = 1;
        }
        double stepRe = (nr * dr + ni * di) / size;
        double stepIm = (ni * dr - nr * di) / size;
        // No further in one step than the scale of the set.
        double length = Complex.size(stepRe, stepIm);
        double here = Complex.size(re[i], im[i]) + scale;
        double held = length > 0.5 * here ? 0.5 * here / length : 1;
        re[i] -= held * stepRe;
        im[i] -= held * stepIm;
        return length < CONVERGED * here;
    }

    private void keep(boolean[] good) {
        int n = 0;
        for (int i = 0; i < good.length; i++) {
            boolean twin = false;
            for (int j = 0; j < n; j++) {
                twin |= Complex.size(re[i] - re[j], im[i] - im[j]) < SAME * scale;
            }
            if (good[i] && !twin && Double.isFinite(re[i] + im[i])) {
                re[n] = re[i];
                im[n++] = im[i];
            }
        }
        whole &= n == re.length;
        re = Arrays.copyOf(re, n);
        im = Arrays.copyOf(im, n);
    }

    private void sort() {
        Integer[] order = new Integer[re.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(distance(re[a], im[a]), distance(re[b], im[b])));
        double[] oldRe = re.clone();
        double[] oldIm = im.clone();
        for (int i = 0; i < order.length; i++) {
            re[i] = oldRe[order[i]];
            im[i] = oldIm[order[i]];
        }
    }

    /** Counts the roots in circles about ka² up to one that holds those wanted, and adds missing ones. */
    void complete(int wanted) {
        for (int repair = 0; repair < REPAIRS; repair++) {
            sort();
            int known = re.length;
            double radius = known == 0 ? 4 * scale : 1.02 * distance(re[known - 1], im[known - 1]) + 0.1 * scale;
            double[] sums = clearSums(radius);
            if (sums == null) {
                return;
            }
            int missing = (int) Math.round(sums[0]) - within(sums[1]);
            if (missing <= 0 && known >= wanted) {
                return;
            }
            if (missing > 0) {
                add(sums, Math.min(missing, MOST_MISSING));
            } else {
                // None is missing in this circle, but fewer are known than wanted: look further out.
                double[] wider = clearSums(1.5 * radius + scale);
                if (wider == null) {
                    return;
                }
                int more = (int) Math.round(wider[0]) - known;
                if (more > 0) {
                    add(wider, Math.min(more, MOST_MISSING));
                }
            }
            iterate();
        }
    }

    private int within(double radius) {
        int n = 0;
        for (int i = 0; i < re.length; i++) {
            n += distance(re[i], im[i]) < radius ? 1 : 0;
        }
        return n;
    }

    /** Power sums over the roots in the first circle, from a radius on, that is clear of roots; null if there is none. */
    private double[] clearSums(double radius) {
        for (double wider = 1; wider < 2; wider *= 1.03) {
            double[] sums = powerSums(wider * radius, MOST_MISSING, POINTS);
            if (Math.abs(sums[0] - Math.round(sums[0])) < 0.01) {
                return sums;
            }
        }
        return null;
    }

    /**
     * Their number, the radius, and Σ ((z - ka²)/radius)^p for p from 1 as real and imaginary part, over the roots in a
     * circle: the trapezoidal rule for the integral of F'/F.
     */
    private double[] powerSums(double radius, int powers, int points) {
        double[] sums = new double[2 + 2 * powers];
        for (int i = 0; i < points; i++) {
            double angle = 2 * Math.PI * (i + 0.5) / points;
            double cr = Math.cos(angle);
            double ci = Math.sin(angle);
            equation.at(air.re() + radius * cr, air.im() + radius * ci);
            double below = equation.re * equation.re + equation.im * equation.im;
            double gr = radius * (equation.slopeRe * equation.re + equation.slopeIm * equation.im) / below;
            double gi = radius * (equation.slopeIm * equation.re - equation.slopeRe * equation.im) / below;
            double wr = cr;
            double wi = ci;
            sums[0] += (gr * wr - gi * wi) / points;
            for (int p = 1; p <= powers; p++) {
                double next = wr * cr - wi * ci;
                wi = wr * ci + wi * cr;
                wr = next;
                sums[2 * p] += (gr * wr - gi * wi) / points;
                sums[2 * p + 1] += (gr * wi + gi * wr) / points;
            }
        }
        sums[1] = radius;
        return sums;
    }

    /** Adds the roots whose power sums are missing. */
    private void add(double[] sums, int missing) {
        double radius = sums[1];
        Complex[] left = new Complex[missing + 1];
        for (int p = 1; p <= missing; p++) {
            left[p] = new Complex(sums[2 * p], sums[2 * p + 1]);
        }
        for (int i = 0; i < re.length; i++) {
            if (distance(re[i], im[i]) < radius) {
                Complex t = new Complex(re[i] - air.re(), im[i] - air.im()).times(1 / radius);
                Complex power = t;
                for (int p = 1; p <= missing; p++) {
                    left[p] = left[p].plus(power.times(-1));
                    power = power.times(t);
                }
            }
        }
        Complex[] found = PowerSums.roots(left);
        int n = re.length;
        re = Arrays.copyOf(re, n + missing);
        im = Arrays.copyOf(im, n + missing);
        for (int i = 0; i < missing; i++) {
            re[n + i] = air.re() + radius * found[i].re();
            im[n + i] = air.im() + radius * found[i].im();
        }
    }

    /**
     * How many modes decay by less than a rate, found without the known ones: the turns of F along the edge of the strip
     * |Im kx| &lt; rate.
     *
     * @param rate 1/m
     * @param furthest real part of kx beyond which there is no mode, 1/m
     */
    int countSlower(double rate, double furthest) {
        // F is even in kx, so half the rectangle's edge holds half of the 2n roots' turns.
        double turns = turns(-furthest, -rate, furthest, -rate) + turns(furthest, -rate, furthest, rate);
        return (int) Math.round(turns / (2 * Math.PI));
    }

    /** Change of the argument of F(kx²) along a straight line of kx. */
    private double turns(double fromRe, double fromIm, double toRe, double toIm) {
        return turn(fromRe, fromIm, direction(fromRe, fromIm), toRe, toIm, direction(toRe, toIm), 0);
    }

    /** Halves the line until the argument can be seen to turn by little on each part. */
    private double turn(double ar, double ai, double[] a, double br, double bi, double[] b, int depth) {
        double length = Complex.size(br - ar, bi - ai);
        boolean fine = depth >= SHALLOWEST && Math.max(a[2], b[2]) * length < FINE;
        if (fine || depth == DEEPEST) {
            return Math.atan2(a[0] * b[1] - a[1] * b[0], a[0] * b[0] + a[1] * b[1]);
        }
        double mr = (ar + br) / 2;
        double mi = (ai + bi) / 2;
        double[] m = direction(mr, mi);
        return turn(ar, ai, a, mr, mi, m, depth + 1) + turn(mr, mi, m, br, bi, b, depth + 1);
    }

    /** Real and imaginary part of F over its size, and the size of its logarithmic derivative by kx. */
    private double[] direction(double kr, double ki) {
        equation.at(kr * kr - ki * ki, 2 * kr * ki);
        double size = Complex.size(equation.re, equation.im);
        double rise = 2 * Complex.size(kr, ki) * Complex.size(equation.slopeRe, equation.slopeIm) / size;
        return new double[] {equation.re / size, equation.im / size, rise};
    }
}
