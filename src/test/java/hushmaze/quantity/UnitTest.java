package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

/** <em>Validation</em> of units against their definitions, and <em>property</em> tests of the round trip. */
class UnitTest {
    /** Definitions: inch 25.4 mm, pound 0.45359237 kg, conventional inch of water 249.08891 Pa, minute 60 s, t/°F = 1.8 t/°C + 32. */
    @ParameterizedTest(name = "{1} {0}")
    @CsvSource({
        "MILLIMETRE, 1, 0.001",
        "CENTIMETRE, 1, 0.01",
        "INCH, 1, 0.0254",
        "FOOT, 1, 0.3048",
        "SQUARE_FOOT, 1, 0.09290304",
        "SQUARE_CENTIMETRE, 1, 0.0001",
        "CUBIC_FOOT, 1, 0.028316846592",
        "LITRE_PER_SECOND, 1, 0.001",
        "CUBIC_METRE_PER_HOUR, 3600, 1",
        "CUBIC_FOOT_PER_MINUTE, 60, 0.028316846592",
        "FOOT_PER_MINUTE, 500, 2.54",
        "GIGAPASCAL, 3.5, 3.5e9",
        "INCH_OF_WATER, 1, 249.08891",
        "POUND, 1, 0.45359237",
        "PARTS_PER_MILLION, 420, 0.00042",
        "CELSIUS, 20, 20",
        "FAHRENHEIT, 68, 20",
        "FAHRENHEIT, 212, 100",
        "NUMBER, 7, 7",
    })
    void definitions(Unit unit, double value, double si) {
        assertThat(unit.toSi(value)).isCloseTo(si, within(1e-14 * Math.max(1, si)));
        assertThat(unit.fromSi(si)).isCloseTo(value, within(1e-12 * value));
    }

    /**
     * Property: a number in SI that is written as a decimal in a power-of-ten unit and read again is the same number to the
     * last bit; random doubles near one and of everyday size.
     */
    @ParameterizedTest
    @EnumSource(
            value = Unit.class,
            names = {
                "METRE",
                "MILLIMETRE",
                "CENTIMETRE",
                "SQUARE_CENTIMETRE",
                "LITRE_PER_SECOND",
                "GIGAPASCAL",
                "PARTS_PER_MILLION",
                "CELSIUS",
                "NUMBER"
            })
    void wayThroughAFileIsExact(Unit unit) {
        Random random = new Random(15);
        for (int i = 0; i < 40_000; i++) {
            double si = i % 2 == 0 ? 10 * random.nextDouble() - 5 : everyday(random);
            BigDecimal read = new BigDecimal(unit.decimalFromSi(si).toString());
            assertThat(unit.toSi(read)).as("%s %s", si, unit).isEqualTo(si);
            assertThat(unit.toSi(unit.fromSi(si))).isCloseTo(si, within(2 * Math.ulp(si)));
        }
        assertThat(unit.toSi(unit.decimalFromSi(0))).isZero();
    }

    /** Property: numbers of up to 15 digits return to the last bit as doubles too. */
    @ParameterizedTest
    @EnumSource(
            value = Unit.class,
            names = {"MILLIMETRE", "SQUARE_CENTIMETRE", "LITRE_PER_SECOND", "GIGAPASCAL", "PARTS_PER_MILLION"})
    void fifteenDigitsAreExact(Unit unit) {
        Random random = new Random(17);
        for (int i = 0; i < 20_000; i++) {
            double si =
                    new BigDecimal(everyday(random)).round(new MathContext(15)).doubleValue();
            assertThat(unit.toSi(unit.fromSi(si))).as("%s %s", si, unit).isEqualTo(si);
        }
    }

    /** Property: typed decimals stay short: 18.3 mm is 0.0183 m and 18.3 mm again. */
    @Test
    void typedDecimalsStayShort() {
        assertThat(Unit.MILLIMETRE.toSi(18.3)).isEqualTo(0.0183);
        for (int tenths = 0; tenths < 50_000; tenths++) {
            double typed = tenths / 10.0;
            assertThat(Unit.MILLIMETRE.fromSi(Unit.MILLIMETRE.toSi(typed))).isEqualTo(typed);
        }
    }

    /** Property: other units return within rounding. */
    @ParameterizedTest
    @EnumSource(Unit.class)
    void roundTripWithinRounding(Unit unit) {
        Random random = new Random(16);
        // zero degrees of the one are 32 of the other: that much is rounded with each value
        double zero = unit == Unit.FAHRENHEIT ? 32 : 0;
        for (int i = 0; i < 2000; i++) {
            double value = everyday(random);
            double back = unit.fromSi(unit.toSi(value));
            assertThat(back).isCloseTo(value, within(1e-15 * 4 * (Math.abs(value) + zero)));
        }
        assertThat(unit.toSi(zero)).isZero();
        assertThat(unit.toSi(Double.NaN)).isNaN();
        assertThat(unit.fromSi(Double.POSITIVE_INFINITY)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(unit.toSi(Double.NEGATIVE_INFINITY)).isEqualTo(Double.NEGATIVE_INFINITY);
    }

    /** Property: two units never share a suffix, since it decides how a file is read. */
    @Test
    void suffixesDiffer() {
        assertThat(Unit.values()).extracting(Unit::suffix).doesNotHaveDuplicates();
    }

    private static double everyday(Random random) {
        return (random.nextBoolean() ? 1 : -1) * Math.exp(20 * random.nextDouble() - 10);
    }
}
