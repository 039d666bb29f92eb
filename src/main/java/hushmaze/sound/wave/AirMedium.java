package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;

/** Plain air. */
public record AirMedium() implements Medium {
    private static final Complex ONE = new Complex(1, 0);

    @Override
    public Complex densityRatio(double frequency) {
        return ONE;
    }

    @Override
    public Complex squaredIndex(double frequency) {
        return ONE;
    }
}
