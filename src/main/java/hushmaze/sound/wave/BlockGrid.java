package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Deque;
import java.util.List;

/**
 * A space cut by the planes of all faces of its blocks and ports: each cell between them is one medium, or rigid. In a flat
 * space there is one layer of cells, and each has a height as its weight.
 */
final class BlockGrid {
    /** No medium: rigid. */
    static final int RIGID = -1;
    /** Planes closer than this are one, m. */
    static final double SAME = 1e-7;

    private static final Axis[] AXES = Axis.values();

    final boolean flat;
    /** Whether the pressure on the lowest plane along z is zero; else that plane is rigid. */
    final boolean softFloor;
    /** Planes across each axis, ascending, m. */
    final double[][] lines;
    /** Different media; a cell's medium is a place in this list. */
    final List<Medium> media;

    /** Re-entrant edges. */
    final SharpEdges edges;

    final Mouth inlet;
    final Mouth outlet;
    private final WaveSpace space;
    private final int[] medium;
    private final double[] height;
    private final boolean[] reached;

    BlockGrid(WaveSpace space) {
        this(space, false);
    }

    private BlockGrid(WaveSpace space, boolean softFloor) {
        this.space = space;
        this.softFloor = softFloor;
        flat = space.flat();
        List<WaveBlock> blocks = new ArrayList<>(space.blocks());
        WavePort in = requirePort("inlet", space.inlet(), space);
        WavePort out = requirePort("outlet", space.outlet(), space);
        lines = new double[3][];
        for (Axis axis : AXES) {
            lines[axis.ordinal()] = flat && axis == Axis.Z ? new double[] {0, 1} : lines(axis, blocks, in, out);
        }
        int cells = cellsAlong(0) * cellsAlong(1) * cellsAlong(2);
        medium = new int[cells];
        height = new double[cells];
        media = new ArrayList<>();
        Arrays.fill(medium, RIGID);
        blocks.forEach(this::fill);
        inlet = mouth("inlet", in);
        outlet = mouth("outlet", out);
        reached = reached();
        requireWayThrough();
        edges = new SharpEdges(this);
    }

    /** The same with no pressure on the lowest plane along z, not for a flat space. */
    BlockGrid withSoftFloor() {
        return new BlockGrid(space, true);
    }

    private static WavePort requirePort(String field, WavePort port, WaveSpace space) {
        if (space.flat() && port.normal() == Axis.Z) {
            throw new InvalidValue(
                    field + ".normal", "Z", "X or Y in a flat space, whose pressure does not change along Z", "");
        }
        return port;
    }

    private static double[] lines(Axis axis, List<WaveBlock> blocks, WavePort in, WavePort out) {
        List<Double> all = new ArrayList<>();
        for (WaveBlock block : blocks) {
            all.add(block.place().low(axis));
            all.add(block.place().high(axis));
        }
        for (WavePort port : List.of(in, out)) {
            if (port.normal() == axis) {
                all.add(port.at());
            } else {
                all.add(port.start().low(axis));
                all.add(port.start().high(axis));
            }
        }
        double[] sorted = all.stream().mapToDouble(x -> x).sorted().toArray();
        double[] kept = new double[sorted.length];
        int count = 0;
        for (double x : sorted) {
            InvalidValue.within("blocks." + axis.name().charAt(0), x, -1e3, 1e3, Unit.METRE);
            if (count == 0 || x - kept[count - 1] > SAME) {
                kept[count++] = x;
            }
        }
        return Arrays.copyOf(kept, count);
    }

    private void fill(WaveBlock block) {
        int known = media.indexOf(block.medium());
        if (known < 0) {
            known = media.size();
            media.add(block.medium());
        }
        int[][] span = span(block.place());
        for (int x = span[0][0]; x < span[0][1]; x++) {
            for (int y = span[1][0]; y < span[1][1]; y++) {
                for (int z = span[2][0]; z < span[2][1]; z++) {
                    medium[cell(x, y, z)] = known;
                    height[cell(x, y, z)] = flat ? block.place().size(Axis.Z) : 1;
                }
            }
        }
    }

    private int[][] span(Cuboid place) {
        int[][] span = new int[3][2];
        for (Axis axis : AXES) {
            int a = axis.ordinal();
            boolean constant = flat && axis == Axis.Z;
            span[a][0] = constant ? 0 : lineAt(a, place.low(axis));
            span[a][1] = constant ? 1 : lineAt(a, place.high(axis));
        }
        return span;
    }

    private int lineAt(int axis, double place) {
        int best = 0;
        for (int i = 1; i < lines[axis].length; i++) {
            if (Math.abs(lines[axis][i] - place) < Math.abs(lines[axis][best] - place)) {
                best = i;
            }
        }
        return best;
    }

    private Mouth mouth(String field, WavePort port) {
        int normal = port.normal().ordinal();
        int plane = lineAt(normal, port.at());
        int[][] span = span(port.start());
        int inside = port.high() ? plane - 1 : plane;
        int outside = port.high() ? plane : plane - 1;
        span[normal] = new int[] {inside, inside + 1};
        Mouth mouth = new Mouth(port, normal, plane, span);
        int cells = 0;
        int filled = 0;
        for (int[] at : mouth.cells()) {
            cells++;
            filled += filled(at[0], at[1], at[2]) ? 1 : 0;
            int[] beyond = at.clone();
            beyond[normal] = outside;
            if (filled(beyond[0], beyond[1], beyond[2])) {
                throw new InvalidValue(field, "a duct that runs through a block", "a duct outside all blocks", "");
            }
        }
        if (filled < cells) {
            throw new InvalidValue(
                    field,
                    filled == 0 ? "a mouth that touches no block" : "a mouth that is partly against a rigid face",
                    "a mouth that is wholly against blocks",
                    "");
        }
        return mouth;
    }

    /** Filled cells that sound from the inlet comes to. */
    private boolean[] reached() {
        boolean[] seen = new boolean[medium.length];
        Deque<int[]> open = new ArrayDeque<>(inlet.cells());
        for (int[] at : open) {
            seen[cell(at[0], at[1], at[2])] = true;
        }
        while (!open.isEmpty()) {
            int[] at = open.remove();
            for (int a = 0; a < 3; a++) {
                for (int step = -1; step <= 1; step += 2) {
                    int[] next = at.clone();
                    next[a] += step;
                    if (filled(next[0], next[1], next[2]) && !seen[cell(next[0], next[1], next[2])]) {
                        seen[cell(next[0], next[1], next[2])] = true;
                        open.add(next);
                    }
                }
            }
        }
        return seen;
    }

    private void requireWayThrough() {
        for (int[] at : outlet.cells()) {
            if (!reached(at[0], at[1], at[2])) {
                throw new InvalidValue("outlet", "no way from the inlet to it", "reached by air or liner", "");
            }
        }
    }

    int cellsAlong(int axis) {
        return lines[axis].length - 1;
    }

    private int cell(int x, int y, int z) {
        return (x * cellsAlong(1) + y) * cellsAlong(2) + z;
    }

    private boolean inside(int x, int y, int z) {
        return x >= 0 && y >= 0 && z >= 0 && x < cellsAlong(0) && y < cellsAlong(1) && z < cellsAlong(2);
    }

    /** Place of a cell's medium in the list, or {@link #RIGID}; rigid outside the grid. */
    int medium(int x, int y, int z) {
        return inside(x, y, z) ? medium[cell(x, y, z)] : RIGID;
    }

    boolean filled(int x, int y, int z) {
        return medium(x, y, z) != RIGID;
    }

    /** Whether a cell is filled and sound from the inlet comes to it. */
    boolean reached(int x, int y, int z) {
        return inside(x, y, z) && reached[cell(x, y, z)];
    }

    /** Weight of a filled cell: its height in a flat space, m; 1 otherwise. */
    double height(int x, int y, int z) {
        return height[cell(x, y, z)];
    }
}
