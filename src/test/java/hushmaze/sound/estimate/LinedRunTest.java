package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.liner;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.api.Assertions.withinPercentage;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the lining of a run where it is held to the lined slit, against decays computed elsewhere; which of its limits
 * decides, worked by hand.
 */
class LinedRunTest {
    /**
     * Pass of 100 mm, liner of 25 mm and 20,000 Pa·s/m² on both sides, 0.6 m: decay of the least attenuated mode in dB/m by
     * mode matching and by a high-order finite element method. At 500 Hz the regression, by hand, is below it: 1.0147 ·
     * 6.096^0.5 · (25/25.4)^1.087 a foot gives 4.85 dB in 0.6 m.
     */
    @ParameterizedTest
    @CsvSource({"1, 0.170", "4, 0.677", "7, 2.454"})
    void lowSoundIsHeldToTheLinedSlit(int third, double perMetre) {
        BandLoss loss = loss(0.1, 0.6, 0.025);
        assertThat(loss.thirds().value(third)).isCloseTo(0.6 * perMetre, within(0.6 * 0.001));
        assertThat(loss.octaves().value((third - 1) / 3))
                .isEqualTo(loss.thirds().value(third));
        BandLoss regression = ReynoldsBledsoe.loss(0.6, 0.03, 0.025, 0.6, "");
        assertThat(loss.thirds().value(third)).isLessThan(regression.thirds().value(third));
    }

    @Test
    void fromFiveHundredHertzTheRegressionDecides() {
        double byHand = 1.0147 * Math.sqrt(6.096) * Math.pow(25 / 25.4, 1.087) * 0.6 / 0.3048;
        assertThat(loss(0.1, 0.6, 0.025).octaves().value(3)).isCloseTo(byHand, within(1e-3));
    }

    /** A pass lined on one side is half a slit of twice the width: at 125 Hz, 50 mm wide, half of what both sides do. */
    @Test
    void oneLinedSideIsHalfASlit() {
        Pass pass = pass(0.05, 0.6, 0.025);
        Pass half = new Pass(0, pass.clear(), true, 0.025, 0, 0);
        // Decay of the slit of 100 mm, computed elsewhere as above.
        BandLoss loss = new LinedRun(liner(0.025), new EstimateTables(SOUND_SPEED)).loss(half, 0.6, "");
        assertThat(loss.thirds().value(4)).isCloseTo(0.6 * 0.677, within(0.6 * 0.001));
    }

    /**
     * A pass of 50 mm by 2 m lined all round loses hardly more than the slit of 50 mm, one of 50 by 50 mm about twice that; the slit's
     * decay was computed elsewhere as above.
     */
    @Test
    void bothPairsOfFacesCount() {
        double slit = 1.363;
        assertThat(allRound(0.05, 2)).isBetween(slit, 1.1 * slit);
        assertThat(allRound(0.05, 0.05)).isBetween(1.5 * slit, 2.5 * slit);
    }

    /** dB/m in the 125 Hz band. */
    private static double allRound(double width, double height) {
        Pass pass = new Pass(0, new Cuboid(0, 0, 0, 1, width, height), true, 0.025, 0.025, 0.025);
        return new LinedSlitLimit(liner(0.025), new EstimateTables(SOUND_SPEED))
                .most(pass)
                .value(4);
    }

    /**
     * Where waves are no longer long to the slit its limit goes on without a step: k0 h of 1.2 is a slit of 415 mm in the 315 Hz band, and
     * of 261 mm in the 500 Hz band.
     */
    @ParameterizedTest
    @CsvSource({"8, 0.4149", "10, 0.2615"})
    void theLimitHasNoStepWhereWavesAreNoLongerLong(int third, double width) {
        double[] rates = new double[40];
        for (int i = 0; i < rates.length; i++) {
            Pass pass = pass(width - 0.002 + i * 0.0001, 0.6, 0.025);
            rates[i] = new LinedSlitLimit(liner(0.025), new EstimateTables(SOUND_SPEED))
                    .most(pass)
                    .value(third);
        }
        for (int i = 1; i < rates.length; i++) {
            assertThat(rates[i]).isLessThan(rates[i - 1]).isCloseTo(rates[i - 1], withinPercentage(0.1));
        }
    }

    /** Three metres of a pass 400 mm wide: in the 4 kHz band the beam's limit decides, and is said. */
    @Test
    void aWideStraightIsHeldToItsBeam() {
        BandLoss loss = loss(0.4, 3, 0.05);
        Notice notice = loss.notices().stream()
                .filter(n -> n.kind() == NoticeKind.BEAM_CAPPED)
                .findFirst()
                .orElseThrow();
        assertThat(notice.part()).isEqualTo("pass 1");
        assertThat(notice.value()).isGreaterThan(notice.limit());
        // 10 dB and three times 0.776 dB/m, the least attenuated mode by mode matching.
        assertThat(loss.thirds().value(19)).isCloseTo(10 + 3 * 0.776, within(0.5));
    }

    /** In passes of usual size neither beam nor cap decide, and nothing is said of them. */
    @Test
    void aUsualPassIsNotHeld() {
        assertThat(loss(0.1, 0.6, 0.025).notices())
                .extracting(Notice::kind)
                .containsExactlyInAnyOrder(NoticeKind.RUN_SHORTER_THAN_RANGE, NoticeKind.LINER_MODEL_BELOW_RANGE);
    }

    /** By hand: f/σ of 0.01 is 200 Hz at 20,000 Pa·s/m²; the lowest third is centred at 50.1 Hz. */
    @Test
    void theLinersModelBelowItsRangeIsSaid() {
        Notice notice = loss(0.1, 0.6, 0.025).notices().stream()
                .filter(n -> n.kind() == NoticeKind.LINER_MODEL_BELOW_RANGE)
                .findFirst()
                .orElseThrow();
        assertThat(notice.value()).isCloseTo(50.12, within(0.01));
        assertThat(notice.limit()).isEqualTo(200);
    }

    /** Four metres at 60 mm would lose more than 40 dB at 1 kHz: held, and the notice has the sum, not the bands below. */
    @Test
    void theCapComesLast() {
        BandLoss loss = loss(0.06, 4, 0.025);
        assertThat(loss.octaves().value(4)).isEqualTo(40);
        assertThat(loss.notices())
                .extracting(Notice::kind)
                .contains(NoticeKind.TERM_CAPPED, NoticeKind.RUN_LONGER_THAN_RANGE);
    }

    private static BandLoss loss(double width, double length, double thickness) {
        return new LinedRun(liner(thickness), new EstimateTables(SOUND_SPEED))
                .loss(pass(width, length, thickness), length, "pass 1");
    }

    private static Pass pass(double width, double length, double thickness) {
        Port port = new Port(PortFace.END, width, 0.3, 0);
        LinedFaces sides = new LinedFaces(1, 1, 0, 0);
        Box box = new Box(
                Box.Form.MAZE,
                1,
                width,
                0.3,
                length,
                0,
                List.of(SampleBoxes.board()),
                SampleBoxes.board(),
                1,
                liner(thickness),
                sides,
                port,
                port);
        return SolidBuilder.build(box).passes().get(0);
    }
}
