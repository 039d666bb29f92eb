package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.chamber;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.maze;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.LossTerm;
import org.junit.jupiter.api.Test;

/** Estimates worked by hand from the single methods for boxes with round sizes; properties over random boxes. */
class PathEstimateTest {
    private static final LinedFaces BARE_ENDS = new LinedFaces(true, true, false, false);

    /**
     * Two passes, worked by hand at 1 kHz: run 0.6 - 0.1 = 0.5 m = 1.640 ft, P/A = 2 · 0.3 / 0.03 = 20 per m = 6.096 per ft,
     * 1.77 · 6.096^0.695 · 1.640 = 10.20 dB a pass; turn fw = 3.94 kHz·in, lined, 6 dB; mouths and steps cancel.
     */
    @Test
    void twoPassesByHand() {
        PathEstimate estimate = of(maze(2), Opening.Kind.WALL_OPENING);
        assertThat(estimate.terms())
                .extracting(LossTerm::key)
                .containsExactly("areaStep", "lining", "turn", "lining", "areaStep", "mouths");
        assertThat(estimate.terms())
                .extracting(LossTerm::part)
                .containsExactly("opening port", "pass 1", "turn 1", "pass 2", "room port", "");
        assertThat(estimate.terms().get(1).octaves().value(4)).isCloseTo(10.20, within(0.02));
        assertThat(estimate.octaves().value(4)).isCloseTo(2 * 10.20 + 6, within(0.04));
    }

    @Test
    void aBareEndTurnsInTheUnlinedColumn() {
        // fw at 4 kHz and 100 mm is 15.7 kHz·in: 10 dB lined, 4 dB unlined.
        assertThat(of(maze(2), Opening.Kind.IN_DUCT).thirdsOf("turn").value(19)).isEqualTo(10);
        Box bareEnds = maze(2, 0.6, liner(0.025), BARE_ENDS, 1);
        assertThat(of(bareEnds, Opening.Kind.IN_DUCT).thirdsOf("turn").value(19))
                .isEqualTo(4);
    }

    @Test
    void aLinerThinnerThanATenthOfTheWidthDoesNotLineATurn() {
        Box thin = maze(2, 0.6, liner(0.009), LinedFaces.FOLD_PLANE, 1);
        PathEstimate estimate = of(thin, Opening.Kind.IN_DUCT);
        assertThat(estimate.thirdsOf("turn").value(19)).isEqualTo(4);
        assertThat(estimate.notices())
                .filteredOn(n -> n.kind() == NoticeKind.LINER_OUTSIDE_RANGE)
                .hasSize(1);
    }

    @Test
    void portsInSideAndBackTurnAndShortenTheRun() {
        Port side = new Port(PortFace.SIDE, 0.1, 0.3, 0);
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Box box = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, side, end);
        PathEstimate estimate = of(box, Opening.Kind.IN_DUCT);
        assertThat(estimate.terms())
                .extracting(LossTerm::key)
                .containsExactly("areaStep", "turn", "lining", "areaStep");
        // By hand: the port takes 100 mm of the pass, so the run is 0.5 m as in the box of two passes.
        assertThat(estimate.thirdsOf("lining").value(13)).isCloseTo(10.20, within(0.02));
        // Across the height of 300 mm and with bare broad faces: fw at 1 kHz 11.8 kHz·in, unlined, 8 dB.
        Port back = new Port(PortFace.BACK, 0.3, 0.1, 0.0);
        Box other = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, back, end);
        assertThat(of(other, Opening.Kind.IN_DUCT).thirdsOf("turn").value(13)).isEqualTo(8);
    }

    @Test
    void mouthsCountByKindOfOpening() {
        Port small = new Port(PortFace.END, 0.05, 0.3, 0);
        Port whole = new Port(PortFace.END, 0.1, 0.3, 0);
        Box box = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, small);
        double gain = EndReflection.loss(BandSet.OCTAVE.centreHz(1), 0.015, SOUND_SPEED, EndReflection.Setting.FLUSH)
                - EndReflection.loss(BandSet.OCTAVE.centreHz(1), 0.03, SOUND_SPEED, EndReflection.Setting.FLUSH);
        assertThat(gain).isGreaterThan(2);
        assertThat(of(box, Opening.Kind.IN_DUCT).thirdsOf("mouths").value(4)).isZero();
        assertThat(of(box, Opening.Kind.REGISTER).thirdsOf("mouths").value(4)).isCloseTo(gain, within(1e-9));
        assertThat(of(box, Opening.Kind.WALL_OPENING).thirdsOf("mouths").value(4))
                .isCloseTo(2 * gain, within(1e-9));
        Box inletOnly = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, whole);
        assertThat(of(inletOnly, Opening.Kind.REGISTER).thirdsOf("mouths").value(4))
                .isCloseTo(0, within(1e-9));
    }

    @Test
    void areaStepsEndAtTheFirstCutOn() {
        Port small = new Port(PortFace.END, 0.05, 0.15, 0);
        Box box = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, small);
        Spectrum steps = of(box, Opening.Kind.IN_DUCT).thirdsOf("areaStep");
        // By hand: ratio 4 gives 1.94 dB, twice; cut-on of 300 mm is 572 Hz, between the thirds 500 and 630.
        assertThat(steps.value(10)).isCloseTo(2 * 1.938, within(0.001));
        assertThat(steps.value(11)).isZero();
    }

    @Test
    void reversedItIsTheSame() {
        Port small = new Port(PortFace.END, 0.05, 0.2, 0);
        Port side = new Port(PortFace.SIDE, 0.1, 0.2, 0.02);
        Box one = maze(3, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, side);
        Box other = maze(3, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, side, small);
        assertClose(
                of(one, Opening.Kind.WALL_OPENING).thirds(),
                of(other, Opening.Kind.WALL_OPENING).thirds());
    }

    @Test
    void longerIsQuieterInEveryThirdAndAnyLinerBeatsNone() {
        for (int passes = 1; passes <= 4; passes++) {
            Spectrum one = of(maze(passes), Opening.Kind.REGISTER).thirds();
            Box longer = maze(passes, 0.7, liner(0.025), LinedFaces.FOLD_PLANE, 1);
            Spectrum other = of(longer, Opening.Kind.REGISTER).thirds();
            Spectrum bare = of(maze(passes, 0.6, null, LinedFaces.NONE, 1), Opening.Kind.REGISTER)
                    .octaves();
            Spectrum lined = of(maze(passes), Opening.Kind.REGISTER).octaves();
            for (int i = 0; i < one.size(); i++) {
                assertThat(other.value(i)).isGreaterThan(one.value(i));
            }
            for (int octave = 3; octave <= 5; octave++) {
                assertThat(lined.value(octave)).isGreaterThan(bare.value(octave));
            }
        }
    }

    @Test
    void withoutLinerThereIsANotice() {
        PathEstimate estimate = of(maze(2, 0.6, null, LinedFaces.NONE, 1), Opening.Kind.REGISTER);
        assertThat(estimate.notices()).extracting(Notice::kind).contains(NoticeKind.NO_LINER);
        assertThat(estimate.terms()).extracting(LossTerm::key).doesNotContain("lining");
    }

    /**
     * The chamber by hand at 2 kHz, above the inlet's cut-on of 572 Hz: liner of 50 mm absorbs 0.948, all faces lined: A =
     * 2 (0.5 · 0.4 + 0.5 · 0.9 + 0.4 · 0.9) = 2.02 m²; the ports' centres are 0.4 m out of line over 0.9 m, s = 0.985 m, cos
     * 0.914; 0.03 (0.914 / (2π · 0.97) + 0.052 / (0.948 · 2.02)) gives 22.8 dB.
     */
    @Test
    void offsetChamberByHand() {
        PathEstimate estimate = of(chamber(liner(0.05)), Opening.Kind.IN_DUCT);
        assertThat(estimate.octaves().value(5)).isCloseTo(22.8, within(0.1));
        assertThat(estimate.notices()).extracting(Notice::kind).containsExactly(NoticeKind.CHAMBER_OUTSIDE_RANGE);
        assertThat(estimate.terms()).extracting(LossTerm::key).containsExactly("chamber");
    }

    /** Below the cut-on the bare chamber is the textbook expansion chamber: m = 0.2 / 0.03, 0.9 m long. */
    @Test
    void bareChamberAtLowFrequencyIsTheSimpleOne() {
        double f = BandSet.OCTAVE.centreHz(0);
        double m = 0.2 / 0.03;
        double sine = Math.sin(2 * Math.PI * f / SOUND_SPEED * 0.9);
        double byHand = 10 * Math.log10(1 + (m - 1 / m) * (m - 1 / m) / 4 * sine * sine);
        assertThat(of(chamber(null), Opening.Kind.IN_DUCT).octaves().value(0)).isCloseTo(byHand, within(1e-9));
    }

    @Test
    void randomBoxesGiveFiniteNumbersAndOctavesWithinTheirThirds() {
        RandomBoxes boxes = new RandomBoxes(4711);
        for (int n = 0; n < 400; n++) {
            Box box = boxes.next();
            PathEstimate estimate = of(box, Opening.Kind.values()[n % 3]);
            assertThat(estimate.legs()).hasSize(box.passes());
            Spectrum sum = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
            for (LossTerm term : estimate.terms()) {
                sum = sum.plus(term.thirds());
            }
            assertClose(sum, estimate.thirds());
            for (int i = 0; i < BandSet.OCTAVE.size(); i++) {
                double[] thirds = {
                    estimate.thirds().value(3 * i),
                    estimate.thirds().value(3 * i + 1),
                    estimate.thirds().value(3 * i + 2)
                };
                assertThat(estimate.octaves().value(i))
                        .isFinite()
                        .isGreaterThanOrEqualTo(Math.min(thirds[0], Math.min(thirds[1], thirds[2])) - 1e-9)
                        .isLessThanOrEqualTo(Math.max(thirds[0], Math.max(thirds[1], thirds[2])) + 1e-9);
            }
        }
    }

    @Test
    void anImpossibleSpeedOfSoundIsRefused() {
        assertThatThrownBy(() -> PathEstimate.of(SolidBuilder.build(maze(1)), opening(Opening.Kind.REGISTER), 34))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("soundSpeed");
    }

    private static PathEstimate of(Box box, Opening.Kind kind) {
        return PathEstimate.of(SolidBuilder.build(box), opening(kind), SOUND_SPEED);
    }

    private static void assertClose(Spectrum one, Spectrum other) {
        for (int i = 0; i < one.size(); i++) {
            assertThat(one.value(i)).isCloseTo(other.value(i), within(1e-9));
        }
    }
}
