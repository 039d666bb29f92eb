package hushmaze.project;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Levels measured at one place of the room in one round.
 *
 * @param name to tell it by: a file, or a place
 * @param round what was in the wall and what was running
 * @param scale what the levels count from
 * @param levels dB, octaves or third octaves; bands may be missing
 * @param source where they are from: file, span, channel, meter; or that they are invented
 */
public record Reading(String name, Round round, Scale scale, BandLevels levels, String source) {
    /** What was in the wall, and what was running. */
    public enum Round {
        /** The source on, the opening bare, air off. */
        WITHOUT_BOX,
        /** The source on, the box in place, air off. */
        WITH_BOX,
        /** The source off: what is heard anyway. */
        SOURCE_OFF,
        /** The source on, the box in place, its air on. */
        WITH_AIR
    }

    /** What levels count from. */
    public enum Scale {
        /** As the file gives them; nothing checked their calibration. */
        AS_GIVEN,
        /** A recording without calibration: a sine at full scale is 0 dB, and only differences mean anything. */
        FULL_SCALE,
        /** A recording with a stated offset or a calibrator. */
        CALIBRATED
    }

    /** Lowest level there may be, dB: silence of a recording is far below anything that is heard. */
    public static final double LOWEST = -200;

    private static final double HIGHEST = 200;

    public Reading {
        InvalidValue.text("name", name, 80);
        InvalidValue.present("round", round);
        InvalidValue.present("scale", scale);
        InvalidValue.present("levels", levels);
        boolean some = false;
        for (int i = 0; i < levels.bands().size(); i++) {
            if (levels.covered(i)) {
                InvalidValue.within("levels", levels.level(i), LOWEST, HIGHEST, Unit.DECIBEL);
                some = true;
            }
        }
        if (!some) {
            throw new InvalidValue("levels", "no level at all", "a level in one band or more", "");
        }
        InvalidValue.text("source", source, 400);
    }

    /** The same reading under another name. */
    public Reading named(String other) {
        return new Reading(other, round, scale, levels, source);
    }
}
