package hushmaze.assess;

import java.util.function.DoubleUnaryOperator;

/**
 * Pressure a path takes over its flow, worked out at fixed flows and read between them in straight lines of both logarithms:
 * within 0.5 % of the path itself, for charts.
 */
final class ResistanceTable {
    private static final double LOWEST = 1e-5;
    private static final double HIGHEST = 20;
    private static final int POINTS = 101;

    private final double[][] logs = new double[Edge.values().length][POINTS];

    ResistanceTable(DrivenPath path) {
        for (int i = 0; i < POINTS; i++) {
            var losses = path.losses(LOWEST * Math.exp(i * step()));
            for (Edge edge : Edge.values()) {
                logs[edge.ordinal()][i] = Math.log(edge.of(losses));
            }
        }
    }

    private static double step() {
        return Math.log(HIGHEST / LOWEST) / (POINTS - 1);
    }

    /** Pa over m³/s; straight down to nothing below the first flow, carried on beyond the last. */
    DoubleUnaryOperator at(Edge edge) {
        double[] table = logs[edge.ordinal()];
        return flow -> {
            if (flow <= LOWEST) {
                return flow / LOWEST * Math.exp(table[0]);
            }
            double at = Math.log(flow / LOWEST) / step();
            int i = (int) Math.min(POINTS - 2, Math.floor(at));
            return Math.exp(table[i] + (at - i) * (table[i + 1] - table[i]));
        };
    }
}
