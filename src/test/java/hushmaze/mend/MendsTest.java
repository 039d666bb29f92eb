package hushmaze.mend;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.TestRooms;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.size.ResizedBox;
import hushmaze.solid.SolidBuilder;
import hushmaze.wording.MendWording;
import hushmaze.work.Progress;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/**
 * Property tests of changes that mend what notices are about, judged apart from the class that offers them: with such a change the
 * notice is gone and nothing new stops the box. Rooms and boxes are invented.
 */
class MendsTest {
    private static final int RANDOM_BOXES = 26;

    private static Project room(double level, Space space) {
        VentPath in =
                new VentPath("in", Purpose.SUPPLY, TestRooms.brief(level, null, space, Opening.Beyond.INDOORS), null);
        VentPath out =
                new VentPath("out", Purpose.RETURN, TestRooms.brief(level, null, space, Opening.Beyond.INDOORS), null);
        return FirstLayout.complete(TestRooms.project(TestRooms.nc(25), null, in, out), Progress.NONE);
    }

    private static final Project USUAL = room(36, new Space(0.9, 0.7, 0.4));

    private static Project room() {
        return USUAL;
    }

    private static Project with(Project project, UnaryOperator<Box> change) {
        VentPath path = project.paths().get(0);
        return project.withPath(0, path.withBox(change.apply(path.box())));
    }

    private static Assessment assessed(Project project) {
        return Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
    }

    private static List<Notice> notices(Assessment all) {
        return Stream.concat(all.paths().get(0).notices().stream(), all.notices().stream())
                .toList();
    }

    private static Optional<Notice> find(Assessment all, NoticeKind kind) {
        return notices(all).stream().filter(n -> n.kind() == kind).findFirst();
    }

    /** The first change that is offered for a kind of notice that there is. */
    private static Mend mend(Project project, NoticeKind kind) {
        Assessment all = assessed(project);
        Notice notice = find(all, kind).orElseThrow();
        List<Mend> mends = Mends.of(all, 0, notice, Progress.NONE);
        assertThat(mends).as(kind.name()).isNotEmpty();
        Project mended = mends.get(0).change().apply(project);
        assertThat(find(assessed(mended), kind)).as(kind.name()).isEmpty();
        return mends.get(0);
    }

    @Test
    void aNarrowGapIsMadeAsWideAsNeeded() {
        Project narrow = with(room(), b -> new ResizedBox(b).turning(b.clearWidth() * 0.45));
        Mend mend = mend(narrow, NoticeKind.TURN_GAP_NARROW);
        assertThat(mend.kind()).isEqualTo(Mend.Kind.TURN_GAP);
        double width = narrow.paths().get(0).box().clearWidth();
        assertThat(mend.value()).isBetween(width * 0.45, width + 0.005);
        assertThat(mend.value() / 0.005).isCloseTo(Math.rint(mend.value() / 0.005), within(1e-9));
        assertThat(new MendWording(narrow.units()).of(mend))
                .startsWith("Gaps at the turns of ")
                .endsWith(" mm");
    }

    @Test
    void aNarrowStripBesideAPortIsMadeWider() {
        Project thin = with(room(), b -> {
            double board = b.shell().get(0).thickness();
            return b.withPorts(
                    b.openingPort(),
                    new Port(PortFace.END, b.clearWidth() - 1.2 * board, b.clearHeight() - 1.2 * board, 0));
        });
        Mend mend = mend(thin, NoticeKind.NARROW_STRIP);
        assertThat(mend.kind()).isIn(Mend.Kind.ROOM_PORT_HEIGHT, Mend.Kind.ROOM_PORT_PLACE, Mend.Kind.ROOM_PORT_WIDTH);
        assertThat(new MendWording(thin.units()).of(mend))
                .startsWith("Port in the room ")
                .contains(" mm");
    }

    @Test
    void aBoxTooLargeIsMadeSmaller() {
        Project project = room(32, new Space(0.9, 0.7, 0.4));
        var fits = assessed(project).paths().get(0).fits();
        boolean wide = fits.width() > fits.height();
        Space tight = new Space(wide ? fits.width() - 0.013 : 0.9, wide ? 0.7 : fits.height() - 0.013, 0.4);
        VentPath path = project.paths().get(0);
        Project small =
                project.withPath(0, path.withBrief(louder(path, -3).brief().withSpace(tight)));
        Mend mend = mend(small, NoticeKind.DOES_NOT_FIT);
        assertThat(mend.kind()).isIn(Mend.Kind.PASS_LENGTH, Mend.Kind.PASS_HEIGHT, Mend.Kind.PASS_WIDTH);
    }

    @Test
    void tooMuchPressureIsMendedByMoreRoomForTheAir() {
        Project project = room(20, new Space(1.2, 0.9, 0.5));
        VentPath path = project.paths().get(0);
        double drop = assessed(project).paths().get(0).pathAir().pressureHigh();
        Brief brief = path.brief();
        Project tight = project.withPath(
                0,
                path.withBrief(
                        brief.withAir(brief.flow(), 0.8 * drop, brief.maxPathVelocity(), brief.maxOpeningVelocity())));
        mend(tight, NoticeKind.PRESSURE_ABOVE_LIMIT);
    }

    @Test
    void aGasketAndPlayArePutIn() {
        Project plain = room();
        Notice tight = Notice.of(NoticeKind.PRINTED_SIZES_TIGHT, Severity.WARNING, "");
        // metric sizes close without any play: the notice is not there, so nothing is offered
        assertThat(Mends.of(assessed(plain), 0, tight, Progress.NONE)).isEmpty();
        Project parted =
                with(plain, b -> b.joined(b.joinery(), List.of(new Seam(Seam.Kind.PARTING, b.clearLength() / 2))));
        Mend mend = mend(parted, NoticeKind.SEAM_WITHOUT_GASKET);
        assertThat(mend.value()).isEqualTo(0.003);
        Project mended = mend.change().apply(parted);
        assertThat(mended.paths().get(0).box().joinery().gasket()).isEqualTo(0.003);
        assertThat(mended.paths().get(0).brief().construction().joinery().gasket())
                .isEqualTo(0.003);
    }

    @Test
    void aHeavyBoxComesApartWhereTheNoticeSays() {
        Project project = room();
        double mass = assessed(project).paths().get(0).buildable().mass();
        VentPath path = project.paths().get(0);
        Project light = project.withPath(
                0,
                path.withBrief(path.brief()
                        .withConstruction(path.brief().construction().carried(0.8 * mass, null))));
        Mend mend = mend(light, NoticeKind.HEAVIER_THAN_LIMIT);
        assertThat(mend.kind()).isEqualTo(Mend.Kind.SEAMS);
        assertThat(mend.change().apply(light).paths().get(0).box().seams()).isNotEmpty();
    }

    @Test
    void looseLimitsAreTightened() {
        Project project = room(20, new Space(1.2, 0.9, 0.5));
        VentPath path = project.paths().get(0);
        Project loose = project.withPath(0, path.withBrief(path.brief().withVelocities(9, 9)));
        Assessment all = assessed(loose);
        Notice notice = find(all, NoticeKind.VELOCITY_LIMIT_LOOSE).orElseThrow();
        Mend mend = Mends.of(all, 0, notice, Progress.NONE).get(0);
        assertThat(mend.value()).isLessThanOrEqualTo(notice.limit());
        Brief after = mend.change().apply(loose).paths().get(0).brief();
        assertThat(after.maxOpeningVelocity()).isEqualTo(mend.value());
        assertThat(after.maxPathVelocity()).isEqualTo(9);
    }

    @Test
    void asMuchAirGoesOutAsComesIn() {
        Project project = room(20, new Space(1.2, 0.9, 0.5));
        VentPath out = project.paths().get(1);
        Project unequal = project.withPath(1, out.withBrief(out.brief().withFlow(0.012)));
        Mend mend = mend(unequal, NoticeKind.FLOWS_UNEQUAL);
        Project mended = mend.change().apply(unequal);
        assertThat(mended.paths()).allSatisfy(p -> assertThat(p.brief().flow()).isCloseTo(0.015, within(1e-9)));
    }

    @Test
    void theMissingPathIsAdded() {
        Project both = room();
        Project one = both.withPaths(both.paths().subList(0, 1));
        Mend mend = mend(one, NoticeKind.NO_WAY_OUT);
        Project mended = mend.change().apply(one);
        assertThat(mended.paths()).hasSize(2);
        assertThat(mended.paths().get(1).purpose()).isEqualTo(Purpose.RETURN);
        assertThat(mended.paths().get(1).box()).isEqualTo(one.paths().get(0).box());
    }

    @Test
    void rowsOfScrewsAreMovedFromThePort() {
        Project project = room();
        Mounting mounting = new Mounting(
                Mounting.Into.STUDS,
                Mounting.Timber.SPRUCE_PINE_FIR,
                Mounting.StudScrew.LAG_QUARTER,
                0.038,
                2,
                1.9,
                0.019,
                null,
                null,
                null,
                "invented for a test");
        VentPath path = project.paths().get(0);
        Project far = project.withPath(
                0,
                path.withBrief(path.brief()
                        .withConstruction(path.brief().construction().mounted(mounting))));
        Mend mend = mend(far, NoticeKind.ROWS_BEYOND_BOX);
        assertThat(mend.kind()).isEqualTo(Mend.Kind.ROW_DISTANCE);
        assertThat(mend.value()).isLessThan(1.9);
    }

    /** A box that is a little short gets what is missing; one far too loud gets what helps most, and that is said. */
    @Test
    void aLoudBoxGetsWhatIsMissing() {
        Project project = room(40, new Space(2, 2, 1));
        double margin = assessed(project).paths().get(0).quiet().margin();
        VentPath path = project.paths().get(0);
        for (double missing : new double[] {0.4, 60}) {
            Project loud = project.withPath(0, louder(path, margin + missing));
            Assessment all = assessed(loud);
            assertThat(all.paths().get(0).quiet().margin()).isCloseTo(-missing, within(0.05));
            Notice notice = find(all, NoticeKind.NOT_QUIET_ENOUGH).orElseThrow();
            List<Mend> mends = Mends.of(all, 0, notice, Progress.NONE);
            assertThat(mends).isNotEmpty();
            for (Mend mend : mends) {
                Assessment after = assessed(mend.change().apply(loud));
                assertThat(after.paths().get(0).quiet().margin() + missing).isCloseTo(mend.gain(), within(0.05));
                assertThat(mend.enough()).isEqualTo(missing < 1);
                assertThat(after.paths().get(0).quiet().ok()).isEqualTo(mend.enough());
                assertThat(new MendWording(loud.units()).of(mend).contains("not enough"))
                        .isEqualTo(!mend.enough());
            }
        }
    }

    private static VentPath louder(VentPath path, double by) {
        Brief brief = path.brief();
        Noise noise = brief.noise();
        Brief louder = new Brief(
                brief.opening(),
                brief.flow(),
                brief.maxPressureDrop(),
                brief.maxPathVelocity(),
                brief.maxOpeningVelocity(),
                new Noise(noise.levels().plus(by), noise.place(), noise.distance(), noise.source()),
                brief.noiseShare(),
                brief.space(),
                brief.construction());
        return path.withBrief(louder);
    }

    @Test
    void notesAboutMethodsHaveNoChange() {
        Assessment all = assessed(room());
        Notice notice = find(all, NoticeKind.OCTAVES_INTERPOLATED).orElseThrow();
        assertThat(Mends.of(all, 0, notice, Progress.NONE)).isEmpty();
    }

    @Test
    void everyKindOfChangeHasItsWords() {
        for (Mend.Kind kind : Mend.Kind.values()) {
            Mend mend = new Mend(kind, 1, Unit.NUMBER, true, Double.NaN, p -> p);
            assertThat(new MendWording(UnitSystem.INCH).of(mend)).isNotBlank();
        }
    }

    /** Boxes with sizes changed at random: whatever is offered for whatever notice does what it says. */
    @Test
    void whateverIsOfferedMends() {
        Random random = new Random(11);
        Project whole = room(38, new Space(0.8, 0.6, 0.3));
        Set<NoticeKind> mended = EnumSet.noneOf(NoticeKind.class);
        int offered = 0;
        for (int i = 0; i < RANDOM_BOXES; i++) {
            Project changed;
            try {
                changed = with(whole, b -> resized(b, random));
                SolidBuilder.build(changed.paths().get(0).box());
            } catch (InvalidValue e) {
                continue;
            }
            Assessment all = assessed(changed);
            Set<String> stops = stops(all);
            for (Notice notice : notices(all)) {
                for (Mend mend : Mends.of(all, 0, notice, Progress.NONE)) {
                    Assessment after = assessed(mend.change().apply(changed));
                    assertThat(stops).as(notice + " " + mend.kind()).containsAll(stops(after));
                    if (mend.enough()) {
                        assertThat(notices(after))
                                .as(notice + " " + mend.kind())
                                .noneMatch(n ->
                                        n.kind() == notice.kind() && n.part().equals(notice.part()));
                    }
                    mended.add(notice.kind());
                    offered++;
                }
            }
        }
        assertThat(offered).isGreaterThan(30);
        assertThat(mended).hasSizeGreaterThan(4);
    }

    private static Box resized(Box b, Random random) {
        double gap = b.turnGap() * (0.4 + 1.2 * random.nextDouble());
        Box turned = b.passes() > 1 ? new ResizedBox(b).turning(gap) : b;
        Box sized = new ResizedBox(turned)
                .clear(
                        b.clearWidth() * (0.6 + 0.8 * random.nextDouble()),
                        b.clearHeight() * (0.6 + 0.8 * random.nextDouble()),
                        b.clearLength() * (0.6 + 0.8 * random.nextDouble()));
        Port room = sized.roomPort();
        return sized.sized(
                sized.passes(),
                sized.clearWidth(),
                sized.clearHeight(),
                sized.clearLength(),
                sized.turnGap(),
                sized.liner(),
                sized.openingPort(),
                new Port(
                        room.face(),
                        room.width() * (0.5 + 0.5 * random.nextDouble()),
                        room.height(),
                        room.edgeDistance()));
    }

    private static Set<String> stops(Assessment all) {
        return notices(all).stream()
                .filter(n -> n.severity() == Severity.STOP)
                .map(n -> n.kind() + " " + n.part())
                .collect(Collectors.toSet());
    }
}
