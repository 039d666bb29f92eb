package hushmaze.app.model;

import hushmaze.project.Doorway;
import hushmaze.project.DuctRun;
import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.FanSound;
import hushmaze.project.Mounting;
import hushmaze.project.MouthPosition;
import hushmaze.project.Opening;
import hushmaze.project.Outgoing;
import hushmaze.project.Project;
import hushmaze.project.SharedDuct;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.List;

/**
 * What is filled in when something is switched on, so that there is an answer at once. Every value is an assumption of
 * this program without a source, rounded to what a person would guess, and says so in its own source text.
 */
final class Assumed {
    /** Of the screws that are assumed for a mounting, m. */
    private static final double THREAD = 0.038;

    private static final double ROW_DISTANCE = 0.4;
    private static final double CLEAT = 0.019;

    /** Clear, m. */
    private static final double DOOR_WIDTH = 0.75;

    private static final double DOOR_HEIGHT = 1.95;

    /** Power of a small duct fan, dB re 1 pW: strongest low, about 66 dB in all. Own assumption. */
    private static final Spectrum FAN = octaves(62, 60, 58, 55, 52, 48, 43, 37);
    /** Loud talk and a guitar in a small room, about 78 dB in all. Own assumption. */
    private static final Spectrum PLAYED = octaves(60, 66, 72, 74, 71, 67, 61, 54);
    /** A raised voice in a small room, about 69 dB in all. Own assumption. */
    private static final Spectrum TALK = octaves(48, 54, 62, 66, 63, 57, 50, 42);
    /** Talk and a television in the next room, about 64 dB in all. Own assumption. */
    private static final Spectrum NEXT_ROOM = octaves(50, 53, 57, 60, 57, 51, 45, 38);
    /** A room at night with a computer in it, about 24 dB(A). Own assumption. */
    private static final Spectrum STILL = octaves(36, 29, 24, 20, 18, 16, 14, 12);
    /** Absorption areas of a furnished room of some 30 m³, m². Own assumption. */
    private static final List<Double> FURNISHED = List.of(5.0, 7.0, 8.0, 9.0, 10.0, 10.0, 10.0, 10.0);

    private static final double ROOM_DISTANCE_M = 2;
    private static final double OUTDOOR_DISTANCE_M = 5;
    private static final double DUCT_LENGTH_M = 5;
    /** Own assumption: about what is asked of bedrooms at night. */
    private static final double NEIGHBOUR_NR = 25;

    private final List<EnvelopeElement> elements;

    /** @param elements to take a usual wall from */
    Assumed(List<EnvelopeElement> elements) {
        this.elements = elements;
    }

    private static Spectrum octaves(double... values) {
        return new Spectrum(BandSet.OCTAVE, values);
    }

    /** Where an assumed value is from, in words that go into the project. */
    static String source(String what) {
        return Octaves.ASSUMED + " " + Texts.of("assumed." + what);
    }

    Spectrum ownNoise() {
        return STILL;
    }

    FanSound fan() {
        return new FanSound(Texts.of("assumed.fan.name"), FanSound.Side.AT_OPENING, FAN, source("fan"));
    }

    Spectrum played() {
        return PLAYED;
    }

    Spectrum outsideLevel() {
        return NEXT_ROOM;
    }

    List<Double> furnished() {
        return FURNISHED;
    }

    /** One usual wall; the noise in front of it only where no hole in a wall tells it. */
    Envelope envelope(Project project) {
        EnvelopeElement wall = elements.stream()
                .filter(e -> e.kind() == EnvelopeElement.Kind.SURFACE)
                .findFirst()
                .orElseThrow();
        boolean told =
                project.paths().stream().anyMatch(p -> p.brief().opening().kind() == Opening.Kind.WALL_OPENING);
        return told
                ? new Envelope(List.of(wall), null, null)
                : new Envelope(List.of(wall), NEXT_ROOM, source("outsideLevel"));
    }

    Outgoing outgoing(Project project, int path) {
        boolean outdoors = project.paths().get(path).brief().opening().beyond() == Opening.Beyond.OUTDOORS;
        return new Outgoing(
                PLAYED,
                outdoors ? Outgoing.Receiver.OUTDOORS : Outgoing.Receiver.ROOM,
                MouthPosition.MIDDLE_OF_SURFACE,
                outdoors ? null : FURNISHED,
                outdoors ? OUTDOOR_DISTANCE_M : ROOM_DISTANCE_M,
                neighbour(),
                source("outgoing"));
    }

    SharedDuct sharedDuct(Project project, int path) {
        Opening opening = project.paths().get(path).brief().opening();
        return new SharedDuct(
                Texts.of("assumed.sharedDuct.room"),
                TALK,
                null,
                opening.area(),
                MouthPosition.MIDDLE_OF_SURFACE,
                FURNISHED,
                ROOM_DISTANCE_M,
                new DuctRun(
                        DuctRun.Kind.RECTANGULAR_SHEET,
                        DUCT_LENGTH_M,
                        opening.width(),
                        opening.height(),
                        null,
                        List.of()),
                neighbour(),
                source("sharedDuct"));
    }

    private static Target neighbour() {
        return new Target(Target.Kind.NR, NEIGHBOUR_NR, null, source("limit"));
    }

    /** Two lag screws in each of two rows, through a cleat into studs. */
    static Mounting mounting() {
        return new Mounting(
                Mounting.Into.STUDS,
                Mounting.Timber.SPRUCE_PINE_FIR,
                Mounting.StudScrew.LAG_QUARTER,
                THREAD,
                2,
                ROW_DISTANCE,
                CLEAT,
                null,
                null,
                null,
                source("mounting"));
    }

    /** A common door inside a house; no source. */
    static Doorway doorway() {
        return new Doorway(DOOR_WIDTH, DOOR_HEIGHT);
    }
}
