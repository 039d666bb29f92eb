package hushmaze.sound.wave;

import java.util.Arrays;
import java.util.List;

/**
 * Degree of the functions of each cell along each axis: what the length of the cell asks for, and more near re-entrant edges.
 *
 * <p>Degree for x radians: START + RISE x + ROOT √x + SHARP / (1 + FADE d/h), d the distance to the nearest re-entrant edge, h the
 * size of the cell. By trial on lined boxes of one to three passes: of what gives the same errors up to 800 Hz this costs
 * least, a third of what the same degree in every cell between two planes costs. A higher degree next to re-entrant edges does
 * as much as small intervals there, at a fifth of the cost.
 *
 * <p>A face or an edge between cells has the lowest degree of the cells around it, so that the pressure is continuous. The
 * cells at a mouth have the same degree along each of its columns and rows.
 */
final class CellDegrees {
    private static final double START = 2.6;
    private static final double RISE = 0.6;
    private static final double ROOT = 1.4;
    /** Added for a cell at a re-entrant edge. */
    private static final double SHARP = 1.7;
    /** By how much this fades over a distance of one cell. */
    private static final double FADE = 1.5;

    /** Most pairs of a cell and an edge whose distance is looked at; with more, only edges on a cell's own planes count. */
    private static final double MOST_PAIRS = 1e8;

    private final AxisCuts[] cuts;
    private final List<WaveMesh.Cell> cells;
    private final SharpEdges edges;
    /** For each axis the degree of each cell, by its place in the grid; 0 where there is none. */
    private final byte[][] degree = new byte[3][];

    /**
     * @param blocks of the space
     * @param cuts of the three axes
     * @param cells of the space
     * @param waves along the three axes
     * @param accuracy asked for
     */
    CellDegrees(
            BlockGrid blocks,
            AxisCuts[] cuts,
            List<WaveMesh.Cell> cells,
            ShortestWaves[] waves,
            WaveAccuracy accuracy) {
        this.cuts = cuts;
        this.cells = cells;
        this.edges = blocks.edges;
        int places = cuts[0].intervals() * cuts[1].intervals() * cuts[2].intervals();
        for (int a = 0; a < 3; a++) {
            degree[a] = new byte[places];
        }
        boolean near = (double) cells.size() * edges.count() <= MOST_PAIRS;
        for (WaveMesh.Cell cell : cells) {
            set(cell.at(), near, waves, accuracy);
        }
        while (even(blocks.inlet) || even(blocks.outlet)) {
            // what one mouth raises may lie at the other
        }
    }

    private int place(int x, int y, int z) {
        return (x * cuts[1].intervals() + y) * cuts[2].intervals() + z;
    }

    /** How near a re-entrant edge that does not run along an axis is to a cell: 1 where it touches it, 0 where it is far. */
    private double nearness(int axis, int[] at, int[] block, boolean all) {
        if (!all) {
            boolean touches = at[axis] == cuts[axis].lineOf[block[axis]] && edges.on(axis, block[axis])
                    || at[axis] + 1 == cuts[axis].lineOf[block[axis] + 1] && edges.on(axis, block[axis] + 1);
            return touches ? 1 : 0;
        }
        double[] low = new double[3];
        double[] high = new double[3];
        for (int a = 0; a < 3; a++) {
            low[a] = cuts[a].line[at[a]];
            high[a] = cuts[a].line[at[a] + 1];
        }
        return 1 / (1 + FADE * edges.distance(axis, low, high) / cuts[axis].width(at[axis]));
    }

    private void set(int[] at, boolean near, ShortestWaves[] waves, WaveAccuracy accuracy) {
        int[] block = new int[3];
        for (int a = 0; a < 3; a++) {
            block[a] = cuts[a].blockInterval[at[a]];
        }
        for (int a = 0; a < 3; a++) {
            int whole = 1;
            if (!cuts[a].constant) {
                double radians = cuts[a].width(at[a]) * waves[a].along(block);
                double asked =
                        START + RISE * radians + ROOT * Math.sqrt(radians) + SHARP * nearness(a, at, block, near);
                whole = (int) Math.ceil(asked) + accuracy.extraDegree();
            }
            degree[a][place(at[0], at[1], at[2])] = (byte) Math.max(1, Math.min(IntervalBasis.MAX_DEGREE, whole));
        }
    }

    /** Makes the degrees at a mouth the same along each column and row, and those around it no lower; whether any changed. */
    private boolean even(Mouth mouth) {
        int line = cuts[mouth.normal()].lineOf[mouth.plane()];
        boolean changed = false;
        for (int axis : new int[] {mouth.u(), mouth.v()}) {
            int other = axis == mouth.u() ? mouth.v() : mouth.u();
            int[] span = cutSpan(mouth, axis);
            int[] across = cutSpan(mouth, other);
            for (int i = span[0]; i < span[1]; i++) {
                int most = 0;
                int[] at = new int[3];
                at[mouth.normal()] = mouth.inside(cuts);
                at[axis] = i;
                for (at[other] = across[0]; at[other] < across[1]; at[other]++) {
                    most = Math.max(most, of(axis, at));
                }
                for (int side = -1; side <= 0; side++) {
                    at[mouth.normal()] = line + side;
                    for (at[other] = across[0] - 1; at[other] <= across[1]; at[other]++) {
                        changed |= raise(axis, at, most);
                    }
                }
            }
        }
        return changed;
    }

    private boolean raise(int axis, int[] at, int least) {
        int now = of(axis, at);
        if (now == 0 || now >= least) {
            return false;
        }
        degree[axis][place(at[0], at[1], at[2])] = (byte) least;
        return true;
    }

    private int[] cutSpan(Mouth mouth, int axis) {
        int[] span = mouth.span()[axis];
        return new int[] {cuts[axis].lineOf[span[0]], cuts[axis].lineOf[span[1]]};
    }

    /** Degree of a cell along an axis; 0 where there is none. */
    int of(int axis, int[] at) {
        for (int a = 0; a < 3; a++) {
            if (at[a] < 0 || at[a] >= cuts[a].intervals()) {
                return 0;
            }
        }
        return degree[axis][place(at[0], at[1], at[2])];
    }

    /** Degrees of the intervals of a mouth along one of the axes across it. */
    int[] atMouth(Mouth mouth, int axis) {
        int[] at = new int[3];
        int other = axis == mouth.u() ? mouth.v() : mouth.u();
        at[mouth.normal()] = mouth.inside(cuts);
        at[other] = cutSpan(mouth, other)[0];
        int[] span = cutSpan(mouth, axis);
        int[] out = new int[span[1] - span[0]];
        for (int i = 0; i < out.length; i++) {
            at[axis] = span[0] + i;
            out[i] = of(axis, at);
        }
        return out;
    }

    /** Highest degree of a cell in each interval of an axis. */
    int[] most(int axis) {
        int[] most = new int[cuts[axis].intervals()];
        Arrays.fill(most, 1);
        for (WaveMesh.Cell cell : cells) {
            int i = cell.at()[axis];
            most[i] = Math.max(most[i], of(axis, cell.at()));
        }
        return most;
    }

    /**
     * Degrees of the functions that a cell shares with others through one of its faces, edges or corners: the lowest of the
     * cells around it.
     *
     * @param at the cell
     * @param hats one bit for each axis across which the others lie
     * @param ends one bit for each of those: whether they lie at its high end
     * @return for each axis that is not in hats; 0 for the others
     */
    int[] shared(int[] at, int hats, int ends) {
        int[] out = new int[3];
        int[] near = new int[3];
        for (int a = 0; a < 3; a++) {
            out[a] = (hats & 1 << a) == 0 ? of(a, at) : 0;
        }
        for (int side = 1; side < 8; side++) {
            if ((side & ~hats) != 0) {
                continue;
            }
            for (int a = 0; a < 3; a++) {
                int step = (ends & 1 << a) != 0 ? 1 : -1;
                near[a] = at[a] + ((side & 1 << a) != 0 ? step : 0);
            }
            for (int a = 0; a < 3; a++) {
                if ((hats & 1 << a) == 0 && of(a, near) > 0) {
                    out[a] = Math.min(out[a], of(a, near));
                }
            }
        }
        return out;
    }
}
