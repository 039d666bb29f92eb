package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.MikiLiner;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property: a space that is its own mirror image gives by its halves what it gives as a whole, mode by mode; one that is not is
 * left alone.
 */
class MirrorHalfTest {
    private static final double HEIGHT = 0.3;
    private static final WaveAccuracy ACCURACY = new WaveAccuracy(-2, 0);

    /** A turn of two lined ducts, lined above and below too, its ports in the middle of the height. */
    private static WaveSpace turn(boolean inletAlongY, double shift) {
        Medium liner = new LinerMedium(new MikiLiner(12_000));
        Medium air = new AirMedium();
        double low = 0.08 + shift;
        double high = 0.22 + shift;
        List<WaveBlock> blocks = List.of(
                new WaveBlock(liner, new Cuboid(0, 0, 0, 0.5, 0.2, HEIGHT)),
                new WaveBlock(air, new Cuboid(0, 0.04, 0.05, 0.5, 0.16, HEIGHT - 0.05)),
                new WaveBlock(air, new Cuboid(0.36, 0.04, 0.05, 0.46, 0.2, HEIGHT - 0.05)),
                new WaveBlock(air, new Cuboid(0.34, 0.2, low, 0.48, 0.22, high)));
        WavePort side = new WavePort(Axis.Y, true, new Cuboid(0.34, 0.22, low, 0.48, 0.3, high));
        WavePort end = new WavePort(Axis.X, false, new Cuboid(-0.1, 0.04, 0.05, 0, 0.16, HEIGHT - 0.05));
        return new WaveSpace(Spaces.C, false, blocks, inletAlongY ? side : end, inletAlongY ? end : side);
    }

    @ParameterizedTest
    @CsvSource({"100, false", "400, true", "1000, true", "1300, false"})
    void halvesGiveWhatTheWholeGives(double frequency, boolean inletAlongY) {
        WaveSpace space = turn(inletAlongY, 0);
        Cuboid room = new Cuboid(0.1, 0.04, 0.05, 0.3, 0.16, HEIGHT - 0.05);
        WaveAnswer whole = new WaveSystem(new BlockGrid(space), Spaces.C, frequency, ACCURACY, () -> {})
                .solve(List.of(room), Long.MAX_VALUE, () -> {});
        WaveAnswer found = new WaveSolver(space, ACCURACY, List.of(room)).solve(frequency);
        assertThat(found.inletModes()).containsExactlyInAnyOrderElementsOf(whole.inletModes());
        assertThat(found.outletModes()).containsExactlyInAnyOrderElementsOf(whole.outletModes());
        for (PortMode in : whole.inletModes()) {
            for (PortMode out : whole.outletModes()) {
                assertThat(amplitude(found, in, out).absSquared())
                        .isCloseTo(amplitude(whole, in, out).absSquared(), within(2e-3));
            }
        }
        assertThat(found.transmissionLoss()).isCloseTo(whole.transmissionLoss(), within(0.05));
        assertThat(found.transmissionLossAllModes()).isCloseTo(whole.transmissionLossAllModes(), within(0.05));
        assertThat(found.meanSquare().get(0) / whole.meanSquare().get(0)).isCloseTo(1, within(2e-3));
        assertThat(found.reflectedPower(0)).isCloseTo(whole.reflectedPower(0), within(2e-3));
    }

    private static Complex amplitude(WaveAnswer answer, PortMode in, PortMode out) {
        int row = answer.inletModes().indexOf(in);
        return answer.transmitted().get(row).get(answer.outletModes().indexOf(out));
    }

    @Test
    void oddModesRunInTheTallestPort() {
        WaveAnswer answer = new WaveSolver(turn(false, 0), ACCURACY).solve(1300);
        assertThat(answer.inletModes()).anyMatch(m -> m.v() == 1);
        assertThat(answer.outletModes()).anyMatch(m -> m.u() == 1);
    }

    @Test
    void onlyMirrorImagesAreHalved() {
        assertThat(half(turn(false, 0))).isPresent();
        assertThat(half(turn(false, 0.01))).isEmpty();
        assertThat(half(Spaces.turn(0.1))).isEmpty();
        WaveSpace even = turn(false, 0);
        WaveBlock odd = new WaveBlock(new LinerMedium(new MikiLiner(30_000)), new Cuboid(0, 0, 0, 0.5, 0.2, 0.05));
        List<WaveBlock> blocks = List.of(
                even.blocks().get(0),
                odd,
                even.blocks().get(1),
                even.blocks().get(2),
                even.blocks().get(3));
        assertThat(half(new WaveSpace(Spaces.C, false, blocks, even.inlet(), even.outlet())))
                .isEmpty();
    }

    private static Optional<MirrorHalf> half(WaveSpace space) {
        return MirrorHalf.of(space, new BlockGrid(space));
    }
}
