package hushmaze.sound;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Liner;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator.Quick;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.section.PathWave;
import hushmaze.sound.section.WaveResult;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Validation: boxes whose opening port is smaller than the face it goes through, against the wave solution in three directions,
 * which shares nothing with estimate and quick wave but the liner's model.
 */
class PartialPortTest {
    private static final PathCalculator PATHS = new PathCalculator(SOUND_SPEED);
    private static final Port IN_ROOM = new Port(PortFace.END, 0.1, 0.3, 0);
    private static final int THIRD_400 = 9;
    private static final int THIRD_1000 = 13;
    private static final int BANDS = 15;

    /** What is known of a box by solving it in three directions up to 1.25 kHz. */
    private record Known(PathMethods methods, WaveResult wave) {}

    private static Known known(PortFace face) {
        Port port = new Port(face, 0.15, face.isBroad() ? 0.06 : 0.12, 0);
        Liner liner = SampleBoxes.liner(0.025);
        Solid solid = SolidBuilder.build(SampleBoxes.maze(1, 0.3, liner, LinedFaces.ALL, 1, port, IN_ROOM));
        PathMethods methods =
                PATHS.methods(solid, SampleBoxes.opening(Opening.Kind.WALL_OPENING), Quick.VARIANTS, null);
        return new Known(methods, PathWave.of(solid, FacedLiner.miki(liner), SOUND_SPEED, BANDS, Progress.NONE));
    }

    /** Sound that comes in through part of a face fills part of the pass: its mean is less than that in the mouth, and rather overstated. */
    @ParameterizedTest
    @EnumSource(names = {"SIDE", "BACK"})
    void theFirstPassIsAsLoudAsSolvedInThreeDirections(PortFace face) {
        Known box = known(face);
        Spectrum quick = box.methods().levels().get(0);
        List<Double> solved = box.wave().passLevels().get(0);
        for (int third = THIRD_400; third < BANDS; third++) {
            assertThat(quick.value(third) - solved.get(third))
                    .as("third %d", third)
                    .isBetween(-3.0, 8.5);
        }
    }

    /** Where the estimate is the least, the stand-in for a port through a broad face takes nothing more off. */
    @ParameterizedTest
    @EnumSource(names = {"SIDE", "BACK"})
    void theLowEdgeIsBelowWhatIsSolvedInThreeDirections(PortFace face) {
        Known box = known(face);
        Spectrum low = box.methods().range().low();
        Spectrum mouths = box.methods().estimate().thirdsOf("mouths");
        for (int third = THIRD_1000; third < BANDS; third++) {
            double solved = Math.min(
                            box.wave().thirds().get(third),
                            box.wave().equalEnergyThirds().get(third))
                    + mouths.value(third);
            assertThat(low.value(third)).as("third %d", third).isLessThan(solved);
            double estimate = box.methods().estimateLoss().value(third);
            assertThat(box.methods().quickLoss().value(third)).isGreaterThan(estimate + 4);
            assertThat(low.value(third)).isCloseTo(0.9 * estimate, within(1e-9));
        }
    }
}
