package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import java.util.List;

/**
 * Solves a sum of elements for several right sides and checks every solution. One whose residual is not small is improved
 * once; if it then is too large, the matrix is factorised again with pivoting.
 */
final class SafeSolver {
    /** Largest residual over the right side, both as root of the sum of squares. */
    static final double TOLERANCE = 1e-8;

    /** A solution with a larger residual than this is improved once. */
    private static final double IMPROVED_ABOVE = 1e-11;

    private final List<Element> elements;
    private final int unknowns;
    private final FrontalFactor factor;
    private final long mostBytes;
    private final Runnable pause;
    private BandedLu pivoted;
    private double worst;

    SafeSolver(FrontalPlan plan, List<Element> elements, int unknowns, long mostBytes, Runnable pause) {
        this.elements = elements;
        this.unknowns = unknowns;
        this.mostBytes = mostBytes;
        this.pause = pause;
        factor = new FrontalFactor(plan, elements, unknowns, pause);
    }

    /** Largest residual of all solutions so far. */
    double worst() {
        return worst;
    }

    /** Whether pivoting was needed. */
    boolean neededPivoting() {
        return pivoted != null;
    }

    /**
     * The solution for a right side, as real and imaginary part.
     *
     * @throws InvalidValue if the residual stays above the tolerance
     */
    double[][] solve(double[] rightRe, double[] rightIm) {
        double[][] x = {rightRe.clone(), rightIm.clone()};
        factor.solve(x[0], x[1]);
        double residual = improved(x, rightRe, rightIm);
        if (!(residual <= TOLERANCE)) {
            if (pivoted == null) {
                pivoted = new BandedLu(elements, unknowns, mostBytes, pause);
            }
            x = new double[][] {rightRe.clone(), rightIm.clone()};
            pivoted.solve(x[0], x[1]);
            residual = norm(left(x, rightRe, rightIm)) / norm(rightRe, rightIm);
        }
        if (!(residual <= TOLERANCE)) {
            throw new InvalidValue("residual", Double.toString(residual), "at most " + TOLERANCE, "");
        }
        worst = Math.max(worst, residual);
        return x;
    }

    private double improved(double[][] x, double[] rightRe, double[] rightIm) {
        double[][] left = left(x, rightRe, rightIm);
        double residual = norm(left) / norm(rightRe, rightIm);
        if (residual <= IMPROVED_ABOVE || Double.isNaN(residual)) {
            return residual;
        }
        factor.solve(left[0], left[1]);
        for (int i = 0; i < unknowns; i++) {
            x[0][i] += left[0][i];
            x[1][i] += left[1][i];
        }
        return norm(left(x, rightRe, rightIm)) / norm(rightRe, rightIm);
    }

    /** What is left of the right side. */
    private double[][] left(double[][] x, double[] rightRe, double[] rightIm) {
        double[][] left = {rightRe.clone(), rightIm.clone()};
        elements.forEach(e -> e.subtractProduct(x[0], x[1], left[0], left[1]));
        return left;
    }

    private static double norm(double[]... parts) {
        double sum = 0;
        for (double[] part : parts) {
            for (double value : part) {
                sum += value * value;
            }
        }
        return Math.sqrt(sum);
    }
}
