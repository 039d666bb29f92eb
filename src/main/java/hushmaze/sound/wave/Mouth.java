package hushmaze.sound.wave;

import hushmaze.solid.Axis;
import java.util.ArrayList;
import java.util.List;

/**
 * Where a port meets the grid.
 *
 * @param port itself
 * @param normal axis of the duct
 * @param plane line of the mouth along the normal
 * @param span for each axis the cells that the mouth touches from inside, first and one past the last
 */
record Mouth(WavePort port, int normal, int plane, int[][] span) {
    List<int[]> cells() {
        List<int[]> cells = new ArrayList<>();
        for (int x = span[0][0]; x < span[0][1]; x++) {
            for (int y = span[1][0]; y < span[1][1]; y++) {
                for (int z = span[2][0]; z < span[2][1]; z++) {
                    cells.add(new int[] {x, y, z});
                }
            }
        }
        return cells;
    }

    /** Interval along the normal that lies just inside, once the axis is cut. */
    int inside(AxisCuts[] cuts) {
        int line = cuts[normal].lineOf[plane];
        return port.high() ? line - 1 : line;
    }

    /** First axis across the duct. */
    int u() {
        return Axis.values()[normal].u().ordinal();
    }

    /** Second axis across the duct. */
    int v() {
        return Axis.values()[normal].v().ordinal();
    }

    /** Whether a cell just outside the plane lies in the duct. */
    boolean ductHolds(int[] cell) {
        int outside = port.high() ? plane : plane - 1;
        return cell[normal] == outside
                && cell[u()] >= span[u()][0]
                && cell[u()] < span[u()][1]
                && cell[v()] >= span[v()][0]
                && cell[v()] < span[v()][1];
    }
}
