package hushmaze.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;
import java.util.TreeMap;
import java.util.TreeSet;

/**
 * A block with blocks taken out of it, divided by the planes of all their faces into cells that are there or not as a whole.
 * Cells that share a face hang together and make one body.
 */
public final class PartCells {
    /** Planes nearer than this are one, m. */
    private static final double SAME = 1e-8;

    /** Planes between cells, across x, y and z. */
    private final double[][] planes = new double[Axis.values().length][];

    /** Number of the body each cell belongs to, from 1; 0 where nothing is. */
    private final int[][][] body;

    /**
     * @param whole the block
     * @param removed what is taken out; may reach beyond it
     */
    public PartCells(Cuboid whole, List<Cuboid> removed) {
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] = planes(whole, removed, axis);
        }
        body = new int[count(Axis.X)][count(Axis.Y)][count(Axis.Z)];
        boolean[][][] there = there(removed);
        int bodies = 0;
        for (int i = 0; i < body.length; i++) {
            for (int j = 0; j < body[0].length; j++) {
                for (int k = 0; k < body[0][0].length; k++) {
                    if (there[i][j][k] && body[i][j][k] == 0) {
                        paint(there, i, j, k, ++bodies);
                    }
                }
            }
        }
    }

    /** The cells of a part: its cut-outs and grooves are taken out, holes for screws are not. */
    public static PartCells of(Part part) {
        return new PartCells(part.bounds(), part.taken());
    }

    private static double[] planes(Cuboid whole, List<Cuboid> removed, Axis axis) {
        double low = whole.low(axis);
        double high = whole.high(axis);
        TreeSet<Double> all = new TreeSet<>(List.of(low, high));
        for (Cuboid r : removed) {
            for (double place : new double[] {r.low(axis), r.high(axis)}) {
                if (low < place
                        && place < high
                        && all.subSet(place - SAME, place + SAME).isEmpty()) {
                    all.add(place);
                }
            }
        }
        return all.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private boolean[][][] there(List<Cuboid> removed) {
        boolean[][][] there = new boolean[body.length][body[0].length][body[0][0].length];
        for (int i = 0; i < body.length; i++) {
            for (int j = 0; j < body[0].length; j++) {
                for (int k = 0; k < body[0][0].length; k++) {
                    Cuboid cell = block(i, j, k, i + 1, j + 1, k + 1);
                    there[i][j][k] = removed.stream().noneMatch(r -> holds(r, cell));
                }
            }
        }
        return there;
    }

    private static boolean holds(Cuboid r, Cuboid cell) {
        return Arrays.stream(Axis.values()).allMatch(a -> r.low(a) < cell.centre(a) && cell.centre(a) < r.high(a));
    }

    /** Gives a cell and all that hangs on it a number. */
    private void paint(boolean[][][] there, int i, int j, int k, int number) {
        Deque<int[]> open = new ArrayDeque<>();
        body[i][j][k] = number;
        open.add(new int[] {i, j, k});
        while (!open.isEmpty()) {
            int[] at = open.remove();
            for (Axis axis : Axis.values()) {
                for (int step = -1; step <= 1; step += 2) {
                    int[] next = at.clone();
                    next[axis.ordinal()] += step;
                    boolean in = next[axis.ordinal()] >= 0 && next[axis.ordinal()] < count(axis);
                    if (in && there[next[0]][next[1]][next[2]] && body[next[0]][next[1]][next[2]] == 0) {
                        body[next[0]][next[1]][next[2]] = number;
                        open.add(next);
                    }
                }
            }
        }
    }

    /** How many cells there are along an axis. */
    public int count(Axis axis) {
        return planes[axis.ordinal()].length - 1;
    }

    /** Where a plane across an axis is, m; there is one more of them than cells. */
    public double plane(Axis axis, int number) {
        return planes[axis.ordinal()][number];
    }

    /**
     * Whether a cell is there; beyond the block nothing is.
     *
     * @param along an axis
     * @param t number of the cell along it
     * @param p number along {@link Axis#u} of that axis
     * @param q number along {@link Axis#v} of that axis
     */
    public boolean there(Axis along, int t, int p, int q) {
        if (outside(along, t) || outside(along.u(), p) || outside(along.v(), q)) {
            return false;
        }
        return switch (along) {
            case X -> body[t][p][q] > 0;
            case Y -> body[p][t][q] > 0;
            case Z -> body[p][q][t] > 0;
        };
    }

    private boolean outside(Axis axis, int number) {
        return number < 0 || number >= count(axis);
    }

    private Cuboid block(int i0, int j0, int k0, int i1, int j1, int k1) {
        return new Cuboid(planes[0][i0], planes[1][j0], planes[2][k0], planes[0][i1], planes[1][j1], planes[2][k1]);
    }

    /** Few blocks that fill what is left. */
    public List<Cuboid> blocks() {
        return bodies().stream().flatMap(List::stream).toList();
    }

    /** Every body as few blocks; none if nothing is left. */
    public List<List<Cuboid>> bodies() {
        TreeMap<Integer, List<Cuboid>> bodies = new TreeMap<>();
        boolean[][][] taken = new boolean[body.length][body[0].length][body[0][0].length];
        for (int i = 0; i < body.length; i++) {
            for (int j = 0; j < body[0].length; j++) {
                for (int k = 0; k < body[0][0].length; k++) {
                    if (free(taken, i, j, k, i + 1, j + 1, k + 1)) {
                        bodies.computeIfAbsent(body[i][j][k], n -> new ArrayList<>())
                                .add(largest(taken, i, j, k));
                    }
                }
            }
        }
        return List.copyOf(bodies.values());
    }

    private Cuboid largest(boolean[][][] taken, int i, int j, int k) {
        int i1 = i + 1;
        int j1 = j + 1;
        int k1 = k + 1;
        while (k1 < count(Axis.Z) && free(taken, i, j, k1, i1, j1, k1 + 1)) {
            k1++;
        }
        while (j1 < count(Axis.Y) && free(taken, i, j1, k, i1, j1 + 1, k1)) {
            j1++;
        }
        while (i1 < count(Axis.X) && free(taken, i1, j, k, i1 + 1, j1, k1)) {
            i1++;
        }
        for (int p = i; p < i1; p++) {
            for (int q = j; q < j1; q++) {
                Arrays.fill(taken[p][q], k, k1, true);
            }
        }
        return block(i, j, k, i1, j1, k1);
    }

    private boolean free(boolean[][][] taken, int i0, int j0, int k0, int i1, int j1, int k1) {
        for (int i = i0; i < i1; i++) {
            for (int j = j0; j < j1; j++) {
                for (int k = k0; k < k1; k++) {
                    if (body[i][j][k] == 0 || taken[i][j][k]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }
}
