package hushmaze.sound.wall;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.board;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.maze;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.JointGap;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.SlitMouth;
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
     * A bare straight box: nothing is lost along it, so X = (τ A + σ w L + σ' w' C) / So by hand. Outer size 0.636 m by 0.136 m
     * by 0.336 m; the end with the port at the opening is against the wall, the other five faces less the room port; cover 2
     * (0.636 + 0.136) = 1.544 m, glued joints the rest of the edges, 2.888 m.
     */
    @Test
    void aBareStraightBoxByHand() {
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        double area = 2 * (0.636 * 0.136 + 0.636 * 0.336) + 0.136 * 0.336 - 0.03;
        assertThat(walls.exposedArea(0)).isCloseTo(area, within(1e-9));
        assertThat(walls.coverJoint(0)).isCloseTo(1.544, within(1e-9));
        assertThat(walls.gluedJoints(0)).isCloseTo(2.888, within(1e-9));
        PathEstimate estimate = PathEstimate.of(solid, OPENING, SOUND_SPEED);
        double tau = Energy.ratio(-(20 * Math.log10(13.5 * BandSet.OCTAVE.centreHz(2)) - 47));
        double low = (tau * area + leak(1e-4, 2.888) + leak(2e-4, 1.544)) / 0.03;
        double likely = (tau * area + leak(1e-5, 2.888) + leak(2e-5, 1.544)) / 0.03 / 4;
        double high = tau * area / 0.03 / 8;
        assertThat(walls.loss(estimate.legs(), Edge.LOW).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / low), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.LIKELY).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / likely), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.HIGH).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / high), within(1e-6));
    }

    /** The same box with a gap of the cover's joint that was measured: 0.5 mm, from 0.2 to 1 mm. */
    @Test
    void aMeasuredGapStandsInsteadOfTheAllowance() {
        Box box = maze(1, 0.6, null, LinedFaces.NONE, 1);
        JointGap gap = new JointGap(2e-4, 5e-4, 1e-3, "made up for a test");
        Solid solid = SolidBuilder.build(box.joined(box.joinery().gapping(gap), List.of()));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        PathEstimate estimate = PathEstimate.of(solid, OPENING, SOUND_SPEED);
        double area = 2 * (0.636 * 0.136 + 0.636 * 0.336) + 0.136 * 0.336 - 0.03;
        double tau = Energy.ratio(-(20 * Math.log10(13.5 * BandSet.OCTAVE.centreHz(2)) - 47));
        double low = (tau * area + leak(1e-4, 2.888) + leak(1e-3, 1.544) / 4) / 0.03;
        double likely = (tau * area + leak(1e-5, 2.888) + leak(5e-4, 1.544)) / 0.03 / 4;
        double high = (tau * area / 8 + leak(2e-4, 1.544) / 4) / 0.03;
        assertThat(walls.loss(estimate.legs(), Edge.LOW).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / low), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.LIKELY).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / likely), within(1e-6));
        assertThat(walls.loss(estimate.legs(), Edge.HIGH).value(7))
                .isCloseTo(10 * Math.log10(1 + 1 / high), within(1e-6));
    }

    /** In a duct run the box hangs free: all six faces less the two ports. */
    @Test
    void aHangingBoxRadiatesAllRound() {
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1));
        BoxWalls walls = BoxWalls.of(solid, opening(Opening.Kind.IN_DUCT), SOUND_SPEED);
        double area = 2 * (0.636 * 0.136 + 0.636 * 0.336 + 0.136 * 0.336) - 2 * 0.03;
        assertThat(walls.exposedArea(0)).isCloseTo(area, within(1e-9));
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
            // The face with the port at the opening is against the building; the room port may be in it too.
            Role against = solid.openingPort().role();
            double gone =
                    against == solid.roomPort().role() ? 0 : box.roomPort().area();
            double all = 2 * (x * y + y * z + z * x) - gone;
            all -= switch (against.normal()) {
                case X -> y * z;
                case Y -> x * z;
                case Z -> x * y;
            };
            assertThat(sum).isCloseTo(all, within(1e-9));
        }
    }

    @Test
    void jointsAddUpToTheTwelveEdges() {
        RandomBoxes boxes = new RandomBoxes(12);
        for (int n = 0; n < 200; n++) {
            Box box = boxes.next();
            Solid solid = SolidBuilder.build(box);
            BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
            double glued = 0;
            double cover = 0;
            for (int pass = 0; pass < box.passes(); pass++) {
                glued += walls.gluedJoints(pass);
                cover += walls.coverJoint(pass);
            }
            Cuboid o = solid.outer();
            double around = 2 * (o.size(Axis.X) + o.size(Axis.Y));
            assertThat(cover).isCloseTo(around, within(1e-9));
            assertThat(glued).isCloseTo(around + 4 * o.size(Axis.Z), within(1e-9));
        }
    }

    @Test
    void partsAddUpToTheRouteAndTheLoudestGoverns() {
        RandomBoxes boxes = new RandomBoxes(13);
        for (int n = 0; n < 60; n++) {
            Solid solid = SolidBuilder.build(boxes.next());
            BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
            List<Spectrum> levels =
                    BoxWalls.levels(PathEstimate.of(solid, OPENING, SOUND_SPEED).legs());
            for (Edge edge : Edge.values()) {
                WallRoute route = walls.route(levels, edge);
                for (int band = 0; band < 24; band++) {
                    double through = 0;
                    double most = 0;
                    for (WallRoute.Part part : route.parts()) {
                        double x = Math.pow(10, -part.loss().value(band) / 10);
                        through += x;
                        most = Math.max(most, x);
                    }
                    double loss = 10 * Math.log10(1 + 1 / through);
                    assertThat(route.loss().value(band)).isCloseTo(loss, within(1e-6));
                    double governing =
                            route.governing(band).orElseThrow().loss().value(band);
                    assertThat(governing).isCloseTo(-10 * Math.log10(most), within(1e-6));
                }
                assertThat(allOf(route).value(10)).isCloseTo(besideAll(route, levels.size()), within(1e-6));
            }
        }
    }

    @Test
    void theFirstPassLeaksMoreThanTheLast() {
        Solid solid = SolidBuilder.build(maze(4));
        List<Spectrum> levels =
                BoxWalls.levels(PathEstimate.of(solid, OPENING, SOUND_SPEED).legs());
        WallRoute route = BoxWalls.of(solid, OPENING, SOUND_SPEED).route(levels, Edge.LIKELY);
        // From 800 Hz; below, the lining takes too little to outweigh the areas, which differ from pass to pass.
        for (int band = 12; band < 18; band++) {
            for (int pass = 1; pass < 4; pass++) {
                assertThat(route.lossBeside(pass).value(band))
                        .isGreaterThan(route.lossBeside(pass - 1).value(band));
            }
            assertThat(route.governing(band).orElseThrow().pass()).isZero();
        }
    }

    /** Levels from elsewhere: 7 dB less in every pass is 7 dB less through everything. */
    @Test
    void suppliedLevelsCount() {
        Solid solid = SolidBuilder.build(maze(3));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        Spectrum zero = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
        WallRoute loud = walls.route(List.of(zero, zero, zero), Edge.LOW);
        Spectrum less = zero.plus(-7);
        WallRoute quiet = walls.route(List.of(less, less, less), Edge.LOW);
        for (int i = 0; i < loud.parts().size(); i++) {
            double change = quiet.parts().get(i).loss().value(9)
                    - loud.parts().get(i).loss().value(9);
            assertThat(change).isCloseTo(7, within(1e-9));
        }
        assertThatThrownBy(() -> walls.route(List.of(zero), Edge.LOW)).isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void silenceInsideIsSilenceOutside() {
        Solid solid = SolidBuilder.build(maze(1));
        Spectrum silent = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY);
        WallRoute route = BoxWalls.of(solid, OPENING, SOUND_SPEED).route(List.of(silent), Edge.LOW);
        assertThat(route.loss().value(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(route.governing(0)).isEmpty();
    }

    @Test
    void tightJointsAreNeverWorseAndNeitherIsOneMoreLayerBelowCoincidence() {
        RandomBoxes boxes = new RandomBoxes(14);
        for (int n = 0; n < 60; n++) {
            Solid solid = SolidBuilder.build(boxes.next());
            BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
            List<Spectrum> levels =
                    BoxWalls.levels(PathEstimate.of(solid, OPENING, SOUND_SPEED).legs());
            for (Edge edge : Edge.values()) {
                WallChoices choices = walls.choices(levels, edge);
                for (int band = 0; band < 24; band++) {
                    double now = choices.now().loss().value(band);
                    assertThat(choices.sealed().loss().value(band)).isGreaterThanOrEqualTo(now - 1e-9);
                    assertThat(choices.both().loss().value(band))
                            .isGreaterThanOrEqualTo(
                                    choices.oneMoreLayer().loss().value(band) - 1e-9);
                }
                assertThat(choices.sealed().lossThrough(WallRoute.Kind.JOINTS).value(12))
                        .isEqualTo(Double.POSITIVE_INFINITY);
            }
        }
    }

    /** By hand: from one to two glued layers of 18 mm the mass law gives 6.0 dB; the outside grows by 18 mm all round. */
    @Test
    void oneMoreLayerByHand() {
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        WallChoices choices = walls.choices(List.of(Spectrum.flat(BandSet.THIRD_OCTAVE, 0)), Edge.HIGH);
        double one = 2 * (0.636 * 0.136 + 0.636 * 0.336) + 0.136 * 0.336 - 0.03;
        double two = 2 * (0.672 * 0.172 + 0.672 * 0.372) + 0.172 * 0.372 - 0.03;
        double gain = 20 * Math.log10(2) - 10 * Math.log10(two / one);
        double now = choices.now().lossThrough(WallRoute.Kind.BOARDS).value(7);
        double then = choices.oneMoreLayer().lossThrough(WallRoute.Kind.BOARDS).value(7);
        assertThat(then - now).isCloseTo(gain, within(1e-6));
    }

    /** By hand: faces of 0.6 m by 0.1 m, 0.6 m by 0.3 m and 0.1 m by 0.3 m; the second is the softest, 257 Hz. */
    @Test
    void theNoticeOfAResonanceDependsOnThePath() {
        Solid solid = SolidBuilder.build(maze(1, 0.6, null, LinedFaces.NONE, 1));
        BoxWalls walls = BoxWalls.of(solid, OPENING, SOUND_SPEED);
        assertThat(walls.firstResonance()).isCloseTo(257, within(0.5));
        WallRoute route = walls.route(List.of(Spectrum.flat(BandSet.THIRD_OCTAVE, 0)), Edge.LIKELY);
        assertThat(walls.resonance(route, Spectrum.flat(BandSet.THIRD_OCTAVE, -50)))
                .isEmpty();
        assertThat(walls.resonance(route, Spectrum.flat(BandSet.THIRD_OCTAVE, 60))
                        .orElseThrow())
                .matches(found -> found.band().label().equals("250"))
                .matches(found -> found.face() == BoxWalls.Free.SIDES)
                .matches(found -> Math.abs(route.loss().value(7)
                                - 10
                                - found.route().loss().value(7))
                        < 1e-9)
                .matches(found -> found.route().loss().value(8) == route.loss().value(8));
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

    private static Spectrum allOf(WallRoute route) {
        Spectrum boards = route.lossThrough(WallRoute.Kind.BOARDS);
        Spectrum joints = route.lossThrough(WallRoute.Kind.JOINTS);
        return boards.parallelLoss(joints).parallelLoss(route.lossThrough(WallRoute.Kind.COVER));
    }

    private static double besideAll(WallRoute route, int passes) {
        double through = 0;
        for (int pass = 0; pass < passes; pass++) {
            through += Energy.ratio(-route.lossBeside(pass).value(10));
        }
        return -Energy.db(through);
    }

    /** Open area of a joint 18 mm deep at 250 Hz, m². */
    private static double leak(double gap, double length) {
        return new SlitLeak(gap, length, 0.018, SlitMouth.IN_SURFACE).openArea(BandSet.OCTAVE.centreHz(2), SOUND_SPEED);
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
