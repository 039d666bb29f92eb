package hushmaze.sound.criterion;

import hushmaze.project.Target;
import hushmaze.quantity.Spectrum;

/**
 * A target as limits per band.
 *
 * <p>NC, NR and RC: the octave limits are the curve, without the allowance that RC has for rumble and hiss. An own spectrum is taken as it is in its own bands. For dB(A) no shape is
 * given, so one is assumed: the noise rating curve, its number chosen so that its A-weighted octave total is the target
 * (below NR 0 the curves' formula is carried on).
 *
 * <p>Octave limits become third-octave limits by interpolating over log frequency and taking 10 lg 3 off, third-octave
 * limits become octave limits by energy sum. The first is an assumption: at a bend of the curve the three thirds do not add
 * up to the octave's limit exactly.
 *
 * @param octaves limits per octave, dB
 * @param thirds limits per third octave, dB
 * @param shapeAssumed whether the shape over frequency is our assumption, not the target's own
 */
public record TargetCurve(Spectrum octaves, Spectrum thirds, boolean shapeAssumed) {
    private static final double LOWEST_SHAPE = -100;
    private static final double HIGHEST_SHAPE = 150;
    private static final int HALVINGS = 50;

    /** The limits of a target. */
    public static TargetCurve of(Target target) {
        return switch (target.kind()) {
            case NC -> fromOctaves(NoiseCriterion.curve(target.number()), false);
            case NR -> fromOctaves(NoiseRating.curve(target.number()), false);
            case RC -> fromOctaves(RoomCriterion.curve(target.number()), false);
            case DBA -> fromOctaves(shapeOf(target.number()), true);
            case SPECTRUM -> ofSpectrum(target.spectrum());
        };
    }

    private static TargetCurve ofSpectrum(Spectrum limits) {
        return switch (limits.bands()) {
            case OCTAVE -> fromOctaves(limits, false);
            case THIRD_OCTAVE -> new TargetCurve(limits.levelsInOctaves(), limits, false);
        };
    }

    private static TargetCurve fromOctaves(Spectrum octaves, boolean assumed) {
        Spectrum thirds = octaves.interpolatedInThirds().plus(-Spectrum.THIRD_OF_OCTAVE_DB);
        return new TargetCurve(octaves, thirds, assumed);
    }

    /** The rating curve with a given A-weighted total: the total rises with the number, so halving finds it. */
    private static Spectrum shapeOf(double dbA) {
        double low = LOWEST_SHAPE;
        double high = HIGHEST_SHAPE;
        for (int i = 0; i < HALVINGS; i++) {
            double middle = (low + high) / 2;
            if (AWeighting.total(NoiseRating.shape(middle)) < dbA) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return NoiseRating.shape((low + high) / 2);
    }
}
