package hushmaze.sound.estimate;

/** A figure that goes over from one thing to another in a straight line. */
final class Ramp {
    private Ramp() {}

    /** How far a value has come from one place to another, 0 to 1. */
    static double share(double value, double from, double to) {
        return Math.max(0, Math.min(1, (value - from) / (to - from)));
    }
}
