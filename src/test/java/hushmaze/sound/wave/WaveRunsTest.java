package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.Band;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: many frequencies at once give what each gives alone, and can be stopped; bands are means of energy. */
class WaveRunsTest {
    private static final WaveSolver SOLVER = new WaveSolver(MazeSpaces.flat(3, 0.5, 0.45, 0.025, 20_000));

    @Test
    void togetherAsAlone() {
        double[] frequencies = {2000, 63, 500, 1000, 125, 4000, 250};
        List<Double> told = new ArrayList<>();
        Thread caller = Thread.currentThread();
        List<WaveAnswer> together = SOLVER.solve(frequencies, (fraction, doing) -> {
            assertThat(Thread.currentThread()).isSameAs(caller);
            told.add(fraction);
        });
        assertThat(told).isNotEmpty().isSorted().allMatch(f -> f >= 0 && f <= 1);
        for (int i = 0; i < frequencies.length; i++) {
            assertThat(together.get(i)).isEqualTo(SOLVER.solve(frequencies[i]));
        }
        assertThat(SOLVER.solve(new double[0], Progress.NONE)).isEmpty();
    }

    @Test
    void canBeStopped() {
        double[] frequencies = new double[2000];
        Arrays.fill(frequencies, 5000);
        assertThatThrownBy(() -> SOLVER.solve(frequencies, (fraction, doing) -> {
                    if (fraction > 0) {
                        throw new Progress.Cancelled();
                    }
                }))
                .isInstanceOf(Progress.Cancelled.class);
    }

    @Test
    void oneBadFrequencyIsTheCallersError() {
        assertThatThrownBy(() -> SOLVER.solve(new double[] {100, -1}, Progress.NONE))
                .isInstanceOf(InvalidValue.class);
        WaveSpace hall = Spaces.space(List.of(Spaces.air(0, 0, 100, 100)), Spaces.low(0, 0, 1), Spaces.high(100, 0, 1));
        assertThatThrownBy(() -> new WaveSolver(hall).solve(new double[] {5000, 5000}, Progress.NONE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("unknowns");
    }

    @Test
    void bandsAreMeansOfEnergy() {
        Band band = new Band(3, -3);
        WaveBands bands = WaveBands.of(SOLVER, List.of(band, new Band(3, 0)), 5, Progress.NONE);
        double sum = 0;
        for (double frequency : WaveBands.frequencies(band, 5)) {
            assertThat(frequency).isBetween(band.lowerHz(), band.upperHz());
            sum += SOLVER.solve(frequency).transmittedPower(0) / 5;
        }
        assertThat(bands.losses().get(0)).isCloseTo(-10 * Math.log10(sum), within(1e-9));
        assertThat(bands.answers()).hasSize(10);
        double middle = WaveBands.frequencies(band, 5)[2];
        assertThat(middle).isCloseTo(band.centreHz(), within(1e-9));
    }
}
