package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: reductions, background and uncertainty worked by hand. */
class ReductionTest {
    private static List<BandLevels> flat(double... levels) {
        return Arrays.stream(levels)
                .mapToObj(level -> BandLevels.of(BandSet.THIRD_OCTAVE, i -> level))
                .toList();
    }

    private static ReducedBand at1kHz(List<BandLevels> before, List<BandLevels> after, List<BandLevels> floor) {
        return Reduction.of(before, after, floor).rows().get(13);
    }

    @Test
    void differenceWithoutBackground() {
        Reduction reduction = Reduction.of(flat(62), flat(41), List.of());
        assertThat(reduction.rows()).allSatisfy(row -> {
            assertThat(row.reduction()).isEqualTo(21);
            assertThat(row.atLeast()).isFalse();
            assertThat(row.overBackground()).isNull();
        });
        assertThat(reduction.rows().get(0).uncertainty()).isCloseTo(5, within(1e-9));
        assertThat(reduction.rows().get(3).uncertainty()).isCloseTo(3, within(1e-9));
        assertThat(reduction.rows().get(20).uncertainty()).isCloseTo(2, within(1e-9));
    }

    @Test
    void backgroundIsTakenOffByEnergy() {
        ReducedBand row = at1kHz(flat(62), flat(41), flat(33));
        // By hand: 10 lg(10^4.1 - 10^3.3) = 40.251; before 61.995; growth of the second part 1 / (1 - 10^-0.8) = 1.188.
        assertThat(row.after()).isCloseTo(40.251, within(0.001));
        assertThat(row.before()).isCloseTo(61.9945, within(0.001));
        assertThat(row.reduction()).isCloseTo(21.744, within(0.001));
        assertThat(row.overBackground()).isEqualTo(8);
        assertThat(row.uncertainty()).isCloseTo(Math.sqrt(2) * Math.hypot(1.0013, 1.1883), within(0.001));
    }

    @Test
    void nearTheBackgroundTheReductionIsALeastOne() {
        ReducedBand row = at1kHz(flat(62), flat(35), flat(33));
        assertThat(row.atLeast()).isTrue();
        assertThat(row.after()).isEqualTo(32);
        assertThat(row.reduction()).isCloseTo(29.9945, within(0.001));
        ReducedBand quiet = at1kHz(flat(34), flat(33), flat(33));
        assertThat(quiet.reduction()).isNull();
        assertThat(quiet.before()).isNull();
    }

    @Test
    void positionsGiveTheUncertainty() {
        ReducedBand row = at1kHz(flat(60, 62, 64), flat(40, 40, 43), List.of());
        // By hand: variances 4 and 3, both over 3: 2.3333; t for two degrees of freedom 4.30; 4.30 * 1.5275 = 6.568.
        assertThat(row.uncertainty()).isCloseTo(6.568, within(0.001));
        // 10 lg((10^6 + 10^6.2 + 10^6.4) / 3) = 62.302; 10 lg((2e4 + 10^4.3) / 3) = 41.244
        assertThat(row.reduction()).isCloseTo(62.302 - 41.244, within(0.002));
        assertThat(at1kHz(flat(60, 60, 60), flat(40, 40, 40), List.of()).uncertainty())
                .isEqualTo(1);
    }

    @Test
    void octavesDecide() {
        List<BandLevels> octaves = List.of(BandLevels.of(BandSet.OCTAVE, i -> 50));
        Reduction reduction = Reduction.of(flat(60), octaves, List.of());
        assertThat(reduction.bands()).isEqualTo(BandSet.OCTAVE);
        // By hand: three thirds of 60 dB make 64.77 dB.
        assertThat(reduction.rows().get(4).reduction()).isCloseTo(14.77, within(0.002));
    }

    @Test
    void bandsThatAreMissingStayMissing() {
        boolean[] covered = new boolean[24];
        covered[13] = true;
        BandLevels one = new BandLevels(BandSet.THIRD_OCTAVE, new double[24], covered);
        Reduction reduction = Reduction.of(flat(60), List.of(one), List.of());
        assertThat(reduction.rows().get(13).reduction()).isEqualTo(60);
        assertThat(reduction.rows().get(12).reduction()).isNull();
        assertThat(reduction.rows().get(12).before()).isEqualTo(60);
    }
}
