package hushmaze.sound.room;

import hushmaze.quantity.Spectrum;

/**
 * One step on the way of a sound.
 *
 * @param key what it is, a key of the wording: "levelInRoom", "powerIn", "box", "duct", "lining", "branch", "mouth", "room",
 *     "open"
 * @param part which part it belongs to; may be empty
 * @param source method and where it is published; may be empty
 * @param level level, dB, or sound power, dB re 1 pW, after this step, third octaves
 */
public record LevelStep(String key, String part, String source, Spectrum level) {
    /** The same per octave. */
    public Spectrum octaves() {
        return level.levelsInOctaves();
    }
}
