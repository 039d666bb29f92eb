package hushmaze.air.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> tests of what people give off and of the rates for them. */
class PersonsTest {
    private static final double SQUARE_FOOT = 0.09290304;

    /** The older ASTM form at 1.8 m² and RQ 0.83, computed by hand: 0.00515 L/s (18.5 L/h) at 1.2 met, 15.4 L/h at 1 met. */
    @Test
    void carbonDioxideByBodyArea() {
        assertThat(PersonCo2.byBodyArea(1.8, 1.2) * 1000).isCloseTo(0.00515, within(5e-6));
        assertThat(PersonRates.of(Activity.SEATED_WORK).co2() * 3.6e6).isCloseTo(18.5, within(0.05));
        assertThat(PersonRates.of(Activity.SEATED_QUIET).co2() * 3.6e6).isCloseTo(15.4, within(0.05));
    }

    /** The form of Persily and de Jonge, computed by hand: 7.73 MJ a day, 1.2 met, 293 K, 101 kPa give 0.0048 L/s. */
    @Test
    void carbonDioxideByBasalRate() {
        assertThat(PersonCo2.byBasalRate(7.73, 1.2, 293, 101_000) * 1000).isCloseTo(0.0048, within(5e-5));
        assertThat(PersonRates.of(Activity.SEATED_WORK).co2ByBasalRate()
                        / PersonRates.of(Activity.SEATED_WORK).co2())
                .isBetween(0.90, 0.97);
    }

    /** DuBois area computed by hand: exp(ln 0.20247 + 0.725 ln 1.75 + 0.425 ln 70) = 1.848 m². */
    @Test
    void bodyArea() {
        assertThat(PersonCo2.bodyArea(1.75, 70)).isCloseTo(1.848, within(0.001));
    }

    /** Litres a second for a level in ppm, as read in a table of them (it goes with 0.0054 L/s and 420 ppm outdoors). */
    @ParameterizedTest(name = "{0} ppm")
    @CsvSource({"1000, 9.3", "2000, 3.4", "600, 30.0"})
    void flowOfOnePerson(double ppm, double litres) {
        Need need = new Need(30, 5.4e-6, 420e-6, 0, AirState.of(0, 20));
        assertThat(NamedFlow.forCo2(need, ppm * 1e-6).flow() * 1000).isCloseTo(litres, within(0.051));
    }

    /** prEN 13779 (2004), as read: 22 m³/h a person go with about 1000 ppm above outdoors, 54 m³/h with about 400. */
    @ParameterizedTest(name = "{0} m³/h")
    @CsvSource({"22, 1000", "54, 400"})
    void levelAboveOutdoors(double cubicMetresPerHour, double ppm) {
        Need need = new Need(30, 0.022 / 3600, 400e-6, 0, AirState.of(0, 20));
        double above = need.co2Steady(cubicMetresPerHour / 3600) - 400e-6;
        assertThat(above * 1e6).isCloseTo(ppm, within(0.02 * ppm));
    }

    /** Heat of the printed table: sensible and latent add up to its adjusted totals 105, 115, 130 and 250 W. */
    @ParameterizedTest
    @CsvSource({
        "SEATED_QUIET, 70, 105",
        "SEATED_WORK, 70, 115",
        "STANDING_PLAYING, 75, 130",
        "MODERATE_DANCING, 90, 250",
    })
    void heat(Activity activity, double sensible, double total) {
        assertThat(PersonRates.of(activity).sensible()).isEqualTo(sensible);
        assertThat(PersonRates.of(activity).sensible()
                        + PersonRates.of(activity).latent())
                .isEqualTo(total);
    }

    /**
     * ASHRAE 62.1 in cubic feet (10 cfm a person and 0.06 cfm/ft²): 16, 29 and 52 cfm. The standard's own litres are
     * rounded up to 6 % from its feet.
     */
    @ParameterizedTest(name = "{0} in {1} ft²")
    @CsvSource({"1, 100, 16", "2, 150, 29", "4, 200, 52"})
    void musicInFeet(int persons, double squareFeet, double cfm) {
        NamedFlow flow = VentilationRate.of(AirRule.MUSIC).flow(persons, squareFeet * SQUARE_FOOT);
        double given = Unit.CUBIC_FOOT_PER_MINUTE.fromSi(flow.flow());
        assertThat(given).isCloseTo(cfm, within(0.06 * cfm));
        assertThat(flow.source()).contains("62.1");
    }

    /** ASHRAE 62.1, as read: 35 persons on 100 m² make 5.9 L/s a person together. */
    @Test
    void musicInLitres() {
        assertThat(VentilationRate.of(AirRule.MUSIC).flow(35, 100).flow() / 35 * 1000)
                .isCloseTo(5.9, within(0.05));
    }

    /** EN 16798-1, as read: 10, 7 and 4 L/s a person, whatever the floor. */
    @Test
    void categories() {
        assertThat(VentilationRate.of(AirRule.EN_CATEGORY_I).flow(3, 20).flow()).isCloseTo(0.030, within(1e-12));
        assertThat(VentilationRate.of(AirRule.EN_CATEGORY_II).flow(3, 20).flow())
                .isCloseTo(0.021, within(1e-12));
        assertThat(VentilationRate.of(AirRule.EN_CATEGORY_III).flow(3, 99).flow())
                .isCloseTo(0.012, within(1e-12));
        assertThat(VentilationRate.all(3, 20)).hasSameSizeAs(AirRule.values());
        assertThatThrownBy(() -> VentilationRate.of(AirRule.OFFICE).flow(-1, 20))
                .isInstanceOf(InvalidValue.class);
    }
}
