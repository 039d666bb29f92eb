package hushmaze.air.network;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: places found are those of the closed form, whatever was asked before, and what was asked before saves work. */
class RisingCurveTest {
    private int asked;
    private int wider;

    private double cube(double x) {
        asked++;
        return x * x * x;
    }

    @Test
    void placesAreThoseOfTheClosedForm() {
        RisingCurve curve = new RisingCurve(this::cube);
        Random random = new Random(5);
        for (int i = 0; i < 1000; i++) {
            double value = 8 * random.nextDouble();
            assertThat(curve.inverse(value, 0, v -> 2)).isCloseTo(Math.cbrt(value), within(1e-12));
        }
        assertThat(curve.inverse(0, 0, v -> 2)).isZero();
        assertThat(curve.inverse(8, 0, v -> 2)).isEqualTo(2);
    }

    @Test
    void nearPlacesAreFoundWithFewerQuestions() {
        RisingCurve curve = new RisingCurve(this::cube);
        curve.inverse(3, 0, v -> wide(curve));
        int first = asked;
        asked = 0;
        for (int i = 1; i <= 20; i++) {
            curve.inverse(3 + 0.001 * i, 0, v -> wide(curve));
        }
        assertThat(asked).isLessThan(20 * first / 2);
        assertThat(wider).isOne();
        curve.inverse(2e9, 0, v -> wide(curve) * 2);
        assertThat(wider).isEqualTo(2);
    }

    private double wide(RisingCurve curve) {
        wider++;
        curve.at(1000);
        return 1000;
    }
}
