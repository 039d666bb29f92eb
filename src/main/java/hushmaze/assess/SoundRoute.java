package hushmaze.assess;

import hushmaze.quantity.Spectrum;

/**
 * One way sound comes to the microphone.
 *
 * @param kind which way
 * @param level at the microphone by this way alone, pessimistic edge, third octaves, dB; negative infinity for none
 */
public record SoundRoute(Kind kind, Spectrum level) {
    /** The ways. */
    public enum Kind {
        /** Along the air path. */
        PATH,
        /** Through the boards of the box. */
        BOARDS,
        /** Through its joints and round its cover. */
        JOINTS,
        /** Made by the moving air. */
        FLOW,
        /** Made by a fan in the path. */
        FAN,
        /** Talk from another room on the same duct. */
        TALK
    }
}
