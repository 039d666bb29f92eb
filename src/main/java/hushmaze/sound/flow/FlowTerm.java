package hushmaze.sound.flow;

import hushmaze.quantity.Spectrum;

/**
 * One source of flow noise, as made and as it comes to the room.
 *
 * @param part that makes it
 * @param source method and where it is published
 * @param made sound power where it is made, octaves, dB re 1 pW
 * @param power what of it reaches the room port, third octaves, dB re 1 pW
 */
public record FlowTerm(String part, String source, Spectrum made, Spectrum power) {
    /** What of it reaches the room port, octaves, dB re 1 pW. */
    public Spectrum octaves() {
        return power.levelsInOctaves();
    }
}
