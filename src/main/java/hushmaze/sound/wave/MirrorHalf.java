package hushmaze.sound.wave;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

/**
 * The upper half of a space that is its own mirror image along z. Any sound in the space is the sum of an even part, for which
 * the plane in the middle is as good as rigid, and an odd part, for which the pressure on it is zero; neither becomes the other.
 * The plane wave is even. Both halves together give all that the whole gives, at a third of its cost or so.
 */
final class MirrorHalf {
    /** Places that differ by less are mirror images of one another, m. */
    private static final double SAME = 1e-6;

    /** The half with a rigid plane in the middle. */
    final BlockGrid even;
    /** The half with no pressure on that plane. */
    final BlockGrid odd;
    /** From this frequency on odd modes run in a port, Hz. */
    private final double oddFrom;

    private final int inletNormal;
    private final int outletNormal;

    private MirrorHalf(WaveSpace half, double oddFrom) {
        even = new BlockGrid(half);
        odd = even.withSoftFloor();
        this.oddFrom = oddFrom;
        inletNormal = half.inlet().normal().ordinal();
        outletNormal = half.outlet().normal().ordinal();
    }

    /**
     * The half of a space; nothing if it is flat, or not its own mirror image.
     *
     * @param whole the space
     * @param grid of the space
     */
    static Optional<MirrorHalf> of(WaveSpace whole, BlockGrid grid) {
        if (whole.flat() || whole.inlet().normal() == Axis.Z || whole.outlet().normal() == Axis.Z) {
            return Optional.empty();
        }
        double[] lines = grid.lines[2];
        double middle = (lines[0] + lines[lines.length - 1]) / 2;
        if (!isEven(grid, middle) || !isEven(whole.inlet(), middle) || !isEven(whole.outlet(), middle)) {
            return Optional.empty();
        }
        List<WaveBlock> upper = whole.blocks().stream()
                .filter(block -> block.place().z1() > middle + SAME)
                .map(block -> new WaveBlock(block.medium(), upper(block.place(), middle)))
                .toList();
        WaveSpace half = new WaveSpace(
                whole.soundSpeed(), false, upper, upper(whole.inlet(), middle), upper(whole.outlet(), middle));
        double height = Math.max(
                whole.inlet().start().size(Axis.Z), whole.outlet().start().size(Axis.Z));
        return Optional.of(new MirrorHalf(half, whole.soundSpeed() / (2 * height)));
    }

    private static boolean isEven(BlockGrid grid, double middle) {
        double[] lines = grid.lines[2];
        int cells = grid.cellsAlong(2);
        for (int i = 0; i <= cells; i++) {
            if (Math.abs(lines[i] + lines[cells - i] - 2 * middle) > SAME) {
                return false;
            }
        }
        for (int x = 0; x < grid.cellsAlong(0); x++) {
            for (int y = 0; y < grid.cellsAlong(1); y++) {
                for (int z = 0; 2 * z < cells; z++) {
                    if (grid.medium(x, y, z) != grid.medium(x, y, cells - 1 - z)) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    private static boolean isEven(WavePort port, double middle) {
        return Math.abs(port.start().z0() + port.start().z1() - 2 * middle) <= SAME;
    }

    private static Cuboid upper(Cuboid block, double middle) {
        return block.with(Axis.Z, Math.max(block.z0(), middle), block.z1());
    }

    private static WavePort upper(WavePort port, double middle) {
        return new WavePort(port.normal(), port.high(), upper(port.start(), middle));
    }

    /** Whether odd modes run in a port, so that the odd part is wanted. */
    boolean needsOdd(double frequency) {
        return frequency >= oddFrom;
    }

    /** The answer of the whole, from that of the even part alone. */
    WaveAnswer joined(WaveAnswer even) {
        return new WaveAnswer(
                even.frequency(),
                modes(even.inletModes(), inletNormal, 0),
                modes(even.outletModes(), outletNormal, 0),
                even.reflected(),
                even.transmitted(),
                even.areaRatio(),
                even.meanSquare(),
                even.residual(),
                even.unknowns());
    }

    /** The answer of the whole, from those of both parts: even modes first. */
    WaveAnswer joined(WaveAnswer evenAnswer, WaveAnswer oddAnswer) {
        WaveAnswer first = joined(evenAnswer);
        return new WaveAnswer(
                first.frequency(),
                both(first.inletModes(), modes(oddAnswer.inletModes(), inletNormal, 1)),
                both(first.outletModes(), modes(oddAnswer.outletModes(), outletNormal, 1)),
                blocks(first.reflected(), oddAnswer.reflected(), first.inletModes(), oddAnswer.inletModes()),
                blocks(first.transmitted(), oddAnswer.transmitted(), first.outletModes(), oddAnswer.outletModes()),
                first.areaRatio(),
                first.meanSquare(),
                Math.max(first.residual(), oddAnswer.residual()),
                first.unknowns() + oddAnswer.unknowns());
    }

    /** Modes of a half duct, numbered as those of the whole one. */
    private static List<PortMode> modes(List<PortMode> half, int normal, int rest) {
        boolean first = Axis.values()[normal].u() == Axis.Z;
        return half.stream()
                .map(m -> new PortMode(
                        first ? 2 * m.u() + rest : m.u(), first ? m.v() : 2 * m.v() + rest, m.wavenumber()))
                .toList();
    }

    private static <T> List<T> both(List<T> first, List<T> second) {
        List<T> all = new ArrayList<>(first);
        all.addAll(second);
        return all;
    }

    /** Amplitudes of all modes that leave, for each that comes in: none of the other kind. */
    private static List<List<Complex>> blocks(
            List<List<Complex>> even, List<List<Complex>> odd, List<PortMode> evenModes, List<PortMode> oddModes) {
        List<List<Complex>> all = new ArrayList<>();
        even.forEach(amplitudes -> all.add(both(amplitudes, none(oddModes.size()))));
        odd.forEach(amplitudes -> all.add(both(none(evenModes.size()), amplitudes)));
        return all;
    }

    private static List<Complex> none(int count) {
        return Collections.nCopies(count, new Complex(0, 0));
    }
}
