package hushmaze.sound.porous;

/**
 * A porous liner as an equivalent fluid, and what lies over its face; time factor exp(+jωt); equal models give equal figures.
 */
public interface LinerModel {
    /** Characteristic impedance over that of air, at a frequency in Hz. */
    Complex impedanceRatio(double frequency);

    /** Wavenumber over that of air, at a frequency in Hz. */
    Complex wavenumberRatio(double frequency);

    /** Impedance of the facing over that of air, at a frequency in Hz: pressure across it over the velocity through it. */
    default Complex facingRatio(double frequency) {
        return new Complex(0, 0);
    }

    /** Whether there is a facing. */
    default boolean faced() {
        return false;
    }

    /**
     * Absorption of a layer on a rigid wall at normal incidence, 0 to 1.
     *
     * @param frequency Hz
     * @param thickness m
     * @param soundSpeed m/s
     */
    default double normalAbsorption(double frequency, double thickness, double soundSpeed) {
        Complex kd = wavenumberRatio(frequency).times(2 * Math.PI * frequency / soundSpeed * thickness);
        // Zs / rho c = -j Zc cot(k d), and the facing before it
        Complex surface = impedanceRatio(frequency)
                .times(kd.cotangent())
                .times(new Complex(0, -1))
                .plus(facingRatio(frequency));
        Complex below = new Complex(surface.re() + 1, surface.im());
        Complex reflection = new Complex(surface.re() - 1, surface.im()).dividedBy(below);
        return 1 - reflection.absSquared();
    }
}
