package hushmaze.sound;

import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * One contribution to a box's insertion loss.
 *
 * @param key what it is, a key of the wording: "lining", "turn", "areaStep", "mouths", "chamber"
 * @param part which part it belongs to: "pass 1", "turn 2"; may be empty
 * @param source method and where it is published
 * @param octaves insertion loss per octave, dB
 * @param thirds insertion loss per third octave, dB
 * @param inputs the numbers that went in, in the order of the formula; may be empty
 */
public record LossTerm(
        String key, String part, String source, Spectrum octaves, Spectrum thirds, List<TermInput> inputs) {
    public LossTerm {
        inputs = List.copyOf(inputs);
    }
}
