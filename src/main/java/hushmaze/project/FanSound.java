package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * A fan or blower as a source of sound.
 *
 * @param name as a person would call it
 * @param side which end of the box it is at
 * @param power sound power towards the box or into the room, dB re 1 pW, octaves or third octaves, at the flow in question
 * @param source data sheet, measured or assumed: where the power is from
 */
public record FanSound(String name, Side side, Spectrum power, String source) {
    /** The end of the box a fan is at. */
    public enum Side {
        /** Beyond the opening: its sound goes through the box before it is in the room. */
        AT_OPENING,
        /** At the room's end: its sound is in the room at once. */
        IN_ROOM
    }

    public FanSound {
        InvalidValue.text("name", name, 80);
        InvalidValue.present("side", side);
        InvalidValue.present("power", power);
        for (double level : power.values()) {
            InvalidValue.within("power", level, -30, 160, Unit.DECIBEL);
        }
        InvalidValue.text("source", source, 400);
    }
}
