package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.board;
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
import hushmaze.quantity.Unit;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.LossTerm;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Estimates worked by hand from the single methods for boxes with round sizes; properties over random boxes. */
class PathEstimateTest {
    private static final LinedFaces BARE_ENDS = new LinedFaces(1, 1, 0, 0);

    /**
     * Two passes, worked by hand at 1 kHz: run 0.6 - 0.1 = 0.5 m = 1.640 ft, P/A = 2 · 0.3 / 0.03 = 20 per m = 6.096 per ft,
     * 1.77 · 6.096^0.695 · 1.640 = 10.20 dB a pass; turn fw = 3.94 kHz·in, lined, 0.556
     * of the way from 1 to 6 dB, 3.78 dB; mouths and steps cancel.
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
        assertThat(estimate.octaves().value(4)).isCloseTo(2 * 10.20 + 3.78, within(0.04));
    }

    @Test
    void aBareEndTurnsInTheUnlinedColumn() {
        // fw at 3981 Hz and 100 mm is 15.67 kHz·in, by ratio 0.563 of the way from 10.61 (11 and 8 dB) to 21.21 (10 and
        // 4 dB).
        assertThat(of(maze(2), Opening.Kind.IN_DUCT).thirdsOf("turn").value(19)).isCloseTo(11 - 0.563, within(0.01));
        Box bareEnds = maze(2, 0.6, liner(0.025), BARE_ENDS, 1);
        assertThat(of(bareEnds, Opening.Kind.IN_DUCT).thirdsOf("turn").value(19))
                .isCloseTo(8 - 4 * 0.563, within(0.01));
    }

    /** As above: 5 mm of liner are half of the tenth that is asked, 9 mm are 0.8 of the way from there to a lined turn. */
    @Test
    void aLinerThinnerThanATenthOfTheWidthLinesATurnInPart() {
        Box bare = maze(2, 0.6, liner(0.005), LinedFaces.FOLD_PLANE, 1);
        assertThat(of(bare, Opening.Kind.IN_DUCT).thirdsOf("turn").value(19)).isCloseTo(8 - 4 * 0.563, within(0.01));
        Box thin = maze(2, 0.6, liner(0.009), LinedFaces.FOLD_PLANE, 1);
        PathEstimate estimate = of(thin, Opening.Kind.IN_DUCT);
        assertThat(estimate.thirdsOf("turn").value(19))
                .isCloseTo(0.8 * (11 - 0.563) + 0.2 * (8 - 4 * 0.563), within(0.01));
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
        // Across the height of 300 mm and with bare broad faces: fw at 1 kHz 11.81 kHz·in, unlined, 0.155 of the way
        // from 8 to 4 dB.
        Port back = new Port(PortFace.BACK, 0.3, 0.1, 0.0);
        Box other = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, back, end);
        assertThat(of(other, Opening.Kind.IN_DUCT).thirdsOf("turn").value(13)).isCloseTo(8 - 4 * 0.155, within(0.01));
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
        // By hand: ratio 4 gives 1.94 dB, twice; cut-on of 300 mm is 572 Hz, between the thirds 500 and 630: log2(572 /
        // 501.2) is 0.191,
        // of the third of an octave over which the loss goes down.
        assertThat(steps.value(9)).isCloseTo(2 * 1.938, within(0.001));
        assertThat(steps.value(10)).isCloseTo(2 * 1.938 * 3 * 0.191, within(0.005));
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

    /** Three passes of 0.6 m with runs of 0.5, 0.4 and 0.5 m: short runs are said once, of the shortest, naming all. */
    @Test
    void whatHoldsForSeveralPartsIsSaidOnce() {
        List<Notice> notices = of(maze(3), Opening.Kind.IN_DUCT).notices();
        assertThat(notices).extracting(Notice::kind).doesNotHaveDuplicates();
        Notice run = notice(notices, NoticeKind.RUN_SHORTER_THAN_RANGE);
        assertThat(run.part()).isEqualTo("pass 1, pass 2, pass 3");
        assertThat(run.value()).isCloseTo(0.4, within(1e-9));
        assertThat(run.limit()).isEqualTo(3.048);
        assertThat(run.unit()).isEqualTo(Unit.MILLIMETRE);
        assertThat(notice(notices, NoticeKind.TERMS_INTERPOLATED).part()).isEmpty();
        assertThat(notices).extracting(Notice::kind).doesNotContain(NoticeKind.OCTAVES_INTERPOLATED);
    }

    /** The range of clear area over lined perimeter, 25 to 305 mm, and what is counted for a narrower one. */
    @Test
    void aSectionOutsideTheTableIsSaid() {
        Port slot = new Port(PortFace.END, 0.03, 0.3, 0);
        PathEstimate narrow = of(straight(0.03, 0.6, slot), Opening.Kind.IN_DUCT);
        Notice notice = notice(narrow.notices(), NoticeKind.LINED_SECTION_OUTSIDE_RANGE);
        // By hand: 0.03 · 0.3 / (2 · 0.3) = 15 mm.
        assertThat(notice.value()).isCloseTo(0.015, within(1e-9));
        assertThat(notice.limit()).isEqualTo(0.025);
        // Counted as 25 mm, 12.19 per ft: 1.77 · 12.19^0.695 · 1.969 ft.
        assertThat(narrow.octaves().value(4)).isCloseTo(1.77 * Math.pow(12.192, 0.695) * 0.6 / 0.3048, within(0.01));
        Port port = new Port(PortFace.END, 0.1, 0.3, 0);
        Notice wide = notice(
                of(straight(0.7, 0.6, port), Opening.Kind.IN_DUCT).notices(), NoticeKind.LINED_SECTION_OUTSIDE_RANGE);
        assertThat(wide.value()).isCloseTo(0.35, within(1e-9));
        assertThat(wide.limit()).isEqualTo(0.305);
    }

    /** By hand: two waves fit into 100 mm from 6864 Hz on; a turn takes the view away, and a bare pass promises nothing. */
    @Test
    void aStraightViewIsSaid() {
        Notice view = notice(of(maze(1), Opening.Kind.IN_DUCT).notices(), NoticeKind.LINE_OF_SIGHT);
        assertThat(view.limit()).isCloseTo(6864, within(1e-6));
        assertThat(of(maze(2), Opening.Kind.IN_DUCT).notices())
                .extracting(Notice::kind)
                .doesNotContain(NoticeKind.LINE_OF_SIGHT);
        Port side = new Port(PortFace.SIDE, 0.1, 0.3, 0);
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Box turned = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, side, end);
        Box bare = maze(1, 0.6, null, LinedFaces.NONE, 1);
        for (Box box : List.of(turned, bare)) {
            assertThat(of(box, Opening.Kind.IN_DUCT).notices())
                    .extracting(Notice::kind)
                    .doesNotContain(NoticeKind.LINE_OF_SIGHT);
        }
    }

    /** A mouth that differs from the opening needs straight duct behind it; one that does not cancels out. */
    @Test
    void aMouthWithoutStraightDuctIsSaid() {
        Port side = new Port(PortFace.SIDE, 0.1, 0.2, 0);
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Box box = maze(2, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, side, end);
        Notice notice = notice(of(box, Opening.Kind.WALL_OPENING).notices(), NoticeKind.MOUTH_WITHOUT_STRAIGHT_DUCT);
        assertThat(notice.part()).isEqualTo("opening port");
        assertThat(notice.value()).isZero();
        // Three diameters of the circle of 0.02 m².
        assertThat(notice.limit()).isCloseTo(3 * 0.15958, within(1e-4));
        assertThat(of(maze(2), Opening.Kind.WALL_OPENING).notices())
                .extracting(Notice::kind)
                .doesNotContain(NoticeKind.MOUTH_WITHOUT_STRAIGHT_DUCT);
    }

    /** By hand: the pass of 300 mm cuts on at 572 Hz; ports as large as the pass are no step. */
    @Test
    void aStepAboveItsCutOnIsSaid() {
        Port small = new Port(PortFace.END, 0.05, 0.15, 0);
        Box box = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, small);
        Notice notice = notice(of(box, Opening.Kind.IN_DUCT).notices(), NoticeKind.STEP_BELOW_CUT_ON_ONLY);
        assertThat(notice.part()).isEqualTo("opening port, room port");
        assertThat(notice.limit()).isCloseTo(572, within(1e-9));
        assertThat(of(maze(1), Opening.Kind.IN_DUCT).notices())
                .extracting(Notice::kind)
                .doesNotContain(NoticeKind.STEP_BELOW_CUT_ON_ONLY);
    }

    /** Every term can be worked again from what it names: here the lining at 1 kHz and the step. */
    @Test
    void termsNameTheirInputs() {
        Port small = new Port(PortFace.END, 0.05, 0.15, 0);
        Box box = maze(1, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1, small, small);
        PathEstimate estimate = of(box, Opening.Kind.REGISTER);
        assertThat(estimate.terms())
                .allSatisfy(term -> assertThat(term.inputs()).isNotEmpty());
        LossTerm step = estimate.terms().get(0);
        double m = input(step, "passArea") / input(step, "portArea");
        assertThat(step.octaves().value(0)).isCloseTo(10 * Math.log10((1 + m) * (1 + m) / (4 * m)), within(1e-9));
        assertThat(input(step, "cutOn")).isCloseTo(572, within(1e-9));
        LossTerm lining = estimate.terms().get(1);
        double perFoot = 0.3048 * input(lining, "linedPerimeter") / input(lining, "clearArea");
        assertThat(lining.octaves().value(4))
                .isCloseTo(1.77 * Math.pow(perFoot, 0.695) * input(lining, "run") / 0.3048, within(1e-9));
    }

    private static double input(LossTerm term, String key) {
        return term.inputs().stream()
                .filter(i -> i.key().equals(key))
                .findFirst()
                .orElseThrow()
                .value();
    }

    private static Notice notice(List<Notice> notices, NoticeKind kind) {
        List<Notice> found = notices.stream().filter(n -> n.kind() == kind).toList();
        assertThat(found).as(kind + " in " + notices).hasSize(1);
        return found.get(0);
    }

    private static Box straight(double width, double length, Port port) {
        return new Box(
                Box.Form.MAZE,
                1,
                width,
                0.3,
                length,
                0,
                List.of(board()),
                board(),
                1,
                liner(0.025),
                LinedFaces.FOLD_PLANE,
                port,
                port);
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
        assertThat(estimate.notices()).extracting(Notice::kind).contains(NoticeKind.CHAMBER_OUTSIDE_RANGE);
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
