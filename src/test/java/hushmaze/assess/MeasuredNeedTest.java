package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.ComparedBand.Verdict;
import hushmaze.assess.MeasuredNeed.Standing;
import hushmaze.project.Reading.Scale;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: bands put together by hand stand to what is needed as their numbers say. */
class MeasuredNeedTest {
    private final List<BandResult> bands = new ArrayList<>();
    private final List<ComparedBand> rows = new ArrayList<>();

    /** One more octave, with an uncertainty of 2 dB; 70 dB without the box. */
    private void band(double noise, double allowed, Double reduction, boolean atLeast) {
        Band band = BandSet.OCTAVE.bands().get(bands.size());
        bands.add(new BandResult(
                band, noise, allowed, Math.max(0, noise - allowed), 0, null, null, 0, 0, 0, 0, 0, allowed));
        Double before = reduction == null ? null : Double.valueOf(70);
        Double after = reduction == null ? null : Double.valueOf(70 - reduction);
        Double off = reduction == null ? null : Double.valueOf(2);
        rows.add(new ComparedBand(band, before, after, reduction, off, null, atLeast, 0, 0, 0, Verdict.WITHIN));
    }

    private MeasuredNeed need(Scale scale) {
        return MeasuredNeed.of(bands, new Comparison("a path", BandSet.OCTAVE, rows, List.of(), true, scale));
    }

    @Test
    void aReductionIsMetOpenOrShort() {
        band(60, 40, 20.0, false);
        band(60, 40, 18.5, false);
        band(60, 40, 17.5, false);
        band(60, 40, 5.0, true);
        band(60, 40, null, false);
        MeasuredNeed need = need(Scale.FULL_SCALE);
        assertThat(need.standings())
                .containsExactly(Standing.MET, Standing.OPEN, Standing.SHORT, Standing.OPEN, Standing.NOT_MEASURED);
        assertThat(need.measured()).isEqualTo(4);
        assertThat(need.worst()).isEqualTo(BandSet.OCTAVE.bands().get(2));
        assertThat(need.shortBy()).isCloseTo(2.5, within(1e-12));
    }

    @Test
    void aQuietNoiseNeedsNothing() {
        // the box makes it louder by 6 dB, and there are 10 dB to spare
        band(30, 40, -6.0, false);
        band(Double.NEGATIVE_INFINITY, Double.NEGATIVE_INFINITY, 0.0, false);
        assertThat(need(Scale.FULL_SCALE).standings()).containsOnly(Standing.MET);
    }

    @Test
    void whereNothingIsAllowedItIsShortWithoutEnd() {
        band(60, 40, 1.0, false);
        band(60, Double.NEGATIVE_INFINITY, 30.0, false);
        MeasuredNeed need = need(Scale.AS_GIVEN);
        assertThat(need.count(Standing.SHORT)).isEqualTo(2);
        assertThat(need.worst()).isEqualTo(BandSet.OCTAVE.bands().get(1));
        assertThat(need.shortBy()).isInfinite();
        // the level allowed there is none to hold a level against
        assertThat(need.loudness().bands()).isEqualTo(1);
    }

    @Test
    void levelsAreHeldAgainstThoseAllowed() {
        band(60, 40, 35.0, false);
        band(64, 40, 28.0, false);
        MeasuredNeed.Loudness loudness = need(Scale.CALIBRATED).loudness();
        // 35 and 42 dB with the box; 70 dB without it against 60 and 64 dB
        assertThat(loudness.worst()).isEqualTo(BandSet.OCTAVE.bands().get(1));
        assertThat(loudness.above()).isCloseTo(2, within(1e-12));
        assertThat(loudness.bands()).isEqualTo(2);
        assertThat(loudness.over()).isEqualTo(1);
        assertThat(loudness.louder()).isCloseTo(8, within(1e-12));
    }

    @Test
    void levelsOfRecordingsWithoutCalibrationAreNot() {
        band(60, 40, 35.0, false);
        assertThat(need(Scale.FULL_SCALE).loudness()).isNull();
    }
}
