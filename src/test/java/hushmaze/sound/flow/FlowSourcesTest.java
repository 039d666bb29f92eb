package hushmaze.sound.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.flow.ElbowNoise.Corner;
import java.util.List;
import java.util.function.BiFunction;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the noise of fittings, mouths and straight ducts against printed tables and values worked by hand;
 * properties that all sources share, over a grid.
 */
class FlowSourcesTest {
    /** Every kind of source for a velocity in m/s and an area in m². */
    private static final List<BiFunction<Double, Double, FlowSource>> KINDS = List.of(
            (v, s) -> new ElbowNoise("turn 1", v, s, 0.1, Corner.PLAIN, 1),
            (v, s) -> new ElbowNoise("turn 1", v, s, 0.1, Corner.SHARP, 2),
            (v, s) -> new ElbowNoise("turn 1", v, s, 0.1, Corner.VANES, 5),
            (v, s) -> new FittingNoise("turn 1", v, s, 2),
            (v, s) -> new GrilleNoise("room port", v, s, 1),
            (v, s) -> new StraightNoise("pass 1", v, s),
            (v, s) -> new LouderOf(
                    new ElbowNoise("turn 1", v, s, 0.1, Corner.SHARP, 2), new FittingNoise("turn 1", v, s, 3)));

    /** Level per square metre as printed in a data sheet of dampers in ducts: velocity, loss coefficient, level. */
    @ParameterizedTest
    @CsvSource({
        "2, 0.2, 11.5", "2, 1, 24.1", "2, 3.5, 33.8", "3, 0.1, 16.7", "3, 0.8, 32.9", "3, 2.5, 41.7",
        "4, 0.3, 32.8", "4, 1.5, 45.3", "5, 0.4, 40.8", "5, 3, 56.5", "6, 0.6, 48.7", "6, 2, 58.1",
        "8, 0.1, 42.3", "8, 1, 60.2", "10, 0.2, 53.5", "10, 3.5, 75.7", "12, 1, 70.7", "12, 3, 79.3",
    })
    void fittingLevels(double velocity, double zeta, double printed) {
        assertThat(new FittingNoise("", velocity, 1, zeta).perSquareMetre()).isCloseTo(printed, within(0.12));
    }

    /** Relative octave levels as printed in the same kind of data sheet, 63 Hz to 8 kHz. */
    @ParameterizedTest
    @CsvSource({
        "2, -4.5, -6.9, -10.9, -16.7, -24.1, -33.2, -43.9, -56.4",
        "3, -3.9, -5.3, -8.4, -13.1, -19.5, -27.6, -37.4, -48.9",
        "5, -4.0, -4.1, -5.9, -9.4, -14.6, -21.5, -30.0, -40.3",
        "7, -4.5, -3.9, -4.9, -7.5, -11.9, -17.9, -25.7, -35.1",
    })
    void fittingOctaves(
            double velocity,
            double f63,
            double f125,
            double f250,
            double f500,
            double f1k,
            double f2k,
            double f4k,
            double f8k) {
        FittingNoise fitting = new FittingNoise("", velocity, 1, 1);
        double[] printed = {f63, f125, f250, f500, f1k, f2k, f4k, f8k};
        double[] nominal = {63, 125, 250, 500, 1000, 2000, 4000, 8000};
        for (int i = 0; i < printed.length; i++) {
            assertThat(fitting.relative(nominal[i])).as("%s Hz", nominal[i]).isCloseTo(printed[i], within(0.11));
        }
    }

    /** The A-weighted correction of the same data sheet, which was not used in the fit: velocity, correction. */
    @ParameterizedTest
    @CsvSource({"2, -15.0", "3, -11.8", "4, -9.8", "6, -7.3", "8, -5.7", "10, -4.5", "12, -3.6"})
    void fittingAWeighted(double velocity, double printed) {
        FittingNoise fitting = new FittingNoise("", velocity, 1, 1);
        assertThat(AWeighting.total(fitting.power()) - fitting.perSquareMetre()).isCloseTo(printed, within(0.15));
    }

    /**
     * The formula of a grille has a second form in feet, from memory: 10 lg S + 30 lg ζ + 60 lg u - 31.3 with S in ft² and
     * u in ft/s. The constants of the two are independent, so one checks the other.
     */
    @ParameterizedTest
    @CsvSource({"0.02, 1.3, 1", "0.1, 4, 3", "0.5, 8, 10"})
    void grilleInFeet(double area, double velocity, double zeta) {
        double feet = 10 * Math.log10(Unit.SQUARE_FOOT.fromSi(area))
                + 30 * Math.log10(zeta)
                + 60 * Math.log10(Unit.FOOT.fromSi(velocity))
                - 31.3;
        assertThat(new GrilleNoise("", velocity, area, zeta).whole()).isCloseTo(feet, within(0.1));
    }

    /**
     * The other published level, 10 + 10 lg S + 30 lg Δp in the loudest octave, as read in an explanation of CIBSE Guide B:
     * the louder form used here lies less than 3 dB above it. Loudest at 160 u: 6.25 m/s puts it at 1 kHz.
     */
    @Test
    void grilleOctaves() {
        Spectrum power = new GrilleNoise("", 6.25, 0.05, 2).power();
        double pressure = 2 * 1.2 * 6.25 * 6.25 / 2;
        double other = 10 + 10 * Math.log10(0.05) + 30 * Math.log10(pressure);
        assertThat(power.value(4) - other).isBetween(0.0, 3.0);
        // Slopes as read: 3 dB per octave down, 5 dB up.
        assertThat(power.value(4) - power.value(3)).isCloseTo(3, within(1e-9));
        assertThat(power.value(4) - power.value(5)).isCloseTo(5, within(1e-9));
    }

    /** A low loudest octave would hide energy below 63 Hz; a middle one must show nearly all of it. */
    @Test
    void grilleOctavesAddUpToTheWhole() {
        GrilleNoise grille = new GrilleNoise("", 6.25, 0.05, 2);
        assertThat(grille.power().total()).isCloseTo(grille.whole(), within(0.2));
    }

    /** VDI 2081 by hand for 10 m/s and 1 m²: 57 dB; at 1 kHz -2 - 26 lg 3.14 = -14.92. */
    @Test
    void straightDuct() {
        assertThat(new StraightNoise("", 10, 1).power().value(4)).isCloseTo(57 - 14.92, within(0.005));
    }

    @Test
    void fasterAirIsLouderInEveryOctave() {
        for (var kind : KINDS) {
            for (double v = 0.1; v < 12; v *= 1.25) {
                Spectrum slow = kind.apply(v, 0.03).power();
                Spectrum fast = kind.apply(v * 1.25, 0.03).power();
                for (int i = 0; i < slow.size(); i++) {
                    assertThat(fast.value(i)).isGreaterThan(slow.value(i));
                }
            }
        }
    }

    @Test
    void twiceTheAreaIsThreeDecibels() {
        for (var kind : KINDS) {
            for (double s = 0.001; s < 1; s *= 3) {
                Spectrum change =
                        kind.apply(2.5, 2 * s).power().minus(kind.apply(2.5, s).power());
                for (double value : change.values()) {
                    assertThat(value).isCloseTo(3.0103, within(1e-4));
                }
            }
        }
    }

    @Test
    void airAtRestMakesNoNoiseAndNoNotice() {
        for (var kind : KINDS) {
            FlowSource still = kind.apply(0.0, 0.03);
            assertThat(still.power().total()).isEqualTo(Double.NEGATIVE_INFINITY);
            assertThat(still.notices()).isEmpty();
        }
        assertThat(new FittingNoise("", 3, 0.1, 0).power().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(new GrilleNoise("", 3, 0.1, 0).notices()).isEmpty();
    }

    /** A spectrum refuses NaN, so making one is the test. */
    @Test
    void extremesAreNeverNotANumber() {
        double[] velocities = {Double.MIN_VALUE, 1e-300, 1e-9, 0.01, 99, FlowSource.FASTEST};
        for (var kind : KINDS) {
            for (double v : velocities) {
                for (double s : new double[] {1e-6, 100}) {
                    assertThat(kind.apply(v, s).power().total()).isLessThan(200);
                    assertThat(kind.apply(v, s).notices())
                            .allMatch(n -> n.kind() == NoticeKind.FLOW_NOISE_OUTSIDE_RANGE);
                }
            }
        }
    }

    @Test
    void slowButAudibleAirIsCarriedOnWithANotice() {
        FittingNoise fitting = new FittingNoise("turn 2", 1.5, 0.1, 3);
        assertThat(fitting.notices()).hasSize(1);
        assertThat(fitting.notices().get(0).part()).isEqualTo("turn 2");
        assertThat(fitting.notices().get(0).value()).isEqualTo(1.5);
        assertThat(fitting.notices().get(0).limit()).isEqualTo(2);
        // So slow that it cannot be heard: nothing to warn of.
        assertThat(new FittingNoise("turn 2", 0.2, 0.1, 3).notices()).isEmpty();
    }
}
