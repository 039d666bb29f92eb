package hushmaze.sound.estimate;

import hushmaze.material.Facing;
import hushmaze.material.Liner;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;

/**
 * What estimates of many boxes in the same air have in common: the decay of lined slits, each computed when first asked for and
 * then kept. Safe for use by several threads.
 */
public final class EstimateTables {
    private final double soundSpeed;
    private final Map<Slits, double[]> decays = new ConcurrentHashMap<>();

    private record Slits(LinedSlits slits, double flowResistivity, Facing facing) {}

    /** @param soundSpeed m/s */
    public EstimateTables(double soundSpeed) {
        this.soundSpeed = soundSpeed;
    }

    /** m/s. */
    double soundSpeed() {
        return soundSpeed;
    }

    /** Decay of slits, one figure a third octave; whoever asks does not change it. */
    double[] decay(LinedSlits slits, Liner liner, Supplier<double[]> made) {
        return decays.computeIfAbsent(new Slits(slits, liner.flowResistivity(), liner.facing()), key -> made.get());
    }
}
