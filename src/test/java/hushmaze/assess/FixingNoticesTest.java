package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.Into;
import hushmaze.project.Opening.Surface;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.solid.Role;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: what is said of fixing follows its figures, and nothing is advised that the studs forbid. */
class FixingNoticesTest {
    private static Optional<Notice> notice(PathResult path, NoticeKind kind) {
        return path.notices().stream().filter(n -> n.kind() == kind).findFirst();
    }

    private static PathResult wall(double thread, int screws, Double spacing, Double cleat) {
        return FixedBoxes.judged(
                Surface.WALL, FixedBoxes.mounting(Into.STUDS, thread, screws, 0.3, spacing, cleat, null));
    }

    @Test
    void moreScrewsWouldDo() {
        PathResult path = wall(0.04, 1, null, null);
        double used = path.fixing().hanging().orElseThrow().used();
        assertThat(notice(path, NoticeKind.FIXING_OVERLOADED).orElseThrow().value())
                .isEqualTo(used)
                .isGreaterThan(1);
        Notice more = notice(path, NoticeKind.MORE_SCREWS_DO).orElseThrow();
        int enough = (int) Math.round(more.value());
        assertThat(wall(0.04, enough, null, null)
                        .fixing()
                        .hanging()
                        .orElseThrow()
                        .used())
                .isLessThanOrEqualTo(1);
        assertThat(wall(0.04, enough - 1, null, null)
                        .fixing()
                        .hanging()
                        .orElseThrow()
                        .used())
                .isGreaterThan(1);
        assertThat(notice(wall(0.04, enough, null, null), NoticeKind.FIXING_OVERLOADED))
                .isEmpty();
    }

    private static PathResult rows(double apart) {
        return FixedBoxes.judged(Surface.WALL, FixedBoxes.mounting(Into.STUDS, 0.04, 4, apart, 0.4064, null, null));
    }

    /**
     * By hand: the box of the sample is 667 mm high in the middle of its rows, its port from 57 to 197 mm above its lower edge;
     * cleats of 9.5 · 4.826 = 45.8 mm. Rows 400 mm apart: the lower at 133.5, across the port. Rows 200 mm apart: at 233.5, its lower
     * edge at 210.6, above it. Rows 620 mm apart: at 23.5, its upper edge at 46.4, below it.
     */
    @Test
    void aCleatAcrossThePortIsRefused() {
        assertThat(notice(rows(0.4), NoticeKind.CLEAT_ACROSS_PORT).orElseThrow().severity())
                .isEqualTo(Severity.STOP);
        assertThat(notice(rows(0.2), NoticeKind.CLEAT_ACROSS_PORT)).isEmpty();
        assertThat(notice(rows(0.62), NoticeKind.CLEAT_ACROSS_PORT)).isEmpty();
    }

    /** By hand: a cleat of 19 mm holds the box off the wall; its 335 mm of depth take 354 of the space. */
    @Test
    void cleatsTakeDepth() {
        PathResult.Fits hung = rows(0.62).fits();
        assertThat(hung.standOff()).isEqualTo(0.019);
        PathResult.Fits standing = FixedBoxes.judged(
                        Surface.FLOOR, FixedBoxes.mounting(Into.STUDS, 0.04, 4, 0.4, null, null, null))
                .fits();
        // The gasket of the sample, once it is pressed.
        assertThat(standing.standOff()).isEqualTo(0.003);
        assertThat(hung.depth()).isEqualTo(standing.depth());
    }

    /** The box of the sample with its port over the opening in another face. */
    private static PathResult over(PortFace face, Surface surface, double apart) {
        Project project =
                FixedBoxes.project(surface, FixedBoxes.mounting(Into.STUDS, 0.04, 2, apart, null, null, null));
        VentPath path = project.paths().get(1);
        Port room = path.box().roomPort();
        PortFace other = face == PortFace.FRONT ? PortFace.SIDE : PortFace.FRONT;
        Box box = path.box()
                .withPorts(new Port(face, 0.1, 0.1, 0), new Port(other, room.width(), 0.1, room.edgeDistance()));
        List<VentPath> paths = new ArrayList<>(project.paths());
        paths.set(1, new VentPath(path.name(), path.purpose(), path.brief(), box));
        return Assessor.assess(project.withPaths(paths), Methods.ESTIMATE, Progress.NONE)
                .paths()
                .get(1);
    }

    /** Nobody gets at screws behind a closed side, and a cover that hangs a box can never be taken off. */
    @Test
    void whereNobodyGetsAtTheScrews() {
        assertThat(notice(over(PortFace.SIDE, Surface.CEILING, 0.2), NoticeKind.SCREWS_OUT_OF_REACH))
                .isPresent();
        assertThat(notice(over(PortFace.BACK, Surface.CEILING, 0.2), NoticeKind.SCREWS_OUT_OF_REACH))
                .isEmpty();
        assertThat(notice(over(PortFace.SIDE, Surface.WALL, 0.2), NoticeKind.SCREWS_OUT_OF_REACH))
                .isEmpty();
        assertThat(notice(over(PortFace.FRONT, Surface.WALL, 0.2), NoticeKind.HANGS_BY_COVER)
                        .orElseThrow()
                        .severity())
                .isEqualTo(Severity.STOP);
        assertThat(notice(over(PortFace.BACK, Surface.WALL, 0.2), NoticeKind.HANGS_BY_COVER))
                .isEmpty();
    }

    /** Rows nearer than the weight is from the wall let it tip; rows as far apart as the box leave no room for its batten. */
    @Test
    void battensThatDoNotHold() {
        PathResult near = over(PortFace.SIDE, Surface.WALL, 0.05);
        Notice tips = notice(near, NoticeKind.HOOK_TIPS).orElseThrow();
        assertThat(tips.value()).isEqualTo(near.fixing().hanging().orElseThrow().arm());
        assertThat(tips.limit()).isEqualTo(0.05);
        double reach = near.fixing().hanging().orElseThrow().reach();
        Notice beyond = notice(over(PortFace.SIDE, Surface.WALL, reach - 0.02), NoticeKind.CLEAT_BEYOND_BOX)
                .orElseThrow();
        // By hand: no. 10 is 4.826 mm; a spacer of 5.5 · 4.826 along the lower edge has its middle at 13.27 mm, and the
        // batten ends 2 · (1.5 · 4.826 + 19) + 1.5 · 4.826 = 59.72 mm over its screws: 13.27 - 20 + 59.72.
        assertThat(beyond.value()).isCloseTo(0.05299, within(1e-5));
    }

    /** By hand: two diameters of 4.826 mm; a row 5 mm from the edge of the box is in its side of 36 mm. */
    @Test
    void aRowAtABoard() {
        PathResult path =
                FixedBoxes.judged(Surface.CEILING, FixedBoxes.mounting(Into.STUDS, 0.04, 2, 0.2, null, null, null));
        assertThat(path.solid().openingPort().role()).isEqualTo(Role.BACK);
        double reach = path.fixing().hanging().orElseThrow().reach();
        Notice at = notice(
                        FixedBoxes.judged(
                                Surface.CEILING,
                                FixedBoxes.mounting(Into.STUDS, 0.04, 2, reach - 0.01, null, null, null)),
                        NoticeKind.ROW_AT_BOARD)
                .orElseThrow();
        assertThat(at.severity()).isEqualTo(Severity.STOP);
        assertThat(at.value()).isZero();
        assertThat(at.limit()).isCloseTo(0.009652, within(1e-9));
        assertThat(notice(path, NoticeKind.ROW_AT_BOARD)).isEmpty();
    }

    @Test
    void neverMoreScrewsThanFindStuds() {
        // Studs so far apart that the row is certain of none of them.
        PathResult path = wall(0.04, 1, 0.9, null);
        Notice exceed = notice(path, NoticeKind.SCREWS_EXCEED_STUDS).orElseThrow();
        assertThat(exceed.limit()).isZero();
        assertThat(exceed.value()).isGreaterThan(1);
        assertThat(notice(path, NoticeKind.MORE_SCREWS_DO)).isEmpty();
        // By hand: no. 10 is 4.826 mm, so a cleat of 2.8 m crosses three studs 0.9 m apart, six screws.
        PathResult longer = wall(0.04, 1, 0.9, 2.8);
        assertThat(longer.fixing().row().orElseThrow().sureScrews()).isEqualTo(6);
        assertThat(notice(longer, NoticeKind.MORE_SCREWS_DO).orElseThrow().value())
                .isLessThanOrEqualTo(6);
    }

    /** By hand: 25 mm are 5.2 diameters of a no. 10 screw; the rules ask for six, whatever the number. */
    @Test
    void noNumberOfShallowScrewsIsEnough() {
        PathResult path = wall(0.025, 8, null, null);
        assertThat(path.fixing().hanging().orElseThrow().used()).isLessThan(1);
        assertThat(path.fixing().enough()).isEmpty();
        assertThat(notice(path, NoticeKind.SCREWS_SHALLOW)).isPresent();
        assertThat(notice(path, NoticeKind.FIXING_OVERLOADED)).isEmpty();
    }

    @Test
    void noNumberOfScrewsIsEnough() {
        PathResult path =
                FixedBoxes.judged(Surface.WALL, FixedBoxes.mounting(Into.STUDS, 0.01, 2, 0.05, 0.4, null, true));
        assertThat(path.fixing().enough()).isEmpty();
        assertThat(notice(path, NoticeKind.NO_SCREWS_DO)).isPresent();
        assertThat(notice(path, NoticeKind.MORE_SCREWS_DO)).isEmpty();
        assertThat(notice(path, NoticeKind.SCREWS_SHALLOW)).isPresent();
        assertThat(notice(path, NoticeKind.ASK_A_CARPENTER)).isPresent();
    }

    /** By hand: 814 mm less 8 · 4.826 mm is 775 mm: one stud 406.4 mm apart for certain, two at best; two screws in each. */
    @Test
    void screwsThatMissTheirStuds() {
        assertThat(notice(wall(0.04, 2, 0.4064, null), NoticeKind.SCREWS_MAY_MISS_STUDS))
                .isEmpty();
        Notice may = notice(wall(0.04, 4, 0.4064, null), NoticeKind.SCREWS_MAY_MISS_STUDS)
                .orElseThrow();
        assertThat(may.severity()).isEqualTo(Severity.WARNING);
        assertThat(may.value()).isEqualTo(4);
        assertThat(may.limit()).isEqualTo(2);
        PathResult missing = wall(0.04, 5, 0.4064, null);
        Notice miss = notice(missing, NoticeKind.SCREWS_MISS_STUDS).orElseThrow();
        assertThat(miss.severity()).isEqualTo(Severity.STOP);
        assertThat(miss.limit()).isEqualTo(4);
        Notice cleat = notice(missing, NoticeKind.LONGER_CLEAT).orElseThrow();
        assertThat(cleat.part()).isEqualTo("3");
        // By hand: 3 · 406.4 + 8 · 4.826 = 1257.8 mm, in whole centimetres 1260 mm.
        assertThat(cleat.value()).isCloseTo(1.26, within(1e-9));
        assertThat(notice(wall(0.04, 5, 0.4064, cleat.value()), NoticeKind.SCREWS_MISS_STUDS))
                .isEmpty();
        assertThat(notice(wall(0.04, 5, 0.4064, cleat.value()), NoticeKind.LONGER_CLEAT))
                .isEmpty();
    }

    @ParameterizedTest
    @EnumSource(
            value = Into.class,
            names = {"MASONRY", "RESILIENT", "UNKNOWN"})
    void refusesWhatItCannotCompute(Into into) {
        Mounting mounting = FixedBoxes.mounting(into, 0.04, 2, 0.4, 0.4, null, null);
        PathResult path = FixedBoxes.judged(Surface.WALL, mounting);
        assertThat(notice(path, NoticeKind.FIXING_BEYOND_METHOD).orElseThrow().part())
                .isEqualTo(into.name());
        assertThat(path.fixing().hanging()).isEmpty();
        assertThat(path.fixing().refused()).contains(into);
        assertThat(notice(path, NoticeKind.FIXING_NOT_CHECKED)).isEmpty();
        // A box that stands needs none of it.
        assertThat(notice(FixedBoxes.judged(Surface.FLOOR, mounting), NoticeKind.FIXING_BEYOND_METHOD))
                .isEmpty();
    }

    @Test
    void saysWhatIsNotSaid() {
        PathResult path = FixedBoxes.judged(Surface.WALL, null);
        assertThat(notice(path, NoticeKind.FIXING_NOT_CHECKED)).isPresent();
        assertThat(notice(path, NoticeKind.LIFT_WITH_AID).orElseThrow().value())
                .isEqualTo(path.solid().mass());
    }

    @Test
    void abovePeopleAsksForACarpenter() {
        Mounting low = FixedBoxes.mounting(null, 0.04, 6, 0.3, null, null, false);
        Mounting high = FixedBoxes.mounting(null, 0.04, 6, 0.3, null, null, true);
        assertThat(notice(FixedBoxes.judged(Surface.WALL, low), NoticeKind.ASK_A_CARPENTER))
                .isEmpty();
        assertThat(notice(FixedBoxes.judged(Surface.WALL, high), NoticeKind.ASK_A_CARPENTER))
                .isPresent();
        assertThat(FixedBoxes.judged(Surface.WALL, high).fixing().lifting().high())
                .isTrue();
    }

    /** The box is 0.82 m at most: rows 2 m apart are beyond it on every surface. */
    @Test
    void rowsBeyondTheBox() {
        Mounting wide = FixedBoxes.mounting(null, 0.04, 2, 2, null, null, null);
        for (Surface surface : List.of(Surface.WALL, Surface.CEILING)) {
            Notice notice = notice(FixedBoxes.judged(surface, wide), NoticeKind.ROWS_BEYOND_BOX)
                    .orElseThrow();
            assertThat(notice.value()).isEqualTo(2);
            assertThat(notice.limit()).isLessThan(1);
        }
    }

    @Test
    void aStandingBoxThatTips() {
        PathResult path = FixedBoxes.judged(Surface.FLOOR, null);
        double push = path.fixing().standing().orElseThrow().tipping().push();
        assertThat(notice(path, NoticeKind.STANDING_TIPS).isPresent()).isEqualTo(push < 200);
        assertThat(notice(path, NoticeKind.OVERHEAD)).isEmpty();
        assertThat(path.fixing().hanging()).isEmpty();
    }
}
