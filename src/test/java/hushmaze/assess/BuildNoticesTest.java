package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.material.Board;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Seam;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.AssessmentJson;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: what is said of sheets, carrying and doors, with sizes worked by hand beside each test. */
class BuildNoticesTest {
    private static final Wording WORDS = new Wording(UnitSystem.METRIC);
    private static final Port END = new Port(PortFace.END, 0.2, 0.1, 0);

    /** A bare straight box of 18 mm boards, 336 wide and 236 high outside. */
    private static Box straight(double clearLength, double gasket, Seam... seams) {
        Construction c = TestRooms.brief(50, null, new Space(5, 1, 1), Opening.Beyond.INDOORS)
                .construction();
        return new Box(
                        Box.Form.MAZE,
                        1,
                        0.3,
                        0.2,
                        clearLength,
                        0,
                        List.of(c.board()),
                        c.board(),
                        1,
                        null,
                        LinedFaces.NONE,
                        END,
                        END)
                .joined(new Joinery(0, gasket, 0), List.of(seams));
    }

    private static PathResult judged(Box box, double sheet, Double maxMass, Doorway doorway) {
        return assess(box, sheet, maxMass, doorway).paths().get(0);
    }

    private static Assessment assess(Box box, double sheet, Double maxMass, Doorway doorway) {
        Brief plain = TestRooms.brief(50, null, new Space(5, 1, 1), Opening.Beyond.INDOORS);
        Construction c = plain.construction();
        Brief brief = plain.withConstruction(new Construction(
                c.board(), 1, 1, c.liner(), false, PortFace.END, PortFace.END, maxMass, null, null, doorway));
        Project p = TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, brief, box));
        Sheet only = new Sheet("sheet", sheet, 1.22, null, null, "invented for a test");
        Stock stock = new Stock(
                List.of(only),
                p.stock().linerSheets(),
                p.stock().saw(),
                p.stock().screw());
        return Assessor.assess(
                new Project(p.formatVersion(), p.name(), p.titleBlock(), p.units(), p.room(), stock, p.paths()),
                Methods.ESTIMATE,
                Progress.NONE);
    }

    private static List<Notice> of(PathResult result, NoticeKind kind) {
        return result.notices().stream().filter(n -> n.kind() == kind).toList();
    }

    @Test
    void partsTooLongForTheSheetsAreToldOnceWithTheJoint() {
        // 3036 mm outside; sheets of 2440 hold 2440 - 2 * 5 = 2430; the middle is 1518, round 1520.
        PathResult result = judged(straight(3, 0), 2.44, null, null);
        assertThat(of(result, NoticeKind.PANEL_LARGER_THAN_SHEET))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.value()).isCloseTo(3.036, within(1e-9));
                    assertThat(n.limit()).isCloseTo(2.43, within(1e-9));
                    assertThat(n.places()).containsExactly(new Notice.Place(false, 1.52));
                    assertThat(WORDS.notice(n))
                            .contains("3036 mm", "2430 mm", "A glued joint at 1520 mm from the near end would do.");
                });
        assertThat(result.buildable().ok()).isFalse();
        PathResult mended = judged(straight(3, 0, new Seam(Seam.Kind.GLUED, 1.52)), 2.44, null, null);
        assertThat(of(mended, NoticeKind.PANEL_LARGER_THAN_SHEET)).isEmpty();
        assertThat(mended.buildable().ok()).isTrue();
    }

    @Test
    void aPartNoJointHelpsIsToldWithWhatIsInTheWay() {
        // The far end is 336 x 236 between or over the sides; sheets of 240 x 1220 hold 230 inside their trims.
        PathResult result = judged(straight(1, 0), 0.24, null, null);
        List<Notice> notices = of(result, NoticeKind.PANEL_LARGER_THAN_SHEET);
        assertThat(notices).isNotEmpty().allSatisfy(n -> assertThat(n.value()).isGreaterThan(n.limit()));
        assertThat(notices.stream().filter(n -> n.places().isEmpty()))
                .isNotEmpty()
                .allSatisfy(n -> assertThat(WORDS.notice(n)).contains("No joint across the passes mends that"));
    }

    @Test
    void theMassIsJudgedOnTheHeaviestPart() {
        PathResult whole = judged(straight(2, 0.003), 2.44, 20.0, null);
        double mass = whole.solid().mass();
        assertThat(mass).isBetween(30.0, 30.67);
        assertThat(of(whole, NoticeKind.HEAVIER_THAN_LIMIT)).singleElement().satisfies(n -> {
            assertThat(n.value()).isEqualTo(mass);
            assertThat(n.limit()).isEqualTo(20);
            assertThat(WORDS.notice(n)).contains("comes apart", "1020 mm from the near end");
        });
        // between 30 and 30.67 kg, with a twentieth for screws and glue more than two lift
        assertThat(of(whole, NoticeKind.LIFT_WITH_AID)).hasSize(1);
        PathResult parted = judged(straight(2, 0.003, new Seam(Seam.Kind.PARTING, 1.02)), 2.44, 20.0, null);
        assertThat(parted.notices())
                .extracting(Notice::kind)
                .doesNotContain(
                        NoticeKind.HEAVIER_THAN_LIMIT,
                        NoticeKind.PART_HEAVIER_THAN_LIMIT,
                        NoticeKind.LIFT_WITH_TWO,
                        NoticeKind.PART_LIFT_WITH_TWO,
                        NoticeKind.SEAM_WITHOUT_GASKET);
        assertThat(parted.buildable().ok()).isTrue();
        assertThat(WORDS.buildable(parted)).contains("2 parts");
        PathResult uneven = judged(straight(2, 0.003, new Seam(Seam.Kind.PARTING, 0.3)), 2.44, 20.0, null);
        assertThat(of(uneven, NoticeKind.PART_HEAVIER_THAN_LIMIT))
                .singleElement()
                .satisfies(n -> {
                    assertThat(n.part()).isEqualTo("2");
                    assertThat(n.value())
                            .isEqualTo(uneven.solid().modules().get(1).mass());
                });
        assertThat(of(uneven, NoticeKind.PART_LIFT_WITH_TWO)).hasSize(1);
    }

    @Test
    void aDoorwayIsToldWithTheSideInTheWay() {
        // 2036 x 336 x 236 through 300 x 320: of the two smaller sides 336 is more than the 320.
        PathResult result = judged(straight(2, 0.003), 2.44, null, new Doorway(0.3, 0.32));
        assertThat(of(result, NoticeKind.DOES_NOT_PASS_DOORWAY)).singleElement().satisfies(n -> {
            assertThat(n.value()).isCloseTo(0.336, within(1e-9));
            assertThat(n.limit()).isEqualTo(0.32);
            assertThat(WORDS.notice(n)).contains("too small for the box", "No joint");
        });
        assertThat(result.buildable().ok()).isFalse();
        // Parts of at most 320 would go: 1036 mm in four parts, three joints.
        PathResult shorter = judged(straight(1, 0.003), 2.44, null, new Doorway(0.3, 0.32));
        assertThat(of(shorter, NoticeKind.DOES_NOT_PASS_DOORWAY))
                .singleElement()
                .satisfies(n -> assertThat(n.places()).hasSize(3).allMatch(Notice.Place::comesApart));
        assertThat(judged(straight(2, 0.003), 2.44, null, new Doorway(0.24, 0.34))
                        .buildable()
                        .ok())
                .isTrue();
    }

    @Test
    void aPartingWithoutAGasketIsTold() {
        Seam seam = new Seam(Seam.Kind.PARTING, 1.02);
        assertThat(of(judged(straight(2, 0, seam), 2.44, null, null), NoticeKind.SEAM_WITHOUT_GASKET))
                .hasSize(1);
        assertThat(of(judged(straight(2, 0.003, seam), 2.44, null, null), NoticeKind.SEAM_WITHOUT_GASKET))
                .isEmpty();
    }

    @Test
    void partsAndSeamsAreInTheJson() throws Exception {
        String text = AssessmentJson.of(
                assess(straight(2, 0.003, new Seam(Seam.Kind.PARTING, 0.5)), 2.44, 20.0, null), WORDS);
        JsonNode root = new ObjectMapper().readTree(text);
        JsonNode buildable = root.at("/paths/0/buildable");
        assertThat(buildable.at("/seams/0/kind").asText()).isEqualTo("parting");
        assertThat(buildable.at("/seams/0/positionMm").asDouble()).isEqualTo(500);
        assertThat(buildable.at("/modules")).hasSize(2);
        JsonNode second = buildable.at("/modules/1");
        assertThat(second.get("number").asInt()).isEqualTo(2);
        assertThat(second.get("lengthMm").asDouble()).isCloseTo(1536, within(1e-6));
        assertThat(second.get("widthMm").asDouble()).isCloseTo(336, within(1e-6));
        assertThat(second.get("heightMm").asDouble()).isCloseTo(236, within(1e-6));
        assertThat(buildable.at("/modules/0/massKg").asDouble()
                        + second.get("massKg").asDouble())
                .isCloseTo(buildable.get("massKg").asDouble(), within(1e-9));
        assertThat(text.replaceAll("\\s+", " "))
                .contains("\"places\" : [ { \"kind\" : \"parting\", \"positionMm\" : 1020.0 } ]");
    }

    /**
     * By hand, in 1/32 in = 0.79375 mm. Two layers of 18, 200.263 clear: ends print 252/32 = 200.025, so the frame is 236.025
     * wide; the cover's 236.263 print 298/32 = 236.538: 0.513 too large. In millimetres 236.3 against 200.3 + 36: it goes in.
     */
    @Test
    void printedSizesThatDoNotGoInAreTold() {
        Board board = straight(0.6, 0).shell().get(0);
        Box box = new Box(
                Box.Form.MAZE,
                1,
                0.200263,
                0.2,
                0.6,
                0,
                List.of(board, board),
                board,
                1,
                null,
                LinedFaces.NONE,
                new Port(PortFace.END, 0.15, 0.1, 0),
                new Port(PortFace.END, 0.15, 0.1, 0));
        Assessment assessment = assess(box, 2.44, null, null);
        Project p = assessment.project();
        PathResult result = assessment.paths().get(0);
        assertThat(BuildNotices.of(result, p, true)).noneMatch(n -> n.kind() == NoticeKind.PRINTED_SIZES_TIGHT);
        Project inches = new Project(
                p.formatVersion(), p.name(), p.titleBlock(), UnitSystem.INCH, p.room(), p.stock(), p.paths());
        assertThat(BuildNotices.of(result, inches, true))
                .filteredOn(n -> n.kind() == NoticeKind.PRINTED_SIZES_TIGHT)
                .singleElement()
                .satisfies(n -> assertThat(n.value()).isCloseTo(0.000513, within(1e-6)));
        // Documents in inches of a project in millimetres are judged by what they print, and the other way round.
        assertThat(of(assessment.in(UnitSystem.INCH).paths().get(0), NoticeKind.PRINTED_SIZES_TIGHT))
                .singleElement()
                .satisfies(n -> assertThat(n.value()).isCloseTo(0.000513, within(1e-6)));
        Assessment back = assessment.in(UnitSystem.INCH).in(UnitSystem.METRIC);
        assertThat(back).isEqualTo(assessment);
        assertThat(assessment.in(UnitSystem.METRIC)).isSameAs(assessment);
    }

    /**
     * By hand: an end of 18 mm board, 300 × 200 in the clear, has its port in the middle. One of 288 × 100 leaves 6 mm at each
     * side; one as wide as the end leaves none, one of 260 leaves 20 mm.
     */
    @Test
    void aNarrowStripBesideAPortIsTold() {
        assertThat(of(withPort(0.3), NoticeKind.NARROW_STRIP)).isEmpty();
        assertThat(of(withPort(0.26), NoticeKind.NARROW_STRIP)).isEmpty();
        PathResult result = withPort(0.288);
        assertThat(of(result, NoticeKind.NARROW_STRIP)).singleElement().satisfies(n -> {
            assertThat(n.value()).isCloseTo(0.006, within(1e-9));
            assertThat(n.limit()).isCloseTo(0.018, within(1e-9));
            assertThat(WORDS.notice(n)).contains(n.part(), "only 6 mm", "less than 18 mm");
            assertThat(new Wording(UnitSystem.INCH).notice(n)).contains("only 1/4 in", "less than 23/32 in");
            assertThat(result.cutList().boards())
                    .filteredOn(item -> item.mark().equals(n.part()))
                    .singleElement()
                    .satisfies(item -> assertThat(item.cutouts()).hasSize(1));
        });
    }

    private static PathResult withPort(double width) {
        Box plain = straight(1, 0);
        Port port = new Port(PortFace.END, width, 0.1, 0);
        return judged(
                new Box(
                        Box.Form.MAZE,
                        1,
                        0.3,
                        0.2,
                        1,
                        0,
                        plain.shell(),
                        plain.baffleBoard(),
                        1,
                        null,
                        LinedFaces.NONE,
                        port,
                        port),
                2.44,
                null,
                null);
    }
}
