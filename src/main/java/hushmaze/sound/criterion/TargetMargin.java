package hushmaze.sound.criterion;

import hushmaze.project.Target;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;

/**
 * How far levels stay below a limit, and which band decides.
 *
 * <p>Limits per band (NC, NR, RC, own spectrum): the least of the bands' margins, in octaves, or in third octaves for a limit
 * in third octaves. A dB(A) limit: limit less the A-weighted total; the band with the highest A-weighted level decides.
 *
 * @param margin limit less level, dB; negative when exceeded, positive infinity for silence
 * @param governing band that decides
 * @param whole whether the margin is one of the whole spectrum, not of the band
 * @param octaves limit less level in every octave, dB; for dB(A) against an assumed shape
 */
public record TargetMargin(double margin, Band governing, boolean whole, Spectrum octaves) {
    private static final double SLACK_DB = 1e-6;

    /** The margin of levels, octaves or third octaves, to a target. */
    public static TargetMargin of(Spectrum levels, Target target) {
        TargetCurve curve = TargetCurve.of(target);
        Spectrum octaves = curve.octaves().minus(levels.levelsInOctaves());
        if (target.kind() == Target.Kind.DBA) {
            return new TargetMargin(target.number() - AWeighting.total(levels), loudest(levels), true, octaves);
        }
        boolean thirds =
                target.kind() == Target.Kind.SPECTRUM && target.spectrum().bands() == BandSet.THIRD_OCTAVE;
        return least(thirds ? curve.thirds().minus(levels.levelsInThirds()) : octaves, octaves);
    }

    /** Whether the limit is kept. */
    public boolean ok() {
        return margin >= -SLACK_DB;
    }

    private static TargetMargin least(Spectrum margins, Spectrum octaves) {
        int least = 0;
        for (int i = 1; i < margins.size(); i++) {
            least = margins.value(i) < margins.value(least) ? i : least;
        }
        return new TargetMargin(margins.value(least), margins.bands().bands().get(least), false, octaves);
    }

    private static Band loudest(Spectrum levels) {
        Spectrum octaves = levels.levelsInOctaves().plus(AWeighting.weights(BandSet.OCTAVE));
        int loudest = 0;
        for (int i = 1; i < octaves.size(); i++) {
            loudest = octaves.value(i) > octaves.value(loudest) ? i : loudest;
        }
        return BandSet.OCTAVE.bands().get(loudest);
    }
}
