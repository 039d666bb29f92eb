package hushmaze.sound.room;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.List;

/**
 * The way of a sound from where it is made to where it is heard, step by step, in third octaves. Octave levels given at the
 * start are spread evenly over their thirds.
 *
 * @param steps in the order of the sound, the first being what is given
 */
public record LevelChain(List<LevelStep> steps) {
    public LevelChain {
        steps = List.copyOf(steps);
        if (steps.isEmpty()) {
            throw new IllegalArgumentException("a chain needs a beginning");
        }
    }

    /** A chain that begins with levels or powers. */
    static LevelChain from(String key, String part, Spectrum levels) {
        return new LevelChain(List.of(new LevelStep(key, part, "", levels.levelsInThirds())));
    }

    /** The chain with one more step that adds a gain, negative for a loss, third octaves, dB. */
    LevelChain then(String key, String part, String source, Spectrum gain) {
        List<LevelStep> more = new ArrayList<>(steps);
        more.add(new LevelStep(key, part, source, level().plus(gain)));
        return new LevelChain(more);
    }

    /** The chain with one more step that takes a loss off, third octaves, dB. */
    LevelChain less(String key, String part, String source, Spectrum loss) {
        return then(key, part, source, Spectrum.of(loss.bands(), i -> -loss.value(i)));
    }

    /** Level at the end, third octaves, dB. */
    public Spectrum level() {
        return steps.get(steps.size() - 1).level();
    }

    /** Level at the end, octaves, dB. */
    public Spectrum octaves() {
        return level().levelsInOctaves();
    }

    /**
     * What a step changes for this sound, octaves, dB: negative for a loss; zero where nothing was left to change.
     *
     * @param step from 1, the first after the beginning
     */
    public Spectrum change(int step) {
        Spectrum before = steps.get(step - 1).octaves();
        Spectrum after = steps.get(step).octaves();
        return Spectrum.of(
                BandSet.OCTAVE,
                i -> before.value(i) == Double.NEGATIVE_INFINITY ? 0 : after.value(i) - before.value(i));
    }
}
