package hushmaze.sound.section;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSpace;
import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** A space cut into cells by the planes of all its blocks: what fills each, and whether the ports are where sound can pass. */
final class SpaceCells {
    /** What a port's mouth lies between. */
    enum Mouth {
        /** Filled within, nothing outside: as it must be. */
        OPEN,
        /** Somewhere along it no block begins. */
        NOT_AT_A_BLOCK,
        /** Somewhere along it the space goes on outside. */
        COVERED
    }

    private static final int NOTHING = -1;

    private final WaveSpace space;
    private final Snap snap;
    private final int[] count = new int[3];
    private final int[] content;

    private SpaceCells(WaveSpace space) {
        this.space = space;
        this.snap = Snap.of(Stream.concat(
                        space.blocks().stream().map(WaveBlock::place),
                        Stream.of(space.inlet().start(), space.outlet().start()))
                .map(this::place));
        for (Axis axis : Axis.values()) {
            count[axis.ordinal()] = snap.planes(axis).length - 1;
        }
        content = new int[count[0] * count[1] * count[2]];
        Arrays.fill(content, NOTHING);
        for (int i = 0; i < space.blocks().size(); i++) {
            paint(place(space.blocks().get(i).place()), i);
        }
    }

    /** The cells of a space. */
    static SpaceCells of(WaveSpace space) {
        return new SpaceCells(space);
    }

    /** What is on both sides of a port's mouth. */
    Mouth mouth(WavePort port) {
        int inside = port.high() ? -1 : 0;
        if (anyAt(port, inside, block -> block == NOTHING)) {
            return Mouth.NOT_AT_A_BLOCK;
        }
        return anyAt(port, -1 - inside, block -> block != NOTHING) ? Mouth.COVERED : Mouth.OPEN;
    }

    /** Whether sound can get from one port to the other. */
    boolean connected() {
        boolean[] reached = reached();
        int[] ends = mouthCells(space.outlet(), space.outlet().high() ? -1 : 0);
        return Arrays.stream(ends).anyMatch(cell -> cell >= 0 && reached[cell]);
    }

    /** Whether sound gets everywhere. */
    boolean wholeInOnePiece() {
        boolean[] reached = reached();
        for (int cell = 0; cell < content.length; cell++) {
            if (content[cell] != NOTHING && !reached[cell]) {
                return false;
            }
        }
        return true;
    }

    /** Volume of the cells whose block is one of some, m³; of a flat space the area, m². */
    double volume(Predicate<WaveBlock> of) {
        double sum = 0;
        for (int cell = 0; cell < content.length; cell++) {
            if (content[cell] != NOTHING && of.test(space.blocks().get(content[cell]))) {
                sum += size(cell, Axis.X) * size(cell, Axis.Y) * (space.flat() ? 1 : size(cell, Axis.Z));
            }
        }
        return sum;
    }

    /** The block with all of z in a flat space, where z is a weight. */
    private Cuboid place(Cuboid block) {
        return space.flat() ? block.with(Axis.Z, 0, 1) : block;
    }

    private void paint(Cuboid block, int value) {
        int x0 = snap.index(Axis.X, block.x0());
        int x1 = snap.index(Axis.X, block.x1());
        int y1 = snap.index(Axis.Y, block.y1());
        int z1 = snap.index(Axis.Z, block.z1());
        for (int z = snap.index(Axis.Z, block.z0()); z < z1; z++) {
            for (int y = snap.index(Axis.Y, block.y0()); y < y1; y++) {
                int row = (z * count[1] + y) * count[0];
                Arrays.fill(content, row + x0, row + x1, value);
            }
        }
    }

    private boolean[] reached() {
        boolean[] reached = new boolean[content.length];
        Deque<Integer> open = new ArrayDeque<>();
        for (int cell : mouthCells(space.inlet(), space.inlet().high() ? -1 : 0)) {
            visit(cell, reached, open);
        }
        while (!open.isEmpty()) {
            int cell = open.pop();
            for (Axis axis : Axis.values()) {
                visit(beside(cell, axis, -1), reached, open);
                visit(beside(cell, axis, 1), reached, open);
            }
        }
        return reached;
    }

    private void visit(int cell, boolean[] reached, Deque<Integer> open) {
        if (cell >= 0 && content[cell] != NOTHING && !reached[cell]) {
            reached[cell] = true;
            open.push(cell);
        }
    }

    private boolean anyAt(WavePort port, int offset, Predicate<Integer> is) {
        return Arrays.stream(mouthCells(port, offset)).anyMatch(cell -> is.test(cell < 0 ? NOTHING : content[cell]));
    }

    /** Cells beside a mouth: on its high side with offset 0, on its low side with -1; -1 for a cell beyond the grid. */
    private int[] mouthCells(WavePort port, int offset) {
        Cuboid start = place(port.start());
        int[] low = new int[3];
        int[] high = new int[3];
        for (Axis axis : Axis.values()) {
            low[axis.ordinal()] = snap.index(axis, start.low(axis));
            high[axis.ordinal()] = snap.index(axis, start.high(axis));
        }
        int at = snap.index(port.normal(), port.at()) + offset;
        if (at < 0 || at >= count[port.normal().ordinal()]) {
            return new int[] {-1};
        }
        low[port.normal().ordinal()] = at;
        high[port.normal().ordinal()] = at + 1;
        int[] cells = new int[(high[0] - low[0]) * (high[1] - low[1]) * (high[2] - low[2])];
        int n = 0;
        for (int z = low[2]; z < high[2]; z++) {
            for (int y = low[1]; y < high[1]; y++) {
                for (int x = low[0]; x < high[0]; x++) {
                    cells[n++] = (z * count[1] + y) * count[0] + x;
                }
            }
        }
        return cells;
    }

    private int beside(int cell, Axis axis, int step) {
        int there = index(cell, axis) + step;
        if (there < 0 || there >= count[axis.ordinal()]) {
            return -1;
        }
        return switch (axis) {
            case X -> cell + step;
            case Y -> cell + step * count[0];
            case Z -> cell + step * count[0] * count[1];
        };
    }

    private double size(int cell, Axis axis) {
        double[] planes = snap.planes(axis);
        return planes[index(cell, axis) + 1] - planes[index(cell, axis)];
    }

    private int index(int cell, Axis axis) {
        return switch (axis) {
            case X -> cell % count[0];
            case Y -> cell / count[0] % count[1];
            case Z -> cell / (count[0] * count[1]);
        };
    }
}
