package hushmaze.sound.wave;

import java.util.Arrays;

/**
 * Modes of a duct along one axis of its mouth, projected on the functions there: ∫ ψ_n f du with ψ_0 = 1 and ψ_n = √2 cos(n
 * π (u - u0)/a); with no pressure at the low end ψ_n = √2 cos((n + 1/2) π (u1 - u)/a).
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
    /** Wavenumber of each mode along the axis, 1/m. */
    final double[] across;
    /** One row a mode, one column a function, m. */
    final double[][] integral;

    private final boolean soft;
    /** Of the duct, m; in the direction in which nothing changes the port's own height. */
    final double size;

    /**
     * @param cuts of the axis
     * @param grid of the axis
     * @param span lines of the block grid between which the mouth lies
     * @param degrees of the intervals between them
     * @param height of the duct where nothing changes along the axis, m
     * @param soft whether there is no pressure at the low end
     */
    DuctModes(AxisCuts cuts, AxisGrid grid, int[] span, int[] degrees, double height, boolean soft) {
        this.soft = soft;
        if (grid.isConstant()) {
            function = new int[] {0};
            interval = new int[] {0};
            integral = new double[][] {{height}};
            across = new double[1];
            size = height;
            return;
        }
        int first = cuts.lineOf[span[0]];
        int last = cuts.lineOf[span[1]];
        size = grid.line[last] - grid.line[first];
        int[] column = new int[grid.size()];
        Arrays.fill(column, -1);
        int[] list = new int[grid.size()];
        int[] where = new int[grid.size()];
        int count = 0;
        double finest = 0;
        for (int i = first; i < last; i++) {
            int functions = grid.basis(degrees[i - first]).size();
            finest = Math.max(finest, functions / grid.width(i));
            for (int a = 0; a < functions; a++) {
                int f = grid.function(i, a);
                boolean zero = soft && i == first && a == 0;
                if (column[f] < 0 && !zero) {
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
        across = new double[modes];
        for (int n = 0; n < modes; n++) {
            across[n] = (soft ? n + 0.5 : n) * Math.PI / size;
            for (int i = first; i < last; i++) {
                double[] part = part(grid, grid.basis(degrees[i - first]), i, n, grid.line[soft ? last : first]);
                for (int a = 0; a < part.length; a++) {
                    int at = column[grid.function(i, a)];
                    if (at >= 0) {
                        integral[n][at] += part[a];
                    }
                }
            }
        }
    }

    private double[] part(AxisGrid grid, IntervalBasis basis, int interval, int n, double start) {
        double h = grid.width(interval);
        double beta = across[n] * h / 2;
        double alpha = across[n] * (grid.line[interval] + h / 2 - start);
        int inner = basis.inner;
        double[] bessel = SphericalBessel.upTo(inner + 1, beta);
        double[] turn = {Math.cos(alpha), -Math.sin(alpha), -Math.cos(alpha), Math.sin(alpha)};
        double scale = h * (n == 0 && !soft ? 1 : Math.sqrt(2));
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
        return basis.fromLegendre(low, high, integrated);
    }
}
