package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.DuctRun;
import hushmaze.project.DuctRun.Kind;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.sound.estimate.ReynoldsBledsoe;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of bare ducts against printed tables; properties. */
class BareDuctTest {
    /**
     * <i>Minimizing Excessive Sound in Ventilation System Design</i> (2009), worked examples: perimeter over area in 1/ft,
     * then dB/ft at 63, 125 and 250 Hz of bare ducts. Its ratio is rounded to 0.01, which
     * moves the last digit. (Above 250 Hz the guide carries the low-frequency formula on.)
     */
    @ParameterizedTest
    @CsvSource({"1.42, 0.192, 0.128, 0.086", "2.17, 0.260, 0.175, 0.117"})
    void bareDuctsAsPrinted(double perimeterOverArea, double at63, double at125, double at250) {
        assertThat(perFoot(perimeterOverArea, 63)).isCloseTo(at63, within(0.0015));
        assertThat(perFoot(perimeterOverArea, 125)).isCloseTo(at125, within(0.0015));
        assertThat(perFoot(perimeterOverArea, 250)).isCloseTo(at250, within(0.0015));
    }

    /**
     * The same guide, table of ducts with 1 in of liner: perimeter over area in 1/ft, then dB/ft in the octaves 63 Hz to 8
     * kHz, lining and bare duct together. Rows that do not fit their neighbours are left out.
     */
    @ParameterizedTest
    @CsvSource({
        "12.00, 2.00, 2.06, 2.18, 3.66, 10.10, 10.36, 4.80, 2.87",
        "6.00, 0.77, 0.90, 1.29, 2.57, 6.23, 5.94, 3.49, 2.42",
        "4.00, 0.56, 0.60, 0.96, 2.09, 4.70, 4.29, 2.90, 2.20",
        "2.40, 0.36, 0.39, 0.68, 1.61, 3.29, 2.85, 2.29, 1.96",
        "1.00, 0.16, 0.16, 0.34, 1.03, 1.79, 1.41, 1.54, 1.60",
    })
    void linedDuctsAsPrinted(
            double perimeterOverArea,
            double f63,
            double f125,
            double f250,
            double f500,
            double f1k,
            double f2k,
            double f4k,
            double f8k) {
        double[] printed = {f63, f125, f250, f500, f1k, f2k, f4k, f8k};
        double perMetre = Unit.FOOT.fromSi(perimeterOverArea);
        double foot = Unit.FOOT.toSi(1.0);
        Spectrum lining =
                ReynoldsBledsoe.loss(perMetre, 1, 0.0254, foot, "duct").octaves();
        for (int i = 0; i < printed.length; i++) {
            double nominal = BandSet.OCTAVE.bands().get(i).nominalHz();
            assertThat(lining.value(i) + perFoot(perimeterOverArea, nominal))
                    .as("%s Hz", nominal)
                    .isCloseTo(printed[i], within(0.011));
        }
    }

    /** Engineering reference on unlined ducts: round, 100 to 300 mm, 0.1 dB/m up to 250 Hz and none above; larger, none. */
    @Test
    void roundDuctsAsPrinted() {
        Spectrum small = BareDuct.loss(new DuctRun(Kind.ROUND_SHEET, 10, 0.2, null, null, List.of()));
        assertThat(small.values()).containsExactly(1, 1, 1, 0, 0, 0, 0, 0);
        Spectrum large = BareDuct.loss(new DuctRun(Kind.ROUND_SHEET, 10, 0.4, null, null, List.of()));
        assertThat(large.values()).containsOnly(0);
    }

    @Test
    void stiffWallsTakeNothingAndAnyRunIsInProportionToItsLength() {
        assertThat(BareDuct.loss(run(Kind.STIFF_WALLS, 30)).values()).containsOnly(0);
        Spectrum one = BareDuct.loss(run(Kind.RECTANGULAR_SHEET, 1));
        Spectrum five = BareDuct.loss(run(Kind.RECTANGULAR_SHEET, 5));
        for (int i = 0; i < one.size(); i++) {
            assertThat(five.value(i)).isCloseTo(5 * one.value(i), within(1e-9));
            assertThat(one.value(i)).isPositive();
        }
    }

    private static DuctRun run(Kind kind, double length) {
        return new DuctRun(kind, length, 0.3, 0.2, null, List.of());
    }

    private static double perFoot(double perimeterOverArea, double f) {
        return Unit.FOOT.toSi(BareDuct.rectangular(Unit.FOOT.fromSi(perimeterOverArea), f));
    }
}
