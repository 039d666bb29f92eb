package hushmaze.drawing.axon;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** A block with blocks taken out of it, as a grid of cells that are full or empty. */
final class PartCells {
    /** Planes closer than this are one, m. */
    private static final double SAME = 1e-9;

    /** Planes between cells, across x, y and z. */
    private final double[][] planes = new double[3][];

    private final boolean[][][] full;

    /**
     * @param whole the block
     * @param removed what is taken out; may reach beyond it
     */
    PartCells(Cuboid whole, List<Cuboid> removed) {
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] = planes(whole, removed, axis);
        }
        full = new boolean[cells(Axis.X)][cells(Axis.Y)][cells(Axis.Z)];
        for (int i = 0; i < full.length; i++) {
            for (int j = 0; j < full[0].length; j++) {
                for (int k = 0; k < full[0][0].length; k++) {
                    Cuboid cell = block(i, j, k, i + 1, j + 1, k + 1);
                    full[i][j][k] = removed.stream().noneMatch(r -> holds(r, cell));
                }
            }
        }
    }

    static PartCells of(Part part) {
        return new PartCells(part.bounds(), part.taken());
    }

    private static double[] planes(Cuboid whole, List<Cuboid> removed, Axis axis) {
        List<Double> all = new ArrayList<>(List.of(whole.low(axis), whole.high(axis)));
        for (Cuboid r : removed) {
            all.add(r.low(axis));
            all.add(r.high(axis));
        }
        double[] sorted = all.stream()
                .mapToDouble(p -> Math.max(whole.low(axis), Math.min(whole.high(axis), p)))
                .sorted()
                .toArray();
        double[] distinct = new double[sorted.length];
        int n = 0;
        for (double p : sorted) {
            if (n == 0 || p - distinct[n - 1] > SAME) {
                distinct[n++] = p;
            }
        }
        return Arrays.copyOf(distinct, n);
    }

    private static boolean holds(Cuboid r, Cuboid cell) {
        return Arrays.stream(Axis.values()).allMatch(a -> r.low(a) < cell.centre(a) && cell.centre(a) < r.high(a));
    }

    private int cells(Axis axis) {
        return planes[axis.ordinal()].length - 1;
    }

    private Cuboid block(int i0, int j0, int k0, int i1, int j1, int k1) {
        return new Cuboid(planes[0][i0], planes[1][j0], planes[2][k0], planes[0][i1], planes[1][j1], planes[2][k1]);
    }

    /** Few blocks that fill what is left. */
    List<Cuboid> blocks() {
        List<Cuboid> blocks = new ArrayList<>();
        boolean[][][] taken = new boolean[full.length][full[0].length][full[0][0].length];
        for (int i = 0; i < full.length; i++) {
            for (int j = 0; j < full[0].length; j++) {
                for (int k = 0; k < full[0][0].length; k++) {
                    if (free(taken, i, j, k, i + 1, j + 1, k + 1)) {
                        blocks.add(largest(taken, i, j, k));
                    }
                }
            }
        }
        return blocks;
    }

    private Cuboid largest(boolean[][][] taken, int i, int j, int k) {
        int i1 = i + 1;
        int j1 = j + 1;
        int k1 = k + 1;
        while (k1 < cells(Axis.Z) && free(taken, i, j, k1, i1, j1, k1 + 1)) {
            k1++;
        }
        while (j1 < cells(Axis.Y) && free(taken, i, j1, k, i1, j1 + 1, k1)) {
            j1++;
        }
        while (i1 < cells(Axis.X) && free(taken, i1, j, k, i1 + 1, j1, k1)) {
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
                    if (!full[i][j][k] || taken[i][j][k]) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** Lines where faces meet at an angle, each in one piece as far as it goes. */
    List<Edge> edges() {
        List<Edge> edges = new ArrayList<>();
        for (Axis along : Axis.values()) {
            for (int p = 0; p <= cells(along.u()); p++) {
                for (int q = 0; q <= cells(along.v()); q++) {
                    edges(along, p, q, edges);
                }
            }
        }
        return edges;
    }

    private void edges(Axis along, int p, int q, List<Edge> into) {
        double[] stops = planes[along.ordinal()];
        int start = -1;
        for (int t = 0; t <= cells(along); t++) {
            boolean bends = t < cells(along) && bends(along, t, p, q);
            if (bends && start < 0) {
                start = t;
            }
            if (!bends && start >= 0) {
                into.add(new Edge(
                        along,
                        stops[start],
                        stops[t],
                        planes[along.u().ordinal()][p],
                        planes[along.v().ordinal()][q]));
                start = -1;
            }
        }
    }

    /** Of the four cells round a line: all or none full is no surface, two side by side a flat one. */
    private boolean bends(Axis along, int t, int p, int q) {
        boolean ll = full(along, t, p - 1, q - 1);
        boolean lh = full(along, t, p - 1, q);
        boolean hl = full(along, t, p, q - 1);
        boolean hh = full(along, t, p, q);
        boolean flat = ll == lh && hl == hh || ll == hl && lh == hh;
        return !flat;
    }

    private boolean full(Axis along, int t, int p, int q) {
        if (p < 0 || q < 0 || p >= cells(along.u()) || q >= cells(along.v())) {
            return false;
        }
        return switch (along) {
            case X -> full[t][p][q];
            case Y -> full[p][t][q];
            case Z -> full[p][q][t];
        };
    }
}
