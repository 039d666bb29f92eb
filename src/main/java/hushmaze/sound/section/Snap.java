package hushmaze.sound.section;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/** Makes faces that differ by rounding of sums lie in the same plane, to the last bit. */
final class Snap {
    private final double[][] planes = new double[Axis.values().length][];

    private Snap(List<Cuboid> blocks) {
        for (Axis axis : Axis.values()) {
            planes[axis.ordinal()] = merged(blocks.stream()
                    .flatMapToDouble(block -> DoubleStream.of(block.low(axis), block.high(axis)))
                    .sorted()
                    .toArray());
        }
    }

    /** The planes of all faces of some blocks. */
    static Snap of(Stream<Cuboid> blocks) {
        return new Snap(blocks.toList());
    }

    /** The planes across an axis, ascending. */
    double[] planes(Axis axis) {
        return planes[axis.ordinal()].clone();
    }

    /** A block with its faces in the planes. */
    Cuboid to(Cuboid block) {
        Cuboid snapped = block;
        for (Axis axis : Axis.values()) {
            snapped =
                    snapped.with(axis, at(axis, index(axis, block.low(axis))), at(axis, index(axis, block.high(axis))));
        }
        return snapped;
    }

    /** Which plane a value lies in. */
    int index(Axis axis, double value) {
        double[] all = planes[axis.ordinal()];
        int found = Arrays.binarySearch(all, value);
        if (found >= 0) {
            return found;
        }
        int above = -found - 1;
        boolean lower = above == all.length || (above > 0 && value - all[above - 1] < all[above] - value);
        return lower ? above - 1 : above;
    }

    private double at(Axis axis, int index) {
        return planes[axis.ordinal()][index];
    }

    private static double[] merged(double[] sorted) {
        double[] kept = new double[sorted.length];
        int n = 0;
        for (double value : sorted) {
            if (n == 0 || value - kept[n - 1] > Cut.SLIVER) {
                kept[n++] = value;
            }
        }
        return Arrays.copyOf(kept, n);
    }
}
