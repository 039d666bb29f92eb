package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.NoticeKind;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> and <em>property</em> tests of the single sharp turn. */
class SharpTurnTest {
    private static final double[] ASPECTS = {0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8};

    /**
     * Validation: mitred rectangular elbow without vanes, table of a 1989 duct fitting handbook (read; the cell at 30
     * degrees and H/W 3 is 0.13 after a later edition, printed 0.23 in one copy). Cells are printed to two figures.
     */
    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({
        "20, 0.08 0.08 0.08 0.07 0.07 0.07 0.06 0.06 0.05 0.05 0.05",
        "30, 0.18 0.17 0.17 0.16 0.15 0.15 0.13 0.13 0.12 0.12 0.11",
        "45, 0.38 0.37 0.36 0.34 0.33 0.31 0.28 0.27 0.26 0.25 0.24",
        "60, 0.60 0.59 0.57 0.55 0.52 0.49 0.46 0.43 0.41 0.39 0.38",
        "75, 0.89 0.87 0.84 0.81 0.77 0.73 0.67 0.63 0.61 0.58 0.57",
        "90, 1.3 1.3 1.2 1.2 1.1 1.1 0.98 0.92 0.89 0.85 0.83",
    })
    void elbowTable(double angle, String cells) {
        String[] printed = cells.split(" ");
        assertThat(printed).hasSize(ASPECTS.length);
        for (int i = 0; i < ASPECTS.length; i++) {
            assertThat(SharpTurn.base(angle, ASPECTS[i]))
                    .as("H/W %s", ASPECTS[i])
                    .isCloseTo(Double.parseDouble(printed[i]), within(0.035));
        }
    }

    /** Validation: the closed form, computed independently. */
    @ParameterizedTest(name = "{0} degrees")
    @CsvSource({
        "20, 0.0305, 0.076",
        "30, 0.0728, 0.162",
        "45, 0.1831, 0.342",
        "60, 0.3656, 0.548",
        "75, 0.6336, 0.811",
        "90, 0.9875, 1.185",
    })
    void closedForm(double angle, double local, double square) {
        assertThat(SharpTurn.local(angle)).isCloseTo(local, within(6e-5));
        assertThat(SharpTurn.base(angle, 1)).isCloseTo(square, within(6e-4));
    }

    /** Validation: Reynolds correction printed with the elbow, and 1.33 at 1.4e4 from the hydraulic handbook (read). */
    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "10000, 1.40",
        "14000, 1.33",
        "20000, 1.26",
        "30000, 1.19",
        "40000, 1.14",
        "60000, 1.09",
        "80000, 1.06",
        "100000, 1.04",
        "140000, 1.00",
        "1000000, 1.00",
        "500, 1.40",
    })
    void printedCorrection(double reynolds, double correction) {
        assertThat(SharpTurn.correction(reynolds)).isCloseTo(correction, within(1e-12));
    }

    /** Validation: 24.8/Re^0.263, computed independently; 2.80 held below Re 4000; 1 from 2e5. */
    @ParameterizedTest(name = "Re {0}")
    @CsvSource({
        "100, 2.80",
        "4000, 2.80",
        "10000, 2.20",
        "20000, 1.83",
        "40000, 1.53",
        "100000, 1.20",
        "200000, 1",
        "1e6, 1"
    })
    void secondCorrection(double reynolds, double correction) {
        assertThat(SharpTurn.secondCorrection(reynolds)).isCloseTo(correction, within(0.006));
    }

    /** Validation: roughness above Re 4e4 raises the high edge by 1 + 500 e/D, at most 1.5; nothing below. */
    @Test
    void roughnessActsOnTheHighEdgeOnly() {
        Zeta smooth = SharpTurn.zeta(1, 3e5, 0);
        assertThat(smooth.low()).isEqualTo(smooth.likely()).isEqualTo(smooth.high());
        Zeta rough = SharpTurn.zeta(1, 3e5, 0.0005);
        assertThat(rough.likely()).isEqualTo(smooth.likely());
        assertThat(rough.high()).isCloseTo(1.185 * 1.25, within(0.001));
        assertThat(SharpTurn.zeta(1, 3e5, 0.02).high()).isCloseTo(1.185 * 1.5, within(0.001));
        assertThat(SharpTurn.zeta(1, 2e4, 0.02)).isEqualTo(SharpTurn.zeta(1, 2e4, 0));
    }

    /** Property: below Re 1e4 there is a notice with the number, from there on none. */
    @Test
    void noticeBelowTheRange() {
        assertThat(SharpTurn.notice("opening port", 1e4)).isEmpty();
        assertThat(SharpTurn.notice("opening port", 9451)).hasValueSatisfying(notice -> {
            assertThat(notice.kind()).isEqualTo(NoticeKind.REYNOLDS_BELOW_RANGE);
            assertThat(notice.part()).isEqualTo("opening port");
            assertThat(notice.value()).isEqualTo(9451);
            assertThat(notice.limit()).isEqualTo(10_000);
        });
    }

    /** Property: low, likely and high in order; faster never costs less, at each edge. */
    @Test
    void orderedAndRisingWithVelocity() {
        for (double aspect = 0.05; aspect < 20; aspect *= 1.5) {
            for (double roughness : new double[] {0, 0.001, 0.05}) {
                Zeta before = new Zeta(0, 0, 0);
                double speedBefore = 0;
                for (double reynolds = 1; reynolds < 1e7; reynolds *= 1.07) {
                    Zeta zeta = SharpTurn.zeta(aspect, reynolds, roughness);
                    assertThat(zeta.low()).isPositive().isLessThanOrEqualTo(zeta.likely());
                    assertThat(zeta.high()).isFinite().isGreaterThanOrEqualTo(zeta.likely());
                    double square = reynolds * reynolds;
                    double squareBefore = speedBefore * speedBefore;
                    assertThat(zeta.low() * square).isGreaterThan(before.low() * squareBefore);
                    assertThat(zeta.likely() * square).isGreaterThan(before.likely() * squareBefore);
                    assertThat(zeta.high() * square).isGreaterThan(before.high() * squareBefore);
                    before = zeta;
                    speedBefore = reynolds;
                }
            }
        }
    }
}
