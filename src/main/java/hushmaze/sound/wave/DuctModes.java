package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * Modes of a duct along one axis of its mouth, projected on the functions there: ∫ ψ_n f du with ψ_0 = 1 and ψ_n = √2 cos(n
 * π (u - u0)/a).
 */
final class DuctModes {
    private static final int FEWEST = 24;
    private static final int MOST = 400;
    /** Modes go on until one is this much shorter than the finest wiggle of the functions at the mouth. */
    private static final double BEYOND = 4;

    /** Functions of the axis that reach the mouth. */
    final int[] function;
    /** An interval at the mouth in which each function is not zero. */
    final int[] interval;
    /** One row a mode, one column a function, m. */
    final double[][] integral;
    /** Of the duct, m; in the direction in which nothing changes the port's own height. */
    final double size;

    DuctModes(AxisCuts cuts, int from, int to, double height) {
        AxisGrid grid = cuts.grid;
        if (grid.isConstant()) {
            function = new int[] {0};
            interval = new int[] {0};
            integral = new double[][] {{height}};
            size = height;
            return;
        }
        int first = cuts.lineOf[from];
        int last = cuts.lineOf[to];
        size = grid.line[last] - grid.line[first];
        int[] column = new int[grid.size()];
        Arrays.fill(column, -1);
        int[] list = new int[grid.size()];
        int[] where = new int[grid.size()];
        int count = 0;
        double finest = 0;
        for (int i = first; i < last; i++) {
            finest = Math.max(finest, grid.basis[i].size() / grid.width(i));
            for (int a = 0; a < grid.basis[i].size(); a++) {
                int f = grid.function(i, a);
                if (column[f] < 0) {
                    column[f] = count;
                    where[count] = i;
                    list[count++] = f;
                }
            }
        }
        function = Arrays.copyOf(list, count);
        interval = Arrays.copyOf(where, count);
        int modes = (int) Math.max(FEWEST, Math.min(MOST, BEYOND * finest * size / Math.PI));
        integral = new double[modes][count];
        for (int n = 0; n < modes; n++) {
            for (int i = first; i < last; i++) {
                double[] part = part(grid, i, n, grid.line[first]);
                for (int a = 0; a < part.length; a++) {
                    integral[n][column[grid.function(i, a)]] += part[a];
                }
            }
        }
    }

    private double[] part(AxisGrid grid, int interval, int n, double start) {
        double h = grid.width(interval);
        double beta = n * Math.PI * h / (2 * size);
        double alpha = n * Math.PI * (grid.line[interval] + h / 2 - start) / size;
        int inner = grid.basis[interval].inner;
        double[] bessel = SphericalBessel.upTo(inner + 1, beta);
        double[] turn = {Math.cos(alpha), -Math.sin(alpha), -Math.cos(alpha), Math.sin(alpha)};
        double scale = h * (n == 0 ? 1 : Math.sqrt(2));
        // ∫ cos(α + β ξ) P_m(ξ) dξ/2 = Re(e^{jα} j^m) j_m(β)
        double[] legendre = new double[inner + 2];
        for (int m = 0; m < legendre.length; m++) {
            legendre[m] = scale * turn[m % 4] * bessel[m];
        }
        double[] integrated = new double[inner];
        for (int j = 2; j < legendre.length; j++) {
            integrated[j - 2] = (legendre[j] - legendre[j - 2]) / Math.sqrt(2.0 * (2 * j - 1));
        }
        double low = (legendre[0] - legendre[1]) / 2;
        double high = (legendre[0] + legendre[1]) / 2;
        return grid.basis[interval].fromLegendre(low, high, integrated);
    }
}
