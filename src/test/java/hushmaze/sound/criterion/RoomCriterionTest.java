package hushmaze.sound.criterion;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the room criterion against two published ratings and its definition worked by hand. */
class RoomCriterionTest {
    /**
     * Minimizing Excessive Sound in Ventilation System Design (2009), chapter 2: 43, 35 and 30 dB make RC 36 (N). A guide to
     * fundamentals of duct acoustics: 38, 31 and 24 dB make RC 31. Other octaves on the line here.
     */
    @ParameterizedTest
    @CsvSource({"43, 35, 30, 36", "38, 31, 24, 31"})
    void publishedRatings(double at500, double at1000, double at2000, double printed) {
        double[] levels = RoomCriterion.curve(printed).values();
        levels[3] = at500;
        levels[4] = at1000;
        levels[5] = at2000;
        RoomCriterion.Rating rating = RoomCriterion.rate(new Spectrum(BandSet.OCTAVE, levels));
        assertThat(rating.number().orElseThrow()).isCloseTo(printed, within(1e-9));
        assertThat(rating.tag()).isEqualTo("N");
    }

    /** By hand: five decibels per octave around 1 kHz. */
    @Test
    void theCurveIsAStraightLine() {
        assertThat(RoomCriterion.curve(25).values()).containsExactly(45, 40, 35, 30, 25, 20, 15, 10);
    }

    /**
     * Limits by hand for RC 30: 5 dB above the line up to 500 Hz, 3 dB above it from 1 to 4 kHz. Columns: octave index, level
     * just allowed, tag just above.
     */
    @ParameterizedTest
    @CsvSource({"0, 55, R", "1, 50, R", "2, 45, R", "6, 23, H"})
    void tagsBeginAboveTheirLimits(int octave, double allowed, String tag) {
        double[] levels = RoomCriterion.curve(30).values();
        levels[octave] = allowed;
        assertThat(RoomCriterion.rate(new Spectrum(BandSet.OCTAVE, levels)).tag())
                .isEqualTo("N");
        levels[octave] = allowed + 0.01;
        RoomCriterion.Rating above = RoomCriterion.rate(new Spectrum(BandSet.OCTAVE, levels));
        assertThat(above.tag()).isEqualTo(tag);
        assertThat(above.governing()).isEqualTo(BandSet.OCTAVE.bands().get(octave));
    }

    /** By hand: 40, 30 and 20 dB are RC 30, whose line is 35, 30, 25: 500 Hz lies at its limit, which is not above it. */
    @Test
    void rumbleAndHissAtOnce() {
        Spectrum both = new Spectrum(BandSet.OCTAVE, 60, 45, 40, 35, 30, 25, 24, 5);
        assertThat(RoomCriterion.rate(both).tag()).isEqualTo("RH");
        Spectrum steep = new Spectrum(BandSet.OCTAVE, 50, 45, 40, 40, 30, 20, 15, 5);
        assertThat(RoomCriterion.rate(steep).tag()).isEqualTo("N");
    }

    @Test
    void thirdsAreSummedFirst() {
        Spectrum octaves = new Spectrum(BandSet.OCTAVE, 60, 45, 40, 35, 30, 25, 24, 5);
        assertThat(RoomCriterion.rate(octaves.levelsInThirds()).number().orElseThrow())
                .isCloseTo(30, within(1e-9));
    }

    @Test
    void silenceHasNoNumberAndNoTag() {
        RoomCriterion.Rating silent = RoomCriterion.rate(Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY));
        assertThat(silent.number()).isEmpty();
        assertThat(silent.tag()).isEmpty();
    }

    @Test
    void curvesOfImpossibleNumbersAreRefused() {
        assertThatThrownBy(() -> RoomCriterion.curve(Double.NaN)).isInstanceOf(InvalidValue.class);
        assertThatThrownBy(() -> RoomCriterion.curve(131)).isInstanceOf(InvalidValue.class);
    }
}
