package hushmaze.air.need;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.WallHeat;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the heat balance and of which need governs. */
class HeatBalanceTest {
    private static final AirState AIR = AirState.of(0, 20);

    private static HeatBalance machines(double watts, double limit) {
        return new HeatBalance(0, Activity.SEATED_WORK, 0, watts, 0, 20, limit, null, AIR);
    }

    /** Validation: by 1.21 kJ/(m³·K) and by 1.08 · cfm · °F Btu/h, both computed independently. */
    @ParameterizedTest(name = "{0} W")
    @CsvSource({"500, 82.6, 158", "200, 33.0, 63", "1000, 165, 316"})
    void flows(double watts, double litresAtFiveKelvin, double cfmAtTenFahrenheit) {
        double litres = machines(watts, 25).flowForLimit() * 1000;
        assertThat(litres).isCloseTo(litresAtFiveKelvin, within(0.004 * litresAtFiveKelvin));
        double cfm = Unit.CUBIC_FOOT_PER_MINUTE.fromSi(machines(watts, 25).flowForRise(10 / 1.8));
        assertThat(cfm).isCloseTo(cfmAtTenFahrenheit, within(0.01 * cfmAtTenFahrenheit));
    }

    /** Validation: two at a desk 70 W each by the printed table, 30 W of lights, 200 W of machines, 50 W of sun: 420 W. */
    @Test
    void sum() {
        HeatBalance balance = new HeatBalance(2, Activity.SEATED_WORK, 30, 200, 50, 18, 24, null, AIR);
        assertThat(balance.heat()).isEqualTo(420);
        assertThat(balance.leftOut()).containsExactly(HeatBalance.WALLS_LEFT_OUT);
    }

    /** Validation, by hand: 300 W, 20 W/K, outside as warm as the supply, no air: 15 K; at a limit 10 K up, 100 W are left. */
    @Test
    void walls() {
        HeatBalance closed = new HeatBalance(0, Activity.SEATED_QUIET, 0, 300, 0, 15, 25, new WallHeat(20, 15), AIR);
        assertThat(closed.riseAt(0)).isCloseTo(15, within(1e-12));
        assertThat(closed.flowForLimit()).isCloseTo(machines(100, 30).flowForLimit(), within(1e-12));
        assertThat(closed.flowForRise(16)).isZero();
        assertThat(closed.leftOut()).isEmpty();
    }

    /** Property: the flow for a rise gives that rise, with and without walls; more air never warms the room. */
    @Test
    void roundTrips() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            WallHeat walls =
                    i % 2 == 0 ? null : new WallHeat(0.1 + 20 * random.nextDouble(), 40 * random.nextDouble() - 5);
            double watts = 50 + 2000 * random.nextDouble();
            HeatBalance balance = new HeatBalance(2, Activity.STANDING_PLAYING, 10, watts, 0, 18, 26, walls, AIR);
            double kelvin = 0.5 + 12 * random.nextDouble();
            double flow = balance.flowForRise(kelvin);
            if (flow > 1e-6) {
                assertThat(balance.riseAt(flow)).isCloseTo(kelvin, within(1e-9));
                assertThat(balance.riseAt(2 * flow)).isLessThan(kelvin);
            } else {
                assertThat(walls).isNotNull();
            }
        }
    }

    /** Validation: 17.9 L/s for 1000 ppm of two people, 20 L/s of persons, 33.0 L/s of 200 W at 5 K: the heat governs. */
    @Test
    void largestGoverns() {
        Need need = new Need(30, 2 * 5.2e-6, 420e-6, 0, AIR);
        NamedFlow persons = VentilationRate.of(AirRule.EN_CATEGORY_I).flow(2, 12);
        GoverningNeed hot = GoverningNeed.of(persons, need, 1000e-6, machines(200, 25));
        assertThat(hot.flows()).extracting(NamedFlow::key).containsExactly("EN_CATEGORY_I", "co2Limit", "heatRise");
        assertThat(hot.flows().get(1).flow() * 1000).isCloseTo(17.9, within(0.05));
        assertThat(hot.governing().key()).isEqualTo(NamedFlow.HEAT);
        GoverningNeed cool = GoverningNeed.of(persons, need, 1000e-6, machines(50, 25));
        assertThat(cool.governing()).isEqualTo(persons);
        assertThat(GoverningNeed.of(persons, need, 800e-6, machines(50, 25))
                        .governing()
                        .key())
                .isEqualTo(NamedFlow.CO2);
        NamedFlow first = new NamedFlow("first", 0.02, "given");
        assertThat(new GoverningNeed(List.of(first, new NamedFlow("second", 0.02, "given"))).governing())
                .isEqualTo(first);
    }

    @Test
    void refusesTheImpossible() {
        assertThatThrownBy(() -> machines(100, 20)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> machines(100, 25).riseAt(0)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> new WallHeat(-1, 0)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> new GoverningNeed(List.of())).isInstanceOf(InvalidValue.class);
    }
}
