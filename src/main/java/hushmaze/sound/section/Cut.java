package hushmaze.sound.section;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.List;

/** What is left of a block when others are cut out of it, as blocks that do not overlap. */
final class Cut {
    /** Slivers thinner than this are rounding of sums, m. */
    static final double SLIVER = 1e-9;

    private Cut() {}

    /** A block less some others. */
    static List<Cuboid> without(Cuboid block, List<Cuboid> taken) {
        List<Cuboid> left = List.of(block);
        for (Cuboid hole : taken) {
            List<Cuboid> next = new ArrayList<>();
            left.forEach(piece -> without(piece, hole, next));
            left = next;
        }
        return left;
    }

    /** Adds what one hole leaves of a block: a slab on each side along x, then y, then z. */
    private static void without(Cuboid block, Cuboid hole, List<Cuboid> left) {
        for (Axis axis : Axis.values()) {
            if (hole.low(axis) >= block.high(axis) - SLIVER || hole.high(axis) <= block.low(axis) + SLIVER) {
                left.add(block);
                return;
            }
        }
        Cuboid rest = block;
        for (Axis axis : Axis.values()) {
            double low = hole.low(axis);
            double high = hole.high(axis);
            if (low > rest.low(axis) + SLIVER) {
                left.add(rest.with(axis, rest.low(axis), low));
                rest = rest.with(axis, low, rest.high(axis));
            }
            if (high < rest.high(axis) - SLIVER) {
                left.add(rest.with(axis, high, rest.high(axis)));
                rest = rest.with(axis, rest.low(axis), high);
            }
        }
    }
}
