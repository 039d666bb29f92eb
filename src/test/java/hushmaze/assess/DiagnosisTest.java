package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Property: patterns made for a test, each with one cause, give that cause and no other; patterns of no cause give none.
 * Predicted is a line from 2 dB at 50 Hz to 40 dB at 10 kHz with 3 dB to each side; uncertainty 2 dB.
 */
class DiagnosisTest {
    private static final double SIDE = 3;
    private static final double UNCERTAINTY = 2;

    private static double likely(double hz) {
        return 2 + 38 * Math.log10(hz / 50) / Math.log10(200);
    }

    private static List<ComparedBand> rows(BandSet set, DoubleUnaryOperator shortAtHz, double overBackground) {
        List<ComparedBand> rows = new ArrayList<>();
        for (int i = 0; i < set.size(); i++) {
            double hz = set.centreHz(i);
            double likely = likely(hz);
            double measured = likely - shortAtHz.applyAsDouble(hz);
            ComparedBand.Verdict verdict =
                    ComparedBand.verdict(measured, UNCERTAINTY, false, likely - SIDE, likely + SIDE);
            rows.add(new ComparedBand(
                    set.bands().get(i),
                    80.0,
                    80 - measured,
                    measured,
                    UNCERTAINTY,
                    overBackground,
                    false,
                    likely - SIDE,
                    likely,
                    likely + SIDE,
                    verdict));
        }
        return rows;
    }

    private static List<Finding.Kind> kinds(DoubleUnaryOperator shortAtHz, double... resonances) {
        return kinds(BandSet.THIRD_OCTAVE, shortAtHz, 20, resonances);
    }

    private static List<Finding.Kind> kinds(
            BandSet set, DoubleUnaryOperator shortAtHz, double overBackground, double... resonances) {
        return Diagnosis.of(set, rows(set, shortAtHz, overBackground), resonances).stream()
                .map(Finding::kind)
                .toList();
    }

    @Test
    void verdicts() {
        assertThat(ComparedBand.verdict(8.1, 2.0, false, 10, 20)).isEqualTo(ComparedBand.Verdict.WITHIN);
        assertThat(ComparedBand.verdict(7.9, 2.0, false, 10, 20)).isEqualTo(ComparedBand.Verdict.BELOW_LOW);
        assertThat(ComparedBand.verdict(22.1, 2.0, false, 10, 20)).isEqualTo(ComparedBand.Verdict.ABOVE_HIGH);
        assertThat(ComparedBand.verdict(10.0, 2.0, true, 10, 20)).isEqualTo(ComparedBand.Verdict.NOT_BELOW_LOW);
        assertThat(ComparedBand.verdict(5.0, 2.0, true, 10, 20)).isEqualTo(ComparedBand.Verdict.HIDDEN);
        assertThat(ComparedBand.verdict(22.1, 2.0, true, 10, 20)).isEqualTo(ComparedBand.Verdict.ABOVE_HIGH);
    }

    @Test
    void asPredicted() {
        assertThat(kinds(hz -> 0)).containsExactly(Finding.Kind.AS_PREDICTED);
        assertThat(kinds(hz -> -8)).containsExactly(Finding.Kind.MORE_THAN_PREDICTED);
    }

    @Test
    void shortAboveOneKilohertzIsAGap() {
        assertThat(kinds(hz -> hz > 900 ? 10 : 0)).containsExactly(Finding.Kind.GAP_OR_THIN_PANEL);
        assertThat(kinds(BandSet.OCTAVE, hz -> hz > 900 ? 10 : 0, 20)).containsExactly(Finding.Kind.GAP_OR_THIN_PANEL);
        // A gap holds the reduction at 18 dB while the prediction goes on rising.
        assertThat(kinds(hz -> Math.max(0, likely(hz) - 18))).containsExactly(Finding.Kind.GAP_OR_THIN_PANEL);
    }

    @Test
    void shortEverywhereIsNoFaultOfTheBox() {
        assertThat(kinds(hz -> 9)).containsExactly(Finding.Kind.SAME_EVERYWHERE);
    }

    @Test
    void dipsAtResonancesAreBarePasses() {
        // 0.6 m at 343 m/s: 286, 572, 858 Hz
        double[] resonances = Comparison.resonances(0.6, 343);
        assertThat(resonances[0]).isCloseTo(285.8, within(0.1));
        assertThat(resonances[2]).isCloseTo(857.5, within(0.1));
        DoubleUnaryOperator dips = hz -> Arrays.stream(resonances).anyMatch(f -> Math.abs(f / hz - 1) < 0.11) ? 10 : 1;
        assertThat(kinds(dips, resonances)).containsExactly(Finding.Kind.LINER_MISSING);
        // the same dips elsewhere, or in a box that was bare from the start, name no cause
        assertThat(kinds(dips, 190, 380, 1140)).containsExactly(Finding.Kind.UNEXPLAINED);
        assertThat(kinds(dips)).containsExactly(Finding.Kind.UNEXPLAINED);
    }

    @Test
    void onlyLowAndLittle() {
        DoubleUnaryOperator low = hz -> hz < 130 ? 6 : 0;
        assertThat(kinds(BandSet.THIRD_OCTAVE, low, 5)).containsExactly(Finding.Kind.LOW_NEAR_BACKGROUND);
        assertThat(kinds(BandSet.THIRD_OCTAVE, low, 15)).containsExactly(Finding.Kind.LOW_FEW_MODES);
        assertThat(kinds(hz -> hz < 130 ? 12 : 0)).containsExactly(Finding.Kind.UNEXPLAINED);
    }

    @Test
    void noCauseWithoutAPattern() {
        assertThat(kinds(hz -> Math.abs(hz - 500) < 20 ? 12 : 0)).containsExactly(Finding.Kind.SINGLE_BANDS);
        assertThat(kinds(hz -> hz > 300 && hz < 900 ? 12 : 0)).containsExactly(Finding.Kind.UNEXPLAINED);
        // short above 1 kHz by anything from 6 to 56 dB is not flat, and neither is what is left
        assertThat(kinds(hz -> hz > 900 ? 6 + 50 * Math.log10(hz / 900) / Math.log10(11) : 0))
                .containsExactly(Finding.Kind.UNEXPLAINED);
    }

    @Test
    void hiddenBandsAreTold() {
        List<ComparedBand> rows = rows(BandSet.THIRD_OCTAVE, hz -> 0, 20).stream()
                .map(r -> new ComparedBand(
                        r.band(),
                        null,
                        r.after(),
                        null,
                        null,
                        1.0,
                        true,
                        r.low(),
                        r.likely(),
                        r.high(),
                        ComparedBand.Verdict.HIDDEN))
                .toList();
        assertThat(Diagnosis.of(BandSet.THIRD_OCTAVE, rows, new double[0]).stream()
                        .map(Finding::kind))
                .containsExactly(Finding.Kind.NOTHING_TO_JUDGE, Finding.Kind.BACKGROUND_HIDES);
    }

    @Test
    void louderWithTheFanOn() {
        List<BandLevels> off = List.of(BandLevels.of(BandSet.THIRD_OCTAVE, i -> 30));
        List<BandLevels> on = List.of(BandLevels.of(BandSet.THIRD_OCTAVE, i -> i >= 4 && i <= 9 ? 36.5 : 31));
        Finding found = FanRise.of(off, on).orElseThrow();
        assertThat(found.kind()).isEqualTo(Finding.Kind.FLOW_NOISE);
        assertThat(found.from().label()).isEqualTo("125");
        assertThat(found.to().label()).isEqualTo("400");
        assertThat(found.amount()).isEqualTo(6.5);
        assertThat(FanRise.of(off, off)).isEmpty();
        assertThat(FanRise.of(off, List.of(on.get(0).inOctaves()))
                        .orElseThrow()
                        .from()
                        .label())
                .isEqualTo("125");
    }
}
