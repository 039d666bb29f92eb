package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.sound.estimate.EndReflection.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of turns, area steps, mouths, plenum and expansion chamber against printed or separately computed values. */
class SingleMethodsTest {
    private static final double SOUND_SPEED = 343.2;

    /** ASHRAE square elbow table, from memory: one point inside each row, fw in kHz·in. */
    @ParameterizedTest
    @CsvSource({"1.8, 0, 0", "1.9, 1, 1", "3.7, 1, 1", "5, 5, 6", "10, 8, 11", "20, 4, 10", "31, 3, 10", "400, 3, 10"})
    void squareTurn(double fw, double unlined, double lined) {
        double width = 4 * 0.0254;
        double f = fw * 1000 / 4;
        assertThat(AshraeSquareElbow.loss(f, width, false)).isEqualTo(unlined);
        assertThat(AshraeSquareElbow.loss(f, width, true)).isEqualTo(lined);
    }

    /** The rule of a tenth, worked by hand. */
    @ParameterizedTest
    @CsvSource({"0.010, 0.1, true", "0.0099, 0.1, false", "0.025, 0.25, true", "0, 0.1, false"})
    void aTurnIsLinedFromATenthOfTheWidth(double liner, double width, boolean lined) {
        assertThat(AshraeSquareElbow.lines(liner, width)).isEqualTo(lined);
    }

    /** As read in an engineering reference on area changes: ratio 5 gives 2.5 dB (2.55 by its formula); 1 gives none. */
    @ParameterizedTest
    @CsvSource({"5, 1, 2.55", "1, 5, 2.55", "1, 1, 0"})
    void areaStep(double one, double other, double expected) {
        assertThat(AreaStep.loss(one, other)).isCloseTo(expected, within(0.0051));
    }

    /**
     * Columns: diameter, frequency, exact reflection of a piston in a baffle, the stated formula flush, and free; computed
     * apart from the program.
     */
    @ParameterizedTest
    @CsvSource({
        "0.10, 63, 21.80, 21.71, 24.80",
        "0.10, 125, 15.93, 15.85, 18.89",
        "0.10, 250, 10.21, 10.15, 13.03",
        "0.10, 500, 5.22, 5.24, 7.61",
        "0.10, 1000, 1.88, 2.00, 3.41",
        "0.15, 63, 18.31, 18.23, 21.29",
        "0.15, 125, 12.53, 12.46, 15.43",
        "0.15, 250, 7.15, 7.13, 9.77",
        "0.15, 500, 3.02, 3.10, 4.94",
        "0.15, 1000, 0.82, 1.00, 1.85",
        "0.20, 63, 15.86, 15.78, 18.82",
        "0.20, 125, 10.21, 10.15, 13.03",
        "0.20, 250, 5.22, 5.24, 7.61",
        "0.20, 500, 1.88, 2.00, 3.41",
        "0.30, 63, 12.47, 12.40, 15.37",
        "0.30, 125, 7.15, 7.13, 9.77",
        "0.30, 250, 3.02, 3.10, 4.94",
        "0.50, 63, 8.42, 8.38, 11.15",
        "0.50, 125, 3.93, 3.97, 6.08",
    })
    void endReflection(double diameter, double f, double exact, double flush, double free) {
        double area = Math.PI * diameter * diameter / 4;
        assertThat(EndReflection.loss(f, area, SOUND_SPEED, Setting.FLUSH)).isCloseTo(flush, within(0.01));
        assertThat(EndReflection.loss(f, area, SOUND_SPEED, Setting.FREE)).isCloseTo(free, within(0.01));
        assertThat(EndReflection.loss(f, area, SOUND_SPEED, Setting.FLUSH)).isCloseTo(exact, within(0.2));
    }

    /**
     * Worked example of an engineering reference: α 0.65, A 16 m², s 2 m, 45°; it prints 17.3 dB, computed with 0.30 m²,
     * while it states 0.25 m², which gives 18.11 dB by hand.
     */
    @ParameterizedTest
    @CsvSource({"0.30, 17.32", "0.25, 18.11"})
    void wellsPlenum(double outlet, double expected) {
        assertThat(WellsPlenum.transmissionLoss(outlet, 16, 2, Math.sqrt(0.5), 0.65))
                .isCloseTo(expected, within(0.0051));
    }

    /** Simple chamber, m = 16, L = 0.5 m: values computed apart from the program from the closed form. */
    @ParameterizedTest
    @CsvSource({
        "0.05, 4.072",
        "0.10, 8.490",
        "0.20, 13.606",
        "0.25, 15.152",
        "0.30, 16.290",
        "0.40, 17.667",
        "0.50, 18.096",
        "0.75, 15.152",
        "1.00, 0.000"
    })
    void expansionChamber(double klOverPi, double expected) {
        double c = 343.24;
        double f = klOverPi * c / (2 * 0.5);
        assertThat(LossyExpansionChamber.transmissionLoss(f, 16, 0.5, 0, c)).isCloseTo(expected, within(0.00051));
    }

    /** Peaks at a quarter wavelength: 20 lg[(m + 1/m) / 2] by hand. */
    @ParameterizedTest
    @CsvSource({"2, 1.94", "4, 6.55", "8, 12.18", "16, 18.10", "32, 24.09", "64, 30.11", "19.95, 20.0"})
    void expansionChamberPeaks(double m, double expected) {
        double f = SOUND_SPEED / (4 * 0.5);
        assertThat(LossyExpansionChamber.transmissionLoss(f, m, 0.5, 0, SOUND_SPEED))
                .isCloseTo(expected, within(0.02));
    }

    /** Property: without an area change a lossy chamber loses exactly what its lining takes, at any frequency. */
    @Test
    void aLossyChamberWithoutAStepIsALinedDuct() {
        for (double f = 50; f < 10000; f *= 1.7) {
            assertThat(LossyExpansionChamber.transmissionLoss(f, 1, 0.7, 12.5, SOUND_SPEED))
                    .isCloseTo(12.5, within(1e-9));
        }
    }
}
