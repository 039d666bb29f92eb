package hushmaze.sound.estimate;

import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.List;

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
}
