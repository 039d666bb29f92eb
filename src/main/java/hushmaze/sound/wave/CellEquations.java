package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Matrix of a cell in the functions that it shares with its neighbours: on a face or an edge where a neighbour's degree is
 * lower, the functions of that degree.
 */
final class CellEquations {
    /**
     * A face, an edge or a corner of a cell.
     *
     * @param hats one bit for each axis across which others lie there
     * @param ends one bit for each of those: whether it is the cell's high end
     * @param degree of the functions shared there, for each axis that is not in hats; 0 for the others
     */
    record Part(int hats, int ends, int[] degree) {}

    /** The bit of the third axis. */
    private static final int Z = 4;

    /** Of the cell by itself. */
    final CellMatrix own;
    /** Shared functions and kept inner ones. */
    final int size;
    /** Row by row. */
    final double[] re;

    final double[] im;
    /**
     * Shared functions, each as three places in the axes' lists: below the hats of an axis one of them, else an inner
     * function of the degree that is shared.
     */
    final int[][] shared;

    /** Own functions in each function, and how much of each; null if they are the cell's own. */
    private final int[][] rows;

    private final double[][] shares;

    /**
     * @param own matrix
     * @param parts of its surface
     * @param onFloor whether the pressure at the cell's low end along z is zero
     */
    CellEquations(CellMatrix own, List<Part> parts, boolean onFloor) {
        this.own = own;
        if (!onFloor && sameEverywhere(own.shape, parts)) {
            size = own.size;
            re = own.re;
            im = own.im;
            shared = own.shape.shared;
            rows = null;
            shares = null;
            return;
        }
        List<int[]> functions = new ArrayList<>();
        List<int[]> from = new ArrayList<>();
        List<double[]> share = new ArrayList<>();
        for (Part part : parts) {
            if (!onFloor || (part.hats & Z) == 0 || (part.ends & Z) != 0) {
                add(part, functions, from, share);
            }
        }
        shared = functions.toArray(new int[0][]);
        for (int k = 0; k < own.kept.length; k++) {
            from.add(new int[] {own.shape.shared.length + k});
            share.add(new double[] {1});
        }
        rows = from.toArray(new int[0][]);
        shares = share.toArray(new double[0][]);
        size = rows.length;
        re = projected(own.re);
        im = projected(own.im);
    }

    /**
     * The faces, edges and corners of a cell, always in the same order.
     *
     * @param shape of the cell
     * @param degrees of all cells
     * @param at the cell
     */
    static List<Part> parts(CellShape shape, CellDegrees degrees, int[] at) {
        List<Part> parts = new ArrayList<>();
        for (int hats = 1; hats < 8; hats++) {
            if (!exists(shape, hats)) {
                continue;
            }
            for (int ends = 0; ends < 8; ends++) {
                if ((ends & ~hats) == 0) {
                    parts.add(new Part(hats, ends, degrees.shared(at, hats, ends)));
                }
            }
        }
        return parts;
    }

    private static boolean exists(CellShape shape, int hats) {
        for (int a = 0; a < 3; a++) {
            if ((hats & 1 << a) != 0 && shape.basis[a].hats == 0) {
                return false;
            }
        }
        return true;
    }

    private static boolean sameEverywhere(CellShape shape, List<Part> parts) {
        for (Part part : parts) {
            for (int a = 0; a < 3; a++) {
                if (part.degree[a] > 0 && shape.basis[a].hats > 0 && part.degree[a] != shape.basis[a].inner + 1) {
                    return false;
                }
            }
        }
        return true;
    }

    private void add(Part part, List<int[]> functions, List<int[]> from, List<double[]> share) {
        double[][][] into = new double[3][][];
        int[] first = new int[3];
        int[] count = new int[3];
        for (int a = 0; a < 3; a++) {
            IntervalBasis basis = own.shape.basis[a];
            boolean hat = (part.hats & 1 << a) != 0;
            first[a] = hat ? part.ends >> a & 1 : basis.hats;
            if (hat || basis.hats == 0) {
                into[a] = new double[][] {{1}};
            } else {
                into[a] = IntervalBasis.ofDegree(part.degree[a]).into(basis);
            }
            count[a] = into[a].length;
        }
        for (int i = 0; i < count[0]; i++) {
            for (int j = 0; j < count[1]; j++) {
                for (int k = 0; k < count[2]; k++) {
                    functions.add(new int[] {first[0] + i, first[1] + j, first[2] + k});
                    addShares(first, into[0][i], into[1][j], into[2][k], from, share);
                }
            }
        }
    }

    private void addShares(int[] first, double[] x, double[] y, double[] z, List<int[]> from, List<double[]> share) {
        int[] row = new int[x.length * y.length * z.length];
        double[] value = new double[row.length];
        int count = 0;
        for (int i = 0; i < x.length; i++) {
            for (int j = 0; j < y.length; j++) {
                for (int k = 0; k < z.length; k++) {
                    double product = x[i] * y[j] * z[k];
                    if (product != 0) {
                        row[count] = own.shape.indexOf(first[0] + i, first[1] + j, first[2] + k);
                        value[count++] = product;
                    }
                }
            }
        }
        from.add(Arrays.copyOf(row, count));
        share.add(Arrays.copyOf(value, count));
    }

    /** Cᵀ K C. */
    private double[] projected(double[] matrix) {
        int n = own.size;
        double[] half = new double[size * n];
        for (int c = 0; c < size; c++) {
            for (int s = 0; s < rows[c].length; s++) {
                double factor = shares[c][s];
                int from = rows[c][s] * n;
                for (int i = 0; i < n; i++) {
                    half[c * n + i] += factor * matrix[from + i];
                }
            }
        }
        double[] out = new double[size * size];
        for (int c = 0; c < size; c++) {
            for (int d = 0; d <= c; d++) {
                double sum = 0;
                for (int s = 0; s < rows[d].length; s++) {
                    sum += shares[d][s] * half[c * n + rows[d][s]];
                }
                out[c * size + d] = sum;
                out[d * size + c] = sum;
            }
        }
        return out;
    }

    /** Coefficients of the cell's own functions, from those of the shared ones. */
    double[] own(double[] coefficients) {
        if (rows == null) {
            return coefficients;
        }
        double[] out = new double[own.size];
        for (int c = 0; c < size; c++) {
            for (int s = 0; s < rows[c].length; s++) {
                out[rows[c][s]] += shares[c][s] * coefficients[c];
            }
        }
        return out;
    }
}
