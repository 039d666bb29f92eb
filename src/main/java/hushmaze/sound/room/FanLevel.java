package hushmaze.sound.room;

import hushmaze.project.FanSound;
import hushmaze.quantity.Spectrum;

/**
 * A fan as a source on its side of a box: what of its power comes out at either end, third octaves, dB re 1 pW. At the
 * opening its sound goes through the box into the room; in the room it is there at once, and goes through the box the other
 * way. The power is that which the fan sends towards the end in question.
 */
public final class FanLevel {
    private FanLevel() {}

    /**
     * Power that a fan puts into the room.
     *
     * @param fan source
     * @param loss of the box between its ports, with the loss at the mouth the sound comes out of, third octaves, dB
     */
    public static Spectrum intoRoom(FanSound fan, Spectrum loss) {
        return switch (fan.side()) {
            case AT_OPENING -> through(fan, loss);
            case IN_ROOM -> fan.power().levelsInThirds();
        };
    }

    /** Power that a fan puts out beyond the opening; loss as for {@link #intoRoom}. */
    public static Spectrum beyondOpening(FanSound fan, Spectrum loss) {
        return switch (fan.side()) {
            case AT_OPENING -> fan.power().levelsInThirds();
            case IN_ROOM -> through(fan, loss);
        };
    }

    private static Spectrum through(FanSound fan, Spectrum loss) {
        return fan.power().levelsInThirds().minus(loss);
    }
}
