package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;

/**
 * A fluid as the wave equation sees it: ∇·(1/ρ ∇p) + k0² n²/ρ p = 0, time factor exp(+jωt), k0 = ω/c of plain air.
 *
 * <p>Media that are equal give equal figures, so that elements of the same medium and size can share their matrices.
 */
public interface Medium {
    /** Density over that of plain air, at a frequency in Hz. */
    Complex densityRatio(double frequency);

    /** Squared wavenumber over that of plain air, n², at a frequency in Hz; its imaginary part is not positive. */
    Complex squaredIndex(double frequency);
}
