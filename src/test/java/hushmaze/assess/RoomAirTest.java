package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.DoorLeak;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.NoticeKind;
import hushmaze.sound.SampleBoxes;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Validation: a door's gap by the published sizing law Q in cfm = 1.07 A in in² · √Δp in Pa (its printed digits). Property:
 * what is driven in goes out, and a passive way alone brings the room to its own pressure drop.
 */
class RoomAirTest {
    private static final double FLOW = 0.015;

    private static VentPath path(String name, Purpose purpose, Opening.Beyond beyond) {
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Box box = SampleBoxes.maze(2, 0.5, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, end, end);
        return new VentPath(name, purpose, TestRooms.brief(40, null, new Space(2, 2, 2), beyond), box);
    }

    private static Assessment assess(DoorLeak door, VentPath... paths) {
        Project bare = TestRooms.project(TestRooms.nc(30), null, paths);
        Room room = bare.room().withAir(door, null, null);
        Project project =
                new Project(1, bare.name(), bare.titleBlock(), bare.units(), room, bare.stock(), List.of(paths));
        return Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
    }

    private static VentPath supply() {
        return path("in", Purpose.SUPPLY, Opening.Beyond.DUCTWORK);
    }

    @Test
    void aPassiveWayOutBringsTheRoomToItsOwnDrop() {
        Assessment found = assess(null, supply(), path("out", Purpose.RETURN, Opening.Beyond.INDOORS));
        RoomAir air = found.room().air();
        assertThat(air.state()).isEqualTo(RoomAir.State.SOLVED);
        assertThat(air.pressure()).isCloseTo(found.paths().get(1).pathAir().pressureHigh(), within(1e-6));
        assertThat(air.likely()).isCloseTo(found.paths().get(1).pathAir().pressure(), within(1e-6));
        assertThat(air.flows().get(1).least()).isCloseTo(FLOW, within(1e-9));
    }

    @Test
    void aDoorTakesItsShareAndTheRestGoesThroughTheBox() {
        DoorLeak door = new DoorLeak(0.8, 0.01, "test");
        RoomAir air = assess(door, supply(), path("out", Purpose.RETURN, Opening.Beyond.INDOORS))
                .room()
                .air();
        // in² and cfm of the printed law
        double inches = door.area() / (0.0254 * 0.0254);
        double throughDoor = 1.07 * inches * Math.sqrt(air.pressure()) * 0.000471947;
        assertThat(throughDoor + air.flows().get(1).least()).isCloseTo(FLOW, within(0.005 * FLOW));
        assertThat(air.pressure()).isPositive();
    }

    @Test
    void suckedRoomsAreBelow() {
        VentPath fan = path("out", Purpose.EXHAUST, Opening.Beyond.DUCTWORK);
        Assessment found = assess(null, path("in", Purpose.SUPPLY, Opening.Beyond.INDOORS), fan);
        assertThat(found.room().pressure())
                .isCloseTo(-found.paths().get(0).pathAir().pressureHigh(), within(1e-6));
    }

    @Test
    void oneMoreOpeningAsLargeAsSaidKeepsTheRoomAtItsLimit() {
        VentPath in = supply();
        VentPath out = path("out", Purpose.RETURN, Opening.Beyond.INDOORS);
        RoomAir small =
                assess(new DoorLeak(0.8, 0.0001, "test"), in, out).room().air();
        // more air than the box can take at 3 Pa
        if (small.pressure() <= RoomAir.LIMIT) {
            in = new VentPath("in", in.purpose(), in.brief().withAir(0.06, 200, 20, 20), in.box());
            small = assess(new DoorLeak(0.8, 0.0001, "test"), in, out).room().air();
        }
        assertThat(small.pressure()).isGreaterThan(RoomAir.LIMIT);
        DoorLeak larger = new DoorLeak(0.8, 0.0001 + small.missing() / 0.8, "test");
        assertThat(assess(larger, in, out).room().pressure()).isCloseTo(RoomAir.LIMIT, within(1e-6));
    }

    @Test
    void roomsWithoutAnAnswerSayWhy() {
        assertThat(kinds(assess(null, supply())))
                .contains(NoticeKind.NO_WAY_OUT)
                .doesNotContain(NoticeKind.ROOM_SEALED);
        assertThat(kinds(assess(null, path("in", Purpose.SUPPLY, Opening.Beyond.INDOORS))))
                .contains(NoticeKind.NOTHING_DRIVES_AIR);
        assertThat(assess(null, supply()).room().pressure()).isNull();
        // no air comes in, whatever is asked for: the level rises as with the air off
        RoomResult tight = assess(null, supply()).room();
        assertThat(tight.isWithoutAir()).isTrue();
        assertThat(tight.course().highest()).isEqualTo(tight.sealed().highest());
        VentPath drawn = path("out", Purpose.EXHAUST, Opening.Beyond.DUCTWORK);
        assertThat(assess(null, supply(), drawn).room().pressure()).isZero();
        VentPath strong = new VentPath("out", drawn.purpose(), drawn.brief().withAir(0.02, 200, 20, 20), drawn.box());
        assertThat(kinds(assess(null, supply(), strong))).contains(NoticeKind.ROOM_SEALED);
    }

    private static List<NoticeKind> kinds(Assessment assessment) {
        return assessment.notices().stream().map(n -> n.kind()).toList();
    }
}
