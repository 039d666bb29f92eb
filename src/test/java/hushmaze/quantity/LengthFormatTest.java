package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of printed lengths against roundings worked by hand, and <em>property</em> tests. */
class LengthFormatTest {
    private static final double INCH = 0.0254;

    /** Worked by hand; a thirty-second is 0.03125 in, half of it 0.015625. */
    @ParameterizedTest(name = "{0} in")
    @CsvSource({
        "5.5, 5 1/2",
        "5.25, 5 1/4",
        "5.125, 5 1/8",
        "5.0625, 5 1/16",
        "5.03125, 5 1/32",
        "5.09375, 5 3/32",
        "0.96875, 31/32",
        "0.98, 31/32",
        "0.985, 1",
        "5.0155, 5",
        "5.0157, 5 1/32",
        "0.01, 0",
        "0, 0",
        "12, 12",
        "97, 97",
        "-5.5, -5 1/2",
        "-0.5, -1/2",
        "-0.01, 0",
        "7.999, 8",
        "0.75, 3/4",
        "47.984375, 48",
    })
    void inches(double inches, String text) {
        assertThat(LengthFormat.bare(inches * INCH, UnitSystem.INCH)).isEqualTo(text);
        assertThat(LengthFormat.withUnit(inches * INCH, UnitSystem.INCH)).isEqualTo(text + " in");
    }

    /** Worked by hand: 25 mm is 0.984 in, 12 mm 0.472 in, 96 mm 3.78 in; eighths are 0.125 in. */
    @ParameterizedTest(name = "{0} mm, coarsely")
    @CsvSource({"25, 25, 1", "12, 12, 1/2", "70, 70, 2 3/4", "95.6, 96, 3 3/4", "94.5, 95, 3 3/4", "1, 1, 0"})
    void coarse(double mm, String metric, String inch) {
        assertThat(LengthFormat.coarse(mm / 1e3, UnitSystem.METRIC)).isEqualTo(metric);
        assertThat(LengthFormat.coarse(mm / 1e3, UnitSystem.INCH)).isEqualTo(inch);
    }

    /** Worked by hand: to a tenth of a millimetre, without a zero after the point. */
    @ParameterizedTest(name = "{0} mm")
    @CsvSource({
        "140, 140",
        "18.3, 18.3",
        "18.34, 18.3",
        "18.36, 18.4",
        "0.04, 0",
        "0.06, 0.1",
        "2440, 2440",
        "99.96, 100",
        "-18.3, -18.3",
        "-140, -140",
        "-0.04, 0",
        "-0.5, -0.5",
    })
    void millimetres(double millimetres, String text) {
        assertThat(LengthFormat.bare(millimetres / 1000, UnitSystem.METRIC)).isEqualTo(text);
        assertThat(LengthFormat.withUnit(millimetres / 1000, UnitSystem.METRIC)).isEqualTo(text + " mm");
    }

    /** Worked by hand: 100 mm are 3.93701 in, printed 3 15/16 (3.9375 in, 100.0125 mm): 0.0125 mm too long. */
    @Test
    void roundingError() {
        assertThat(LengthFormat.bare(0.1, UnitSystem.INCH)).isEqualTo("3 15/16");
        assertThat(LengthFormat.roundingError(0.1, UnitSystem.INCH)).isCloseTo(1.25e-5, within(1e-12));
        assertThat(LengthFormat.roundingError(0.01834, UnitSystem.METRIC)).isCloseTo(-4e-5, within(1e-12));
    }

    /** Worked by hand: 18.0 and 18.4 mm are both 23/32 in to the nearest 1/32, but 0.70866 and 0.72441 in. */
    @Test
    void thicknessesKeepApart() {
        assertThat(LengthFormat.bare(0.018, UnitSystem.INCH)).isEqualTo(LengthFormat.bare(0.0184, UnitSystem.INCH));
        assertThat(LengthFormat.thickness(0.018, UnitSystem.INCH)).isEqualTo("0.709 in");
        assertThat(LengthFormat.thickness(0.0184, UnitSystem.INCH)).isEqualTo("0.724 in");
        assertThat(LengthFormat.thickness(0.0184, UnitSystem.METRIC)).isEqualTo("18.4 mm");
    }

    /** Worked by hand: 117.75 mm are 148.35 thirty-seconds of 0.79375 mm; 148 of them are a length that stays as it is. */
    @Test
    void roundedOneWay() {
        assertThat(LengthFormat.roundedDown(0.11775, UnitSystem.INCH)).isCloseTo(0.117475, within(1e-12));
        assertThat(LengthFormat.roundedUp(0.11775, UnitSystem.INCH)).isCloseTo(0.11826875, within(1e-12));
        assertThat(LengthFormat.roundedDown(0.117475, UnitSystem.INCH)).isCloseTo(0.117475, within(1e-12));
        assertThat(LengthFormat.roundedUp(0.117475, UnitSystem.INCH)).isCloseTo(0.117475, within(1e-12));
        assertThat(LengthFormat.roundedUp(0.01801, UnitSystem.METRIC)).isCloseTo(0.0181, within(1e-12));
        assertThat(LengthFormat.roundedDown(0.01809, UnitSystem.METRIC)).isCloseTo(0.018, within(1e-12));
        assertThat(LengthFormat.rounded(0.01806, UnitSystem.METRIC)).isCloseTo(0.0181, within(1e-12));
    }

    /** Property: never more than half a step off, for either sign; the sign turns nothing else. */
    @Test
    void halfAStepAtMost() {
        Random random = new Random(14);
        for (int i = 0; i < 5000; i++) {
            double metres = 5 * random.nextDouble();
            assertThat(Math.abs(LengthFormat.roundingError(metres, UnitSystem.INCH)))
                    .isLessThanOrEqualTo(INCH / 64 + 1e-12);
            assertThat(Math.abs(LengthFormat.roundingError(metres, UnitSystem.METRIC)))
                    .isLessThanOrEqualTo(5e-5 + 1e-12);
            for (UnitSystem system : UnitSystem.values()) {
                String positive = LengthFormat.bare(metres, system);
                if (!positive.equals("0")) {
                    assertThat(LengthFormat.bare(-metres, system)).isEqualTo("-" + positive);
                }
            }
        }
    }

    /** Regression: exact ties print and report the same length, whatever the sign. */
    @Test
    void tiesAgreeWithTheirError() {
        for (double inches : new double[] {0.015625, -0.015625, 3.046875, -3.046875}) {
            double metres = inches * INCH;
            double printed = UnitParser.parse("x", LengthFormat.withUnit(metres, UnitSystem.INCH), Unit.MILLIMETRE);
            assertThat(LengthFormat.roundingError(metres, UnitSystem.INCH)).isCloseTo(printed - metres, within(1e-12));
        }
    }

    /** Property: the computer's own language does not change the point. */
    @Test
    void independentOfTheLocale() {
        Locale before = Locale.getDefault();
        try {
            Locale.setDefault(Locale.GERMANY);
            assertThat(LengthFormat.bare(0.0183, UnitSystem.METRIC)).isEqualTo("18.3");
        } finally {
            Locale.setDefault(before);
        }
    }
}
