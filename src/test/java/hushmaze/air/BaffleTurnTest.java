package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the turn around a baffle. */
class BaffleTurnTest {
    /** Validation: independent two-dimensional flow solutions, k-omega SST, baffle 0.18 w, Re 2e4 on 2 w. */
    @ParameterizedTest(name = "g/w {0}")
    @CsvSource({"0.5, 7.17", "0.75, 3.39", "1.0, 2.51", "1.25, 2.50", "1.5, 2.61", "2.0, 2.65"})
    void flowSolutions(double gapRatio, double zeta) {
        assertThat(BaffleTurn.single(gapRatio)).isCloseTo(zeta, within(1e-9));
    }

    /**
     * Validation: totals of turns in series, g/w 1, from the same flow solutions; the fit keeps within 3 %. The totals of
     * the two other turbulence models (2 turns, L/w 6: 5.40 and 5.02; L/w 3: 6.65 and 5.65) lie between low and high.
     */
    @ParameterizedTest(name = "{0} turns, L/w {1}")
    @CsvSource({"2, 6, 6.12, 5.02", "2, 3, 7.74, 5.65", "3, 6, 9.18, 9.18", "3, 3, 13.35, 13.35"})
    void series(int turns, double straightRatio, double total, double leastOfAllModels) {
        double low = 0;
        double likely = 0;
        double high = 0;
        for (int i = 0; i < turns; i++) {
            Zeta zeta = BaffleTurn.zeta(1, i == 0 ? BaffleTurn.FIRST : straightRatio);
            low += zeta.low();
            likely += zeta.likely();
            high += zeta.high();
        }
        assertThat(likely).isCloseTo(total, within(0.03 * total));
        assertThat(low).isLessThan(leastOfAllModels);
        assertThat(high).isGreaterThan(total);
    }

    /** Validation, worked by hand: 7.17 · (0.5/0.25)² below the table, the last row above it. */
    @Test
    void outsideTheTable() {
        assertThat(BaffleTurn.single(0.25)).isCloseTo(28.68, within(1e-9));
        assertThat(BaffleTurn.single(3)).isCloseTo(2.65, within(1e-12));
        assertThat(BaffleTurn.series(1)).isEqualTo(2.12);
        assertThat(BaffleTurn.series(15)).isEqualTo(1);
        assertThat(BaffleTurn.series(BaffleTurn.FIRST)).isEqualTo(1);
        // half way between 1.38 at 6 and 1 at 12
        assertThat(BaffleTurn.series(9)).isCloseTo(1.19, within(1e-12));
    }

    /** Validation: low is 0.85 of the plain turn, high 1.3 of the likely one. */
    @Test
    void range() {
        Zeta zeta = BaffleTurn.zeta(1, 6);
        assertThat(zeta.low()).isCloseTo(0.85 * 2.51, within(1e-9));
        assertThat(zeta.likely()).isCloseTo(1.38 * 2.51, within(1e-9));
        assertThat(zeta.high()).isCloseTo(1.3 * 1.38 * 2.51, within(1e-9));
    }

    @ParameterizedTest(name = "gap {0} of width 0.1, straight {1}")
    @CsvSource({
        "0.1, 0.6, ''",
        "0.2, 0.3, ''",
        "0.0999, 0.6, 'TURN_GAP_NARROW'",
        "0.04, 0.6, 'TURN_GAP_NARROW TURN_OUTSIDE_RANGE'",
        "0.21, 0.6, 'TURN_OUTSIDE_RANGE'",
        "0.1, 0.29, 'TURNS_CLOSE'",
        "0.1, Infinity, ''",
    })
    void notices(double gap, double straight, String kinds) {
        String found = String.join(
                " ",
                BaffleTurn.notices("turn 2", gap, 0.1, straight).stream()
                        .map(Notice::kind)
                        .map(NoticeKind::name)
                        .toList());
        assertThat(found).isEqualTo(kinds);
    }

    @Test
    void narrowGapNoticeNamesPartAndNumbers() {
        Notice notice = BaffleTurn.notices("turn 2", 0.08, 0.1, 1).get(0);
        assertThat(notice.part()).isEqualTo("turn 2");
        assertThat(notice.value()).isEqualTo(0.08);
        assertThat(notice.limit()).isEqualTo(0.1);
    }

    /** Property: a narrower gap never costs less up to g/w 1; no jump anywhere. */
    @Test
    void continuousAndSteepBelow() {
        double before = BaffleTurn.single(0.01);
        for (double ratio = 0.01; ratio < 3; ratio += 0.001) {
            double zeta = BaffleTurn.single(ratio);
            assertThat(zeta).isFinite().isLessThanOrEqualTo(before * 1.002);
            if (ratio < 1) {
                assertThat(zeta).isLessThanOrEqualTo(before);
            }
            if (ratio > 0.1) {
                assertThat(zeta).isCloseTo(before, within(0.03 * before));
            }
            before = zeta;
        }
    }
}
