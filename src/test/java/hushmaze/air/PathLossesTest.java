package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Purpose;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> of the losses of whole boxes against sums worked by hand. */
class PathLossesTest {
    private static final AirState AIR = AirState.of(0, 20);
    private static final Board BOARD = new Board("board", 0.018, 750, 3.5e9, 0.02, false, "invented for a test");

    /**
     * Validation: worked example computed independently: 25 L/s through 250 x 100 mm, 1.5 m long, roughness 1.5 mm, with
     * four separate sharp turns, flush entry and open exit: K 7.79, 4.69 Pa, from C 1.04 read between printed cells (the
     * closed form gives 1.025); with the second correction 6.8 Pa. Within 2 %.
     */
    @Test
    void fourSeparateTurns() {
        AirState air = new AirState(1.2041, 1.82e-5, 343.2, 20, 101_325);
        Section section = new Section(0.1, 0.25);
        double velocity = 0.025 / section.area();
        double diameter = section.hydraulicDiameter();
        double reynolds = air.reynolds(velocity, diameter);
        assertThat(reynolds).isCloseTo(9451, within(1.0));
        Zeta turn = SharpTurn.zeta(section.aspect(), reynolds, 0.0015 / diameter);
        Zeta friction = ChurchillFriction.zeta(1.5, diameter, 0.0015, reynolds);
        double zeta = Entry.ZETA.likely() + 4 * turn.likely() + friction.likely() + Exit.ZETA.likely();
        double high = 1.5 + 4 * turn.high() + friction.likely();
        assertThat(zeta).isCloseTo(7.79, within(0.02 * 7.79));
        assertThat(zeta * air.dynamicPressure(velocity)).isCloseTo(4.69, within(0.02 * 4.69));
        assertThat(high * air.dynamicPressure(velocity)).isCloseTo(6.8, within(0.02 * 6.8));
    }

    /**
     * Validation, worked by hand: two passes 100 x 200 mm, 600 mm long, gap 100 mm, ports in the ends as large as the
     * passes, over a wall opening, 30 L/s: 1.5 m/s, dynamic pressure 1.3546 Pa, Re 13 280 on 133.3 mm. Entry 0.5, friction
     * 2 x 0.0383 x 4.5 (Colebrook with 0.9 mm, solved by iteration elsewhere), turn 2.51, exit 1.
     */
    @Test
    void foldedOnceOverAWallOpening() {
        Box box = maze(2, 0.1, 0.1, end(0.1, 0.2), end(0.1, 0.2));
        PathAir path = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03);
        assertThat(names(path))
                .containsExactly(
                        "entry opening port", "friction pass 1", "turn180 turn 1", "friction pass 2", "exit room port");
        assertThat(path.losses()).allSatisfy(loss -> {
            assertThat(loss.velocity()).isCloseTo(1.5, within(1e-9));
            assertThat(loss.dynamicPressure()).isCloseTo(1.3546, within(1e-4));
        });
        double friction = 0.0383 * 0.6 / 0.13333;
        assertThat(path.losses().get(1).zeta()).isCloseTo(friction, within(0.03 * friction));
        double total = (0.5 + 2 * friction + 2.51 + 1) * 1.3546;
        assertThat(path.pressure()).isCloseTo(total, within(0.005 * total));
        assertThat(path.notices()).isEmpty();
    }

    /** Validation, worked by hand: velocity in every place of three passes, turns with a gap of 150 mm. */
    @Test
    void velocities() {
        Box box = maze(3, 0.1, 0.15, end(0.08, 0.15), end(0.1, 0.16));
        PathAir path = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03);
        assertThat(path.velocities())
                .extracting(PathAir.PlaceVelocity::part)
                .containsExactly("opening port", "pass 1", "turn 1", "pass 2", "turn 2", "pass 3", "room port");
        double[] expected = {2.5, 1.5, 1.0, 1.5, 1.0, 1.5, 1.875};
        for (int i = 0; i < expected.length; i++) {
            PathAir.PlaceVelocity place = path.velocities().get(i);
            assertThat(place.velocity()).as(place.part()).isCloseTo(expected[i], within(1e-9));
            assertThat(place.place() != PathAir.Place.INSIDE)
                    .as(place.part())
                    .isEqualTo(place.part().endsWith("port"));
        }
    }

    /** Validation: which losses there are, in the order of the air, by kind of opening and direction. */
    @ParameterizedTest(name = "{0} {1}")
    @CsvSource({
        "WALL_OPENING, SUPPLY, entry opening port/turn90 opening port/areaChange opening port/friction pass 1/turn180 turn 1/"
                + "friction pass 2/areaChange room port/exit room port",
        "REGISTER, SUPPLY, areaChange opening port/turn90 opening port/areaChange opening port/friction pass 1/turn180 turn 1/"
                + "friction pass 2/areaChange room port/exit room port",
        "IN_DUCT, SUPPLY, areaChange opening port/turn90 opening port/areaChange opening port/friction pass 1/turn180 turn 1/"
                + "friction pass 2/areaChange room port/areaChange room port",
        "WALL_OPENING, EXHAUST, entry room port/areaChange room port/friction pass 2/turn180 turn 1/friction pass 1/"
                + "areaChange opening port/turn90 opening port/exit opening port",
        "REGISTER, RETURN, entry room port/areaChange room port/friction pass 2/turn180 turn 1/friction pass 1/"
                + "areaChange opening port/turn90 opening port/areaChange opening port",
        "IN_DUCT, RETURN, areaChange room port/areaChange room port/friction pass 2/turn180 turn 1/friction pass 1/"
                + "areaChange opening port/turn90 opening port/areaChange opening port",
    })
    void orderOfTheAir(Opening.Kind kind, Purpose purpose, String expected) {
        Box box = maze(2, 0.1, 0.1, new Port(PortFace.SIDE, 0.1, 0.15, 0), end(0.09, 0.18));
        PathAir path = path(box, kind, purpose, 0.03);
        assertThat(String.join("/", names(path))).isEqualTo(expected);
        String firstPlace = path.velocities().get(0).part();
        assertThat(firstPlace).isEqualTo(purpose == Purpose.SUPPLY ? "opening port" : "room port");
    }

    /**
     * Validation, worked by hand: duct 200 x 200 mm (0.04 m²) to a port of 0.01 m² narrows with 0.403, back it widens with
     * 0.5625, both on 3 m/s in the port.
     */
    @Test
    void areaChangeDependsOnTheDirection() {
        Box box = maze(2, 0.1, 0.1, end(0.1, 0.1), end(0.1, 0.2));
        Loss in =
                path(box, Opening.Kind.REGISTER, Purpose.SUPPLY, 0.03).losses().get(0);
        assertThat(in.zeta()).isCloseTo(0.403, within(1e-4));
        assertThat(in.velocity()).isCloseTo(3, within(1e-9));
        List<Loss> back = path(box, Opening.Kind.REGISTER, Purpose.RETURN, 0.03).losses();
        Loss out = back.get(back.size() - 1);
        assertThat(out.zeta()).isCloseTo(0.5625, within(1e-9));
        assertThat(out.velocity()).isCloseTo(3, within(1e-9));
    }

    /** Validation, worked by hand: through a wall opening of a quarter of the port the mouth is that opening. */
    @Test
    void wallOpeningSmallerThanThePort() {
        Box box = maze(2, 0.1, 0.1, end(0.1, 0.2), end(0.1, 0.2));
        Opening small = opening(Opening.Kind.WALL_OPENING, 0.1, 0.05);
        PathAir path = PathLosses.of(SolidBuilder.build(box), small, 0.03, AIR, Purpose.SUPPLY);
        assertThat(names(path)).startsWith("entry opening port", "areaChange opening port", "friction pass 1");
        assertThat(path.losses().get(0).velocity()).isCloseTo(6, within(1e-9));
        assertThat(path.losses().get(1).zeta()).isCloseTo(0.5625, within(1e-9));
        assertThat(path.losses().get(1).velocity()).isCloseTo(6, within(1e-9));
    }

    /** Validation, worked by hand: chamber 400 x 200 mm (0.08 m²), ports 0.02 m²: widening 0.5625, narrowing 0.403. */
    @Test
    void offsetChamber() {
        Box box = box(
                Box.Form.OFFSET_CHAMBER,
                1,
                0.4,
                0,
                new Port(PortFace.END, 0.1, 0.2, 0),
                new Port(PortFace.SIDE, 0.1, 0.2, 0.2),
                0.0009);
        PathAir path = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03);
        assertThat(names(path))
                .containsExactly(
                        "entry opening port",
                        "areaChange opening port",
                        "areaChange room port",
                        "turn90 room port",
                        "exit room port");
        assertThat(path.losses().get(1).zeta()).isCloseTo(0.5625, within(1e-9));
        assertThat(path.losses().get(2).zeta()).isCloseTo(0.4030, within(1e-4));
        assertThat(path.velocities().get(1).velocity()).isCloseTo(0.375, within(1e-9));
    }

    /**
     * Validation, worked by hand: port 100 x 200 mm in the side of a pass 100 x 200 mm: H/W 2, Re 13 280, so C 1.067 (A
     * 1.2, C1 0.9, 0.9875) times 1.341 by the printed table.
     */
    @Test
    void turnAtASidePort() {
        Box box = maze(2, 0.1, 0.1, new Port(PortFace.SIDE, 0.1, 0.2, 0), end(0.1, 0.2));
        Loss turn = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03)
                .losses()
                .get(1);
        assertThat(turn.key()).isEqualTo("turn90");
        assertThat(turn.zetaLow()).isCloseTo(1.067, within(0.001));
        assertThat(turn.zeta()).isCloseTo(1.067 * 1.341, within(0.003));
        // 24.8 / 13280^0.263 = 2.042
        assertThat(turn.zetaHigh()).isCloseTo(1.067 * 2.042, within(0.005));
    }

    /**
     * Validation, worked by hand: a port 200 mm along the pass and 80 mm across it in the broad face, pass 100 wide and 200
     * high. The turn is in the plane of length and height: port W 200, H 80, 0.016 m², 1.875 m/s; pass W 200, H 100, 1.5
     * m/s. The port is dearer: H/W 0.4, C1 1.082.
     */
    @Test
    void turnAtABroadPort() {
        Box box = maze(2, 0.1, 0.1, new Port(PortFace.BACK, 0.2, 0.08, 0), end(0.1, 0.2));
        Loss turn = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03)
                .losses()
                .get(1);
        assertThat(turn.velocity()).isCloseTo(1.875, within(1e-9));
        assertThat(turn.zetaLow()).isCloseTo(1.2 * 1.082 * 0.9875, within(1e-9));
    }

    /** Validation, worked by hand: 600 mm long, gap 100: the baffles overlap by 400 mm, L/w 4, F 2.12 - 0.74/3. */
    @Test
    void secondTurnFollowsTheFirst() {
        Box box = maze(3, 0.1, 0.1, end(0.1, 0.2), end(0.1, 0.2));
        List<Loss> turns = path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.03).losses().stream()
                .filter(loss -> loss.key().equals("turn180"))
                .toList();
        assertThat(turns.get(0).zeta()).isCloseTo(2.51, within(1e-9));
        assertThat(turns.get(1).zeta()).isCloseTo(2.51 * (2.12 - 0.74 / 3), within(1e-9));
        List<Loss> reversed = path(box, Opening.Kind.WALL_OPENING, Purpose.EXHAUST, 0.03).losses().stream()
                .filter(loss -> loss.key().equals("turn180"))
                .toList();
        assertThat(reversed.get(0).part()).isEqualTo("turn 2");
        assertThat(reversed.get(0).zeta()).isCloseTo(2.51, within(1e-9));
    }

    /** Validation: a wide gap and short overlap, and a slow flow, each bring the notice that names the part. */
    @Test
    void notices() {
        Box box = maze(3, 0.1, 0.22, end(0.1, 0.2), end(0.1, 0.2));
        assertThat(path(box, Opening.Kind.WALL_OPENING, Purpose.SUPPLY, 0.01).notices())
                .extracting(notice -> notice.kind() + " " + notice.part())
                .containsExactly(
                        "TURN_OUTSIDE_RANGE turn 1",
                        "REYNOLDS_BELOW_RANGE turn 1",
                        "TURN_OUTSIDE_RANGE turn 2",
                        "TURNS_CLOSE turn 2");
    }

    @Test
    void refusesFlowsThatAreNone() {
        Box box = maze(1, 0.1, 0, end(0.1, 0.2), end(0.1, 0.2));
        for (double flow : new double[] {0, -0.01, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThatThrownBy(() -> path(box, Opening.Kind.REGISTER, Purpose.SUPPLY, flow))
                    .isInstanceOf(InvalidValue.class)
                    .hasMessageContaining("flow");
        }
    }

    private static List<String> names(PathAir path) {
        return path.losses().stream()
                .map(loss -> loss.key() + " " + loss.part())
                .toList();
    }

    private static PathAir path(Box box, Opening.Kind kind, Purpose purpose, double flow) {
        return PathLosses.of(SolidBuilder.build(box), opening(kind, 0.2, 0.2), flow, AIR, purpose);
    }

    private static Opening opening(Opening.Kind kind, double width, double height) {
        return new Opening(kind, Opening.Surface.WALL, Opening.Beyond.INDOORS, width, height);
    }

    private static Port end(double width, double height) {
        return new Port(PortFace.END, width, height, 0);
    }

    private static Box maze(int passes, double clearWidth, double turnGap, Port openingPort, Port roomPort) {
        return box(Box.Form.MAZE, passes, clearWidth, turnGap, openingPort, roomPort, 0.0009);
    }

    private static Box box(
            Box.Form form,
            int passes,
            double clearWidth,
            double gap,
            Port openingPort,
            Port roomPort,
            double roughness) {
        Liner liner = new Liner("liner", 0.025, 48, 20_000, 10_000, 30_000, roughness, "invented for a test");
        return new Box(
                form,
                passes,
                clearWidth,
                0.2,
                0.6,
                gap,
                List.of(BOARD),
                BOARD,
                1,
                liner,
                LinedFaces.FOLD_PLANE,
                openingPort,
                roomPort);
    }
}
