package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the friction factor. */
class ChurchillFrictionTest {
    /**
     * Validation: check points computed independently from the Colebrook equation (solved by iteration) and from
     * Churchill's.
     */
    @ParameterizedTest(name = "Re {0}, e/D {1}")
    @CsvSource({
        "5000, 0.01, 0.04726, 0.04861",
        "10000, 0.001, 0.03238, 0.03269",
        "10000, 0.01, 0.04313, 0.04404",
        "10000, 0.03, 0.06011, 0.06125",
        "30000, 0.01, 0.03982, 0.04032",
        "100000, 0, 0.01799, 0.01787",
        "100000, 0.001, 0.02217, 0.02234",
        "100000, 0.01, 0.03850, 0.03873",
        "1000000, 0.001, 0.01994, 0.02002",
    })
    void checkPoints(double reynolds, double roughness, double colebrook, double churchill) {
        double factor = ChurchillFriction.factor(reynolds, roughness);
        assertThat(factor).isCloseTo(churchill, within(6e-6));
        assertThat(factor).isCloseTo(colebrook, within(0.035 * colebrook));
    }

    /** Validation: laminar flow in a round pipe, f = 64/Re, whatever the roughness. */
    @ParameterizedTest(name = "Re {0}")
    @CsvSource({"1, 64", "100, 0.64", "1000, 0.064"})
    void laminar(double reynolds, double factor) {
        assertThat(ChurchillFriction.factor(reynolds, 0)).isCloseTo(factor, within(1e-4 * factor));
        assertThat(ChurchillFriction.factor(reynolds, 0.01)).isCloseTo(factor, within(1e-4 * factor));
    }

    /**
     * Validation: round ducts, Colebrook, 1.2041 kg/m³ and 1.82e-5 Pa·s, computed independently, within 3 %; the second is within
     * 15 % of the 0.23 inches of water over 100 ft read off a printed friction chart.
     */
    @ParameterizedTest(name = "{0} cfm in {1} in")
    @CsvSource({
        "1000, 12, 0.0003, 1.547",
        "4000, 20, 0.0003, 1.647",
        "4000, 20, 0.0005, 1.738",
        "1000, 12, 0.003, 2.246",
        "1000, 12, 0.005, 2.570",
        "100, 6, 0.0003, 0.680",
        "100, 6, 0.005, 1.060",
        "50, 5, 0.005, 0.716",
    })
    void chartPoints(double cfm, double inches, double roughnessFeet, double pascalPerMetre) {
        AirState air = new AirState(1.2041, 1.82e-5, 343.2, 20, 101_325);
        double diameter = inches * 0.0254;
        double velocity = cfm * 0.000471947443 / (Math.PI * diameter * diameter / 4);
        double zeta = ChurchillFriction.zeta(1, diameter, roughnessFeet * 0.3048, air.reynolds(velocity, diameter))
                .likely();
        double drop = zeta * air.dynamicPressure(velocity);
        assertThat(drop).isCloseTo(pascalPerMetre, within(0.03 * pascalPerMetre));
        if (cfm == 4000) {
            assertThat(drop * 30.48 / 249.089).isCloseTo(0.23, within(0.15 * 0.23));
        }
    }

    /**
     * Validation: passage 200 x 100 mm, Colebrook, viscosity 1.82e-5 Pa s, density 1.2041 kg/m³, computed independently;
     * within 3 % as the two friction laws differ.
     */
    @ParameterizedTest(name = "{0} m/s")
    @CsvSource({"1.00, 0.203, 0.247", "1.50, 0.440, 0.544", "2.50, 1.181, 1.482"})
    void linedPassage(double velocity, double perMetreFine, double perMetreCoarse) {
        AirState air = new AirState(1.2041, 1.82e-5, 343.2, 20, 101_325);
        double diameter = 0.4 / 3;
        double reynolds = air.reynolds(velocity, diameter);
        double pressure = air.dynamicPressure(velocity);
        double fine = ChurchillFriction.zeta(1, diameter, 0.0015, reynolds).likely() * pressure;
        double coarse = ChurchillFriction.zeta(1, diameter, 0.003, reynolds).likely() * pressure;
        assertThat(fine).isCloseTo(perMetreFine, within(0.03 * perMetreFine));
        assertThat(coarse).isCloseTo(perMetreCoarse, within(0.03 * perMetreCoarse));
    }

    /** Property: rougher never costs less, faster never costs less, always a number; Re 0.01 to 1e7, e/D 0 to 5. */
    @Test
    void neverFallsWithRoughnessOrVelocity() {
        for (double roughness = 0; roughness < 5; roughness = roughness * 1.7 + 1e-4) {
            double before = 0;
            for (double reynolds = 0.01; reynolds < 1e7; reynolds *= 1.1) {
                double factor = ChurchillFriction.factor(reynolds, roughness);
                assertThat(factor).isFinite().isPositive();
                assertThat(ChurchillFriction.factor(reynolds, roughness * 1.3 + 1e-5))
                        .isGreaterThanOrEqualTo(factor * (1 - 1e-12));
                double pressure = factor * reynolds * reynolds;
                assertThat(pressure).isGreaterThan(before);
                before = pressure;
            }
        }
    }

    /** Validation: the range carried is 15 % either way. */
    @Test
    void range() {
        Zeta zeta = ChurchillFriction.zeta(2, 0.1, 0.001, 1e4);
        // 0.04404 (check point) times 2 m over 0.1 m
        assertThat(zeta.likely()).isCloseTo(0.8808, within(2e-4));
        assertThat(zeta.low()).isCloseTo(0.7487, within(2e-4));
        assertThat(zeta.high()).isCloseTo(1.0129, within(2e-4));
    }
}
