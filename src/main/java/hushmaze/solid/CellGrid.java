package hushmaze.solid;

import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Space cut into cells by the planes of all faces of a solid, with one number kept per cell. */
final class CellGrid {
    /** How far the grid reaches beyond the box, m. */
    private static final double MARGIN = 0.1;

    /** What a cell holds that nothing was put into. */
    static final int NOTHING = -1;

    private final double[][] planes = new double[3][];
    private final int[] count = new int[3];
    private final int[] content;
    private final double same;

    private CellGrid(Solid solid, double same) {
        this.same = same;
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] = merged(all(solid, axis).sorted().toArray(), same);
            count[axis.ordinal()] = planes[axis.ordinal()].length - 1;
        }
        content = new int[count[0] * count[1] * count[2]];
        Arrays.fill(content, NOTHING);
    }

    static CellGrid of(Solid solid, double same) {
        return new CellGrid(solid, same);
    }

    private static DoubleStream all(Solid solid, Axis axis) {
        Function<Cuboid, DoubleStream> ends = c -> DoubleStream.of(c.low(axis), c.high(axis));
        DoubleStream blocks = Stream.concat(
                        Stream.of(
                                solid.outer(),
                                solid.outer().grown(MARGIN),
                                solid.openingPort().hole(),
                                solid.roomPort().hole()),
                        Stream.concat(
                                solid.parts().map(Part::bounds),
                                solid.seals().stream().map(Seal::bounds)))
                .flatMapToDouble(ends);
        DoubleStream taken =
                solid.parts().flatMapToDouble(part -> part.taken().stream().flatMapToDouble(ends));
        return DoubleStream.concat(blocks, taken);
    }

    /** The cells a part fills: not its cut-outs, and not what its grooves have taken away. */
    int[] filledBy(Part part) {
        BitSet sunk = new BitSet();
        for (Groove groove : part.grooves()) {
            for (int cell : cells(part.space(groove))) {
                sunk.set(cell);
            }
        }
        return Arrays.stream(cells(part.bounds()))
                .filter(cell -> !inCutout(cell, part) && !sunk.get(cell))
                .toArray();
    }

    /**
     * Puts a number into what is left of the blocks of all seals, but for the ports.
     *
     * @return volume of it, m³
     */
    double seal(Solid solid, int with) {
        BitSet ports = new BitSet();
        for (PortPlace port : List.of(solid.openingPort(), solid.roomPort())) {
            for (int cell : cells(port.hole())) {
                ports.set(cell);
            }
        }
        double sealed = 0;
        for (Seal seal : solid.seals()) {
            for (int cell : cells(seal.bounds())) {
                if (at(cell) == NOTHING && !ports.get(cell)) {
                    put(cell, with);
                    sealed += volume(cell);
                }
            }
        }
        return sealed;
    }

    private static double[] merged(double[] sorted, double same) {
        double[] kept = new double[sorted.length];
        int n = 0;
        for (double value : sorted) {
            if (n == 0 || value - kept[n - 1] > same) {
                kept[n++] = value;
            }
        }
        return Arrays.copyOf(kept, n);
    }

    int size() {
        return content.length;
    }

    int at(int cell) {
        return content[cell];
    }

    void put(int cell, int value) {
        content[cell] = value;
    }

    /** A cell outside the box. */
    int outsideCell() {
        return 0;
    }

    /** All cells of a block. */
    int[] cells(Cuboid block) {
        int x0 = index(Axis.X, block.x0());
        int x1 = index(Axis.X, block.x1());
        int y0 = index(Axis.Y, block.y0());
        int y1 = index(Axis.Y, block.y1());
        int z0 = index(Axis.Z, block.z0());
        int z1 = index(Axis.Z, block.z1());
        int[] cells = new int[(x1 - x0) * (y1 - y0) * (z1 - z0)];
        int n = 0;
        for (int z = z0; z < z1; z++) {
            for (int y = y0; y < y1; y++) {
                for (int x = x0; x < x1; x++) {
                    cells[n++] = (z * count[1] + y) * count[0] + x;
                }
            }
        }
        return cells;
    }

    /** Whether a cell of a part lies in one of its cut-outs. */
    boolean inCutout(int cell, Part part) {
        if (part.cutouts().isEmpty()) {
            return false;
        }
        Axis u = part.normal().u();
        Axis v = part.normal().v();
        double uMiddle = middle(cell, u) - part.bounds().low(u);
        double vMiddle = middle(cell, v) - part.bounds().low(v);
        return part.cutouts().stream()
                .anyMatch(c -> uMiddle > c.u0() && uMiddle < c.u1() && vMiddle > c.v0() && vMiddle < c.v1());
    }

    /** The neighbour along an axis, or -1 at the rim of the grid. */
    int beside(int cell, Axis axis, int step) {
        int place = place(cell, axis) + step;
        if (place < 0 || place >= count[axis.ordinal()]) {
            return -1;
        }
        return switch (axis) {
            case X -> cell + step;
            case Y -> cell + step * count[0];
            case Z -> cell + step * count[0] * count[1];
        };
    }

    /** m³. */
    double volume(int cell) {
        double volume = 1;
        for (Axis axis : Axis.values()) {
            int place = place(cell, axis);
            volume *= planes[axis.ordinal()][place + 1] - planes[axis.ordinal()][place];
        }
        return volume;
    }

    /** Low end of a cell, m. */
    double low(int cell, Axis axis) {
        return planes[axis.ordinal()][place(cell, axis)];
    }

    /** High end of a cell, m. */
    double high(int cell, Axis axis) {
        return planes[axis.ordinal()][place(cell, axis) + 1];
    }

    private double middle(int cell, Axis axis) {
        int place = place(cell, axis);
        return (planes[axis.ordinal()][place] + planes[axis.ordinal()][place + 1]) / 2;
    }

    private int place(int cell, Axis axis) {
        return switch (axis) {
            case X -> cell % count[0];
            case Y -> cell / count[0] % count[1];
            case Z -> cell / (count[0] * count[1]);
        };
    }

    private int index(Axis axis, double value) {
        double[] all = planes[axis.ordinal()];
        int found = Arrays.binarySearch(all, value);
        int at = found >= 0 ? found : -found - 1;
        if (at > 0 && value - all[at - 1] <= same) {
            at--;
        }
        if (at >= all.length || Math.abs(all[at] - value) > same) {
            throw new IllegalStateException("no plane at " + value + " m across " + axis);
        }
        return at;
    }
}
