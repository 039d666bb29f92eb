package hushmaze.assess;

import hushmaze.air.PathAir;
import hushmaze.air.need.Draught;
import hushmaze.air.need.JetVelocity;
import hushmaze.project.Room;
import hushmaze.project.VentPath;

/**
 * The air of a supply path where the nearest person is: on the axis of the jet from its mouth in the room, at the distance of
 * the microphone or listener, in air as warm as the room.
 *
 * @param path name
 * @param distance from the mouth, m
 * @param velocity of the air there
 * @param rate share of people who feel a draught at the likely velocity, %
 * @param rateHigh the same at the high velocity, %
 * @param inRange whether the formula was made for this
 */
public record DraughtAtPerson(
        String path, double distance, JetVelocity velocity, double rate, double rateHigh, boolean inRange) {
    /** Most of the middle category of ISO 7730, %. */
    public static final double LIMIT = 20;
    /** Warmest air for which a draught is reckoned, °C. */
    private static final double WARMEST = 33.9;

    static DraughtAtPerson of(VentPath path, PathAir air, Room room) {
        PathAir.PlaceVelocity mouth = air.velocities().stream()
                .filter(v -> v.place() == PathAir.Place.ROOM_MOUTH)
                .reduce((a, b) -> b)
                .orElseThrow();
        double area = air.flow() / mouth.velocity();
        JetVelocity jet = JetVelocity.at(area, mouth.velocity(), room.microphoneDistance());
        double warm = Math.min(WARMEST, room.airTemperature());
        return new DraughtAtPerson(
                path.name(),
                room.microphoneDistance(),
                jet,
                Draught.rate(jet.likely(), warm, Draught.USUAL_TURBULENCE),
                Draught.rate(jet.high(), warm, Draught.USUAL_TURBULENCE),
                Draught.inRange(jet.likely(), room.airTemperature(), Draught.USUAL_TURBULENCE));
    }
}
