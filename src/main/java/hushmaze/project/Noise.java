package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * The noise that comes through the bare opening, without a box.
 *
 * @param levels sound pressure levels, dB, octaves or third octaves
 * @param place where they hold
 * @param distance from the opening, m, when {@code place} is {@link Place#AT_DISTANCE}
 * @param source measured, imported, typical or invented: where they are from
 */
public record Noise(
        Spectrum levels,
        Place place,
        @MayBeAbsent @Measured(Unit.METRE) Double distance,
        String source) {
    /** Where the levels were heard. */
    public enum Place {
        /** In the room, at the microphone or the listener. */
        AT_MICROPHONE,
        /** In the room, at a stated distance from the opening. */
        AT_DISTANCE
    }

    public Noise {
        InvalidValue.present("levels", levels);
        for (int i = 0; i < levels.size(); i++) {
            InvalidValue.within("levels", levels.value(i), -30, 160, Unit.DECIBEL);
        }
        InvalidValue.present("place", place);
        if (place == Place.AT_DISTANCE) {
            InvalidValue.present("distance", distance);
        }
        if (distance != null) {
            InvalidValue.within("distance", distance, 0.1, 20, Unit.METRE);
        }
        InvalidValue.text("source", source, 400);
    }
}
