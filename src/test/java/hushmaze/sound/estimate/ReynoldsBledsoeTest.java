package hushmaze.sound.estimate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the lining formula against two printed tables; properties of length, caps and notices. */
class ReynoldsBledsoeTest {
    private static final double FOOT = 0.3048;
    private static final double INCH = 0.0254;
    private static final double[] NOMINAL = {63, 125, 250, 500, 1000, 2000, 4000, 8000};

    /**
     * Minimizing Excessive Sound in Ventilation System Design (2009), printed pages 55 and 56: lining and bare duct
     * together, dB/ft. Headed as two-inch liner there, but printed a second time as the tail of the one-inch table, and it
     * is the one-inch regression. All rows but three, which contradict their neighbours: 8.40 at 1 kHz prints 0.08 dB more
     * than lies between 8.00 and 9.00; 4.33 prints what belongs to 4.50; 2.00 from 2 kHz up repeats the row of 1.77.
     */
    @ParameterizedTest
    @CsvSource({
        "12.00,2.00,2.06,2.18,3.66,10.10,10.36,4.80,2.87",
        "11.00,1.75,1.86,2.05,3.51,9.51,9.66,4.61,2.81",
        "10.00,1.49,1.63,1.89,3.33,8.90,8.95,4.41,2.74",
        "9.00,1.28,1.43,1.75,3.16,8.27,8.22,4.21,2.67",
        "8.00,1.08,1.24,1.60,2.98,7.62,7.48,3.98,2.60",
        "6.40,0.82,0.96,1.35,2.66,6.52,6.26,3.59,2.46",
        "6.00,0.77,0.90,1.29,2.57,6.23,5.94,3.49,2.42",
        "5.33,0.69,0.79,1.18,2.42,5.74,5.41,3.31,2.36",
        "5.00,0.65,0.74,1.12,2.34,5.49,5.13,3.21,2.32",
        "4.80,0.63,0.71,1.09,2.29,5.34,4.97,3.15,2.30",
        "4.00,0.56,0.60,0.96,2.09,4.70,4.29,2.90,2.20",
        "3.90,0.55,0.59,0.94,2.06,4.62,4.21,2.86,2.19",
        "3.60,0.53,0.55,0.89,1.98,4.37,3.94,2.76,2.15",
        "3.33,0.51,0.52,0.85,1.90,4.14,3.71,2.67,2.11",
        "3.20,0.51,0.51,0.82,1.87,4.02,3.59,2.62,2.09",
        "3.00,0.50,0.48,0.79,1.81,3.85,3.41,2.54,2.06",
        "2.70,0.40,0.44,0.75,1.71,3.57,3.12,2.42,2.01",
        "2.40,0.36,0.39,0.68,1.61,3.29,2.85,2.29,1.96",
        "2.19,0.33,0.35,0.64,1.54,3.09,2.65,2.20,1.91",
        "1.77,0.27,0.28,0.54,1.38,2.67,2.24,2.00,1.82",
        "1.50,0.23,0.24,0.47,1.27,2.37,1.95,1.85,1.76",
        "1.20,0.19,0.19,0.39,1.13,2.03,1.63,1.67,1.67",
        "1.00,0.16,0.16,0.34,1.03,1.79,1.41,1.54,1.60",
    })
    void printedTableWithBareDuct(
            double pa,
            double b63,
            double b125,
            double b250,
            double b500,
            double b1k,
            double b2k,
            double b4k,
            double b8k) {
        double[] printed = {b63, b125, b250, b500, b1k, b2k, b4k, b8k};
        Spectrum lining = perFoot(pa, INCH);
        for (int i = 0; i < printed.length; i++) {
            assertThat(lining.value(i) + bareDuct(pa, NOMINAL[i]))
                    .as("P/A %s, %s Hz", pa, NOMINAL[i])
                    .isCloseTo(printed[i], within(0.02));
        }
    }

    /**
     * The third misprint: at P/A = 2.00 the formula gives 2.46, 2.11 and 1.87 dB/ft from 2 kHz up (computed apart from the
     * program), where the table prints once more what it has at 1.77.
     */
    @ParameterizedTest
    @CsvSource({"5, 2.46, 2.24", "6, 2.11, 2.00", "7, 1.87, 1.82"})
    void aMisprintedRow(int octave, double computed, double printed) {
        double pa = 2.00;
        double loss = perFoot(pa, INCH).value(octave) + bareDuct(pa, NOMINAL[octave]);
        assertThat(loss).isCloseTo(computed, within(0.006)).isGreaterThan(printed + 0.04);
        assertThat(perFoot(1.77, INCH).value(octave) + bareDuct(1.77, NOMINAL[octave]))
                .isCloseTo(printed, within(0.02));
    }

    /**
     * A duct liner's data sheet quoting the ASHRAE Handbook, HVAC Applications, chapter 43, all rows: other data than the
     * regression was fitted to, dB/ft, so only loosely alike: 31 % or 0.45 dB from 250 Hz up. At 125 Hz the regression is up
     * to 2.6 times the printed figure in narrow ducts, which is what {@link LinedSlitLimit} is for.
     */
    @ParameterizedTest
    @CsvSource({
        "0.0254,8,0.6,1.5,2.7,5.8,7.4,4.3",
        "0.0254,6,0.5,1.2,2.3,5.0,5.8,3.6",
        "0.0254,4,0.4,0.8,1.9,4.0,4.1,2.8",
        "0.0254,2,0.2,0.5,1.4,2.8,2.2,1.8",
        "0.0254,1,0.1,0.3,1.0,2.0,1.2,1.2",
        "0.0508,8,0.8,2.9,4.9,7.2,7.4,4.3",
        "0.0508,6,0.6,2.3,4.2,6.2,5.8,3.6",
        "0.0508,4,0.5,1.6,3.5,5.0,4.1,2.8",
        "0.0508,2,0.3,0.8,2.3,3.3,2.0,1.7",
        "0.0508,1,0.2,0.5,1.8,2.3,1.1,1.1",
    })
    void quotedHandbookTable(
            double thickness, double pa, double b125, double b250, double b500, double b1k, double b2k, double b4k) {
        double[] printed = {b250, b500, b1k, b2k, b4k};
        Spectrum lining = perFoot(pa, Math.min(thickness, ReynoldsBledsoe.THICKEST));
        for (int i = 0; i < printed.length; i++) {
            assertThat(lining.value(i + 2))
                    .as("band %s", i)
                    .isCloseTo(printed[i], within(Math.max(0.45, 0.31 * printed[i])));
        }
        assertThat(lining.value(1)).isBetween(b125 - 0.1, 2.6 * b125);
    }

    @Test
    void zeroLengthOrNoLinerLosesNothing() {
        assertThat(ReynoldsBledsoe.loss(0.4, 0.01, 0.025, 0, "run").thirds().values())
                .containsOnly(0);
        assertThat(ReynoldsBledsoe.loss(0, 0.01, 0.025, 1, "run").octaves().values())
                .containsOnly(0);
    }

    @Test
    void aLongerRunLosesMoreInEveryThird() {
        Spectrum one = ReynoldsBledsoe.loss(0.4, 0.02, 0.025, 0.5, "run").thirds();
        Spectrum other = ReynoldsBledsoe.loss(0.4, 0.02, 0.025, 0.6, "run").thirds();
        for (int i = 0; i < one.size(); i++) {
            assertThat(other.value(i)).isGreaterThan(one.value(i));
        }
    }

    @Test
    void aRunIsHeldAtFortyDecibels() {
        BandLoss loss = ReynoldsBledsoe.loss(0.4, 0.01, 0.025, 3.1, "pass 1");
        assertThat(loss.octaves().value(4)).isEqualTo(40);
        for (double third : loss.thirds().values()) {
            assertThat(third).isLessThanOrEqualTo(40);
        }
        assertThat(loss.notices()).extracting(Notice::kind).containsExactly(NoticeKind.TERM_CAPPED);
        assertThat(loss.notices().get(0).value()).isGreaterThan(40);
    }

    @Test
    void linerOutsideTheRangeAndShortRunsAreSaid() {
        assertThat(ReynoldsBledsoe.loss(0.4, 0.04, 0.1, 1, "pass 2").notices())
                .extracting(Notice::kind)
                .containsExactly(NoticeKind.LINER_OUTSIDE_RANGE, NoticeKind.RUN_SHORTER_THAN_RANGE);
        Spectrum thick = ReynoldsBledsoe.loss(0.4, 0.04, 0.1, 1, "").octaves();
        assertThat(thick).isEqualTo(ReynoldsBledsoe.loss(0.4, 0.04, 0.05, 1, "").octaves());
    }

    /** A liner of half the least thickness is credited with half of what the least thickness does. */
    @Test
    void aThinLinerCountsInProportion() {
        Spectrum thin = ReynoldsBledsoe.loss(0.4, 0.04, 0.0125, 1, "").octaves();
        Spectrum least = ReynoldsBledsoe.loss(0.4, 0.04, 0.025, 1, "").octaves();
        for (int i = 0; i < BandSet.OCTAVE.size(); i++) {
            assertThat(thin.value(i)).isCloseTo(least.value(i) / 2, within(1e-9));
        }
    }

    private static Spectrum perFoot(double pa, double thickness) {
        return ReynoldsBledsoe.loss(pa / FOOT, 1, thickness, FOOT, "").octaves();
    }

    /** Bare sheet-metal duct, dB/ft, P/A in 1/ft: three formulas from memory, confirmed by the printed table. */
    private static double bareDuct(double pa, double f) {
        if (f > 250) {
            return 0.02 * Math.pow(pa, 0.8);
        }
        return pa >= 3 ? 17 * Math.pow(pa, -0.25) * Math.pow(f, -0.85) : 1.64 * Math.pow(pa, 0.73) * Math.pow(f, -0.58);
    }
}
