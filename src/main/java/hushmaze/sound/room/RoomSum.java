package hushmaze.sound.room;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * Everything heard at the room's microphone, added by energy: paths, flow noise, fans, the room's own noise.
 *
 * @param parts what is heard
 * @param level of all together, third octaves, dB; negative infinity for silence
 */
public record RoomSum(List<Part> parts, Spectrum level) {
    /**
     * One thing that is heard.
     *
     * @param name of it
     * @param level at the microphone, third octaves, dB
     */
    public record Part(String name, Spectrum level) {}

    public RoomSum {
        parts = List.copyOf(parts);
    }

    /** The sum of parts; none at all is silence. */
    public static RoomSum of(List<Part> parts) {
        Spectrum sum = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        for (Part part : parts) {
            sum = sum.energyPlus(part.level());
        }
        return new RoomSum(parts, sum);
    }

    /** Level of all together, octaves, dB. */
    public Spectrum octaves() {
        return level.levelsInOctaves();
    }

    /**
     * The part that is loudest in one octave, the first of equals.
     *
     * @throws IllegalStateException if there are no parts
     */
    public Part loudest(int octave) {
        if (parts.isEmpty()) {
            throw new IllegalStateException("nothing is heard, so nothing is loudest");
        }
        Part loudest = parts.get(0);
        for (Part part : parts) {
            boolean louder = part.level().levelsInOctaves().value(octave)
                    > loudest.level().levelsInOctaves().value(octave);
            loudest = louder ? part : loudest;
        }
        return loudest;
    }
}
