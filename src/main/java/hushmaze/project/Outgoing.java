package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * The other way: what is played in the quiet room, who hears it, and how much of it they may hear.
 *
 * @param levelInRoom diffuse level in the quiet room while somebody plays or speaks, dB, octaves or third octaves
 * @param receiver where it is heard
 * @param position where in the surface the opening is, on the receiver's side
 * @param absorptionArea of the receiving room per octave 63 Hz to 8 kHz, m²; absent outdoors
 * @param distance from the opening to the listener, m
 * @param limit what may be heard of it
 * @param source where level and limit are from
 */
public record Outgoing(
        Spectrum levelInRoom,
        Receiver receiver,
        MouthPosition position,
        @MayBeAbsent @Measured(Unit.SQUARE_METRE) List<Double> absorptionArea,
        @Measured(Unit.METRE) double distance,
        Target limit,
        String source) {
    /** Where the sound is heard. */
    public enum Receiver {
        /** In a neighbouring room or a hall. */
        ROOM,
        /** In the open. */
        OUTDOORS
    }

    public Outgoing {
        InvalidValue.present("levelInRoom", levelInRoom);
        for (double level : levelInRoom.values()) {
            InvalidValue.within("levelInRoom", level, -30, 160, Unit.DECIBEL);
        }
        InvalidValue.present("receiver", receiver);
        InvalidValue.present("position", position);
        if (receiver == Receiver.ROOM || absorptionArea != null) {
            absorptionArea = Absorption.checked("absorptionArea", absorptionArea);
        }
        InvalidValue.within("distance", distance, 0.1, 1000, Unit.METRE);
        InvalidValue.present("limit", limit);
        InvalidValue.text("source", source, 400);
    }
}
