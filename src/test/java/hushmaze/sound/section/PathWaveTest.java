package hushmaze.sound.section;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.work.Progress;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation: a straight bare duct loses nothing; bare passes higher than their ports are expansion chambers, 10 lg(1 + (m -
 * 1/m)²/4 sin² kL). Property: the flat section and the solution in three directions agree where the section is all there is
 * to a box; a path loses the same both ways.
 */
class PathWaveTest {
    private static final double C = SampleBoxes.SOUND_SPEED;
    private static final MikiLiner LINER = new MikiLiner(20_000);
    private static final int THIRD_315 = 8;

    private static Solid bare(double portHeight) {
        Port port = new Port(PortFace.END, 0.1, portHeight, 0);
        return SolidBuilder.build(SampleBoxes.maze(1, 0.6, null, LinedFaces.NONE, 1, port, port));
    }

    @Test
    void aStraightBareDuctLosesNothing() {
        WaveResult result = PathWave.of(bare(0.3), null, C, Progress.NONE);
        assertThat(result.computed()).isEqualTo(21);
        assertThat(result.threeDimensional()).isFalse();
        assertThat(result.notices()).isEmpty();
        assertThat(result.worstResidual()).isBetween(0.0, 1e-9);
        assertThat(result.thirds()).allSatisfy(loss -> assertThat(loss).isCloseTo(0, within(1e-6)));
        assertThat(result.equalEnergyThirds())
                .allSatisfy(loss -> assertThat(loss).isCloseTo(0, within(1e-6)));
        assertThat(result.passLevels()).hasSize(1);
        assertThat(result.passLevels().get(0))
                .allSatisfy(level -> assertThat(level).isCloseTo(0, within(1e-3)));
    }

    /** In a lined maze every pass is quieter than the one before, where there are no standing waves, in either space. */
    @ParameterizedTest
    @CsvSource({"0", "10"})
    void theSoundFallsFromPassToPass(int fullBands) {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        WaveResult result = PathWave.of(solid(3, LinedFaces.FOLD_PLANE, end, end), LINER, C, fullBands, Progress.NONE);
        assertThat(result.fullThirds()).isEqualTo(fullBands);
        for (int third = THIRD_315; third < result.computed(); third++) {
            double before = 6;
            for (int pass = 0; pass < 3; pass++) {
                double level = result.passLevels().get(pass).get(third);
                assertThat(level).as("pass %d, third %d", pass, third).isLessThan(before);
                before = level;
            }
            assertThat(before).isGreaterThan(-result.thirds().get(third) - 3);
        }
    }

    /** The pass is higher than its ports by the ratio m, and nothing else. */
    @ParameterizedTest
    @CsvSource({"1.5", "2", "3"})
    void portsLowerThanThePassMakeAnExpansionChamber(double m) {
        WaveSolver solver = new WaveSolver(SolidSpace.flat(bare(0.3 / m), null, C));
        for (double f : new double[] {50, 100, 143, 250, 400, 700}) {
            double sine = Math.sin(2 * Math.PI * f / C * 0.6);
            double expected = Energy.db(1 + (m - 1 / m) * (m - 1 / m) / 4 * sine * sine);
            assertThat(solver.solve(f).transmissionLoss()).as("%s Hz", f).isCloseTo(expected, within(1e-4));
        }
    }

    @Test
    void flatAndFullAgreeWhereTheSectionIsAllThereIs() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Port side = new Port(PortFace.SIDE, 0.1, 0.3, 0);
        Solid solid = SolidBuilder.build(
                SampleBoxes.maze(2, 0.4, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, end, side));
        WaveSolver flat = new WaveSolver(SolidSpace.flat(solid, LINER, C), PathWave.FULL_ACCURACY);
        WaveSolver full = new WaveSolver(SolidSpace.full(solid, LINER, C), PathWave.FULL_ACCURACY);
        for (double f : new double[] {63, 250, 500}) {
            assertThat(full.solve(f).transmissionLoss()).isCloseTo(flat.solve(f).transmissionLoss(), within(1e-3));
        }
    }

    @Test
    void aPathLosesTheSameBothWays() {
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Port side = new Port(PortFace.SIDE, 0.15, 0.3, 0.05);
        for (int passes = 2; passes <= 3; passes++) {
            Solid there = solid(passes, LinedFaces.ALL, end, side);
            Solid back = solid(passes, LinedFaces.ALL, side, end);
            WaveSolver one = new WaveSolver(SolidSpace.flat(there, LINER, C));
            WaveSolver other = new WaveSolver(SolidSpace.flat(back, LINER, C));
            for (double f : new double[] {63, 250, 800}) {
                double loss = one.solve(f).transmissionLoss();
                assertThat(other.solve(f).transmissionLoss()).isCloseTo(loss, within(1e-6 * loss + 1e-6));
            }
        }
    }

    @Test
    void threeDirectionsAreAsFineAsTheyAreSaidToBe() {
        Port back = new Port(PortFace.BACK, 0.15, 0.1, 0);
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Solid solid = solid(2, LinedFaces.ALL, back, end);
        WaveSolver usual = new WaveSolver(SolidSpace.full(solid, LINER, C), PathWave.FULL_ACCURACY);
        WaveSolver fine = new WaveSolver(SolidSpace.full(solid, LINER, C), new WaveAccuracy(-1, 0));
        for (double f : new double[] {80, 250, 400}) {
            assertThat(usual.solve(f).transmissionLoss())
                    .isCloseTo(fine.solve(f).transmissionLoss(), within(0.25));
        }
    }

    @Test
    void portsThroughBroadFacesAndLinedBroadFacesAskForThreeDirections() {
        Port back = new Port(PortFace.BACK, 0.1, 0.1, 0);
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Solid solid = SolidBuilder.build(SampleBoxes.maze(1, 0.3, null, LinedFaces.NONE, 1, back, end));
        assertThat(SolidSpace.needsFull(solid)).isTrue();
        WaveResult result = PathWave.of(solid, null, C, 2, Progress.NONE);
        assertThat(result.threeDimensional()).isTrue();
        assertThat(result.fullThirds()).isEqualTo(2);
        assertThat(result.computed()).isEqualTo(21);
        assertThat(result.notices()).extracting(Notice::kind).containsExactly(NoticeKind.FLAT_PORT_STANDS_IN);
        assertThat(SolidSpace.needsFull(solid(2, LinedFaces.ALL, end, end))).isTrue();
        assertThat(SolidSpace.needsFull(solid(2, LinedFaces.FOLD_PLANE, end, end)))
                .isFalse();
    }

    /** At 50 Hz a box is short to the wave, and only areas and volumes count: both spaces have the same. */
    @Test
    void atLowFrequenciesTheStandInDoesAsWellAsThePort() {
        Port back = new Port(PortFace.BACK, 0.15, 0.1, 0);
        Port front = new Port(PortFace.FRONT, 0.15, 0.1, 0);
        Solid solid = SolidBuilder.build(
                SampleBoxes.maze(1, 0.5, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, back, front));
        double flat = new WaveSolver(SolidSpace.flat(solid, LINER, C)).solve(50).transmissionLoss();
        double full = new WaveSolver(SolidSpace.full(solid, LINER, C), PathWave.FULL_ACCURACY)
                .solve(50)
                .transmissionLoss();
        assertThat(flat).isCloseTo(full, within(0.15 * full));
    }

    @Test
    void bandsAboveWhatWasComputedComeFromElsewhere() {
        WaveResult result = PathWave.of(bare(0.3), null, C, Progress.NONE);
        Spectrum whole = result.completedBy(Spectrum.flat(BandSet.THIRD_OCTAVE, 7));
        assertThat(whole.value(20)).isCloseTo(0, within(1e-6));
        assertThat(whole.value(21)).isEqualTo(7);
    }

    @Test
    void stopsWhenNoLongerWanted() {
        Progress stop = (fraction, doing) -> {
            assertThat(fraction).isBetween(0.0, 1.0);
            if (fraction > 0.1) {
                throw new Progress.Cancelled();
            }
        };
        assertThatThrownBy(() -> PathWave.of(bare(0.3), null, C, stop)).isInstanceOf(Progress.Cancelled.class);
    }

    private static Solid solid(int passes, LinedFaces faces, Port opening, Port room) {
        Box box = SampleBoxes.maze(passes, 0.5, SampleBoxes.liner(0.025), faces, 1, opening, room);
        return SolidBuilder.build(box);
    }
}
