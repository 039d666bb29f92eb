package hushmaze.measure;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/** What to add to levels of recordings, for which a sine at full scale is 0 dB, to have sound pressure levels. */
public final class Calibration {
    /** A calibrator's tone is the loudest band and all there is but for so much, dB. */
    private static final double ALL_BUT = 0.5;

    private Calibration() {}

    /**
     * From the recording of a calibrator.
     *
     * @param tone the recording
     * @param name of it, for messages
     * @param level of the calibrator, dB
     * @return dB to add
     * @throws InvalidValue if what was recorded is no tone alone
     */
    public static double offset(Recording tone, String name, double level) {
        InvalidValue.within("calibrator level", level, 50, 140, Unit.DECIBEL);
        double loudest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
            if (tone.bands().covered(i)) {
                loudest = Math.max(loudest, tone.bands().level(i));
            }
        }
        double all = tone.weighted().get(Weighting.Z).leq();
        if (!(all - loudest <= ALL_BUT)) {
            throw new InvalidValue(
                    name,
                    "a loudest third octave " + InvalidValue.shown(all - loudest, Unit.DECIBEL) + " dB below the whole",
                    "the tone of a calibrator, at most 0.5 dB below the whole",
                    "");
        }
        return level - loudest;
    }
}
