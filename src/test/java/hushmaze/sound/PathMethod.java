package hushmaze.sound;

import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;

/** A way to compute what the path through a box loses, without its mouths. */
@FunctionalInterface
public interface PathMethod {
    /**
     * Transmission loss of the path, third octaves, dB.
     *
     * @param solid of the box
     * @param soundSpeed m/s
     */
    Spectrum thirds(Solid solid, double soundSpeed);
}
