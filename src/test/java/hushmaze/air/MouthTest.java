package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of area changes, entry and exit. */
class MouthTest {
    /**
     * Validation: widening by (1 - x)², narrowing by 0.5 (1 - x)^0.75, computed independently. Where given, a ventilator
     * technical manual's table 6 (read, pairing of rows inferred): widenings equal to the figures printed, narrowings up to
     * 12 % above the formula.
     */
    @ParameterizedTest(name = "x {0}")
    @CsvSource({
        "0.2, 0.6400, 0.4229, 0.64, ",
        "0.25, 0.5625, 0.4030, , 0.45",
        "0.4, 0.3600, 0.3409, 0.36, ",
        "0.5, 0.2500, 0.2973, , 0.32",
        "0.6, 0.1600, 0.2515, 0.16, ",
        "0.75, 0.0625, 0.1768, , 0.18",
        "0.8, 0.0400, 0.1495, 0.04, ",
    })
    void areaChanges(double x, double widening, double narrowing, Double printedWide, Double printedNarrow) {
        double wide = AreaChange.zeta(x * 0.03, 0.03).likely();
        double narrow = AreaChange.zeta(0.03, x * 0.03).likely();
        assertThat(wide).isCloseTo(widening, within(1e-9));
        assertThat(narrow).isCloseTo(narrowing, within(6e-5));
        if (printedWide != null) {
            assertThat(wide).isCloseTo(printedWide, within(1e-9));
        }
        if (printedNarrow != null) {
            assertThat(narrow).isCloseTo(printedNarrow, within(0.12 * printedNarrow));
        }
    }

    /** Validation: the limit of a narrowing from endless space is the flush entry 0.5; that of a widening is the exit 1. */
    @Test
    void limits() {
        assertThat(AreaChange.zeta(1e12, 1).likely()).isCloseTo(Entry.ZETA.likely(), within(1e-9));
        assertThat(AreaChange.zeta(1, 1e12).likely()).isCloseTo(Exit.ZETA.likely(), within(1e-9));
        assertThat(AreaChange.zeta(1, 1)).isEqualTo(new Zeta(0, 0, 0));
        // handbook values of a flush sharp entrance: 0.50 to 0.57
        assertThat(Entry.ZETA.high()).isEqualTo(0.57);
    }

    /** Property: between 0 and the limit, 10 % either way, for random areas. */
    @Test
    void bounded() {
        Random random = new Random(11);
        for (int i = 0; i < 2000; i++) {
            double before = Math.exp(random.nextDouble() * 10 - 8);
            double after = Math.exp(random.nextDouble() * 10 - 8);
            Zeta zeta = AreaChange.zeta(before, after);
            assertThat(zeta.likely()).isBetween(0.0, after > before ? 1 : 0.5);
            assertThat(zeta.low()).isCloseTo(0.9 * zeta.likely(), within(1e-12));
            assertThat(zeta.high()).isCloseTo(1.1 * zeta.likely(), within(1e-12));
        }
    }
}
