package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinerModel;

/**
 * Most that lining can take from sound in a straight run that is wide to the wavelength: what is left goes down the middle
 * as a beam and hardly touches the liner.
 *
 * <p>Formula: from f = c / w upwards D = 10 dB + L Σ 8.686 · 2π² Re(ζ) / (k² w³), the sum over the one or two lined slits of
 * the run ({@link LinedSlits}); ζ = Z γ / sqrt(γ² - 1).
 *
 * <p>Symbols: D in dB; w clear width of a slit and L length in m; c speed of sound in m/s; k = 2πf/c in 1/m; Z impedance and γ
 * wavenumber of the liner over those of air ({@link LinerModel}); ζ what a deep layer sets against a wave running along it.
 *
 * <p>Source: the 10 dB for what does not run in the beam are a rule of silencer design, from memory. The beam's own decay is
 * the leading term of the lined slit's first mode for waves short to the width, worked out here. Both were compared with
 * mode matching of a lined slit (script beside the test).
 *
 * <p>Range: layers deep to the wave in them; a bend scatters the beam, so each straight run has its own 10 dB.
 *
 * <p>Accuracy: the decay comes out up to a half too high below 2 wavelengths of width and in layers thinner than a third of
 * a wavelength, otherwise within a fifth. Where the limit decides, it is 0 to 5 dB above the exact solution for sound that
 * comes in from all sides; sound that comes in along the axis loses 7 to 9 dB less than that.
 *
 * <p>Differs from the source: the rule of thumb is a plain 10 dB without the beam's decay; in passes of 100 mm that would
 * be far less than any solution gives.
 */
final class StraightBeam {
    /** What lining takes besides the beam's own decay, dB. */
    private static final double SCATTERED = 10;

    private static final double DECAY = 20 / Math.log(10) * 2 * Math.PI * Math.PI;

    private StraightBeam() {}

    /**
     * Frequency from which sound along the axis of a slit can lose less than the estimate says, Hz: two wavelengths in the
     * width. Below it the regression stayed under what mode matching gave for a plane wave; above it, mostly not.
     *
     * @param width clear, m
     * @param soundSpeed m/s
     */
    static double doubtfulFrom(double width, double soundSpeed) {
        return 2 * soundSpeed / width;
    }

    /**
     * Most the lining of a straight run is credited with, third octaves, dB; infinite where it carries no beam.
     *
     * @param slits of the run
     * @param length m
     * @param liner on its faces
     * @param soundSpeed m/s
     */
    static Spectrum most(LinedSlits slits, double length, LinerModel liner, double soundSpeed) {
        double begins = soundSpeed / slits.narrowest();
        return Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, f -> {
            if (f < begins || slits.widths().isEmpty()) {
                return Double.POSITIVE_INFINITY;
            }
            double sum = SCATTERED;
            for (double width : slits.widths()) {
                sum += length * decay(width, liner, f, soundSpeed);
            }
            return sum;
        });
    }

    /** Decay of the beam, dB/m. */
    static double decay(double width, LinerModel liner, double frequency, double soundSpeed) {
        double k = 2 * Math.PI * frequency / soundSpeed;
        return DECAY * grazingImpedance(liner, frequency) / (k * k * width * width * width);
    }

    /** Re ζ, of a deep layer and its facing to a wave that runs along it. */
    private static double grazingImpedance(LinerModel liner, double frequency) {
        Complex gamma = liner.wavenumberRatio(frequency);
        Complex across = gamma.times(gamma).plus(new Complex(-1, 0)).sqrt();
        Complex layer = liner.impedanceRatio(frequency).times(gamma).dividedBy(across);
        return layer.plus(liner.facingRatio(frequency)).re();
    }
}
