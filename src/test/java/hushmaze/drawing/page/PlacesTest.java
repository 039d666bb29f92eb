package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Rows of dimensions. */
class PlacesTest {
    private static final double STEP = 0.00079375;

    /**
     * Validation, by hand, in 1/32 in = 0.79375 mm: 18, 100 and 18 are 22.7, 126.0 and 22.7 steps, 23 + 126 + 23 = 172, but the
     * whole of 136 is 171.3, printed 171. Places 18 and 118 are printed 23 and 149 (148.7): 23, 126 and 22 add up.
     */
    @Test
    void figuresAddUp() {
        List<Double> printed = Places.of(0.5, 0.518, 0.618, 0.636).printed(UnitSystem.INCH);
        assertThat(printed).hasSize(3);
        assertThat(printed.get(0)).isCloseTo(23 * STEP, within(1e-9));
        assertThat(printed.get(1)).isCloseTo(126 * STEP, within(1e-9));
        assertThat(printed.get(2)).isCloseTo(22 * STEP, within(1e-9));
    }

    /** Property: in both systems any row adds up to the figure of the whole, and no figure is more than a step off. */
    @Test
    void anyRowAddsUp() {
        Random random = new Random(5);
        for (int i = 0; i < 2_000; i++) {
            double[] places = random.doubles(6, -1, 3).toArray();
            double whole = Arrays.stream(places).max().orElseThrow()
                    - Arrays.stream(places).min().orElseThrow();
            double[] sorted = places.clone();
            Arrays.sort(sorted);
            for (UnitSystem units : UnitSystem.values()) {
                List<Double> printed = Places.of(places).printed(units);
                double sum = printed.stream().mapToDouble(d -> d).sum();
                assertThat(LengthFormat.bare(sum, units)).isEqualTo(LengthFormat.bare(whole, units));
                assertThat(sum).isCloseTo(LengthFormat.rounded(whole, units), within(1e-9));
                double step = units == UnitSystem.INCH ? STEP : 1e-4;
                for (int k = 0; k < printed.size(); k++) {
                    assertThat(printed.get(k)).isCloseTo(sorted[k + 1] - sorted[k], within(step + 1e-9));
                }
            }
        }
    }
}
