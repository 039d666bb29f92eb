package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * The quiet room.
 *
 * @param name of the room
 * @param volume m³
 * @param people how many are in it at once
 * @param co2PerPerson carbon dioxide each gives off, m³/s; absent for what the use says
 * @param outdoorCo2 carbon dioxide in the air supplied, as a fraction by volume
 * @param heatGain heat of people, lights and machines together, W; absent for what the use says
 * @param absorptionArea equivalent absorption area per octave band 63 Hz to 8 kHz, m²
 * @param microphoneDistance from the room end of the air path to the microphone or listener, m
 * @param airTemperature °C
 * @param altitude above the sea, m
 * @param ownNoise what the room has by itself with the air off, dB; absent when nothing is known of it
 * @param target how quiet it shall be
 * @param envelope what else lets sound into it; absent when only the vent paths count
 * @param door what leaks air around its shut door; absent for a door that seals
 * @param use what goes on in it; absent when only the two figures above are known
 * @param leakage what it leaks besides its door, into the house; absent for tight walls
 * @param outsidePressure outdoors over that in the house, where the door leads, Pa; absent for the same
 */
public record Room(
        String name,
        @Measured(Unit.CUBIC_METRE) double volume,
        int people,
        @MayBeAbsent @Measured(Unit.LITRE_PER_SECOND) Double co2PerPerson,
        @Measured(Unit.PARTS_PER_MILLION) double outdoorCo2,
        @MayBeAbsent @Measured(Unit.WATT) Double heatGain,
        @Measured(Unit.SQUARE_METRE) List<Double> absorptionArea,
        @Measured(Unit.METRE) double microphoneDistance,
        @Measured(Unit.CELSIUS) double airTemperature,
        @Measured(Unit.METRE) double altitude,
        @MayBeAbsent Spectrum ownNoise,
        Target target,
        @MayBeAbsent Envelope envelope,
        @MayBeAbsent DoorLeak door,
        @MayBeAbsent RoomUse use,
        @MayBeAbsent Leakage leakage,
        @MayBeAbsent @Measured(Unit.PASCAL) Double outsidePressure) {
    private static final int OCTAVES = 8;

    public Room {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("volume", volume, 1, 5000, Unit.CUBIC_METRE);
        InvalidValue.within("people", people, 0, 500);
        if (co2PerPerson != null || use == null) {
            InvalidValue.present("co2PerPerson", co2PerPerson);
            InvalidValue.within("co2PerPerson", co2PerPerson, 0, 1e-4, Unit.LITRE_PER_SECOND);
        }
        InvalidValue.within("outdoorCo2", outdoorCo2, 0, 0.005, Unit.PARTS_PER_MILLION);
        if (heatGain != null || use == null) {
            InvalidValue.present("heatGain", heatGain);
            InvalidValue.within("heatGain", heatGain, 0, 1e5, Unit.WATT);
        }
        absorptionArea = List.copyOf(InvalidValue.present("absorptionArea", absorptionArea));
        if (absorptionArea.size() != OCTAVES) {
            throw new InvalidValue(
                    "absorptionArea", absorptionArea.size() + " values", OCTAVES + " values, 63 Hz to 8 kHz", "");
        }
        for (double area : absorptionArea) {
            InvalidValue.within("absorptionArea", area, 0.05, 5000, Unit.SQUARE_METRE);
        }
        InvalidValue.within("microphoneDistance", microphoneDistance, 0.1, 20, Unit.METRE);
        InvalidValue.within("airTemperature", airTemperature, -30, 60, Unit.CELSIUS);
        InvalidValue.within("altitude", altitude, -400, 4000, Unit.METRE);
        if (ownNoise != null) {
            for (double level : ownNoise.values()) {
                InvalidValue.within("ownNoise", level, -30, 160, Unit.DECIBEL);
            }
        }
        InvalidValue.present("target", target);
        if (outsidePressure != null) {
            InvalidValue.within("outsidePressure", outsidePressure, -50, 50, Unit.PASCAL);
        }
        if (use != null && use.co2Limit() <= outdoorCo2) {
            throw new InvalidValue(
                    "use.co2Limit",
                    InvalidValue.shown(use.co2Limit(), Unit.PARTS_PER_MILLION),
                    "above the " + InvalidValue.shown(outdoorCo2, Unit.PARTS_PER_MILLION) + " of the air supplied",
                    Unit.PARTS_PER_MILLION.symbol());
        }
    }

    /** A room of whose envelope, door and use nothing is said. */
    public Room(
            String name,
            double volume,
            int people,
            double co2PerPerson,
            double outdoorCo2,
            double heatGain,
            List<Double> absorptionArea,
            double microphoneDistance,
            double airTemperature,
            double altitude,
            Spectrum ownNoise,
            Target target) {
        this(
                name,
                volume,
                people,
                co2PerPerson,
                outdoorCo2,
                heatGain,
                absorptionArea,
                microphoneDistance,
                airTemperature,
                altitude,
                ownNoise,
                target,
                null,
                null,
                null,
                null,
                null);
    }

    /** Whether air has any way but the vent paths. */
    public boolean leaks() {
        return door != null || leakage != null;
    }

    /** The same room with another door, use and leakage. */
    public Room withAir(DoorLeak otherDoor, RoomUse otherUse, Leakage otherLeakage) {
        return new Room(
                name,
                volume,
                people,
                co2PerPerson,
                outdoorCo2,
                heatGain,
                absorptionArea,
                microphoneDistance,
                airTemperature,
                altitude,
                ownNoise,
                target,
                envelope,
                otherDoor,
                otherUse,
                otherLeakage,
                outsidePressure);
    }
}
