package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;

/**
 * How finely a space is resolved.
 *
 * @param extraDegree added to the degree that the wavelength asks for
 * @param extraLayers layers of small intervals next to re-entrant edges; below zero none, as zero
 */
public record WaveAccuracy(int extraDegree, int extraLayers) {
    /** Errors below some hundredths of a decibel; see {@link WaveSolver}. */
    public static final WaveAccuracy STANDARD = new WaveAccuracy(0, 0);
    /** To judge the errors of the standard. */
    public static final WaveAccuracy FINE = new WaveAccuracy(3, 2);

    public WaveAccuracy {
        InvalidValue.within("extraDegree", extraDegree, -4, 12);
        InvalidValue.within("extraLayers", extraLayers, -2, 8);
    }
}
