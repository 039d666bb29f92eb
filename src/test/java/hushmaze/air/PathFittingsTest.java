package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.Fitting;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Purpose;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.NoticeKind;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** <em>Validation</em> by hand and <em>property</em> tests of fittings at the ends of a box. */
class PathFittingsTest {
    private static final AirState AIR = AirState.of(0, 20);
    private static final double FLOW = 0.03;

    private static Solid solid() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Box box = SampleBoxes.maze(2, 0.5, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, end, end);
        return SolidBuilder.build(box);
    }

    private static PathAir path(Opening.Kind kind, Purpose purpose, Fitting... fittings) {
        Opening opening = new Opening(kind, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.1, 0.3);
        return PathLosses.of(solid(), opening, List.of(fittings), FLOW, AIR, purpose);
    }

    private static Fitting grille(Fitting.End end, double free) {
        return fitting(Fitting.Kind.GRILLE, end, 0.2, 0.2, free, null, null, null, null, null);
    }

    private static Fitting louvre(Fitting.End end) {
        return fitting(Fitting.Kind.WEATHER_LOUVRE, end, 0.2, 0.2, null, null, null, null, null, null);
    }

    private static Fitting known(Fitting.Kind kind, Fitting.End end, double pressure) {
        return fitting(kind, end, null, null, null, null, null, null, pressure, FLOW);
    }

    private static Fitting duct(Fitting.End end, double diameter, double length) {
        return fitting(Fitting.Kind.FLEXIBLE_DUCT, end, null, null, null, diameter, length, 0.0, null, null);
    }

    private static Fitting collar(Fitting.End end, double diameter) {
        return fitting(Fitting.Kind.ROUND_COLLAR, end, null, null, null, diameter, null, null, null, null);
    }

    private static Fitting fitting(
            Fitting.Kind kind,
            Fitting.End end,
            Double width,
            Double height,
            Double free,
            Double diameter,
            Double length,
            Double compression,
            Double pressure,
            Double flow) {
        return new Fitting(
                kind, end, width, height, free, diameter, length, compression, null, pressure, flow, "made up");
    }

    private static List<String> names(PathAir air) {
        return air.losses().stream().map(l -> l.key() + " " + l.part()).toList();
    }

    private static Loss the(PathAir air, String key) {
        return air.losses().stream()
                .filter(l -> l.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    /**
     * Validation, by hand: grille of 0.5 free area over 0.2 m x 0.2 m: (0.707 √0.5 + 0.5)²/0.25 = 3.9994 on 0.75 m/s before
     * it; 1.5 m/s in its free area. Louvre drawn in 9, blown out 8, on 0.75 m/s.
     */
    @Test
    void facesOnTheirOwnVelocity() {
        PathAir air = path(
                Opening.Kind.WALL_OPENING,
                Purpose.SUPPLY,
                louvre(Fitting.End.AT_OPENING),
                grille(Fitting.End.IN_ROOM, 0.5));
        assertThat(names(air))
                .startsWith("louvre opening port", "entry opening port")
                .endsWith("grille room port");
        Loss grille = the(air, "grille");
        assertThat(grille.zeta()).isCloseTo(3.9994, within(1e-4));
        assertThat(grille.velocity()).isCloseTo(0.75, within(1e-12));
        assertThat(the(air, "louvre").zeta()).isEqualTo(9);
        PathAir.PlaceVelocity last = air.velocities().get(air.velocities().size() - 1);
        assertThat(last.part()).isEqualTo("grille room port");
        assertThat(last.place()).isEqualTo(PathAir.Place.ROOM_MOUTH);
        assertThat(last.velocity()).isCloseTo(1.5, within(1e-12));
        PathAir out = path(Opening.Kind.WALL_OPENING, Purpose.EXHAUST, louvre(Fitting.End.AT_OPENING));
        assertThat(the(out, "louvre").zeta()).isEqualTo(8);
        assertThat(names(out)).endsWith("louvre opening port");
    }

    /** Validation: what is known at the very flow is added to the pascal, whatever area it is put on. */
    @Test
    void knownLossesAreAdded() {
        double bare = path(Opening.Kind.REGISTER, Purpose.SUPPLY).pressure();
        PathAir with = path(
                Opening.Kind.REGISTER,
                Purpose.SUPPLY,
                known(Fitting.Kind.FILTER, Fitting.End.AT_OPENING, 20),
                known(Fitting.Kind.KNOWN_LOSS, Fitting.End.IN_ROOM, 7));
        assertThat(with.pressure()).isCloseTo(bare + 27, within(1e-9));
        assertThat(with.pressureHigh())
                .isCloseTo(path(Opening.Kind.REGISTER, Purpose.SUPPLY).pressureHigh() + 27, within(1e-9));
    }

    /** A loss known at three times the flow is said to be far; at the flow itself it is not. */
    @Test
    void farFromWhatIsKnown() {
        Fitting far = fitting(
                Fitting.Kind.FILTER, Fitting.End.AT_OPENING, null, null, null, null, null, null, 20.0, 3 * FLOW);
        assertThat(path(Opening.Kind.REGISTER, Purpose.SUPPLY, far).notices())
                .extracting(n -> n.kind())
                .contains(NoticeKind.KNOWN_LOSS_FAR);
        Fitting near = known(Fitting.Kind.FILTER, Fitting.End.AT_OPENING, 20);
        assertThat(path(Opening.Kind.REGISTER, Purpose.SUPPLY, near).notices())
                .extracting(n -> n.kind())
                .doesNotContain(NoticeKind.KNOWN_LOSS_FAR);
    }

    /**
     * Validation, by hand: from an opening of 0.03 m² through 125 mm (0.012272 m², x 0.40906) to a port of 0.03 m²: into the
     * collar 0.5 (1 - x)^0.75 = 0.33700, out of it (1 - x)² = 0.34921, on 2.4446 m/s.
     */
    @Test
    void flexibleDuctWithItsTwoCollars() {
        PathAir air = path(Opening.Kind.REGISTER, Purpose.SUPPLY, duct(Fitting.End.AT_OPENING, 0.125, 1));
        assertThat(names(air))
                .startsWith(
                        "collar opening port", "flexibleDuct opening port", "collar opening port", "friction pass 1");
        assertThat(air.losses().get(0).zeta()).isCloseTo(0.33700, within(5e-5));
        assertThat(air.losses().get(2).zeta()).isCloseTo(0.34921, within(5e-5));
        assertThat(air.losses().get(1).velocity()).isCloseTo(2.4446, within(1e-4));
    }

    /** A round collar carries on as a duct: no mouth at that end. In the room a flexible duct ends in its own mouth. */
    @Test
    void collarsAndMouths() {
        PathAir collar = path(Opening.Kind.WALL_OPENING, Purpose.SUPPLY, collar(Fitting.End.AT_OPENING, 0.125));
        assertThat(names(collar))
                .startsWith("collar opening port", "friction pass 1")
                .doesNotContain("entry opening port");
        PathAir duct = path(Opening.Kind.WALL_OPENING, Purpose.SUPPLY, duct(Fitting.End.IN_ROOM, 0.125, 1));
        assertThat(names(duct)).endsWith("collar room port", "flexibleDuct room port", "exit room port");
        Loss exit = the(duct, "exit");
        assertThat(exit.velocity()).isCloseTo(2.4446, within(1e-4));
    }

    /** Property: no fitting makes a path cheaper, and the other way round the same parts are passed in the opposite order. */
    @Test
    void neverCheaperAndReversible() {
        List<Fitting> all = List.of(
                louvre(Fitting.End.AT_OPENING),
                known(Fitting.Kind.FILTER, Fitting.End.AT_OPENING, 10),
                duct(Fitting.End.AT_OPENING, 0.15, 2),
                grille(Fitting.End.IN_ROOM, 0.7));
        for (Opening.Kind kind : Opening.Kind.values()) {
            for (Purpose purpose : Purpose.values()) {
                double bare = path(kind, purpose).pressure();
                for (Fitting one : all) {
                    assertThat(path(kind, purpose, one).pressure())
                            .as(one.kind() + " " + kind)
                            .isGreaterThan(bare);
                }
            }
            List<String> in = new ArrayList<>(parts(path(kind, Purpose.SUPPLY, all.toArray(Fitting[]::new))));
            Collections.reverse(in);
            assertThat(parts(path(kind, Purpose.RETURN, all.toArray(Fitting[]::new))))
                    .isEqualTo(in);
        }
    }

    /** Names of the losses that both directions have. */
    private static List<String> parts(PathAir air) {
        return names(air).stream()
                .filter(n -> !n.startsWith("entry") && !n.startsWith("exit"))
                .toList();
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> grille(Fitting.End.IN_ROOM, 0.01))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("freeArea");
        assertThatThrownBy(() -> known(Fitting.Kind.FILTER, Fitting.End.IN_ROOM, -1))
                .isInstanceOf(InvalidValue.class)
                .hasMessage("pressure: -1 Pa is not accepted; it must be from 0 to 1000 Pa");
        assertThatThrownBy(() -> fitting(
                        Fitting.Kind.FLEXIBLE_DUCT, Fitting.End.IN_ROOM, null, null, null, null, 1.0, 0.0, null, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("diameter");
    }
}
