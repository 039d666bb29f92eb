package hushmaze.sound.wave;

import java.util.concurrent.ConcurrentHashMap;

/**
 * Functions along one axis on the unit interval: two hats (1 - x and x) and inner functions that vanish at both ends.
 *
 * <p>The inner functions of degree p span the polynomials up to p that vanish at the ends. They are the eigenfunctions of
 * ∫u'v' = λ ∫uv in that span, scaled to ∫u² = 1, so that mass and stiffness are diagonal among them; the stiffness
 * between hats and inner functions is zero. A block's inner unknowns are therefore uncoupled, and condensing them costs
 * next to nothing.
 *
 * <p>{@link #CONSTANT} is the one function of an axis along which nothing changes: no hats, one inner function, λ = 0.
 */
final class IntervalBasis {
    /** Highest degree; above it the eigenvalues lose digits. */
    static final int MAX_DEGREE = 40;

    /** The one function of an axis along which nothing changes. */
    static final IntervalBasis CONSTANT = new IntervalBasis();

    private static final ConcurrentHashMap<Integer, IntervalBasis> KNOWN = new ConcurrentHashMap<>();

    /** Number of hats: two, or none. */
    final int hats;
    /** Number of inner functions. */
    final int inner;
    /** λ of each inner function on the unit interval. */
    final double[] eigenvalue;
    /** ∫ hat · inner on the unit interval, for each hat. */
    final double[][] hatInner;
    /** Inner functions over integrated Legendre polynomials, one row a function. */
    private final double[][] shape;

    private IntervalBasis() {
        hats = 0;
        inner = 1;
        eigenvalue = new double[] {0};
        hatInner = new double[0][];
        shape = null;
    }

    private IntervalBasis(int degree) {
        hats = 2;
        inner = degree - 1;
        eigenvalue = new double[inner];
        hatInner = new double[2][inner];
        SymmetricEigen eigen = new SymmetricEigen(legendreMass(inner));
        shape = new double[inner][inner];
        for (int q = 0; q < inner; q++) {
            // stiffness of the integrated Legendre polynomials is 2 on the unit interval, so λ = 2 / θ
            double theta = eigen.values[q];
            eigenvalue[q] = 2 / theta;
            for (int j = 0; j < inner; j++) {
                shape[q][j] = eigen.vectors[q][j] / Math.sqrt(theta);
            }
            double even = inner > 0 ? -shape[q][0] / (2 * Math.sqrt(6)) : 0;
            double odd = inner > 1 ? shape[q][1] / (6 * Math.sqrt(10)) : 0;
            hatInner[0][q] = even + odd;
            hatInner[1][q] = even - odd;
        }
    }

    /** The functions of a degree from 1 to {@value #MAX_DEGREE}. */
    static IntervalBasis ofDegree(int degree) {
        return KNOWN.computeIfAbsent(degree, IntervalBasis::new);
    }

    /** Mass of the integrated Legendre polynomials 2, 3, ... on the unit interval. */
    private static double[][] legendreMass(int size) {
        double[][] mass = new double[size][size];
        for (int a = 0; a < size; a++) {
            mass[a][a] = legendreMass(a, a);
            if (a + 2 < size) {
                mass[a][a + 2] = legendreMass(a, a + 2);
                mass[a + 2][a] = mass[a][a + 2];
            }
        }
        return mass;
    }

    /** Mass of two of them, by their numbers from zero; b is a or a + 2, all others are zero. */
    private static double legendreMass(int a, int b) {
        int j = a + 2;
        return a == b
                ? (1.0 / (2 * j + 1) + 1.0 / (2 * j - 3)) / (2 * (2 * j - 1))
                : -1.0 / (2 * j + 1) / (2 * Math.sqrt((2.0 * j - 1) * (2 * j + 3)));
    }

    /**
     * The inner functions over those of a higher degree: a row for each of them.
     *
     * @param finer of the same degree or a higher one
     */
    double[][] into(IntervalBasis finer) {
        double[][] out = new double[inner][finer.inner];
        if (finer == this) {
            for (int i = 0; i < inner; i++) {
                out[i][i] = 1;
            }
            return out;
        }
        for (int i = 0; i < inner; i++) {
            // coefficients over the integrated Legendre polynomials, times their masses
            double[] by = new double[finer.inner];
            for (int j = 0; j < inner; j++) {
                by[j] += shape[i][j] * legendreMass(j, j);
                if (j >= 2) {
                    by[j - 2] += shape[i][j] * legendreMass(j - 2, j);
                }
                if (j + 2 < finer.inner) {
                    by[j + 2] += shape[i][j] * legendreMass(j, j + 2);
                }
            }
            for (int q = 0; q < finer.inner; q++) {
                for (int j = 0; j < finer.inner; j++) {
                    out[i][q] += by[j] * finer.shape[q][j];
                }
            }
        }
        return out;
    }

    /** Number of functions. */
    int size() {
        return hats + inner;
    }

    /** ∫uv of two functions on the unit interval; hats first. */
    double mass(int a, int b) {
        if (a >= hats && b >= hats) {
            return a == b ? 1 : 0;
        }
        if (a < hats && b < hats) {
            return a == b ? 1.0 / 3 : 1.0 / 6;
        }
        return a < hats ? hatInner[a][b - hats] : hatInner[b][a - hats];
    }

    /** ∫u'v' of two functions on the unit interval; hats first. */
    double stiffness(int a, int b) {
        if (a < hats && b < hats) {
            return a == b ? 1 : -1;
        }
        return a == b ? eigenvalue[a - hats] : 0;
    }

    /** Values of all functions at x from 0 to 1; hats first. */
    double[] values(double x) {
        if (hats == 0) {
            return new double[] {1};
        }
        return fromLegendre(1 - x, x, integrated(inner, 2 * x - 1));
    }

    /**
     * Any linear functional of all functions, from its values on the hats and on the integrated Legendre polynomials
     * (P_j - P_{j-2}) / sqrt(2(2j-1)), j = 2, 3, ...
     */
    double[] fromLegendre(double low, double high, double[] integrated) {
        double[] out = new double[size()];
        out[0] = low;
        out[1] = high;
        for (int q = 0; q < inner; q++) {
            double sum = 0;
            for (int j = 0; j < inner; j++) {
                sum += shape[q][j] * integrated[j];
            }
            out[2 + q] = sum;
        }
        return out;
    }

    private static double[] integrated(int count, double xi) {
        double[] out = new double[count];
        double before = 1;
        double here = xi;
        for (int j = 2; j < count + 2; j++) {
            double next = ((2 * j - 1) * xi * here - (j - 1) * before) / j;
            out[j - 2] = (next - before) / Math.sqrt(2.0 * (2 * j - 1));
            before = here;
            here = next;
        }
        return out;
    }
}
