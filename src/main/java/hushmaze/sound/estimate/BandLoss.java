package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/**
 * What one method says.
 *
 * @param octaves loss per octave, dB
 * @param thirds loss per third octave, dB
 * @param notices where the method left its range
 */
public record BandLoss(Spectrum octaves, Spectrum thirds, List<Notice> notices) {
    public BandLoss {
        notices = List.copyOf(notices);
    }

    /** A loss known at the centres of the thirds only: an octave's centre is that of its middle third. */
    static BandLoss atCentres(Spectrum thirds, List<Notice> notices) {
        return new BandLoss(Spectrum.of(BandSet.OCTAVE, i -> atOctave(thirds, i)), thirds, notices);
    }

    /** No loss at all. */
    static BandLoss none() {
        return new BandLoss(Spectrum.flat(BandSet.OCTAVE, 0), Spectrum.flat(BandSet.THIRD_OCTAVE, 0), List.of());
    }

    /** The same loss, but no more in any band than the given thirds, dB. */
    BandLoss heldTo(Spectrum most) {
        return new BandLoss(
                Spectrum.of(BandSet.OCTAVE, i -> Math.min(octaves.value(i), atOctave(most, i))),
                Spectrum.of(BandSet.THIRD_OCTAVE, i -> Math.min(thirds.value(i), most.value(i))),
                notices);
    }

    /** A multiple of the loss. */
    BandLoss times(double factor) {
        return new BandLoss(
                Spectrum.of(BandSet.OCTAVE, i -> factor * octaves.value(i)),
                Spectrum.of(BandSet.THIRD_OCTAVE, i -> factor * thirds.value(i)),
                notices);
    }

    /** Both losses together. */
    BandLoss plus(BandLoss other) {
        return with(other, (one, two) -> one + two);
    }

    /** In every band the larger of two losses. */
    BandLoss atLeast(BandLoss other) {
        return with(other, Math::max);
    }

    /** In every band what this loss has more than another; none where it has less. */
    BandLoss beyond(BandLoss other) {
        return with(other, (one, two) -> Math.max(0, one - two));
    }

    private BandLoss with(BandLoss other, DoubleBinaryOperator joined) {
        return new BandLoss(
                Spectrum.of(BandSet.OCTAVE, i -> joined.applyAsDouble(octaves.value(i), other.octaves.value(i))),
                Spectrum.of(BandSet.THIRD_OCTAVE, i -> joined.applyAsDouble(thirds.value(i), other.thirds.value(i))),
                notices);
    }

    /** The same loss with one notice more. */
    BandLoss with(Notice notice) {
        List<Notice> all = new ArrayList<>(notices);
        all.add(notice);
        return new BandLoss(octaves, thirds, all);
    }

    private static double atOctave(Spectrum thirds, int octave) {
        return thirds.value(3 * octave + 1);
    }
}
