package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.sound.porous.Complex;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the expansion chamber against separately computed values of the textbook form and against a chain of
 * transfer matrices multiplied here; properties of its limits.
 */
class LossyExpansionChamberTest {
    private static final double SOUND_SPEED = 343.2;

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
    void simpleChamber(double klOverPi, double expected) {
        double c = 343.24;
        double f = klOverPi * c / (2 * 0.5);
        assertThat(new LossyExpansionChamber(16, 1, 1, 0.5).transmissionLoss(f, 0, c))
                .isCloseTo(expected, within(0.00051));
    }

    /** Peaks at a quarter wavelength: 20 lg[(m + 1/m) / 2] by hand; the last is a textbook's sizing example. */
    @ParameterizedTest
    @CsvSource({"2, 1.94", "4, 6.55", "8, 12.18", "16, 18.10", "32, 24.09", "64, 30.11", "19.95, 20.0"})
    void peaks(double m, double expected) {
        double f = SOUND_SPEED / (4 * 0.5);
        assertThat(new LossyExpansionChamber(m, 1, 1, 0.5).transmissionLoss(f, 0, SOUND_SPEED))
                .isCloseTo(expected, within(0.02));
    }

    /**
     * The chamber cut into 40 slices, each with its own matrix of pressure and flow, between ducts of any two areas: a
     * computation of its own, with complex numbers, of the same one-dimensional model.
     */
    @Test
    void aChainOfTransferMatrices() {
        Random random = new Random(21);
        for (int n = 0; n < 300; n++) {
            double one = 0.01 + 0.05 * random.nextDouble();
            double other = n % 3 == 0 ? one : 0.01 + 0.05 * random.nextDouble();
            double area = 0.01 + 0.5 * random.nextDouble();
            double length = 0.1 + 2 * random.nextDouble();
            double lossAlong = n % 4 == 0 ? 0 : 30 * random.nextDouble();
            double f = 40 + 600 * random.nextDouble();
            double chain = chain(f, area, one, other, length, lossAlong);
            assertThat(new LossyExpansionChamber(area, one, other, length).transmissionLoss(f, lossAlong, SOUND_SPEED))
                    .isCloseTo(chain, within(1e-7));
        }
    }

    private static double chain(double f, double area, double one, double other, double length, double lossAlong) {
        int slices = 40;
        // Field in nepers: half the energy's; time factor exp(+jωt).
        Complex g =
                new Complex(lossAlong / slices / 20 * Math.log(10), 2 * Math.PI * f / SOUND_SPEED * length / slices);
        Complex cosh = half(exp(g).plus(exp(g.times(-1))));
        Complex sinh = half(exp(g).plus(exp(g.times(-1)).times(-1)));
        // Impedances over ρc: the chamber's is 1/S.
        Complex[] slice = {cosh, sinh.times(1 / area), sinh.times(area), cosh};
        Complex[] all = {new Complex(1, 0), new Complex(0, 0), new Complex(0, 0), new Complex(1, 0)};
        for (int i = 0; i < slices; i++) {
            all = product(all, slice);
        }
        // Incident pressure for one unit of pressure going on: (A + B S2 + C / S1 + D S2 / S1) / 2.
        Complex incident = half(
                all[0].plus(all[1].times(other)).plus(all[2].times(1 / one)).plus(all[3].times(other / one)));
        return 10 * Math.log10(incident.absSquared() * one / other);
    }

    private static Complex[] product(Complex[] a, Complex[] b) {
        return new Complex[] {
            a[0].times(b[0]).plus(a[1].times(b[2])), a[0].times(b[1]).plus(a[1].times(b[3])),
            a[2].times(b[0]).plus(a[3].times(b[2])), a[2].times(b[1]).plus(a[3].times(b[3]))
        };
    }

    private static Complex exp(Complex z) {
        return new Complex(Math.cos(z.im()), Math.sin(z.im())).times(Math.exp(z.re()));
    }

    private static Complex half(Complex z) {
        return z.times(0.5);
    }

    /** Property: without an area change a lossy chamber loses exactly what its lining takes, at any frequency. */
    @Test
    void aLossyChamberWithoutAStepIsALinedDuct() {
        for (double f = 50; f < 10000; f *= 1.7) {
            assertThat(new LossyExpansionChamber(1, 1, 1, 0.7).transmissionLoss(f, 12.5, SOUND_SPEED))
                    .isCloseTo(12.5, within(1e-9));
        }
    }

    /** Property: without length nothing is left but the step between the ducts, 10 lg[(1 + r)² / (4 r)]. */
    @Test
    void withoutLengthOnlyTheStepIsLeft() {
        assertThat(new LossyExpansionChamber(0.3, 0.05, 0.01, 0).transmissionLoss(200, 0, SOUND_SPEED))
                .isCloseTo(10 * Math.log10(36.0 / 20), within(1e-9));
    }
}
