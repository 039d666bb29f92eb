package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinerModel;

/**
 * Fibrous liner in which sound runs in every direction: ρ/ρ0 = ζ γ, n² = γ², with ζ and γ impedance and wavenumber over
 * those of air.
 *
 * @param liner its model
 */
public record LinerMedium(LinerModel liner) implements Medium {
    @Override
    public Complex densityRatio(double frequency) {
        return liner.impedanceRatio(frequency).times(liner.wavenumberRatio(frequency));
    }

    @Override
    public Complex squaredIndex(double frequency) {
        Complex gamma = liner.wavenumberRatio(frequency);
        return gamma.times(gamma);
    }
}
