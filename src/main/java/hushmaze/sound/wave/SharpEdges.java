package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.List;

/**
 * Planes on which re-entrant edges lie: edges with rigid ground in one of the four quarters around them, where pressure goes
 * as r^(2/3) and small intervals are needed. The thin edge between two ducts that lie side by side counts too.
 */
final class SharpEdges {
    private final BlockGrid grid;
    private final boolean[][] sharp = new boolean[3][];
    /** Each edge as its axis, its low end and its high end, m. */
    private final List<Segment> segments = new ArrayList<>();

    private record Segment(int along, double[] low, double[] high) {}

    SharpEdges(BlockGrid grid) {
        this.grid = grid;
        for (int a = 0; a < 3; a++) {
            sharp[a] = new boolean[grid.lines[a].length];
        }
        for (int along = 0; along < 3; along++) {
            find(along, (along + 1) % 3, (along + 2) % 3);
        }
    }

    private void find(int along, int a, int b) {
        if (grid.flat && along != 2) {
            return;
        }
        for (int i = 0; i < sharp[a].length; i++) {
            for (int j = 0; j < sharp[b].length; j++) {
                for (int k = 0; k < grid.cellsAlong(along); k++) {
                    if (isSharp(along, a, b, new int[] {i, j, k})) {
                        sharp[a][i] = true;
                        sharp[b][j] = true;
                        segments.add(segment(along, a, b, new int[] {i, j, k}));
                    }
                }
            }
        }
    }

    private Segment segment(int along, int a, int b, int[] at) {
        double[] low = new double[3];
        double[] high = new double[3];
        low[a] = grid.lines[a][at[0]];
        high[a] = low[a];
        low[b] = grid.lines[b][at[1]];
        high[b] = low[b];
        low[along] = grid.lines[along][at[2]];
        high[along] = grid.lines[along][at[2] + 1];
        return new Segment(along, low, high);
    }

    /** How many of them there are, edges that run on counted cell by cell. */
    int count() {
        return segments.size();
    }

    /**
     * How far the nearest edge that does not run along an axis is from a block, m; infinite if there is none.
     *
     * @param axis along which the edge must not run
     * @param low corner of the block, m
     * @param high corner of the block, m
     */
    double distance(int axis, double[] low, double[] high) {
        double least = Double.POSITIVE_INFINITY;
        for (Segment segment : segments) {
            if (segment.along == axis) {
                continue;
            }
            double sum = 0;
            for (int a = 0; a < 3; a++) {
                double gap = Math.max(0, Math.max(segment.low[a] - high[a], low[a] - segment.high[a]));
                sum += gap * gap;
            }
            least = Math.min(least, sum);
        }
        return Math.sqrt(least);
    }

    private boolean isSharp(int along, int a, int b, int[] at) {
        int open = 0;
        boolean in = false;
        boolean out = false;
        for (int q = 0; q < 4; q++) {
            int[] cell = new int[3];
            cell[a] = at[0] - q % 2;
            cell[b] = at[1] - q / 2;
            cell[along] = at[2];
            boolean inlet = grid.inlet.ductHolds(cell);
            boolean outlet = grid.outlet.ductHolds(cell);
            in |= inlet;
            out |= outlet;
            open += inlet || outlet || grid.filled(cell[0], cell[1], cell[2]) ? 1 : 0;
        }
        // two ducts side by side have a thin wall between them
        return open == 3 || in && out;
    }

    /** Whether a re-entrant edge lies on a line of an axis. */
    boolean on(int axis, int line) {
        return sharp[axis][line];
    }
}
