package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.PathLosses;
import hushmaze.air.network.FanCurve;
import hushmaze.air.network.OrificeLaw;
import hushmaze.material.Fan;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.DoorLeak;
import hushmaze.project.Drive;
import hushmaze.project.Leakage;
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
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Validation: what is reported of fans and pressures in a room is put into the printed laws again (operating point, fan laws,
 * sizing law of openings). Property: equal paths share equally, a tight room takes out what comes in.
 */
class RoomDrivesTest {
    private static final Fan FAN = fan(0, 60, 20, 55, 40, 45, 60, 30, 80, 10, 90, 0);

    private static Fan fan(double... flowsAndPressures) {
        List<Fan.Point> points = new ArrayList<>();
        for (int i = 0; i < flowsAndPressures.length; i += 2) {
            points.add(new Fan.Point(flowsAndPressures[i] / 1000, flowsAndPressures[i + 1]));
        }
        return new Fan("made up", points, "made up");
    }

    private static Drive nothing() {
        return new Drive(Drive.Kind.NOTHING, null, null, null, "test");
    }

    private static Drive given() {
        return new Drive(Drive.Kind.GIVEN_FLOW, null, null, null, "test");
    }

    private static Drive pressure(double pascal) {
        return new Drive(Drive.Kind.GIVEN_PRESSURE, pascal, null, null, "test");
    }

    private static Drive fan(Fan fan, Double speed) {
        return new Drive(Drive.Kind.FAN_CURVE, null, fan, speed, "test");
    }

    private static VentPath path(String name, Purpose purpose, double litres, Drive drive) {
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Box box = SampleBoxes.maze(2, 0.5, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, end, end);
        Brief plain = TestRooms.brief(40, null, new Space(2, 2, 2), Opening.Beyond.INDOORS)
                .withAir(litres / 1000, 200, 20, 20);
        Brief brief = plain.withAirFrom(plain.opening(), plain.flow(), drive);
        return new VentPath(name, purpose, brief, box);
    }

    private static Assessment assess(DoorLeak door, Leakage leakage, VentPath... paths) {
        Project bare = TestRooms.project(TestRooms.nc(30), null, paths);
        Project project = new Project(
                1,
                bare.name(),
                bare.titleBlock(),
                bare.units(),
                bare.room().withAir(door, null, leakage),
                bare.stock(),
                List.of(paths));
        return Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
    }

    private static double high(VentPath path, double flow) {
        return PathLosses.of(
                        SolidBuilder.build(path.box()),
                        path.brief().opening(),
                        flow,
                        AirState.of(0, 20),
                        path.purpose())
                .pressureHigh();
    }

    @Test
    void aFanMeetsPathAndRoom() {
        VentPath in = path("in", Purpose.SUPPLY, 20, fan(FAN, null));
        VentPath out = path("out", Purpose.RETURN, 20, nothing());
        Assessment found = assess(null, null, in, out);
        PathFlow carried = found.paths().get(0).carried();
        assertThat(carried.fan()).isEqualTo(PathFlow.FanState.STEADY);
        double flow = carried.least();
        assertThat(new FanCurve(FAN).pressure(flow))
                .isCloseTo(high(in, flow) + found.room().pressure(), within(1e-6));
        assertThat(found.room().pressure()).isCloseTo(high(out, flow), within(1e-6));
        assertThat(found.room().flow()).isCloseTo(flow, within(1e-9));
        assertThat(carried.most()).isGreaterThan(carried.likely()).isGreaterThan(carried.least());
    }

    /** At the speed that is named the fan brings just what is asked for. */
    @Test
    void theSpeedNamedBringsTheFlow() {
        VentPath out = path("out", Purpose.RETURN, 20, nothing());
        VentPath full = path("in", Purpose.SUPPLY, 20, fan(FAN, null));
        Double speed = assess(null, null, full, out).paths().get(0).carried().speed();
        assertThat(speed).isBetween(0.1, 1.0);
        VentPath slowed = path("in", Purpose.SUPPLY, 20, fan(FAN, speed));
        PathResult result = assess(null, null, slowed, out).paths().get(0);
        assertThat(result.carried().least()).isCloseTo(0.020, within(1e-9));
        assertThat(result.air().flowOk()).isTrue();
        VentPath slower = path("in", Purpose.SUPPLY, 20, fan(FAN, 0.9 * speed));
        PathResult less = assess(null, null, slower, out).paths().get(0);
        assertThat(less.air().flowOk()).isFalse();
        assertThat(less.air().ok()).isFalse();
        assertThat(kinds(less)).contains(NoticeKind.FLOW_BELOW_ASKED);
    }

    @Test
    void aGivenPressureIsSpentOnPathAndRoom() {
        VentPath in = path("in", Purpose.SUPPLY, 10, pressure(8));
        VentPath out = path("out", Purpose.RETURN, 10, nothing());
        Assessment found = assess(null, null, in, out);
        double flow = found.paths().get(0).carried().least();
        assertThat(high(in, flow) + found.room().pressure()).isCloseTo(8, within(1e-6));
        VentPath sucked = path("out", Purpose.EXHAUST, 10, pressure(8));
        Assessment other = assess(null, null, path("in", Purpose.SUPPLY, 10, nothing()), sucked);
        assertThat(other.room().pressure()).isNegative();
        double back = other.paths().get(1).carried().least();
        assertThat(high(sucked, back) - other.room().pressure()).isCloseTo(8, within(1e-6));
    }

    @Test
    void equalPathsShareEqually() {
        Assessment found = assess(
                null,
                null,
                path("in", Purpose.SUPPLY, 40, given()),
                path("one", Purpose.RETURN, 20, nothing()),
                path("two", Purpose.RETURN, 20, nothing()));
        List<PathFlow> flows = found.room().air().flows();
        assertThat(flows.get(1).least()).isCloseTo(0.020, within(1e-9));
        assertThat(flows.get(1).least()).isCloseTo(flows.get(2).least(), within(1e-12));
    }

    /** Two fans in a tight room: what the one brings the other takes. */
    @Test
    void aTightRoomTakesOutWhatComesIn() {
        Assessment found = assess(
                null,
                null,
                path("in", Purpose.SUPPLY, 20, fan(FAN, null)),
                path("out", Purpose.EXHAUST, 20, fan(FAN, 0.6)));
        List<PathFlow> flows = found.room().air().flows();
        assertThat(flows.get(0).least()).isCloseTo(flows.get(1).least(), within(1e-9));
        assertThat(found.room().pressure()).isPositive();
    }

    @Test
    void fansThatCannot() {
        VentPath out = path("out", Purpose.RETURN, 20, nothing());
        Fan weak = fan(20, 5, 40, 0);
        // another supply fills the room and pushes back through it
        VentPath strongOther = path("other", Purpose.SUPPLY, 60, given());
        PathResult held = assess(null, null, path("in", Purpose.SUPPLY, 20, fan(weak, null)), strongOther, out)
                .paths()
                .get(0);
        assertThat(held.carried().least()).isNegative();
        assertThat(held.carried().fan()).isEqualTo(PathFlow.FanState.TOO_WEAK);
        assertThat(kinds(held)).contains(NoticeKind.FAN_TOO_WEAK, NoticeKind.FLOW_BELOW_ASKED);
        Fan strong = fan(0, 60, 5, 55);
        PathResult off = assess(null, null, path("in", Purpose.SUPPLY, 4, fan(strong, null)), out)
                .paths()
                .get(0);
        assertThat(off.carried().fan()).isEqualTo(PathFlow.FanState.OFF_CURVE);
        assertThat(kinds(off)).contains(NoticeKind.FAN_OFF_CURVE, NoticeKind.FLOW_ABOVE_ASKED);
    }

    /** A fan with a hump against a flow that only its unsteady part could bring: said, not guessed. */
    @Test
    void aFanThatSurgesIsSaid() {
        Fan humped = fan(0, 10, 30, 60, 60, 0);
        Assessment found = assess(
                null,
                null,
                path("in", Purpose.SUPPLY, 20, fan(humped, null)),
                path("out", Purpose.EXHAUST, 20, given()));
        if (found.room().air().state() == RoomAir.State.SOLVED) {
            assertThat(kinds(found.paths().get(0))).contains(NoticeKind.FAN_BEFORE_SUMMIT);
        } else {
            assertThat(found.room().air().state()).isEqualTo(RoomAir.State.NOT_SETTLED);
            assertThat(found.notices()).extracting(n -> n.kind()).contains(NoticeKind.ROOM_AIR_NOT_SETTLED);
            assertThat(found.room().pressure()).isNull();
        }
    }

    /** Each opening that is named, made as large as is said, holds the room at 3 Pa. */
    @Test
    void whatIsToBeEnlargedHelps() {
        VentPath in = path("in", Purpose.SUPPLY, 45, given());
        VentPath out = path("out", Purpose.RETURN, 45, nothing());
        DoorLeak door = new DoorLeak(5, 0.0005, null, 0.8, 0.004, "test");
        RoomAir air = assess(door, null, in, out).room().air();
        assertThat(air.pressure()).isGreaterThan(RoomAir.LIMIT);
        Remedy below = air.remedies().stream()
                .filter(r -> r.kind() == Remedy.Kind.DOOR)
                .findFirst()
                .orElseThrow();
        assertThat(below.area()).isCloseTo(0.0032, within(1e-12));
        DoorLeak larger = new DoorLeak(5, 0.0005, null, 0.8, below.needed() / 0.8, "test");
        assertThat(assess(larger, null, in, out).room().pressure()).isCloseTo(RoomAir.LIMIT, within(1e-6));
        Remedy path = air.remedies().get(0);
        assertThat(path.name()).isEqualTo("out");
        double factor = path.needed() / path.area();
        double throughDoor = new OrificeLaw(door.area(), AirState.of(0, 20).density()).flow(RoomAir.LIMIT);
        assertThat(high(out, (0.045 - throughDoor) / factor)).isCloseTo(RoomAir.LIMIT, within(1e-5));
    }

    /** A leak known by a blower test takes its share by its power law. */
    @Test
    void leakageTakesItsShare() {
        VentPath in = path("in", Purpose.SUPPLY, 30, given());
        Leakage leak = new Leakage(0.05, 50, 0.65, "test");
        Assessment found = assess(null, leak, in);
        // 0.03 = 0.05 (p / 50)^0.65
        assertThat(found.room().pressure()).isCloseTo(50 * Math.pow(0.6, 1 / 0.65), within(1e-6));
        assertThat(found.notices())
                .extracting(n -> n.kind())
                .contains(NoticeKind.ONLY_GAPS)
                .doesNotContain(NoticeKind.NO_WAY_OUT);
    }

    /** A house that is sucked draws air in from outdoors through the room, with nothing else to drive it. */
    @Test
    void outdoorsAtAnotherPressure() {
        VentPath in = outdoors(path("in", Purpose.SUPPLY, 10, nothing()));
        VentPath out = path("out", Purpose.RETURN, 10, nothing());
        Project bare = TestRooms.project(TestRooms.nc(30), null, in, out);
        Room r = bare.room();
        Room sucked = new Room(
                r.name(),
                r.volume(),
                r.people(),
                r.co2PerPerson(),
                r.outdoorCo2(),
                r.heatGain(),
                r.absorptionArea(),
                r.microphoneDistance(),
                r.airTemperature(),
                r.altitude(),
                null,
                r.target(),
                null,
                null,
                null,
                null,
                4.0);
        Project project =
                new Project(1, bare.name(), bare.titleBlock(), bare.units(), sucked, bare.stock(), List.of(in, out));
        RoomAir air =
                Assessor.assess(project, Methods.ESTIMATE, Progress.NONE).room().air();
        double flow = air.flows().get(0).least();
        assertThat(flow).isPositive().isCloseTo(air.flows().get(1).least(), within(1e-9));
        assertThat(high(in, flow) + air.pressure()).isCloseTo(4, within(1e-6));
        assertThat(high(out, flow)).isCloseTo(air.pressure(), within(1e-6));
    }

    private static VentPath outdoors(VentPath path) {
        Brief b = path.brief();
        Opening o = b.opening();
        Opening outdoors = new Opening(o.kind(), o.surface(), Opening.Beyond.OUTDOORS, o.width(), o.height());
        Brief changed = b.withAirFrom(outdoors, b.flow(), b.drive());
        return new VentPath(path.name(), path.purpose(), changed, path.box());
    }

    /** The chart's points lie on the laws they are drawn from, within a chart's accuracy. */
    @Test
    void chartLiesOnFanAndPath() {
        VentPath in = path("in", Purpose.SUPPLY, 20, fan(FAN, 0.8));
        VentPath out = path("out", Purpose.RETURN, 20, nothing());
        PathFlow carried = assess(null, null, in, out).paths().get(0).carried();
        FanCurve turned = new FanCurve(FAN).atSpeed(0.8);
        assertThat(carried.curve()).hasSizeGreaterThan(10);
        for (PathFlow.DrivePoint point : carried.curve()) {
            assertThat(point.drive()).isCloseTo(turned.pressure(point.flow()), within(1e-9));
            if (point.flow() > 0) {
                double taken = high(in, point.flow()) + high(out, point.flow());
                assertThat(point.high()).isCloseTo(taken, within(0.005 * taken));
                assertThat(point.low()).isLessThan(point.likely());
            }
        }
    }

    private static List<NoticeKind> kinds(PathResult result) {
        return result.notices().stream().map(n -> n.kind()).toList();
    }
}
