package hushmaze.assess;

import hushmaze.quantity.Spectrum;

/**
 * What one path is up against.
 *
 * @param noiseThirds level at the microphone through the bare opening, dB
 * @param noiseOctaves the same per octave
 * @param allowedThirds what the target leaves for this path at the microphone, dB; negative infinity where nothing
 * @param allowedOctaves the same per octave
 * @param allowedDbA what a dB(A) target leaves for this path; null for other targets
 */
record NoiseNeed(
        Spectrum noiseThirds,
        Spectrum noiseOctaves,
        Spectrum allowedThirds,
        Spectrum allowedOctaves,
        Double allowedDbA) {}
