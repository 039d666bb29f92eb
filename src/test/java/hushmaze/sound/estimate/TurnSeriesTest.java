package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.maze;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.solid.SolidBuilder;
import org.junit.jupiter.api.Test;

/**
 * Turns in a row worked by hand from the table: passes of 100 mm with gaps of 100 mm, so that fw in the 1 kHz band is 3.937
 * kHz·in, by ratio 0.5564 of the way from the middle of the row with 1 dB (2.687) to that with 5 or 6 dB (5.339).
 */
class TurnSeriesTest {
    private static final int ONE_KILOHERTZ = 4;
    private static final double UNLINED = 1 + 4 * 0.55642;
    private static final double LINED = 1 + 5 * 0.55642;

    /** Middle passes of 0.6 m leave 0.4 m between turns, four widths. */
    @Test
    void apartTheyAdd() {
        PathEstimate estimate = of(maze(4));
        assertThat(turns(estimate)).isCloseTo(3 * LINED, within(1e-3));
        assertThat(estimate.notices()).extracting(Notice::kind).doesNotContain(NoticeKind.TURNS_INTERFERE);
    }

    /** Passes of 0.35 m leave 0.15 m between turns: below two widths it is said, and such turns count as lined by half. */
    @Test
    void belowTwoWidthsItIsSaid() {
        PathEstimate estimate = of(lined(4, 0.35));
        assertThat(turns(estimate)).isCloseTo(3 * (UNLINED + LINED) / 2, within(1e-3));
        Notice close = notice(estimate, NoticeKind.TURNS_INTERFERE);
        assertThat(close.part()).isEqualTo("pass 2, pass 3");
        assertThat(close.value()).isCloseTo(0.15, within(1e-9));
        assertThat(close.limit()).isCloseTo(0.2, within(1e-9));
        Notice lining = notice(estimate, NoticeKind.TURN_LINING_SHORT);
        assertThat(lining.part()).isEqualTo("turn 1, turn 2, turn 3");
        assertThat(lining.value()).isCloseTo(0.15, within(1e-9));
        assertThat(lining.limit()).isCloseTo(0.2, within(1e-9));
    }

    /** Passes of 0.25 m leave 0.05 m between turns, half a width: all three count as one; 0.28 m leave 0.8 widths, 0.3 of the way. */
    @Test
    void belowHalfAWidthTheyAreOne() {
        assertThat(turns(of(lined(4, 0.25)))).isCloseTo(UNLINED, within(1e-3));
        assertThat(turns(of(lined(4, 0.28)))).isCloseTo(UNLINED * (1 + 0.3 + 0.3), within(1e-3));
    }

    /**
     * Turns of 5, 8 and 5 dB, in the 1 kHz band, half apart: with like chances they lose 5 + 8 + 5, 8 + 5, 5 + 8 or, all as one, 8 dB, in
     * the mean 13; as much in another order, 8, 5, 5 or 5, 5, 8.
     */
    @Test
    void halfApartTheyLoseTheMeanOfAllWaysToPartThem() {
        double five = 5.3385 * 0.0254;
        double eight = 10.6066 * 0.0254;
        assertThat(halfApart(five, eight, five)).isCloseTo(13, within(1e-3));
        assertThat(halfApart(eight, five, five)).isCloseTo(13, within(1e-3));
        assertThat(halfApart(five, five, eight)).isCloseTo(13, within(1e-3));
    }

    private static double halfApart(double... widths) {
        TurnSeries turns = new TurnSeries(new TermList(new EstimateTables(SOUND_SPEED)));
        double sum = 0;
        double before = 0;
        for (double width : widths) {
            turns.straight("pass", Math.max(before, width));
            // the middle third of the octave
            sum += turns.turn(new TurnSeries.Place("turn", width, 0, 0)).value(3 * ONE_KILOHERTZ + 1);
            before = width;
        }
        return sum;
    }

    /** Without lining between them nothing keeps them from interfering, however far apart they are. */
    @Test
    void bareTheyAreOne() {
        PathEstimate estimate = of(maze(4, 1.5, null, LinedFaces.NONE, 1));
        assertThat(turns(estimate)).isCloseTo(UNLINED, within(1e-3));
        assertThat(notice(estimate, NoticeKind.TURNS_INTERFERE).value()).isZero();
        // Walls lined but baffles bare: the first and last pass are lined on one side, those between are bare.
        PathEstimate walls = of(maze(4, 1.5, liner(0.025), new LinedFaces(1, 0, 0, 0), 1));
        assertThat(turns(walls)).isCloseTo(UNLINED, within(1e-3));
    }

    /** A liner of 9 mm at 100 mm is thinner than a tenth: 0.8 of the way from half a tenth to a tenth. */
    @Test
    void aThinLinerIsSaid() {
        PathEstimate estimate = of(maze(2, 0.6, liner(0.009), LinedFaces.FOLD_PLANE, 1));
        assertThat(turns(estimate)).isCloseTo(0.2 * UNLINED + 0.8 * LINED, within(1e-3));
        Notice thin = notice(estimate, NoticeKind.TURN_LINER_THIN);
        assertThat(thin.value()).isCloseTo(0.009, within(1e-12));
        assertThat(thin.limit()).isCloseTo(0.01, within(1e-12));
    }

    private static Box lined(int passes, double length) {
        return maze(passes, length, liner(0.025), LinedFaces.FOLD_PLANE, 1);
    }

    private static PathEstimate of(Box box) {
        return PathEstimate.of(SolidBuilder.build(box), opening(Opening.Kind.IN_DUCT), SOUND_SPEED);
    }

    private static double turns(PathEstimate estimate) {
        return estimate.terms().stream()
                .filter(t -> t.key().equals("turn"))
                .mapToDouble(t -> t.octaves().value(ONE_KILOHERTZ))
                .sum();
    }

    private static Notice notice(PathEstimate estimate, NoticeKind kind) {
        return estimate.notices().stream()
                .filter(n -> n.kind() == kind)
                .reduce((one, other) -> {
                    throw new AssertionError("said twice: " + kind);
                })
                .orElseThrow();
    }
}
