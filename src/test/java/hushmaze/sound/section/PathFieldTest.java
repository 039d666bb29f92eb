package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: a straight bare duct with ducts of its size at both ends has the same level everywhere; before a port of a
 * fifteenth of the pass, all but closed, the standing wave of the closed form, its first null a quarter of a wave before it.
 * Property: the levels in the mouths are those of the wave solution's amplitudes, in boxes of every kind; falls add up.
 */
class PathFieldTest {
    private static final double C = SampleBoxes.SOUND_SPEED;
    private static final Port END = new Port(PortFace.END, 0.1, 0.3, 0);
    private static final Port SIDE = new Port(PortFace.SIDE, 0.12, 0.3, 0);
    private static final Port BACK = new Port(PortFace.BACK, 0.15, 0.1, 0);

    private static Solid bare(double length, Port inlet, Port outlet) {
        return SolidBuilder.build(SampleBoxes.maze(1, length, null, LinedFaces.NONE, 1, inlet, outlet));
    }

    @ParameterizedTest
    @ValueSource(doubles = {20, 63, 430, 1600})
    void aStraightBareDuctHasOneLevelEverywhere(double frequency) {
        PathField field = PathField.of(bare(0.6, END, END), null, C, frequency, Progress.NONE);
        assertThat(field.flat()).isTrue();
        assertThat(field.levels()).hasSize(2);
        assertThat(field.fall()).isCloseTo(0, within(1e-3));
        int there = 0;
        for (int row = 0; row < field.rows(); row++) {
            for (int column = 0; column < field.columns(); column++) {
                if (!Double.isNaN(field.real(column, row))) {
                    there++;
                    assertThat(field.level(column, row)).isCloseTo(0, within(0.01));
                }
            }
        }
        double area = there * field.step() * field.step();
        assertThat(area).isCloseTo(0.1 * field.solid().outer().size(Axis.X), within(0.002));
    }

    /** Before a step from S to s the pressure is 1 + R² + 2 R cos 2kd at a distance d of it, R = (S - s)/(S + s); textbook. */
    @ParameterizedTest
    @ValueSource(doubles = {250, 500, 900})
    void aStandingWaveHasItsNullsAtAQuarterWave(double frequency) {
        Solid solid = bare(0.8, END, new Port(PortFace.END, 0.1, 0.02, 0));
        PathField field = PathField.of(solid, null, C, frequency, Progress.NONE);
        double back = (0.3 - 0.02) / (0.3 + 0.02);
        double wall = solid.passes().get(0).clear().x1();
        double y = solid.passes().get(0).clear().centre(Axis.Y);
        double k = 2 * Math.PI * frequency / C;
        double mouth = size(back, k * (wall - solid.outer().x0()));
        double quietest = Double.POSITIVE_INFINITY;
        double at = 0;
        for (int column = 0; column < field.columns(); column++) {
            double d = wall - solid.outer().x0() - (column + 0.5) * field.step();
            if (d > 0) {
                double level = field.levelAt(wall - d, y).getAsDouble();
                assertThat(level).isCloseTo(Energy.db(size(back, k * d) / mouth), within(0.1));
                if (d < C / frequency / 2 && level < quietest) {
                    quietest = level;
                    at = d;
                }
            }
        }
        assertThat(at).isCloseTo(C / frequency / 4, within(field.step()));
        // in the port the wave goes on alone, as strong as at the step
        assertThat(field.fall()).isCloseTo(Energy.db(mouth / size(back, 0)), within(0.02));
    }

    private static double size(double back, double kd) {
        return 1 + back * back + 2 * back * Math.cos(2 * kd);
    }

    static Stream<Box> boxes() {
        List<Box> boxes = new ArrayList<>();
        for (int passes = 1; passes <= 3; passes++) {
            boxes.add(SampleBoxes.maze(passes));
            boxes.add(SampleBoxes.withPorts(SampleBoxes.maze(passes), SIDE, END));
            boxes.add(SampleBoxes.withPorts(SampleBoxes.maze(passes), BACK, SIDE));
        }
        boxes.add(SampleBoxes.chamber(SampleBoxes.liner(0.05)));
        return boxes.stream();
    }

    @ParameterizedTest
    @MethodSource("boxes")
    void mouthsHaveTheLevelsOfTheWaveSolutionsAmplitudes(Box box) {
        Solid solid = SolidBuilder.build(box);
        MikiLiner liner = new MikiLiner(box.liner().flowResistivity());
        for (double frequency : new double[] {80, 200, 400}) {
            PathField field = PathField.of(solid, box.liner(), C, frequency, Progress.NONE);
            WaveSolver solver = field.flat()
                    ? new WaveSolver(SolidSpace.flat(solid, liner, C), WaveAccuracy.STANDARD)
                    : new WaveSolver(SolidSpace.full(solid, liner, C), PathWave.FULL_ACCURACY);
            WaveAnswer answer = solver.solve(frequency);
            List<Complex> atInlet = new ArrayList<>(answer.reflected().get(0));
            atInlet.set(0, atInlet.get(0).plus(new Complex(1, 0)));
            double fall =
                    Energy.db(sum(atInlet)) - Energy.db(sum(answer.transmitted().get(0)));
            // modes that do not carry are left out of the amplitudes
            assertThat(field.fall()).as("%s Hz", frequency).isCloseTo(fall, within(0.4));
            if (answer.inletModes().size() == 1 && answer.outletModes().size() == 1) {
                double loss = answer.transmissionLoss() + Energy.db(answer.areaRatio()) + Energy.db(sum(atInlet));
                assertThat(field.fall()).isCloseTo(loss, within(0.4));
            }
            double sum = 0;
            for (int pass = 0; pass < box.passes(); pass++) {
                sum += field.fall(pass);
            }
            assertThat(sum).isCloseTo(field.fall(), within(1e-9));
            assertThat(field.levels().get(0)).isEqualTo(0);
        }
    }

    private static double sum(List<Complex> amplitudes) {
        return amplitudes.stream().mapToDouble(Complex::absSquared).sum();
    }

    @Test
    void lengthsOfTheSectionAreThoseOfTheSolid() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(2));
        PathField field = PathField.of(solid, SampleBoxes.liner(0.025), C, 200, Progress.NONE);
        assertThat(area(field.shape().lining()))
                .isCloseTo(
                        solid.liners().stream()
                                .mapToDouble(piece -> piece.bounds().size(Axis.X)
                                        * piece.bounds().size(Axis.Y))
                                .sum(),
                        within(0.02 * area(field.shape().lining())));
        double boards = area(
                field.shape().boards().stream().map(SectionShape.Board::place).toList());
        double hollow = solid.cavity().size(Axis.X) * solid.cavity().size(Axis.Y);
        double all = solid.outer().size(Axis.X) * solid.outer().size(Axis.Y);
        double baffles = solid.baffles().stream()
                .mapToDouble(b -> b.size(Axis.X) * b.size(Axis.Y))
                .sum();
        double ports = 2 * 0.1 * 0.018;
        assertThat(boards).isCloseTo(all - hollow + baffles - ports, within(1e-6));
        assertThat(field.levelAt(solid.outer().x0() + 0.3, solid.outer().y0() + 0.005)
                        .isPresent())
                .isFalse();
        assertThat(field.levelAt(-1, 0).isPresent()).isFalse();
    }

    private static double area(List<Cuboid> blocks) {
        return blocks.stream().mapToDouble(b -> b.size(Axis.X) * b.size(Axis.Y)).sum();
    }

    @Test
    void portsThroughABroadFaceAreSolvedInThreeDirectionsWhereThatIsQuick() {
        Solid solid = SolidBuilder.build(SampleBoxes.withPorts(SampleBoxes.maze(2), BACK, SIDE));
        assertThat(PathField.of(solid, SampleBoxes.liner(0.025), C, 250, Progress.NONE)
                        .flat())
                .isFalse();
        assertThat(PathField.of(solid, SampleBoxes.liner(0.025), C, 5000, Progress.NONE)
                        .flat())
                .isTrue();
    }

    @Test
    void frequenciesOutsideAreRefusedAndWorkIsStopped() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(2));
        assertThatThrownBy(() -> PathField.of(solid, null, C, 19, Progress.NONE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("frequency: 19 Hz")
                .hasMessageContaining("from 20 to 5000 Hz");
        Progress stop = (share, doing) -> {
            throw new Progress.Cancelled();
        };
        assertThatThrownBy(() -> PathField.of(solid, SampleBoxes.liner(0.025), C, 200, stop))
                .isInstanceOf(Progress.Cancelled.class);
    }
}
