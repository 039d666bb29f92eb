package hushmaze.sound.wave;

import java.util.Arrays;
import java.util.Comparator;

/** Eigenvalues and vectors of a small real symmetric matrix, by Jacobi's rotations, largest eigenvalue first. */
final class SymmetricEigen {
    private static final int SWEEPS = 60;

    final double[] values;
    /** One row a vector, of length one. */
    final double[][] vectors;

    private final double[][] a;
    private final double[][] v;

    SymmetricEigen(double[][] matrix) {
        int n = matrix.length;
        a = new double[n][];
        v = new double[n][n];
        for (int i = 0; i < n; i++) {
            a[i] = matrix[i].clone();
            v[i][i] = 1;
        }
        for (int sweep = 0; sweep < SWEEPS && rotateAll(); sweep++) {}
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> -a[i][i]));
        values = new double[n];
        vectors = new double[n][n];
        for (int q = 0; q < n; q++) {
            values[q] = a[order[q]][order[q]];
            for (int j = 0; j < n; j++) {
                vectors[q][j] = v[j][order[q]];
            }
        }
    }

    private boolean rotateAll() {
        boolean rotated = false;
        for (int p = 0; p < a.length; p++) {
            for (int q = p + 1; q < a.length; q++) {
                double limit = 1e-17 * Math.sqrt(Math.abs(a[p][p] * a[q][q]));
                if (Math.abs(a[p][q]) > limit) {
                    rotate(p, q);
                    rotated = true;
                }
            }
        }
        return rotated;
    }

    private void rotate(int p, int q) {
        double theta = (a[q][q] - a[p][p]) / (2 * a[p][q]);
        double t = Math.copySign(1, theta) / (Math.abs(theta) + Math.hypot(theta, 1));
        double c = 1 / Math.hypot(t, 1);
        double s = t * c;
        for (int i = 0; i < a.length; i++) {
            double x = a[i][p];
            double y = a[i][q];
            a[i][p] = c * x - s * y;
            a[i][q] = s * x + c * y;
        }
        for (int i = 0; i < a.length; i++) {
            double x = a[p][i];
            double y = a[q][i];
            a[p][i] = c * x - s * y;
            a[q][i] = s * x + c * y;
            x = v[i][p];
            y = v[i][q];
            v[i][p] = c * x - s * y;
            v[i][q] = s * x + c * y;
        }
        a[p][q] = 0;
        a[q][p] = 0;
    }
}
