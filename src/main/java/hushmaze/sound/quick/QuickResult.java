package hushmaze.sound.quick;

import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * What the quick wave finds for one box.
 *
 * @param frequencies five to a third octave, or three for differences, from 50 Hz to 10 kHz, Hz
 * @param transmissionLoss at each frequency between unlined ducts of the ports' sections, dB: a plane wave comes in by the
 *     port at the opening, all modes that leave by the port in the room are counted
 * @param thirds the same per third octave, from the mean energy let through, dB
 * @param passLevels per pass, from the opening: mean square of the pressure in its air relative to that of the incident
 *     wave, per third octave by mean energy, dB
 * @param notices what limits the figures
 */
public record QuickResult(
        double[] frequencies,
        double[] transmissionLoss,
        Spectrum thirds,
        List<Spectrum> passLevels,
        List<Notice> notices) {
    public QuickResult {
        frequencies = frequencies.clone();
        transmissionLoss = transmissionLoss.clone();
        passLevels = List.copyOf(passLevels);
        notices = List.copyOf(notices);
    }

    @Override
    public double[] frequencies() {
        return frequencies.clone();
    }

    @Override
    public double[] transmissionLoss() {
        return transmissionLoss.clone();
    }
}
