package hushmaze.sound.wave;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.PriorityQueue;

/**
 * The cells in the order of their distance from the inlet, along the way that sound can take. A space like a path is then
 * swept from one end to the other with few unknowns open at a time.
 */
final class CellOrder {
    private final AxisCuts[] cuts;
    private final BlockGrid blocks;
    private final double[] distance;
    private final int[] n = new int[3];

    CellOrder(BlockGrid blocks, AxisCuts[] cuts) {
        this.blocks = blocks;
        this.cuts = cuts;
        for (int a = 0; a < 3; a++) {
            n[a] = cuts[a].grid.intervals();
        }
        distance = new double[n[0] * n[1] * n[2]];
        Arrays.fill(distance, Double.POSITIVE_INFINITY);
        spread();
    }

    private record Reached(double distance, int cell) {}

    private void spread() {
        PriorityQueue<Reached> queue = new PriorityQueue<>(
                Comparator.comparingDouble(Reached::distance).thenComparingInt(Reached::cell));
        for (int cell = 0; cell < distance.length; cell++) {
            if (atInlet(cell)) {
                distance[cell] = 0;
                queue.add(new Reached(0, cell));
            }
        }
        while (!queue.isEmpty()) {
            Reached here = queue.remove();
            if (here.distance > distance[here.cell]) {
                continue;
            }
            for (int a = 0; a < 3; a++) {
                step(here, a, 1, queue);
                step(here, a, -1, queue);
            }
        }
    }

    private void step(Reached here, int axis, int by, PriorityQueue<Reached> queue) {
        int i = interval(here.cell, axis);
        int to = i + by;
        if (to < 0 || to >= n[axis]) {
            return;
        }
        int cell = here.cell + by * (axis == 0 ? n[1] * n[2] : axis == 1 ? n[2] : 1);
        double way = here.distance + (cuts[axis].grid.width(i) + cuts[axis].grid.width(to)) / 2;
        if (medium(cell) != BlockGrid.RIGID && way < distance[cell]) {
            distance[cell] = way;
            queue.add(new Reached(way, cell));
        }
    }

    private int interval(int cell, int axis) {
        return axis == 0 ? cell / (n[1] * n[2]) : axis == 1 ? cell / n[2] % n[1] : cell % n[2];
    }

    private int block(int cell, int axis) {
        return cuts[axis].blockInterval[interval(cell, axis)];
    }

    private int medium(int cell) {
        return blocks.medium(block(cell, 0), block(cell, 1), block(cell, 2));
    }

    private boolean atInlet(int cell) {
        Mouth inlet = blocks.inlet;
        for (int a = 0; a < 3; a++) {
            int block = block(cell, a);
            if (block < inlet.span()[a][0] || block >= inlet.span()[a][1]) {
                return false;
            }
        }
        int line = cuts[inlet.normal()].lineOf[inlet.plane()];
        int touching = inlet.port().high() ? line - 1 : line;
        return interval(cell, inlet.normal()) == touching;
    }

    /** All cells that can be reached, nearest first. */
    List<WaveMesh.Cell> cells() {
        List<Integer> order = new ArrayList<>();
        for (int cell = 0; cell < distance.length; cell++) {
            if (distance[cell] < Double.POSITIVE_INFINITY) {
                order.add(cell);
            }
        }
        order.sort(Comparator.comparingDouble(cell -> distance[cell]));
        List<WaveMesh.Cell> cells = new ArrayList<>(order.size());
        for (int cell : order) {
            double weight = blocks.height(block(cell, 0), block(cell, 1), block(cell, 2));
            cells.add(new WaveMesh.Cell(interval(cell, 0), interval(cell, 1), interval(cell, 2), medium(cell), weight));
        }
        return cells;
    }
}
