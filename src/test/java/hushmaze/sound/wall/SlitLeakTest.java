package hushmaze.sound.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.SlitMouth;
import hushmaze.quantity.InvalidValue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the slit against mode matching, a published formula and limits by hand; properties over a grid. */
class SlitLeakTest {
    private static final double SOUND_SPEED = 343.2;
    private static final double LONG = 100;

    /** Width mm, depth mm, Hz, loss in dB for diffuse incidence: by mode matching with 12 modes, slit-modes.py beside. */
    @ParameterizedTest
    @CsvSource({
        "0.01,18,125,81.17",
        "0.01,18,500,83.13",
        "0.01,18,1000,88.96",
        "0.01,18,4000,117.00",
        "0.1,18,125,29.91",
        "0.1,18,500,24.03",
        "0.1,18,1000,21.41",
        "0.1,18,2000,19.42",
        "0.1,18,4000,17.34",
        "0.1,18,8000,10.21",
        "0.3,18,125,7.10",
        "0.3,18,1000,9.06",
        "0.3,18,4000,10.91",
        "0.3,18,8000,-2.49",
        "1,18,125,-3.92",
        "1,18,500,1.11",
        "1,18,2000,5.59",
        "1,18,8000,-10.09",
        "2,44,125,-0.26",
        "2,44,1000,6.60",
        "2,44,4000,-4.05",
        "2,44,8000,-2.71",
        "10,44,125,-4.44",
        "10,44,500,0.06",
        "10,44,1000,1.13",
        "10,44,2000,-2.28",
        "10,44,4000,-3.24"
    })
    void againstModeMatching(double widthMm, double depthMm, double frequency, double loss) {
        assertThat(loss(widthMm, depthMm, SlitMouth.IN_SURFACE, frequency)).isCloseTo(loss, within(0.25));
    }

    /**
     * The formula of Gomperts and Kihlman for air without viscosity, from memory, m = 8, n = 1. A slit of 3 mm and more is wide
     * enough for it, except where it resonates.
     */
    @ParameterizedTest
    @CsvSource({"3, 44, 500", "3, 44, 1000", "3, 44, 2000", "5, 20, 250", "5, 20, 1000", "10, 44, 500", "10, 44, 1000"})
    void againstTheFormulaWithoutViscosity(double widthMm, double depthMm, double frequency) {
        double k = 2 * Math.PI * frequency / SOUND_SPEED * widthMm / 1000;
        double x = depthMm / widthMm;
        double e = (Math.log(8 / k) - 0.57722) / Math.PI;
        double cos = Math.cos(k * e);
        double sin = Math.sin(k * x + 2 * k * e);
        double mixed = 1 + Math.cos(k * x) * Math.cos(k * x + 2 * k * e);
        double tau = 8 * k * cos * cos / (2 * (sin * sin / (cos * cos) + k * k / 2 * mixed));
        assertThat(loss(widthMm, depthMm, SlitMouth.IN_SURFACE, frequency))
                .isCloseTo(-10 * Math.log10(tau), within(0.3));
    }

    /**
     * By hand: 0.05 mm in 18 mm at 125 Hz is viscous flow: 12 μ d / w² = 1564 Pa·s/m, 3.79 ρc; k w / 2 = 5.72e-5; τ = 8 ·
     * 5.72e-5 / 3.79² = 3.19e-5, 45.0 dB.
     */
    @Test
    void aNarrowSlitIsAFlowResistance() {
        assertThat(loss(0.05, 18, SlitMouth.IN_SURFACE, 125)).isCloseTo(45.0, within(0.3));
    }

    /** A mirror along the edge makes a slit of twice the width with twice the pressure on it: 3 dB more than that slit. */
    @ParameterizedTest
    @CsvSource({"5, 44, 250", "5, 44, 1000", "8, 20, 500", "10, 44, 2000"})
    void alongAnEdge(double widthMm, double depthMm, double frequency) {
        double mirrored = loss(2 * widthMm, depthMm, SlitMouth.IN_SURFACE, frequency);
        assertThat(loss(widthMm, depthMm, SlitMouth.ALONG_EDGE, frequency)).isCloseTo(mirrored - 3.01, within(0.3));
    }

    /** By hand: at 63 Hz, k = 1.155 1/m, a slit of 0.8 m has k l / π = 0.294, so 5.3 dB less than a long one. */
    @Test
    void aShortSlitRadiatesLess() {
        double whole = loss(10, 44, SlitMouth.IN_SURFACE, 63.096);
        double tau = new SlitLeak(0.01, 0.8, 0.044, SlitMouth.IN_SURFACE).transmission(63.096, SOUND_SPEED);
        assertThat(-10 * Math.log10(tau) - whole).isCloseTo(5.3, within(0.3));
    }

    @Test
    void aWideGapLetsAllPassAndATightJointNothing() {
        assertThat(new SlitLeak(0.1, 1, 0.02, SlitMouth.IN_SURFACE).openArea(4000, SOUND_SPEED))
                .isEqualTo(0.1);
        assertThat(new SlitLeak(0, 7, 0.018, SlitMouth.IN_SURFACE).openArea(1000, SOUND_SPEED))
                .isZero();
    }

    @Test
    void aTighterJointIsNeverWorse() {
        for (double depth : new double[] {0.003, 0.012, 0.018, 0.036, 0.054}) {
            for (double f = 44; f < 11_300; f *= 1.07) {
                double before = 0;
                for (double width = 1e-6; width < 3e-4; width *= 1.2) {
                    double open = new SlitLeak(width, 4, depth, SlitMouth.IN_SURFACE).openArea(f, SOUND_SPEED);
                    assertThat(open).isGreaterThanOrEqualTo(before);
                    before = open;
                }
            }
        }
    }

    @Test
    void hairlineGapsAreDampedBelowEveryBoard() {
        for (double f = 44; f < 11_300; f *= 1.2) {
            assertThat(loss(0.01, 18, SlitMouth.IN_SURFACE, f)).isGreaterThan(75);
        }
    }

    @Test
    void extremesGiveNumbers() {
        Random random = new Random(8);
        for (int n = 0; n < 5000; n++) {
            double width = Math.pow(10, -12 + 11 * random.nextDouble());
            double length = Math.pow(10, -4 + 8 * random.nextDouble());
            double depth = Math.pow(10, -6 + 7 * random.nextDouble());
            double f = Math.pow(10, -3 + 9 * random.nextDouble());
            SlitLeak slit = new SlitLeak(width, length, depth, SlitMouth.values()[n % 2]);
            assertThat(slit.transmission(f, SOUND_SPEED)).isFinite().isNotNegative();
        }
    }

    @Test
    void impossibleSlitsAreRefused() {
        assertThatThrownBy(() -> new SlitLeak(-1e-5, 1, 0.018, SlitMouth.IN_SURFACE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("width");
        assertThatThrownBy(() -> new SlitLeak(1e-5, 1, 0, SlitMouth.IN_SURFACE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("depth");
        assertThatThrownBy(() -> new SlitLeak(1e-5, 1, 0.018, SlitMouth.IN_SURFACE).transmission(0, SOUND_SPEED))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("frequency");
    }

    private static double loss(double widthMm, double depthMm, SlitMouth mouth, double frequency) {
        SlitLeak slit = new SlitLeak(widthMm / 1000, LONG, depthMm / 1000, mouth);
        return -10 * Math.log10(slit.transmission(frequency, SOUND_SPEED));
    }
}
