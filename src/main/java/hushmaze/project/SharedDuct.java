package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Another room on the same duct as the quiet room: talk goes through the duct both ways.
 *
 * @param room name of the other room
 * @param levelThere diffuse level made in the other room, dB
 * @param levelHere diffuse level made in the quiet room, dB; absent when the other room need not be kept quiet
 * @param openingArea clear area of the other room's opening, m²
 * @param position where in the surface that opening is
 * @param absorptionArea of the other room per octave 63 Hz to 8 kHz, m²
 * @param distance from its opening to its listener, m
 * @param run duct between the two openings
 * @param limit what may be heard in the other room
 * @param source where levels and limit are from
 */
public record SharedDuct(
        String room,
        Spectrum levelThere,
        @MayBeAbsent Spectrum levelHere,
        @Measured(Unit.SQUARE_CENTIMETRE) double openingArea,
        MouthPosition position,
        @Measured(Unit.SQUARE_METRE) List<Double> absorptionArea,
        @Measured(Unit.METRE) double distance,
        DuctRun run,
        Target limit,
        String source) {
    public SharedDuct {
        InvalidValue.text("room", room, 80);
        levels("levelThere", InvalidValue.present("levelThere", levelThere));
        if (levelHere != null) {
            levels("levelHere", levelHere);
        }
        InvalidValue.within("openingArea", openingArea, 0.0009, 9, Unit.SQUARE_CENTIMETRE);
        InvalidValue.present("position", position);
        absorptionArea = Absorption.checked("absorptionArea", absorptionArea);
        InvalidValue.within("distance", distance, 0.1, 100, Unit.METRE);
        InvalidValue.present("run", run);
        InvalidValue.present("limit", limit);
        InvalidValue.text("source", source, 400);
    }

    private static void levels(String field, Spectrum levels) {
        for (double level : levels.values()) {
            InvalidValue.within(field, level, -30, 160, Unit.DECIBEL);
        }
    }
}
