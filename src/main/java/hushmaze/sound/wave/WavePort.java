package hushmaze.sound.wave;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;

/**
 * Where a rigid duct of plain air leads on to infinity.
 *
 * @param normal axis of the duct
 * @param high whether the duct leads towards high values of that axis
 * @param start the first stretch of the duct: the face at its low end (high end if the duct leads low) touches the space
 */
public record WavePort(Axis normal, boolean high, Cuboid start) {
    /** Where the plane of the mouth is along the normal, m. */
    public double at() {
        return high ? start.low(normal) : start.high(normal);
    }

    /** m². */
    public double area() {
        return start.size(normal.u()) * start.size(normal.v());
    }
}
