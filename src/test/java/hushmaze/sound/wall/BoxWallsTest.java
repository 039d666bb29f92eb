package hushmaze.sound.wall;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.board;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.maze;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.wall.BoxWalls.Edge;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The route through the walls worked by hand for a straight box; properties of exposed areas over random boxes. */
class BoxWallsTest {
    private static final Opening OPENING = opening(Opening.Kind.WALL_OPENING);

    /**
     * A bare straight box: nothing is lost along it, so X = (τ + L/A) A / So by hand. Outer size 0.636 m by 0.136 m by 0.336
     * m; all six faces less the two ports; joints 4 (0.636 + 0.136 + 0.336) = 4.432 m.
     */
    @Test
    void aBareStraightBoxByHand() {
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        double area = 2 * (0.636 * 0.136 + 0.636 * 0.336 + 0.136 * 0.336) - 2 * 0.03;
        assertThat(walls.exposedArea(0)).isCloseTo(area, within(1e-9));
        PathEstimate estimate = PathEstimate.of(solid, OPENING, SOUND_SPEED);
        double tau = Energy.ratio(-(20 * Math.log10(13.5 * BandSet.OCTAVE.centreHz(2)) - 47));
        double low = (tau * area + 1e-4 * 4.432) / 0.03;
        double likely = (tau * area + 1e-5 * 4.432) / 0.03 / 4;
        double high = tau * area / 0.03 / 8;
        assertThat(walls.loss(estimate.legs(), Edge.LOW).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / low), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.LIKELY).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / likely), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.HIGH).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / high), within(1e-6));
    }

    /** By hand: 20 dB along the only pass leave on average (1 - 0.01) / ln 100 = 0.215 of the sound, 6.68 dB. */
    @Test
    void theFieldFallsAlongThePass() {
        Solid solid = SolidBuilder.build(maze(1));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        Spectrum none = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
        Spectrum twenty = Spectrum.flat(BandSet.THIRD_OCTAVE, 20);
        double without = ratio(walls.loss(legs(solid, none, none), Edge.HIGH).value(13));
        double with = ratio(walls.loss(legs(solid, none, twenty), Edge.HIGH).value(13));
        double entry = ratio(walls.loss(legs(solid, twenty, none), Edge.HIGH).value(13));
        double tolerance = 0.005;
        assertThat(with - without).isCloseTo(6.68, within(tolerance));
        assertThat(entry - without).isCloseTo(20, within(tolerance));
    }

    @Test
    void aBackAgainstTheBuildingDoesNotCount() {
        Port back = new Port(PortFace.BACK, 0.1, 0.1, 0);
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1, back, end));
        double area = 0.636 * 0.136 + 2 * (0.636 * 0.336 + 0.136 * 0.336) - 0.03;
        assertThat(BoxWalls.of(solid, OPENING, SOUND_SPEED).exposedArea(0)).isCloseTo(area, within(1e-9));
    }

    @Test
    void exposedAreasOfThePassesAddUpToTheOuterFaces() {
        RandomBoxes boxes = new RandomBoxes(11);
        for (int n = 0; n < 200; n++) {
            Box box = boxes.next();
            Solid solid = SolidBuilder.build(box);
            BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
            double sum = 0;
            for (int pass = 0; pass < box.passes(); pass++) {
                assertThat(walls.exposedArea(pass)).isPositive();
                sum += walls.exposedArea(pass);
            }
            Cuboid o = solid.outer();
            double x = o.size(Axis.X);
            double y = o.size(Axis.Y);
            double z = o.size(Axis.Z);
            double ports = box.openingPort().area() + box.roomPort().area();
            double all = 2 * (x * y + y * z + z * x) - ports;
            if (solid.openingPort().role() == Role.BACK) {
                double inBack = box.openingPort().area()
                        + (solid.roomPort().role() == Role.BACK ? box.roomPort().area() : 0);
                all -= x * y - inBack;
            }
            assertThat(sum).isCloseTo(all, within(1e-9));
        }
    }

    @Test
    void aSecondLayerIsQuieterAtLowAndMidFrequency() {
        Solid one = SolidBuilder.build(maze(3));
        Solid two = SolidBuilder.build(maze(3, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 2));
        for (Edge edge : Edge.values()) {
            Spectrum single = loss(one, edge);
            Spectrum doubled = loss(two, edge);
            // Up to 400 Hz, half the critical frequency of two glued boards of 18 mm.
            for (int band = 0; band <= 8; band++) {
                assertThat(doubled.value(band)).isGreaterThan(single.value(band));
            }
        }
        assertThat(PanelTransmission.of(List.of(board(), board()), SOUND_SPEED).criticalFrequency())
                .isBetween(790.0, 810.0);
    }

    /** 10 lg(1/X) of a loss 10 lg(1 + 1/X), dB. */
    private static double ratio(double loss) {
        return Energy.db(Energy.ratio(loss) - 1);
    }

    private static Spectrum loss(Solid solid, Edge edge) {
        return BoxWalls.of(solid, OPENING, SOUND_SPEED)
                .loss(PathEstimate.of(solid, OPENING, SOUND_SPEED).legs(), edge);
    }

    private static List<PathEstimate.Leg> legs(Solid solid, Spectrum entry, Spectrum along) {
        return List.of(new PathEstimate.Leg(solid.passes().get(0), entry, along));
    }
}
