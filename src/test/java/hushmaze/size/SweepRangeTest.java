package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Property: equally spaced values by hand and over seeded ranges; parts share them out without a gap. */
class SweepRangeTest {
    @Test
    void tenthsComeOutAsTenths() {
        SweepRange range = new SweepRange(0.1, 0.7, 7);
        assertThat(IntStream.range(0, 7).mapToDouble(range::value).toArray())
                .containsExactly(0.1, 0.2, 0.3, 0.4, 0.5, 0.6, 0.7);
        SweepRange down = new SweepRange(100, 90, 5);
        assertThat(IntStream.range(0, 5).mapToDouble(down::value).toArray()).containsExactly(100, 97.5, 95, 92.5, 90);
    }

    @Test
    void endsAreExactAndValuesRise() {
        Random random = new Random(31);
        for (int i = 0; i < 200; i++) {
            double from = random.nextGaussian() * 100;
            double to = from + 1 + random.nextDouble() * 1000;
            int steps = 2 + random.nextInt(50);
            SweepRange range = new SweepRange(from, to, steps);
            assertThat(range.value(0)).isEqualTo(from);
            assertThat(range.value(steps - 1)).isEqualTo(to);
            for (int k = 1; k < steps; k++) {
                assertThat(range.value(k) - range.value(k - 1)).isCloseTo((to - from) / (steps - 1), within(1e-9));
            }
        }
    }

    @Test
    void partsShareTheStepsOut() {
        SweepRange range = new SweepRange(0, 1, 17);
        for (int parts = 1; parts <= 20; parts++) {
            List<Integer> all = new ArrayList<>();
            for (int part = 1; part <= parts; part++) {
                all.addAll(range.part(part, parts));
            }
            assertThat(all)
                    .containsExactlyInAnyOrderElementsOf(
                            IntStream.range(0, 17).boxed().toList());
        }
        assertThat(range.part(2, 3)).containsExactly(1, 4, 7, 10, 13, 16);
    }

    @Test
    void whatIsNoRangeIsRefused() {
        refused("steps", () -> new SweepRange(1, 2, 1));
        refused("to", () -> new SweepRange(1, 1, 3));
        refused("from", () -> new SweepRange(Double.NaN, 1, 3));
        refused("part", () -> new SweepRange(1, 2, 3).part(0, 2));
        refused("part", () -> new SweepRange(1, 2, 3).part(3, 2));
        refused("parts", () -> new SweepRange(1, 2, 3).part(1, 0));
    }

    @Test
    void wholeNumbersNeedWholeSteps() {
        new SweepRange(1, 5, 3).requireWhole();
        new SweepRange(5, 1, 5).requireWhole();
        refused("from", () -> new SweepRange(1.5, 5, 3).requireWhole());
        // 6 apart: 1, 2, 3 or 6 gaps do.
        assertThatThrownBy(() -> new SweepRange(1, 7, 5).requireWhole())
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("2, 3, 4, 7");
    }

    private static void refused(String field, Runnable attempt) {
        assertThatThrownBy(attempt::run)
                .isInstanceOfSatisfying(
                        InvalidValue.class, e -> assertThat(e.field()).isEqualTo(field));
    }
}
