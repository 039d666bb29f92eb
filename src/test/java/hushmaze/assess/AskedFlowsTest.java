package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.need.DuctVelocity;
import hushmaze.air.need.GoverningNeed;
import hushmaze.air.need.OpeningVelocity;
import hushmaze.air.need.RoomNeed;
import hushmaze.project.Activity;
import hushmaze.project.AirRule;
import hushmaze.project.Brief;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.RoomUse;
import hushmaze.project.Session;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of needs worked by hand, and <em>property</em> tests of flows that follow from them. */
class AskedFlowsTest {
    private static RoomUse use(double co2Limit, double machines, Session... timetable) {
        return new RoomUse(
                Activity.SEATED_WORK,
                AirRule.MUSIC,
                14,
                co2Limit,
                30,
                machines,
                0,
                18,
                26,
                null,
                null,
                List.of(timetable),
                "test");
    }

    private static Room room(int people, RoomUse use) {
        return new Room(
                "booth",
                30,
                people,
                null,
                420e-6,
                null,
                Collections.nCopies(8, 5.0),
                1.5,
                20,
                0,
                null,
                TestRooms.nc(30),
                null,
                null,
                use,
                null,
                null);
    }

    private static VentPath path(String name, Purpose purpose, Double litres) {
        Brief b = TestRooms.brief(40, null, new Space(2, 2, 2), Opening.Beyond.INDOORS);
        Brief brief = b.withAirFrom(b.opening(), litres == null ? null : Double.valueOf(litres / 1000), null);
        return new VentPath(name, purpose, brief, null);
    }

    private static Project project(Room room, VentPath... paths) {
        Project p = TestRooms.project(TestRooms.nc(30), null, path("x", Purpose.SUPPLY, 10.0));
        return new Project(1, p.name(), p.titleBlock(), p.units(), room, p.stock(), List.of(paths));
    }

    private static List<Double> litres(Project project) {
        return project.paths().stream().map(p -> p.brief().flow() * 1000).toList();
    }

    /**
     * Validation, by hand: two seated at work on 14 m². Rule 2 · 5 + 0.3 · 14 = 14.2 L/s. Carbon dioxide 2 · 0.005149 L/s over
     * (1000 - 420) ppm = 17.8 L/s. Heat 2 · 70 + 30 + machines over 1.2041 · 1006 · 8 K: 17.5 L/s without machines, 38.2 L/s
     * with 200 W.
     */
    @Test
    void grounds() {
        GoverningNeed quiet = RoomNeed.governing(room(2, use(1000e-6, 0))).orElseThrow();
        assertThat(quiet.flows().get(0).flow() * 1000).isCloseTo(14.2, within(1e-9));
        assertThat(quiet.flows().get(1).flow() * 1000).isCloseTo(17.8, within(0.05));
        assertThat(quiet.flows().get(2).flow() * 1000).isCloseTo(17.5, within(0.05));
        assertThat(quiet.governing().key()).isEqualTo("co2Limit");
        GoverningNeed hot = RoomNeed.governing(room(2, use(1000e-6, 200))).orElseThrow();
        assertThat(hot.governing().key()).isEqualTo("heatRise");
        assertThat(hot.governing().flow() * 1000).isCloseTo(38.2, within(0.05));
    }

    /** Supplies share what is left of the need; returns what all supplies bring. */
    @Test
    void shares() {
        Room room = room(2, use(1000e-6, 200));
        double need = RoomNeed.governing(room).orElseThrow().governing().flow() * 1000;
        Project settled = AskedFlows.settled(project(
                room,
                path("a", Purpose.SUPPLY, null),
                path("b", Purpose.SUPPLY, 10.0),
                path("c", Purpose.SUPPLY, null),
                path("d", Purpose.RETURN, null),
                path("e", Purpose.EXHAUST, 8.0)));
        assertThat(litres(settled).get(0)).isCloseTo((need - 10) / 2, within(1e-9));
        assertThat(litres(settled).get(2)).isEqualTo(litres(settled).get(0));
        assertThat(litres(settled).get(3)).isCloseTo(need - 8, within(1e-9));
        Project exhausted = AskedFlows.settled(project(room, path("d", Purpose.RETURN, null)));
        assertThat(litres(exhausted).get(0)).isCloseTo(need, within(1e-9));
        Project asGiven = project(room, path("a", Purpose.SUPPLY, 12.0));
        assertThat(AskedFlows.settled(asGiven)).isSameAs(asGiven);
    }

    @Test
    void refusesWhatDoesNotFollow() {
        RoomUse cold = new RoomUse(
                Activity.SEATED_QUIET, AirRule.EN_CATEGORY_II, 10, 1000e-6, 0, 0, 0, 18, 26, null, null, null, "test");
        assertThatThrownBy(() -> AskedFlows.settled(project(room(0, cold), path("a", Purpose.SUPPLY, null))))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("room.people: 0")
                .hasMessageContaining("at least 1");
        Room room = room(2, use(1000e-6, 0));
        assertThatThrownBy(() -> AskedFlows.settled(
                        project(room, path("a", Purpose.SUPPLY, 40.0), path("b", Purpose.SUPPLY, null))))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("paths[1].brief.flow")
                .hasMessageContaining("40.0 L/s");
        assertThatThrownBy(() -> room(2, use(400e-6, 0)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("co2Limit: 400 ppm is not accepted; it must be above the 420 of the air");
        assertThatThrownBy(() -> room(2, null)).isInstanceOf(InvalidValue.class).hasMessageContaining("co2PerPerson");
    }

    /** What the room states itself comes before what follows from its use. */
    @Test
    void ownFiguresComeFirst() {
        Room r = room(2, use(1000e-6, 200));
        Room own = new Room(
                r.name(),
                r.volume(),
                2,
                0.004e-3,
                r.outdoorCo2(),
                100.0,
                r.absorptionArea(),
                r.microphoneDistance(),
                r.airTemperature(),
                r.altitude(),
                null,
                r.target(),
                null,
                null,
                r.use(),
                null,
                null);
        assertThat(RoomNeed.co2PerPerson(own)).isEqualTo(0.004e-3);
        assertThat(RoomNeed.heat(own)).isEqualTo(100);
        assertThat(RoomNeed.heat(r)).isEqualTo(2 * 70 + 30 + 200);
    }

    /** The course follows the timetable: up with people, down in the break, faster up with the air off. */
    @Test
    void timetable() {
        Room room =
                room(2, use(1000e-6, 0, new Session(60, 2, true), new Session(30, 0, true), new Session(30, 2, false)));
        var course = RoomNeed.course(room, 0.02, 0, 7200);
        assertThat(course.duration()).isEqualTo(120 * 60);
        List<Double> ends = course.levelsAtEnds();
        assertThat(ends.get(0)).isGreaterThan(420e-6);
        assertThat(ends.get(1)).isLessThan(ends.get(0));
        // with the air off it rises by the people alone: 2 · 0.005149 L/s for half an hour in 30 m³
        assertThat(ends.get(2) - ends.get(1)).isCloseTo(2 * 0.005149e-3 * 1800 / 30, within(1e-7));
    }

    /** Validation: half of the printed 950, 1450 and 2000 ft/min at RC 25, 35 and 45; 1200 by hand half way to 35. */
    @ParameterizedTest(name = "RC {0}")
    @CsvSource({"15, 475", "25, 475", "30, 600", "35, 725", "45, 1000"})
    void lastRuns(double rc, double feet) {
        assertThat(DuctVelocity.lastRun(rc).orElseThrow() / 0.00508).isCloseTo(feet, within(1e-6));
        assertThat(DuctVelocity.lastRun(46)).isEmpty();
    }

    /** Validation: rows of the printed guideline, upper ends, ft/min. */
    @ParameterizedTest(name = "NC {0}")
    @CsvSource({
        "10, 300, 360",
        "15, 300, 360",
        "20, 300, 360",
        "21, 350, 420",
        "25, 350, 420",
        "30, 425, 510",
        "45, 650, 780"
    })
    void openingVelocities(double nc, double supply, double back) {
        assertThat(OpeningVelocity.limit(nc, true).orElseThrow() / 0.00508).isCloseTo(supply, within(1e-6));
        assertThat(OpeningVelocity.limit(nc, false).orElseThrow() / 0.00508).isCloseTo(back, within(1e-6));
        assertThat(OpeningVelocity.limit(46, true)).isEmpty();
    }
}
