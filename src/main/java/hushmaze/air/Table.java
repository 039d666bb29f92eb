package hushmaze.air;

/** Printed tables of one variable, read in straight lines between the rows and held at the ends. */
final class Table {
    private Table() {}

    /**
     * The value at a place.
     *
     * @param x places of the rows, rising
     * @param y values of the rows
     */
    static double held(double[] x, double[] y, double at) {
        int last = x.length - 1;
        if (at <= x[0]) {
            return y[0];
        }
        if (at >= x[last]) {
            return y[last];
        }
        int i = 1;
        while (x[i] < at) {
            i++;
        }
        return y[i - 1] + (y[i] - y[i - 1]) * (at - x[i - 1]) / (x[i] - x[i - 1]);
    }

    /** The same, in straight lines over the logarithm of the place. */
    static double heldOverLog(double[] x, double[] y, double at) {
        return held(logs(x), y, Math.log(at));
    }

    /** The same, in straight lines of the logarithm of the value over the logarithm of the place. */
    static double heldLogOverLog(double[] x, double[] y, double at) {
        return Math.exp(held(logs(x), logs(y), Math.log(at)));
    }

    private static double[] logs(double[] values) {
        double[] logs = new double[values.length];
        for (int i = 0; i < values.length; i++) {
            logs[i] = Math.log(values[i]);
        }
        return logs;
    }
}
