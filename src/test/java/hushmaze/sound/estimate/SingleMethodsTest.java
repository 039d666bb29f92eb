package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.sound.estimate.EndReflection.Setting;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of area steps, mouths and plenum against printed or separately computed values. */
class SingleMethodsTest {
    private static final double SOUND_SPEED = 343.2;

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

    /**
     * The exact plane-wave reflection of a piston in a baffle, summed here from its series: radiation impedance 1 - 2 J1(x)/x
     * + j 2 H1(x)/x, x = 2 k a; the share that goes out is 4 R / |1 + Z|². The formula is within 0.22 dB of it everywhere.
     */
    @Test
    void endReflectionAgainstThePistonsSeries() {
        for (double ka = 0.02; ka < 3; ka *= 1.2) {
            double x = 2 * ka;
            double resistance = 1 - 2 * series(x, 0) / x;
            double reactance = 2 * series(x, 0.5) / x;
            double through = 4 * resistance / ((1 + resistance) * (1 + resistance) + reactance * reactance);
            double radius = 0.1;
            double f = ka * SOUND_SPEED / (2 * Math.PI * radius);
            assertThat(EndReflection.loss(f, Math.PI * radius * radius, SOUND_SPEED, Setting.FLUSH))
                    .isCloseTo(-10 * Math.log10(through), within(0.22));
        }
    }

    /**
     * Σ (-1)^m (x/2)^(2m + 1 + 2s) / [Γ(m + 1 + s) Γ(m + 2 + s)]: the Bessel function J1 for s = 0, the Struve function H1
     * for s = 1/2.
     */
    private static double series(double x, double s) {
        // Γ(1) Γ(2) = 1; Γ(3/2) Γ(5/2) = (√π / 2)(3 √π / 4) = 3 π / 8.
        double term = s == 0 ? x / 2 : x * x / 4 / (3 * Math.PI / 8);
        double sum = 0;
        for (int m = 0; m < 60; m++) {
            sum += term;
            term *= -x * x / 4 / ((m + 1 + s) * (m + 2 + s));
        }
        return sum;
    }
}
