package hushmaze.store;

import hushmaze.project.Noise;
import hushmaze.quantity.InvalidValue;

/**
 * A noise to choose from a list.
 *
 * @param name what it is
 * @param noise its levels, with their source
 */
public record NoisePreset(String name, Noise noise) {
    public NoisePreset {
        InvalidValue.text("name", name, 80);
        InvalidValue.present("noise", noise);
    }
}
