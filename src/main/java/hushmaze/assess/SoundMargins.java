package hushmaze.assess;

import hushmaze.sound.criterion.TargetMargin;
import hushmaze.sound.room.Received;
import java.util.List;

/**
 * By how much a box keeps the limits on sound, pessimistic edge, dB; negative when exceeded.
 *
 * @param target margin at the microphone; negative infinity if nothing is left for the path
 * @param others least margin of what others hear through it; positive infinity where nobody is asked about
 */
public record SoundMargins(double target, double others) {
    static SoundMargins of(double target, List<Heard> heard) {
        return new SoundMargins(
                target,
                heard.stream()
                        .map(Heard::received)
                        .map(Received::margin)
                        .mapToDouble(TargetMargin::margin)
                        .min()
                        .orElse(Double.POSITIVE_INFINITY));
    }

    /** The less of both. */
    public double least() {
        return Math.min(target, others);
    }
}
