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
 * Turns in a row worked by hand from the table: passes of 100 mm with gaps of 100 mm, so that fw in the 1 kHz band is 3.94
 * kHz·in: 6 dB a lined, 5 dB an unlined turn.
 */
class TurnSeriesTest {
    private static final int ONE_KILOHERTZ = 4;

    /** Middle passes of 0.6 m leave 0.4 m between turns, four widths. */
    @Test
    void apartTheyAdd() {
        PathEstimate estimate = of(maze(4));
        assertThat(turns(estimate)).isCloseTo(18, within(1e-9));
        assertThat(estimate.notices()).extracting(Notice::kind).doesNotContain(NoticeKind.TURNS_INTERFERE);
    }

    /** Passes of 0.35 m leave 0.15 m between turns: below two widths it is said, and no such turn counts as lined. */
    @Test
    void belowTwoWidthsItIsSaid() {
        PathEstimate estimate = of(lined(4, 0.35));
        assertThat(turns(estimate)).isCloseTo(15, within(1e-9));
        Notice close = notice(estimate, NoticeKind.TURNS_INTERFERE);
        assertThat(close.part()).isEqualTo("pass 2, pass 3");
        assertThat(close.value()).isCloseTo(0.15, within(1e-9));
        assertThat(close.limit()).isCloseTo(0.2, within(1e-9));
        Notice lining = notice(estimate, NoticeKind.TURN_LINING_SHORT);
        assertThat(lining.part()).isEqualTo("turn 1, turn 2, turn 3");
        assertThat(lining.value()).isCloseTo(0.15, within(1e-9));
        assertThat(lining.limit()).isCloseTo(0.2, within(1e-9));
    }

    /** Passes of 0.28 m leave 0.08 m between turns: less than a width, all three count as one. */
    @Test
    void belowOneWidthTheyAreOne() {
        assertThat(turns(of(lined(4, 0.28)))).isCloseTo(5, within(1e-9));
    }

    /** Without lining between them nothing keeps them from interfering, however far apart they are. */
    @Test
    void bareTheyAreOne() {
        PathEstimate estimate = of(maze(4, 1.5, null, LinedFaces.NONE, 1));
        assertThat(turns(estimate)).isCloseTo(5, within(1e-9));
        assertThat(notice(estimate, NoticeKind.TURNS_INTERFERE).value()).isZero();
        // Walls lined but baffles bare: the first and last pass are lined on one side, those between are bare.
        PathEstimate walls = of(maze(4, 1.5, liner(0.025), new LinedFaces(1, 0, 0, 0), 1));
        assertThat(turns(walls)).isCloseTo(5, within(1e-9));
    }

    /** A liner of 9 mm at 100 mm is thinner than a tenth. */
    @Test
    void aThinLinerIsSaid() {
        PathEstimate estimate = of(maze(2, 0.6, liner(0.009), LinedFaces.FOLD_PLANE, 1));
        assertThat(turns(estimate)).isCloseTo(5, within(1e-9));
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
