package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.TestRooms;
import hushmaze.build.Supply;
import hushmaze.material.Board;
import hushmaze.material.Sheet;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: designs keep the brief when they are assessed apart from the search, differ in what they are the best at, and come
 * out the same every time; none of a fine grid of lengths and heights around the recommended one is better at what it is recommended for; what
 * is said to help does help.
 */
class SizingTest {
    private static final Choices FEW =
            new Choices(null, null, 1, null, List.of(PortFace.BACK), List.of(PortFace.FRONT, PortFace.END));

    private static VentPath path(String name, double level, Space space, Choices choices) {
        Brief plain = TestRooms.brief(level, null, space, Opening.Beyond.INDOORS);
        return new VentPath(name, Purpose.SUPPLY, plain.choosing(choices), null);
    }

    private static Project project(VentPath... paths) {
        return TestRooms.project(TestRooms.nc(20), null, paths);
    }

    /** Everything as documents have it but the wave solution, for the sake of time. */
    private static final Methods SOON = new Methods(Methods.ALL.quick(), false, Methods.ALL.sheets());

    private static Sized sized(Project project, int keep) {
        return Sizing.of(project, keep, SOON, Progress.NONE, Sizing.Watch.NOBODY);
    }

    @Test
    void whatIsRecommendedIsConfirmedByTheWaveSolution() {
        Choices straight = new Choices(null, null, 1, null, List.of(PortFace.END), List.of(PortFace.END));
        Project project = project(path("in", 18, new Space(0.36, 0.25, 0.5), straight));
        Sized sized = Sizing.of(project, 1, Progress.NONE, Sizing.Watch.NOBODY);
        Design design = sized.paths().get(0).recommended().orElseThrow();
        assertThat(design.good()).isTrue();
        assertThat(design.result().sound().loss().methods().wave()).isNotNull();
        Assessment again = Assessor.assess(sized.project(), Methods.ALL, Progress.NONE);
        assertThat(again.paths().get(0).quiet().margin()).isEqualTo(design.margin());
    }

    @Test
    void designsKeepTheBriefAndAreTheBestOfTheirKind() {
        Project project = project(path("in", 26, new Space(0.6, 0.34, 0.25), FEW));
        List<List<Design>> told = new ArrayList<>();
        Sized sized = Sizing.of(project, 6, SOON, Progress.NONE, (path, designs) -> told.add(designs));
        PathDesigns found = sized.paths().get(0);
        assertThat(found.designs()).hasSizeGreaterThan(1);
        assertThat(told.get(told.size() - 1)).isEqualTo(found.designs());
        assertThat(found.designs().get(0).kinds()).contains(Kind.RECOMMENDED);
        for (Design design : found.designs()) {
            Project whole = project.withPaths(List.of(project.paths().get(0).withBox(design.box())));
            Assessment again = Assessor.assess(whole, SOON, Progress.NONE);
            PathResult result = again.paths().get(0);
            assertThat(design.good()).isTrue();
            assertThat(result.quiet().margin()).isEqualTo(design.margin());
            assertThat(result.fits().ok()).isTrue();
            assertThat(result.buildable().ok()).isTrue();
            assertThat(result.pathAir().pressureHigh()).isLessThanOrEqualTo(30);
        }
        assertThat(best(found, Kind.SHALLOWEST).depth()).isLessThanOrEqualTo(least(found, Design::depth));
        assertThat(best(found, Kind.LIGHTEST).mass()).isLessThanOrEqualTo(least(found, Design::mass));
        assertThat(best(found, Kind.LEAST_RESISTANCE).drop()).isLessThanOrEqualTo(least(found, Design::drop));
        assertThat(-best(found, Kind.QUIETEST).margin()).isLessThanOrEqualTo(least(found, d -> -d.margin()));
        assertThat(sized.project().paths().get(0).box())
                .isEqualTo(found.designs().get(0).box());
        assertThat(sized(project, 6).paths().get(0).designs())
                .extracting(Design::box)
                .isEqualTo(found.designs().stream().map(Design::box).toList());
    }

    private static Design best(PathDesigns found, Kind kind) {
        return found.designs().stream()
                .filter(d -> d.kinds().contains(kind))
                .findFirst()
                .orElseThrow();
    }

    private static double least(PathDesigns found, java.util.function.ToDoubleFunction<Design> figure) {
        return found.designs().stream().mapToDouble(figure).min().orElseThrow();
    }

    /** All sizes in steps of 50 mm, by the methods of the search but the last: nothing beats it by a sheet or half a decibel. */
    @Test
    void noBoxOfAFullGridBeatsTheRecommendedOne() {
        Choices one = new Choices(null, null, 1, null, List.of(PortFace.BACK), List.of(PortFace.FRONT));
        Project project = project(path("in", 26, new Space(0.6, 0.34, 0.25), one));
        BoxSearch search = new BoxSearch(project, 0, Progress.NONE);
        search.begin();
        Candidate found = search.settle(List.of(Kind.RECOMMENDED), Level.LINERS).get(Kind.RECOMMENDED);
        FullGrid grid = FullGrid.of(project, 0, 0.05);
        assertThat(grid.judged()).isGreaterThan(20);
        FullGrid.Best best = grid.best();
        assertThat(found.margin(Level.QUICK)).isGreaterThan(0);
        assertThat(found.cost()).isLessThanOrEqualTo(best.cost() + 1e-9);
        if (found.cost() > best.cost() - 1e-9) {
            assertThat(Math.min(found.margin(Level.QUICK), Kind.ENOUGH))
                    .isGreaterThan(Math.min(best.margin(), Kind.ENOUGH) - 0.5);
        }
    }

    @Test
    void whereNoBoxIsQuietEnoughTheNearestIsToldAndWhatWouldHelp() {
        Project project = project(path("in", 40, new Space(0.42, 0.3, 0.22), FEW));
        PathDesigns found = sized(project, 1).paths().get(0);
        assertThat(found.designs()).hasSize(1);
        assertThat(found.shortfall().target()).isPositive();
        assertThat(found.designs().get(0).margin()).isCloseTo(-found.shortfall().target(), within(1e-9));
        Project quieter = project(path("in", 40 - found.shortfall().target() - 0.5, new Space(0.42, 0.3, 0.22), FEW));
        assertThat(sized(quieter, 1).paths().get(0).shortfall().isAny()).isFalse();
    }

    @Test
    void whereNoBoxKeepsTheLimitsEachRelaxationHelps() {
        Project project = project(path("in", 40, new Space(0.6, 0.34, 0.07), FEW));
        PathDesigns found = sized(project, 1).paths().get(0);
        assertThat(found.designs()).isEmpty();
        assertThat(found.recommended()).isEmpty();
        Relaxation deeper = found.relaxations().stream()
                .filter(r -> r.limit() == Relaxation.Limit.SPACE_DEPTH)
                .findFirst()
                .orElseThrow();
        assertThat(deeper.to()).isBetween(0.075, 0.2);
        Project relaxed = project(path("in", 40, new Space(0.6, 0.34, deeper.to()), FEW));
        assertThat(sized(relaxed, 1).paths().get(0).designs()).isNotEmpty();
    }

    private static VentPath carried(VentPath path, double mass) {
        Brief brief = path.brief();
        return path.withBrief(brief.withConstruction(brief.construction().carried(mass, null)));
    }

    private static List<Relaxation> ways(Project project) {
        PathDesigns found = sized(project, 1).paths().get(0);
        assertThat(found.designs()).isEmpty();
        return found.relaxations();
    }

    /** No box is as light as 1 kg in however many parts; more space does not help, a larger mass does. */
    @Test
    void aBoxTooHeavyInAnyNumberOfPartsIsToldAsThat() {
        VentPath path = path("in", 26, new Space(0.6, 0.34, 0.25), FEW);
        List<Relaxation> ways = ways(project(carried(path, 1)));
        assertThat(ways).extracting(Relaxation::limit).contains(Relaxation.Limit.MASS);
        assertThat(ways)
                .extracting(Relaxation::limit)
                .doesNotContain(Relaxation.Limit.SPACE_WIDTH, Relaxation.Limit.PRESSURE_DROP);
        double enough = ways.stream()
                .filter(way -> way.limit() == Relaxation.Limit.MASS)
                .findFirst()
                .orElseThrow()
                .to();
        PathDesigns relaxed = sized(project(carried(path, enough)), 1).paths().get(0);
        assertThat(relaxed.designs()).isNotEmpty();
        assertThat(relaxed.designs().get(0).result().solid().heaviestModule().mass())
                .isLessThanOrEqualTo(enough);
    }

    /** A space too small in all three directions: none of them alone helps, all together do. */
    @Test
    void whereNoNumberAloneHelpsSeveralInTheSameMeasureAreTold() {
        Space small = new Space(0.2, 0.15, 0.07);
        List<Relaxation> ways = ways(project(path("in", 26, small, FEW)));
        assertThat(ways).extracting(Relaxation::limit).containsExactly(Relaxation.Limit.SPACE);
        double more = ways.get(0).to() / small.width();
        Space enough = new Space(more * small.width(), more * small.height(), more * small.depth());
        assertThat(sized(project(path("in", 26, enough, FEW)), 1).paths().get(0).designs())
                .isNotEmpty();
    }

    @Test
    void whereThereAreTooFewSheetsThatIsTold() {
        Project project = project(path("in", 26, new Space(0.6, 0.34, 0.25), FEW));
        Sheet none = new Sheet("2440 x 1220", 2.44, 1.22, 40.0, 0, "invented for a test");
        List<Relaxation> ways = ways(with(project, none));
        assertThat(ways).extracting(Relaxation::limit).containsExactly(Relaxation.Limit.BOARD_SHEETS);
        assertThat(ways.get(0).from()).isZero();
        assertThat(ways.get(0).to()).isBetween(0.05, 1.0);
        double side = Math.sqrt(1.3 * ways.get(0).to());
        Sheet small = new Sheet("small", side, side, 40.0, 1, "invented for a test");
        PathDesigns found = sized(with(project, small), 1).paths().get(0);
        assertThat(found.tally().estimated()).isPositive();
        assertThat(found.tally().noSheets()).isPositive();
    }

    /** A loud path and a faint one: equal shares would ask more of the loud one's box than it can give. */
    @Test
    void theTargetIsSharedWhereThatHelps() {
        VentPath loud = path("loud", 29, new Space(0.6, 0.34, 0.25), FEW);
        VentPath faint = path("faint", 15, new Space(0.6, 0.34, 0.25), FEW);
        Sized sized = sized(project(loud, faint), 1);
        double first = sized.project().paths().get(0).brief().noiseShare();
        double second = sized.project().paths().get(1).brief().noiseShare();
        assertThat(first).isGreaterThan(0.6);
        assertThat(first + second).isLessThanOrEqualTo(1);
        Assessment whole = Assessor.assess(sized.project(), SOON, Progress.NONE);
        for (int i = 0; i < 2; i++) {
            assertThat(whole.paths().get(i).quiet().margin())
                    .isCloseTo(sized.paths().get(i).designs().get(0).margin(), within(1e-9));
        }
    }

    private static Project with(Project project, Sheet... boards) {
        Stock old = project.stock();
        return project.withStock(new Stock(List.of(boards), old.linerSheets(), old.saw(), old.screw()));
    }

    /** The costs told are those of the boxes together, in the order of the paths, as an assessment of all has them. */
    private static void requireSameSheets(Sized sized, Project project) {
        Assessment whole = Assessor.assess(sized.project(), SOON, Progress.NONE);
        Prices prices = new Prices(Supply.of(project.stock()));
        for (int i = 0; i < sized.paths().size(); i++) {
            Design design = sized.paths().get(i).recommended().orElseThrow();
            PathResult result = whole.paths().get(i);
            assertThat(result.layouts()).isEqualTo(design.result().layouts());
            assertThat(prices.of(result.layouts())).isEqualTo(design.cost());
            assertThat(result.buildable().ok()).isTrue();
        }
    }

    @Test
    void boxesOfOneRoomAreCutFromTheSameSheets() {
        Project project = project(
                path("in", 24, new Space(0.42, 0.3, 0.22), FEW), path("out", 24, new Space(0.5, 0.34, 0.25), FEW));
        Sized sized = sized(project, 1);
        requireSameSheets(sized, project);
        Design first = sized.paths().get(0).recommended().orElseThrow();
        Design second = sized.paths().get(1).recommended().orElseThrow();
        assertThat(second.keptOffcuts()).isPositive();
        assertThat(second.cost()).isLessThan(first.cost());
    }

    /** Boards enough for both, but not for twice the best of one. */
    @Test
    void sheetsThereAreOnlySoManyOfAreTakenOnce() {
        Sheet few = new Sheet("quarter sheet", 1.22, 0.61, null, 3, "invented for a test");
        Project project = with(
                project(
                        path("in", 24, new Space(0.42, 0.3, 0.22), FEW),
                        path("out", 24, new Space(0.42, 0.3, 0.22), FEW)),
                few);
        Sized sized = sized(project, 1);
        requireSameSheets(sized, project);
        int used = sized.paths().stream()
                .mapToInt(path -> path.recommended().orElseThrow().sheets())
                .sum();
        assertThat(used).isBetween(2, 3);
    }

    @Test
    void onlyWhatIsOnHandIsUsed() {
        Board thin = TestRooms.brief(40, null, new Space(1, 1, 1), Opening.Beyond.INDOORS)
                .construction()
                .board();
        Board other = new Board("other", 0.012, 650, 3.5e9, 0.02, false, "invented for a test");
        Choices choices =
                new Choices(List.of(thin, other), null, 1, null, List.of(PortFace.BACK), List.of(PortFace.FRONT));
        PathDesigns found = sized(project(path("in", 26, new Space(0.6, 0.34, 0.25), choices)), 6)
                .paths()
                .get(0);
        assertThat(found.designs())
                .allMatch(d -> d.box().shell().size() == 1)
                .allMatch(d -> choices.boards().contains(d.box().baffleBoard()))
                .allMatch(d -> d.box().openingPort().face() == PortFace.BACK)
                .allMatch(d -> d.box().roomPort().face() == PortFace.FRONT);
        assertThat(best(found, Kind.LIGHTEST).box().baffleBoard()).isEqualTo(other);
    }

    @Test
    void cancellingEndsIt() {
        Project project = project(path("in", 32, new Space(0.7, 0.5, 0.3), FEW));
        int[] left = {5};
        Progress impatient = (fraction, doing) -> {
            if (left[0]-- == 0) {
                throw new Progress.Cancelled();
            }
        };
        assertThatThrownBy(() -> Sizing.of(project, 6, impatient, Sizing.Watch.NOBODY))
                .isInstanceOf(Progress.Cancelled.class);
    }
}
