package hushmaze.sound.wave;

/**
 * Planes on which re-entrant edges lie: edges with rigid ground in one of the four quarters around them, where pressure goes
 * as r^(2/3) and small intervals are needed. The thin edge between two ducts that lie side by side counts too.
 */
final class SharpEdges {
    private final BlockGrid grid;
    private final boolean[][] sharp = new boolean[3][];

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
                    }
                }
            }
        }
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
