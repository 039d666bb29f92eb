package hushmaze.sound.room;

import hushmaze.project.Outgoing;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.TargetMargin;

/**
 * What neighbours hear of the quiet room through one opening, or through a wall.
 *
 * <p>The diffuse level in the room drives power into the bare opening, the box or the wall takes its loss off, and the rest
 * radiates from the opening: in a room with its direct and reverberant sound, outdoors over the half, quarter or eighth of
 * a sphere that the surfaces leave. The loss of a box is its insertion loss, level through the bare opening less level
 * through the box, which is the same in both directions (reciprocity). Air, ground and barriers outdoors are not counted.
 *
 * <p>A wall is taken as one small source at the given distance; next to a large wall the level is higher by up to what the
 * distance takes off.
 */
public final class OutgoingLevel {
    private static final String DIFFUSE = "power of a diffuse field onto an area, textbook form";
    private static final String ROOM = "direct and reverberant sound, Building Acoustics, equation 4.49";
    private static final String OPEN = "direct sound over the part of a sphere that the surfaces leave";

    private OutgoingLevel() {}

    /**
     * The level at the receiver.
     *
     * @param outgoing what is played and who hears it
     * @param part what the sound goes through: name of the path or wall
     * @param area clear area of the bare opening, or area of the wall, m²
     * @param loss insertion loss of the box, zero for the bare opening, or transmission loss of the wall, third octaves, dB
     */
    public static Received of(Outgoing outgoing, String part, double area, Spectrum loss) {
        Spectrum onto = Spectrum.flat(BandSet.THIRD_OCTAVE, DiffuseIncidence.onto(area));
        LevelChain chain = LevelChain.from("levelInRoom", "", outgoing.levelInRoom())
                .then("powerIn", part, DIFFUSE, onto)
                .less("box", part, "", loss);
        chain = switch (outgoing.receiver()) {
            case ROOM ->
                chain.then(
                        "room",
                        "",
                        ROOM,
                        RoomLevel.gain(
                                outgoing.absorptionArea(),
                                outgoing.position(),
                                outgoing.distance(),
                                BandSet.THIRD_OCTAVE));
            case OUTDOORS -> chain.then("open", "", OPEN, outdoors(outgoing));
        };
        return new Received(chain, TargetMargin.of(chain.level(), outgoing.limit()));
    }

    private static Spectrum outdoors(Outgoing outgoing) {
        double directivity = RoomLevel.directivity(outgoing.position());
        return Spectrum.flat(BandSet.THIRD_OCTAVE, RoomLevel.outdoors(directivity, outgoing.distance()));
    }
}
