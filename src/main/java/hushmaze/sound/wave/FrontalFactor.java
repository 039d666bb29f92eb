package hushmaze.sound.wave;

import java.util.List;

/**
 * L D Lᵀ of a complex symmetric matrix that is a sum of elements, without pivoting, by the multifrontal method: small dense
 * matrices, one a step of a {@link FrontalPlan}.
 *
 * <p>Real and imaginary parts lie in arrays of their own, columns one after another, so that the innermost loop runs along
 * a column and can be done several numbers at a time.
 */
final class FrontalFactor {
    /** Columns eliminated together. */
    private static final int BLOCK = 16;
    /** Steps of this size take so long that the caller's pause comes in between. */
    private static final int LARGE = 200;

    private final FrontalPlan plan;
    /** Columns of L of each step, below the diagonal; the diagonal holds 1/D. */
    private final double[][] lowerRe;

    private final double[][] lowerIm;

    /** Matrix of each open step. */
    private double[][] frontRe;

    private double[][] frontIm;

    /**
     * @param plan steps
     * @param elements by the numbers that the plan uses
     * @param unknowns how many
     * @param pause called now and then; may throw to stop the work
     */
    FrontalFactor(FrontalPlan plan, List<Element> elements, int unknowns, Runnable pause) {
        this.plan = plan;
        int count = plan.steps.size();
        lowerRe = new double[count][];
        lowerIm = new double[count][];
        frontRe = new double[count][];
        frontIm = new double[count][];
        int[] place = new int[unknowns];
        for (int s = 0; s < count; s++) {
            pause.run();
            assemble(s, elements, place);
            eliminate(s, plan.steps.get(s), pause);
        }
        frontRe = null;
        frontIm = null;
    }

    /** Adds what the children left and the step's own elements. */
    private void assemble(int s, List<Element> elements, int[] place) {
        FrontalPlan.Step step = plan.steps.get(s);
        int m = step.size();
        for (int i = 0; i < m; i++) {
            place[step.index()[i]] = i;
        }
        double[] re = new double[m * m];
        double[] im = new double[m * m];
        for (int child : step.children()) {
            addRest(child, re, im, m, place);
            frontRe[child] = null;
            frontIm[child] = null;
        }
        for (int e : step.elements()) {
            add(elements.get(e), re, im, m, place);
        }
        frontRe[s] = re;
        frontIm[s] = im;
    }

    private void addRest(int child, double[] re, double[] im, int m, int[] place) {
        FrontalPlan.Step step = plan.steps.get(child);
        int n = step.size();
        int first = step.eliminated();
        int[] to = new int[n];
        for (int i = first; i < n; i++) {
            to[i] = place[step.index()[i]];
        }
        double[] fromRe = frontRe[child];
        double[] fromIm = frontIm[child];
        for (int c = first; c < n; c++) {
            int tc = to[c];
            for (int r = c; r < n; r++) {
                int tr = to[r];
                int at = tr >= tc ? tc * m + tr : tr * m + tc;
                re[at] += fromRe[c * n + r];
                im[at] += fromIm[c * n + r];
            }
        }
    }

    private static void add(Element element, double[] re, double[] im, int m, int[] place) {
        int n = element.size();
        int[] unknown = element.unknown();
        double scale = element.scale();
        for (int c = 0; c < n; c++) {
            int tc = place[unknown[c]];
            for (int r = 0; r < n; r++) {
                int tr = place[unknown[r]];
                if (tr >= tc) {
                    re[tc * m + tr] += scale * element.re()[c * n + r];
                    im[tc * m + tr] += scale * element.im()[c * n + r];
                }
            }
        }
    }

    private void eliminate(int s, FrontalPlan.Step step, Runnable pause) {
        int m = step.size();
        int p = step.eliminated();
        double[] lr = new double[m * p];
        double[] li = new double[m * p];
        lowerRe[s] = lr;
        lowerIm[s] = li;
        double[] re = frontRe[s];
        double[] im = frontIm[s];
        double[] factorRe = new double[BLOCK];
        double[] factorIm = new double[BLOCK];
        for (int from = 0; from < p; from += BLOCK) {
            if (m > LARGE) {
                pause.run();
            }
            int to = Math.min(p, from + BLOCK);
            for (int j = from; j < to; j++) {
                update(re, im, j, from, j, m, lr, li, factorRe, factorIm);
                divide(re, im, j, m, lr, li);
            }
            for (int k = to; k < m; k++) {
                update(re, im, k, from, to, m, lr, li, factorRe, factorIm);
            }
        }
    }

    /** Takes columns from..to of L away from column k: subtracts L_ic D_c L_kc for all rows i from k down. */
    private static void update(
            double[] re,
            double[] im,
            int k,
            int from,
            int to,
            int m,
            double[] lr,
            double[] li,
            double[] fr,
            double[] fi) {
        for (int c = from; c < to; c++) {
            // D_c L_kc; the diagonal holds 1 / D_c
            double dr = lr[c * m + c];
            double di = li[c * m + c];
            double size = dr * dr + di * di;
            double xr = lr[c * m + k];
            double xi = li[c * m + k];
            fr[c - from] = (xr * dr + xi * di) / size;
            fi[c - from] = (xi * dr - xr * di) / size;
        }
        int c = from;
        for (; c + 4 <= to; c += 4) {
            int q = c - from;
            four(
                    re, im, k * m, k, m, lr, li, c * m, m, fr[q], fi[q], fr[q + 1], fi[q + 1], fr[q + 2], fi[q + 2],
                    fr[q + 3], fi[q + 3]);
        }
        for (; c < to; c++) {
            one(re, im, k * m, k, m, lr, li, c * m, fr[c - from], fi[c - from]);
        }
    }

    private static void four(
            double[] tr,
            double[] ti,
            int t,
            int first,
            int m,
            double[] lr,
            double[] li,
            int o,
            int stride,
            double a0,
            double b0,
            double a1,
            double b1,
            double a2,
            double b2,
            double a3,
            double b3) {
        int o1 = o + stride;
        int o2 = o1 + stride;
        int o3 = o2 + stride;
        for (int i = first; i < m; i++) {
            double r0 = lr[o + i];
            double i0 = li[o + i];
            double r1 = lr[o1 + i];
            double i1 = li[o1 + i];
            double r2 = lr[o2 + i];
            double i2 = li[o2 + i];
            double r3 = lr[o3 + i];
            double i3 = li[o3 + i];
            tr[t + i] -= r0 * a0 - i0 * b0 + r1 * a1 - i1 * b1 + r2 * a2 - i2 * b2 + r3 * a3 - i3 * b3;
            ti[t + i] -= r0 * b0 + i0 * a0 + r1 * b1 + i1 * a1 + r2 * b2 + i2 * a2 + r3 * b3 + i3 * a3;
        }
    }

    private static void one(
            double[] tr, double[] ti, int t, int first, int m, double[] lr, double[] li, int o, double a, double b) {
        for (int i = first; i < m; i++) {
            double r = lr[o + i];
            double s = li[o + i];
            tr[t + i] -= r * a - s * b;
            ti[t + i] -= r * b + s * a;
        }
    }

    private static void divide(double[] re, double[] im, int j, int m, double[] lr, double[] li) {
        double dr = re[j * m + j];
        double di = im[j * m + j];
        double size = dr * dr + di * di;
        double ir = dr / size;
        double ii = -di / size;
        for (int i = j + 1; i < m; i++) {
            double xr = re[j * m + i];
            double xi = im[j * m + i];
            lr[j * m + i] = xr * ir - xi * ii;
            li[j * m + i] = xr * ii + xi * ir;
        }
        lr[j * m + j] = ir;
        li[j * m + j] = ii;
    }

    /** Replaces a right side by the solution. */
    void solve(double[] bRe, double[] bIm) {
        double[] xr = new double[plan.widest];
        double[] xi = new double[plan.widest];
        for (int s = 0; s < lowerRe.length; s++) {
            forward(s, bRe, bIm, xr, xi);
        }
        for (int s = lowerRe.length - 1; s >= 0; s--) {
            backward(s, bRe, bIm, xr, xi);
        }
    }

    private void load(int[] index, double[] bRe, double[] bIm, double[] xr, double[] xi) {
        for (int i = 0; i < index.length; i++) {
            xr[i] = bRe[index[i]];
            xi[i] = bIm[index[i]];
        }
    }

    private void forward(int s, double[] bRe, double[] bIm, double[] xr, double[] xi) {
        FrontalPlan.Step step = plan.steps.get(s);
        int m = step.size();
        load(step.index(), bRe, bIm, xr, xi);
        for (int c = 0; c < step.eliminated(); c++) {
            one(xr, xi, 0, c + 1, m, lowerRe[s], lowerIm[s], c * m, xr[c], xi[c]);
        }
        for (int i = 0; i < m; i++) {
            bRe[step.index()[i]] = xr[i];
            bIm[step.index()[i]] = xi[i];
        }
    }

    private void backward(int s, double[] bRe, double[] bIm, double[] xr, double[] xi) {
        FrontalPlan.Step step = plan.steps.get(s);
        int m = step.size();
        load(step.index(), bRe, bIm, xr, xi);
        double[] lr = lowerRe[s];
        double[] li = lowerIm[s];
        for (int c = step.eliminated() - 1; c >= 0; c--) {
            int at = c * m;
            double sumRe = xr[c] * lr[at + c] - xi[c] * li[at + c];
            double sumIm = xr[c] * li[at + c] + xi[c] * lr[at + c];
            for (int i = c + 1; i < m; i++) {
                sumRe -= lr[at + i] * xr[i] - li[at + i] * xi[i];
                sumIm -= lr[at + i] * xi[i] + li[at + i] * xr[i];
            }
            xr[c] = sumRe;
            xi[c] = sumIm;
            bRe[step.index()[c]] = sumRe;
            bIm[step.index()[c]] = sumIm;
        }
    }
}
