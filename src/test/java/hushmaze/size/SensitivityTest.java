package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.assess.AirJudge;
import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.SoundJudge;
import hushmaze.assess.TestRooms;
import hushmaze.drawing.SampleAssessment;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.sound.wall.BoxWalls;
import hushmaze.sound.wall.WallRoute;
import hushmaze.work.Progress;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: a row is the difference between two assessments made one by one; a changed box keeps what the change says stays.
 * Validation: the mass law, 6 dB for twice the mass (20 lg 2 = 6.02, in every handbook), for a second equal layer on the
 * boards below the coincidence of the doubled wall.
 */
class SensitivityTest {
    private static final String INVENTED = "invented for a test";

    private static Project project(Box box) {
        return TestRooms.project(
                TestRooms.nc(25),
                null,
                TestRooms.path("in", Purpose.SUPPLY, 55, null).withBox(box));
    }

    private static Sensitivity.Row row(Sensitivity sensitivity, Change change) {
        return sensitivity.rows().get(change.ordinal());
    }

    /** The assessments take five frequencies of a band, the rows three: shown are tenths of a decibel. */
    @Test
    void eachRowIsTheDifferenceOfTwoAssessments() {
        Box box = SampleAssessment.fourPasses();
        Assessment now = Assessor.assess(project(box), Methods.QUICK, Progress.NONE);
        Sensitivity sensitivity = Sensitivity.of(now, 0);
        assertThat(sensitivity.method()).isEqualTo(Quick.PLAIN);
        PathResult old = now.paths().get(0);
        for (Change change : List.of(Change.HALF_RESISTIVITY, Change.NARROWER, Change.ONE_MORE_LAYER)) {
            PathResult then = Assessor.assess(project(edited(box, change)), Methods.QUICK, Progress.NONE)
                    .paths()
                    .get(0);
            Sensitivity.Row row = row(sensitivity, change);
            assertThat(row.margin())
                    .as(change.name())
                    .isCloseTo(then.quiet().margin() - old.quiet().margin(), within(0.05));
            assertThat(row.pressureDrop())
                    .isCloseTo(then.pathAir().pressureHigh() - old.pathAir().pressureHigh(), within(1e-12));
            assertThat(row.fits()).isEqualTo(then.fits().ok());
        }
    }

    /** The change made by hand to the sample's own figures. */
    private static Box edited(Box b, Change change) {
        Liner liner = b.liner();
        Liner half = new Liner(liner.name(), 0.025, 60, 10000, 6000, 15000, 0.0009, INVENTED);
        boolean softer = change == Change.HALF_RESISTIVITY;
        return new Box(
                Box.Form.MAZE,
                4,
                change == Change.NARROWER ? 0.095 : 0.1,
                0.2,
                0.9,
                0.11,
                Collections.nCopies(change == Change.ONE_MORE_LAYER ? 3 : 2, b.baffleBoard()),
                b.baffleBoard(),
                1,
                softer ? half : liner,
                LinedFaces.FOLD_PLANE,
                new Port(PortFace.BACK, 0.2, change == Change.NARROWER ? 0.095 : 0.1, 0.02),
                new Port(PortFace.SIDE, 0.2, 0.15, 0.03));
    }

    @Test
    void aSlitNeverRaisesTheMarginAndTheWorstErrorIsOne() {
        RandomBoxes boxes = new RandomBoxes(77);
        int felt = 0;
        for (int i = 0; i < 60; i++) {
            Project project = project(boxes.next());
            Sensitivity sensitivity = Sensitivity.of(project, 0, Quick.NONE);
            Sensitivity.Row slit = row(sensitivity, Change.COVER_SLIT);
            assertThat(slit.margin()).isNotPositive();
            assertThat(slit.likely()).isNotPositive();
            assertThat(slit.pressureDrop()).isZero();
            felt += slit.margin() < -0.5 ? 1 : 0;
            sensitivity.worstError().ifPresent(worst -> {
                assertThat(worst.change().isError()).isTrue();
                assertThat(worst.margin()).isNegative();
            });
            for (Sensitivity.Row row : sensitivity.rows()) {
                assertThat(row.unable() == null).isEqualTo(row.pressureDrop() != null);
                assertThat(row.unable() == null).isEqualTo(row.fits() != null);
                assertThat(row.detail() == null).isEqualTo(row.unable() != Unable.NO_BOX);
            }
        }
        assertThat(felt).isPositive();
    }

    @Test
    void seamsMakeNoDifference() {
        Box box = SampleAssessment.fourPasses();
        Box seamed = box.joined(box.joinery(), List.of(new Seam(Seam.Kind.GLUED, 0.5)));
        assertThat(Sensitivity.of(project(seamed), 0, Quick.NONE))
                .isEqualTo(Sensitivity.of(project(box), 0, Quick.NONE));
    }

    @Test
    void boardsStayWhereTheyAreWhenTheLinerIsThicker() {
        RandomBoxes boxes = new RandomBoxes(78);
        int thicker = 0;
        for (int i = 0; i < 200; i++) {
            Box box = boxes.next();
            ChangedBox changed = new ChangedBox(box);
            for (Change change : List.of(Change.THICKER_LINER, Change.THINNER_LINER)) {
                if (changed.unable(change).isPresent()) {
                    continue;
                }
                Solid then;
                try {
                    then = SolidBuilder.build(changed.with(change));
                } catch (InvalidValue noRoom) {
                    continue;
                }
                thicker++;
                Solid now = SolidBuilder.build(box);
                for (Axis axis : Axis.values()) {
                    assertThat(then.outer().size(axis)).isCloseTo(now.outer().size(axis), within(1e-12));
                }
                assertThat(then.baffles()).hasSameSizeAs(now.baffles());
                for (int k = 0; k < now.baffles().size(); k++) {
                    for (Axis axis : Axis.values()) {
                        assertThat(then.baffles().get(k).low(axis))
                                .isCloseTo(now.baffles().get(k).low(axis), within(1e-12));
                        assertThat(then.baffles().get(k).high(axis))
                                .isCloseTo(now.baffles().get(k).high(axis), within(1e-12));
                    }
                }
                boolean follows = box.form() == Box.Form.OFFSET_CHAMBER && change == Change.THINNER_LINER;
                if (follows
                        && (box.openingPort().face().isBroad()
                                || box.roomPort().face().isBroad())) {
                    // Such a port lies against the lined side whatever its liner: it goes with it.
                    continue;
                }
                inside(
                        then.openingPort().hole(),
                        now.openingPort().hole(),
                        then.openingPort().role().normal());
                inside(
                        then.roomPort().hole(),
                        now.roomPort().hole(),
                        then.roomPort().role().normal());
            }
        }
        assertThat(thicker).isGreaterThan(50);
    }

    /** A port is never larger than the hole that is cut, nor beside it. */
    private static void inside(Cuboid port, Cuboid hole, Axis normal) {
        for (Axis axis : Axis.values()) {
            if (axis != normal) {
                assertThat(port.low(axis)).isGreaterThanOrEqualTo(hole.low(axis) - 1e-9);
                assertThat(port.high(axis)).isLessThanOrEqualTo(hole.high(axis) + 1e-9);
            }
        }
    }

    @Test
    void widerPassesMakeTheBoxWiderByAsMuchEach() {
        Box box = SampleAssessment.fourPasses();
        Solid now = SolidBuilder.build(box);
        Solid then = SolidBuilder.build(new ChangedBox(box).with(Change.WIDER));
        // By hand: four passes of 5 mm.
        assertThat(then.outer().size(Axis.Y) - now.outer().size(Axis.Y)).isCloseTo(0.02, within(1e-12));
        assertThat(then.outer().size(Axis.X)).isEqualTo(now.outer().size(Axis.X));
        assertThat(then.outer().size(Axis.Z)).isEqualTo(now.outer().size(Axis.Z));
        assertThat(new ChangedBox(box).with(Change.ONE_MORE_PASS).passes()).isEqualTo(5);
    }

    @Test
    void whatCannotBeIsSaid() {
        Box maze = SampleAssessment.fourPasses();
        Box bare = changed(maze, 4, 2, null, LinedFaces.NONE);
        assertThat(new ChangedBox(bare).unable(Change.THICKER_LINER)).contains(Unable.NO_LINER);
        assertThat(new ChangedBox(bare).unable(Change.HALF_RESISTIVITY)).contains(Unable.NO_LINER);
        assertThat(new ChangedBox(changed(maze, 6, 2, maze.liner(), LinedFaces.ALL)).unable(Change.ONE_MORE_PASS))
                .contains(Unable.MOST_PASSES);
        assertThat(new ChangedBox(changed(maze, 4, 3, maze.liner(), LinedFaces.ALL)).unable(Change.ONE_MORE_LAYER))
                .contains(Unable.MOST_LAYERS);
        LinedFaces sides = new LinedFaces(1, 0, 1, 0);
        assertThat(new ChangedBox(changed(maze, 4, 2, maze.liner(), sides)).unable(Change.THINNER_LINER))
                .contains(Unable.UNEVEN_LINING);
        // A liner of 8 mm cannot be 10 mm thinner.
        Liner thin = new Liner("felt", 0.008, 60, 20000, 12000, 30000, 0.0009, INVENTED);
        Sensitivity.Row row = row(
                Sensitivity.of(project(changed(maze, 4, 2, thin, LinedFaces.FOLD_PLANE)), 0, Quick.NONE),
                Change.THINNER_LINER);
        assertThat(row.unable()).isEqualTo(Unable.NO_BOX);
        assertThat(row.detail()).contains("thickness", "mm");
        assertThat(row.margin()).isNull();
    }

    private static Box changed(Box b, int passes, int layers, Liner liner, LinedFaces faces) {
        return new Box(
                b.form(),
                passes,
                b.clearWidth(),
                b.clearHeight(),
                b.clearLength(),
                b.turnGap(),
                Collections.nCopies(layers, b.baffleBoard()),
                b.baffleBoard(),
                1,
                liner,
                faces,
                b.openingPort(),
                b.roomPort());
    }

    /**
     * Boards of 9 mm: with 750 kg/m³ and 3.5 GPa the doubled wall's coincidence is near 1.8 kHz (c²/(1.8 c_L h)), so 160 to
     * 500 Hz lie well below it and above the first resonances. The outer faces grow by 18 mm, hence half a decibel.
     */
    @Test
    void aSecondEqualLayerGivesWhatTheMassLawSays() {
        Board thin = new Board("MDF 9 mm", 0.009, 750, 3.5e9, 0.02, false, INVENTED);
        Box sample = SampleAssessment.fourPasses();
        Box box = sample.ofBoards(List.of(thin), thin);
        Box twice = new ChangedBox(box).with(Change.ONE_MORE_LAYER);
        assertThat(twice.shell()).containsExactly(thin, thin);
        Spectrum gain = boards(twice).minus(boards(box));
        for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
            double hz = BandSet.THIRD_OCTAVE.bands().get(i).centreHz();
            if (hz > 150 && hz < 520) {
                assertThat(gain.value(i)).as("%.0f Hz", hz).isCloseTo(6.02, within(0.7));
            }
        }
    }

    private static Spectrum boards(Box box) {
        Opening opening =
                new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.2, 0.1);
        Solid solid = SolidBuilder.build(box);
        List<Spectrum> levels = Collections.nCopies(4, Spectrum.flat(BandSet.THIRD_OCTAVE, 0));
        return BoxWalls.of(solid, opening, 343).route(levels, BoxWalls.Edge.LOW).lossThrough(WallRoute.Kind.BOARDS);
    }

    @Test
    void bothMarginsAreThoseOfTheSameBox() {
        Project project = project(SampleAssessment.fourPasses());
        VentPath path = project.paths().get(0);
        Solid solid = SolidBuilder.build(path.box());
        PathAir flow = AirJudge.air(path, solid, AirState.of(project.room()));
        SoundJudge judge = new SoundJudge(project);
        SoundJudge.Margins margins = judge.margins(0, solid, flow, Quick.NONE, 0);
        assertThat(margins.low())
                .isEqualTo(judge.margins(0, solid, flow, Quick.NONE).target());
        assertThat(margins.likely()).isGreaterThan(margins.low());
    }
}
