package hushmaze.sound.porous;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: the limits of low and high frequency, which follow from Darcy's law, from air at constant temperature and
 * from thin boundary layers on the pores' walls, not from the model's own formulas. Property: it is passive everywhere, and
 * near Miki's fit where that was fitted.
 */
class JohnsonLinerTest {
    private static final double RHO = 1.2041;
    private static final double ETA = 1.813e-5;
    private static final double GAMMA = 1.40;

    @ParameterizedTest
    @ValueSource(doubles = {1000, 20_000, 200_000})
    void slowAirFlowsByDarcysLawAtConstantTemperature(double sigma) {
        JohnsonLiner liner = new JohnsonLiner(sigma);
        double f = sigma * 1e-6;
        Complex zeta = liner.impedanceRatio(f);
        Complex gamma = liner.wavenumberRatio(f);
        // A pressure gradient of sigma times the velocity: jω ρ = σ.
        Complex drag = zeta.times(gamma).times(new Complex(0, 2 * Math.PI * f * RHO));
        assertThat(drag.re()).isCloseTo(sigma, within(1e-3 * sigma));
        assertThat(drag.im()).isCloseTo(0, within(1e-3 * sigma));
        // Air that gives its heat to the fibres has the modulus P0 = ρ0 c² / γ, in 0.98 of the space.
        Complex modulus = zeta.dividedBy(gamma);
        assertThat(modulus.re()).isCloseTo(1 / (GAMMA * 0.98), within(1e-3));
        assertThat(modulus.im()).isCloseTo(0, within(1e-3));
    }

    /**
     * Thin boundary layers of δ = √(2η/(ω ρ0)): k = k0 √α (1 + (1-j) δ/2 (1/Λ + (γ-1)/(√Pr Λ'))), the relation by which
     * the lengths are measured with ultrasound (from memory).
     */
    @ParameterizedTest
    @ValueSource(doubles = {1000, 20_000, 200_000})
    void fastAirSlipsThroughAndLosesOnlyAtTheWalls(double sigma) {
        double f = sigma * 1e4;
        double viscous = Math.sqrt(8 * ETA / (sigma * 0.98));
        double layer = Math.sqrt(2 * ETA / (2 * Math.PI * f * RHO));
        double loss = layer / 2 * (1 / viscous + (GAMMA - 1) / (Math.sqrt(0.71) * 2 * viscous));
        Complex k = new JohnsonLiner(sigma).wavenumberRatio(f);
        assertThat(k.re() - 1).isCloseTo(loss, within(0.02 * loss));
        assertThat(-k.im()).isCloseTo(loss, within(0.02 * loss));
    }

    @Test
    void neverGivesEnergy() {
        for (double sigma = 1000; sigma <= 200_000; sigma *= 1.5) {
            JohnsonLiner liner = new JohnsonLiner(sigma);
            for (double f = 10; f <= 20_000; f *= 1.2) {
                Complex zeta = liner.impedanceRatio(f);
                Complex gamma = liner.wavenumberRatio(f);
                assertThat(zeta.re()).as("σ %s, %s Hz", sigma, f).isPositive();
                assertThat(gamma.re()).isPositive();
                assertThat(gamma.im()).isNegative();
                // Loss by friction and loss of heat, each by itself.
                assertThat(zeta.times(gamma).im()).isNegative();
                assertThat(zeta.times(gamma).re()).isPositive();
                assertThat(zeta.dividedBy(gamma).im()).isPositive();
            }
        }
    }

    @Test
    void agreesWithMikisFitWhereThatWasFitted() {
        for (double sigma : new double[] {5000, 20_000, 60_000}) {
            MikiLiner fit = new MikiLiner(sigma);
            JohnsonLiner liner = new JohnsonLiner(sigma);
            for (double f = fit.fittedFrom(); f <= fit.fittedTo(); f *= 1.1) {
                assertThat(apart(liner.impedanceRatio(f), fit.impedanceRatio(f)))
                        .as("impedance, σ %s, %s Hz", sigma, f)
                        .isLessThan(0.07);
                assertThat(apart(liner.wavenumberRatio(f), fit.wavenumberRatio(f)))
                        .as("wavenumber, σ %s, %s Hz", sigma, f)
                        .isLessThan(0.11);
            }
        }
    }

    @Test
    void belowMikisRangeOnlyThisModelStaysPhysical() {
        MikiLiner fit = new MikiLiner(20_000);
        assertThat(fit.fittedFrom()).isCloseTo(200, within(1e-9));
        double f = 0.5 * fit.fittedFrom();
        assertThat(fit.impedanceRatio(f).times(fit.wavenumberRatio(f)).re()).isNegative();
        JohnsonLiner liner = new JohnsonLiner(20_000);
        assertThat(liner.impedanceRatio(f).times(liner.wavenumberRatio(f)).re()).isPositive();
    }

    @Test
    void refusesAResistivityThatIsNone() {
        assertThatThrownBy(() -> new JohnsonLiner(0))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("flowResistivity: 0 Pa·s/m²");
    }

    private static double apart(Complex a, Complex b) {
        return Math.sqrt(a.plus(b.times(-1)).absSquared() / b.absSquared());
    }
}
