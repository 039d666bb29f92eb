package hushmaze.quantity;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.catchThrowableOfType;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * <em>Validation</em> of typed values against conversions by definition (1 in = 25.4 mm, 1 ft = 12 in, 1 cfm = 0.028316846592
 * m³ / 60 s, 1 in of water = 249.08891 Pa), and <em>property</em> tests.
 */
class UnitParserTest {
    @ParameterizedTest(name = "{0}")
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "5 1/2 in| 0.1397",
                "5-1/2 in| 0.1397",
                "5.5in| 0.1397",
                "1/32 in| 0.00079375",
                "-1/2 in| -0.0127",
                "-5 1/2 in| -0.1397",
                "140 mm| 0.14",
                "140| 0.14",
                "140mm| 0.14",
                "  140   mm  | 0.14",
                "140 MM| 0.14",
                "14 cm| 0.14",
                "0.14 m| 0.14",
                "18,3 mm| 0.0183",
                ".5 m| 0.5",
                ",5 m| 0.5",
                "1e2 mm| 0.1",
                "1.5E-1 m| 0.15",
                "+3 mm| 0.003",
                "3' 2 1/4\"| 0.97155",
                "3'2 1/4\"| 0.97155",
                "3 ft 2.25 in| 0.97155",
                "3 ft| 0.9144",
                "3'| 0.9144",
                "6\"| 0.1524",
                "6 inches| 0.1524",
                "-3' 2\"| -0.9652",
                "-0' 6\"| -0.1524",
                "0,125 in| 0.003175",
                "1,25 m| 1.25",
                "1,2000 m| 1.2",
                "0 mm| 0",
            })
    void lengths(String text, double metres) {
        assertThat(UnitParser.parse("clearWidth", text, Unit.MILLIMETRE)).isCloseTo(metres, within(1e-12));
    }

    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "60 cfm, LITRE_PER_SECOND, 0.028316846592",
        "28 L/s, LITRE_PER_SECOND, 0.028",
        "28 l/s, CUBIC_FOOT_PER_MINUTE, 0.028",
        "28, LITRE_PER_SECOND, 0.028",
        "100 m³/h, LITRE_PER_SECOND, 0.0277777777777778",
        "100 m3/h, LITRE_PER_SECOND, 0.0277777777777778",
        "0.05 inH2O, PASCAL, 12.4544455",
        "0.05 in H2O, PASCAL, 12.4544455",
        "12 Pa, INCH_OF_WATER, 12",
        "500 fpm, METRE_PER_SECOND, 2.54",
        "2.5 m/s, METRE_PER_SECOND, 2.5",
        "100 lb, KILOGRAM, 45.359237",
        "21 °C, CELSIUS, 21",
        "70 °F, FAHRENHEIT, 21.11111111111111",
        "50 f, CELSIUS, 10",
        "-5 C, CELSIUS, -5",
        "800 ppm, PARTS_PER_MILLION, 0.0008",
        "4 ft², SQUARE_METRE, 0.37161216",
        "20000 Pa·s/m², PASCAL_SECOND_PER_SQUARE_METRE, 20000",
        "0.5, NUMBER, 0.5",
    })
    void otherQuantities(String text, Unit fallback, double si) {
        assertThat(UnitParser.parse("value", text, fallback)).isCloseTo(si, within(1e-12 * Math.max(1, si)));
    }

    @ParameterizedTest(name = "\"{0}\"")
    @ValueSource(
            strings = {
                "",
                "   ",
                "abc",
                "mm",
                "NaN",
                "NaN mm",
                "Infinity mm",
                "-",
                "1..5 mm",
                "1,000.5 mm",
                "1,200 mm",
                "-1,200",
                "1,200' 3\"",
                "5-1 in",
                "5 -1/2 in",
                "5 1 2 in",
                "1/0 in",
                "0/0 in",
                "1/2/3 in",
                "5 1/ in",
                "1e999 mm",
                "--5 mm",
                "5 1/2/ in",
                "1 2 mm",
                "3' 2' 1\"",
                "5 in 3 mm",
                "3 ft -2 in",
                "0x10 mm",
                "1e mm",
                "5 mm mm",
                "١٢ mm",
                "' \"",
                "5'x\""
            })
    void garbage(String text) {
        InvalidValue problem =
                catchThrowableOfType(InvalidValue.class, () -> UnitParser.parse("clearWidth", text, Unit.MILLIMETRE));
        assertThat(problem).as(text).isNotNull();
        assertThat(problem.field()).isEqualTo("clearWidth");
        assertThat(problem.limit()).isNotBlank();
    }

    @Test
    void wrongUnitNamesBothQuantities() {
        assertThatThrownBy(() -> UnitParser.parse("clearWidth", "60 cfm", Unit.MILLIMETRE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("clearWidth")
                .hasMessageContaining("60 cfm")
                .hasMessageContaining("an airflow")
                .hasMessageContaining("a length");
        assertThatThrownBy(() -> UnitParser.parse("flow", "3 in", Unit.LITRE_PER_SECOND))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("a length");
    }

    @Test
    void unknownUnitShowsAnExample() {
        assertThatThrownBy(() -> UnitParser.parse("clearWidth", "5 furlong", Unit.MILLIMETRE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("5 furlong")
                .hasMessageContaining("140 mm");
    }

    /** A negative number is read as it is; whether it is accepted is for the record that takes it. */
    @Test
    void negativeIsRead() {
        assertThat(UnitParser.parse("clearWidth", "-140 mm", Unit.MILLIMETRE)).isEqualTo(-0.14);
    }

    /** Property: every unit's own symbol is understood, apart from the empty one. */
    @Test
    void everySymbolIsUnderstood() {
        for (Unit unit : Unit.values()) {
            double si = UnitParser.parse("value", "12.5 " + unit.symbol(), unit);
            assertThat(si).as(unit.name()).isEqualTo(unit.toSi(12.5));
        }
    }

    /** Property: what is printed in inches is read back within half a thirty-second; in millimetres within 0.05 mm. */
    @Test
    void readsBackWhatIsPrinted() {
        Random random = new Random(12);
        for (int i = 0; i < 5000; i++) {
            double metres = 6 * random.nextDouble() - 1;
            for (UnitSystem system : UnitSystem.values()) {
                String text = LengthFormat.withUnit(metres, system);
                double read = UnitParser.parse("length", text, Unit.MILLIMETRE);
                double error = LengthFormat.roundingError(metres, system);
                assertThat(read - metres).as(text).isCloseTo(error, within(1e-9));
            }
        }
    }

    /** Property: random text is either read as a number or refused with the typed problem, and quickly. */
    @Test
    void anyTextIsReadOrRefused() {
        String letters = "0123456789 .,/'\"+-eEinmftcL²\u00a0";
        Random random = new Random(13);
        for (int i = 0; i < 50_000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(14); n > 0; n--) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            try {
                assertThat(UnitParser.parse("x", text.toString(), Unit.MILLIMETRE))
                        .as(text.toString())
                        .isFinite();
            } catch (InvalidValue refused) {
                assertThat(refused.field()).isEqualTo("x");
            }
        }
    }
}
