package hushmaze.sound.quick;

import static hushmaze.sound.quick.TestPaths.SOUND_SPEED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Facing;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.section.SolidSpace;
import hushmaze.sound.wave.WaveSolver;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the quick wave against the wave solution of the flat section, a method of its own (finite elements), at single
 * frequencies: mazes and a chamber, ports in ends and sides, lower than the pass or not, liner bare and under a facing.
 */
class QuickWaveAgainstWaveTest {
    private static final double[] FREQUENCIES = {63, 125, 250, 400, 630, 1000, 1600};
    private static final double DEEPEST = 120;

    @Test
    void boxesWithLinedFoldPlane() {
        Port whole = new Port(PortFace.END, 0.1, 0.3, 0);
        Port low = new Port(PortFace.END, 0.08, 0.2, 0);
        Port side = new Port(PortFace.SIDE, 0.12, 0.25, 0);
        Port away = new Port(PortFace.SIDE, 0.09, 0.3, 0.04);
        LinedFaces walls = new LinedFaces(1, 0, 1, 0);
        List<Box> boxes = new ArrayList<>();
        boxes.add(box(1, LinedFaces.FOLD_PLANE, whole, low));
        boxes.add(box(2, LinedFaces.FOLD_PLANE, whole, side));
        boxes.add(box(3, LinedFaces.FOLD_PLANE, away, whole));
        boxes.add(box(3, walls, side, low));
        boxes.add(box(4, new LinedFaces(0, 1, 0, 0), low, away));
        boxes.add(SampleBoxes.maze(2, 0.5, null, LinedFaces.NONE, 1));
        for (Box box : boxes) {
            compare(box);
        }
    }

    /** A film and a cloth over the liner: on sides and ends, beside end ports and side ports. */
    @ParameterizedTest
    @CsvSource({"0.05, ", "0.06, 200"})
    void boxesWithFacedLiner(double mass, Double resistance) {
        Facing facing = new Facing("facing", mass, resistance, "invented for a test");
        Port whole = new Port(PortFace.END, 0.1, 0.3, 0);
        Port low = new Port(PortFace.END, 0.08, 0.2, 0);
        Port side = new Port(PortFace.SIDE, 0.12, 0.25, 0);
        Port away = new Port(PortFace.SIDE, 0.09, 0.3, 0.04);
        LinerModel liner = new FacedLiner(new MikiLiner(20000), facing);
        compare(box(1, LinedFaces.FOLD_PLANE, low, whole), liner);
        compare(box(2, LinedFaces.FOLD_PLANE, whole, side), liner);
        compare(box(3, LinedFaces.FOLD_PLANE, away, low), liner);
    }

    /** Many modes travel in a chamber, and their echoes are sharp. */
    @Test
    void chamber() {
        Box sample = SampleBoxes.chamber(SampleBoxes.liner(0.05));
        compare(new Box(
                sample.form(),
                1,
                sample.clearWidth(),
                sample.clearHeight(),
                sample.clearLength(),
                0,
                sample.shell(),
                sample.baffleBoard(),
                1,
                sample.liner(),
                LinedFaces.FOLD_PLANE,
                sample.openingPort(),
                sample.roomPort()));
    }

    private static Box box(int passes, LinedFaces faces, Port in, Port out) {
        return SampleBoxes.maze(passes, 0.6, SampleBoxes.liner(0.04), faces, 1, in, out);
    }

    private static void compare(Box box) {
        compare(box, new MikiLiner(20000));
    }

    private static void compare(Box box, LinerModel liner) {
        Solid solid = SolidBuilder.build(box);
        WaveSolver wave = new WaveSolver(SolidSpace.flat(solid, liner, SOUND_SPEED));
        double[] quick = QuickWave.of(solid, liner, SOUND_SPEED).transmissionLoss();
        for (double hz : FREQUENCIES) {
            int f = TestPaths.nearest(hz);
            double expected = wave.solve(QuickGrid.FINE.hz(f)).transmissionLoss();
            if (expected < DEEPEST) {
                assertThat(quick[f])
                        .as("%s passes, %s, %s Hz", box.passes(), box.linedFaces(), hz)
                        .isCloseTo(expected, within(0.3 + 0.01 * expected));
            }
        }
    }
}
