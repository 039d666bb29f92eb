package hushmaze.sound.porous;

/** A porous liner as an equivalent fluid, time factor exp(+jωt); equal models give equal figures. */
public interface LinerModel {
    /** Characteristic impedance over that of air, at a frequency in Hz. */
    Complex impedanceRatio(double frequency);

    /** Wavenumber over that of air, at a frequency in Hz. */
    Complex wavenumberRatio(double frequency);
}
