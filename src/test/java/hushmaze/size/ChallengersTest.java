package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.AskedFlows;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.TestRooms;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property: what might be better than a box is found without judging all of a space, as judging every box of it tells; a search
 * leaves none in a small space. Rooms and noise are invented.
 */
class ChallengersTest {
    private static final List<PortFace> BACK = List.of(PortFace.BACK);
    private static final List<PortFace> END = List.of(PortFace.END);

    private static Project project(double level, Space space, Choices choices) {
        Brief brief =
                TestRooms.brief(level, null, space, Opening.Beyond.INDOORS).choosing(choices);
        return AskedFlows.settled(
                TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, brief, null)));
    }

    private static PatternGrid every(Project project) {
        Brief brief = project.paths().get(0).brief();
        return PatternGrid.ofEvery(brief, Freedom.of(brief).everyLining(), new Steps(project.units()));
    }

    /** Every box of a space, by the estimate. */
    private static List<Candidate> all(Project project, Appraiser appraiser) {
        return every(project).lines().parallelStream()
                .flatMap(PatternGrid.Line::all)
                .map(pattern -> appraiser.first(pattern, null))
                .filter(first -> first.end() == Appraiser.End.DONE)
                .map(Appraiser.First::candidate)
                .toList();
    }

    @ParameterizedTest
    @CsvSource({"22, 0.42, 0.23, 0.19", "27, 0.36, 0.26, 0.2", "18, 0.3, 0.25, 0.2"})
    void whatBeatsABoxIsFoundAsIfAllWereJudged(double level, double width, double height, double depth) {
        Project project = project(level, new Space(width, height, depth), new Choices(null, null, 1, 1, BACK, END));
        Appraiser appraiser = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE).appraiser();
        List<Candidate> all = new ArrayList<>(all(project, appraiser));
        assertThat(all).hasSizeGreaterThan(1000);
        all.sort(Comparator.comparingDouble(Candidate::margin));
        for (double place : new double[] {0.3, 0.6, 0.9, 0.999}) {
            Candidate leader = all.get((int) (place * all.size()));
            List<Candidate> better = all.stream()
                    .filter(c -> Kind.beats(c.margin(), c.cost(), leader))
                    .toList();
            Challengers.Found found = Challengers.of(every(project), appraiser, leader, 0, true, Progress.NONE)
                    .orElseThrow();
            assertThat(found.boxes()).isGreaterThanOrEqualTo(all.size());
            assertThat(found.challengers().isEmpty()).isEqualTo(better.isEmpty());
            double most = better.stream().mapToDouble(Candidate::margin).max().orElse(0);
            double first = found.challengers().stream()
                    .mapToDouble(Candidate::margin)
                    .max()
                    .orElse(0);
            assertThat(first).isCloseTo(most, within(1e-9));
        }
    }

    /** A box far from the best is not left the leader. */
    @Test
    void aPoorLeaderIsReplaced() {
        Project project = project(22, new Space(0.42, 0.23, 0.19), new Choices(null, null, 1, 1, BACK, END));
        BoxSearch search = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE);
        Candidate poor = all(project, search.appraiser()).stream()
                .min(Comparator.comparingDouble(Candidate::margin))
                .orElseThrow();
        HeldAgainst held = search.hold(poor).orElseThrow();
        assertThat(held.judged()).isPositive();
        assertThat(search.pool().best(Kind.RECOMMENDED, Level.LINERS).margin()).isGreaterThan(poor.margin() + 3);
    }

    /** Where not all are judged at the beginning: no other box of the space is better by estimate, sheets and quick wave. */
    @Test
    void aSearchLeavesNothingBetterInASmallSpace() {
        Project project = project(26, new Space(0.4, 0.3, 0.2), new Choices(null, null, 1, 1, BACK, END));
        BoxSearch search = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE);
        search.begin();
        List<Kind> recommended = List.of(Kind.RECOMMENDED);
        Candidate found = search.settle(recommended, Level.LINERS).get(Kind.RECOMMENDED);
        HeldAgainst held = search.hold(found).orElseThrow();
        assertThat(held.settled()).isTrue();
        Candidate leader = search.settle(recommended, Level.LINERS).get(Kind.RECOMMENDED);
        Appraiser appraiser = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE).appraiser();
        List<Candidate> all = all(project, appraiser);
        List<Candidate> might = all.stream()
                .filter(c -> Kind.beats(c.margin(), c.cost(), leader))
                .toList();
        might.parallelStream()
                .map(c -> appraiser.next(c, Progress.NONE))
                .toList()
                .forEach(Appraiser.Verdict::apply);
        assertThat(might).noneMatch(c -> !c.dropped() && Kind.beats(c.margin(Level.QUICK), c.cost(), leader));
        assertThat(leader.level()).isEqualTo(Level.LINERS);
    }

    /**
     * In a space too large to be searched whole no box made as the recommended one is better: of four hundred of them, drawn at random,
     * those that are by the estimate are laid out on sheets and judged by the quick wave.
     */
    @Test
    void inALargeSpaceNoBoxMadeAlikeIsBetter() {
        Project project = AskedFlows.settled(SampleProjects.read("story-booth"));
        Brief brief = project.paths().get(1).brief();
        Steps steps = new Steps(project.units());
        Freedom freedom = Freedom.of(brief);
        BoxSearch search = new BoxSearch(
                project,
                1,
                Methods.QUICK,
                freedom,
                Assessor.supply(project, 1, Methods.QUICK.sheets(), Progress.NONE),
                Progress.NONE);
        search.beginWide();
        List<Kind> recommended = List.of(Kind.RECOMMENDED);
        Candidate found = search.settle(recommended, Level.ASSESSED).get(Kind.RECOMMENDED);
        HeldAgainst held = search.hold(found).orElseThrow();
        assertThat(held.among()).isEqualTo(HeldAgainst.Among.AS_MADE);
        assertThat(held.settled()).isTrue();
        Candidate leader = search.settle(recommended, Level.ASSESSED).get(Kind.RECOMMENDED);
        assertThat(Kind.safe(leader)).isTrue();
        List<PatternGrid.Line> lines = PatternGrid.ofEvery(brief, freedom.asMade(leader.pattern()), steps)
                .lines();
        long boxes = lines.stream().mapToLong(line -> line.lengths().size()).sum();
        assertThat(held.boxes()).isEqualTo(boxes).isGreaterThan(500_000);
        Random random = new Random(5);
        List<Candidate> might = new ArrayList<>();
        for (int i = 0; i < 400; i++) {
            PatternGrid.Line line = lines.get(random.nextInt(lines.size()));
            double length = line.lengths().get(random.nextInt(line.lengths().size()));
            Candidate c = search.appraiser()
                    .first(line.longest().ofLength(length), null)
                    .candidate();
            if (c != null && Kind.beats(c.margin(), c.cost(), leader)) {
                might.add(c);
            }
        }
        might.forEach(c -> search.appraiser().next(c, Progress.NONE).apply());
        assertThat(might).noneMatch(c -> !c.dropped() && Kind.beats(c.margin(Level.QUICK), c.cost(), leader));
    }

    /** Larger boxes of a kind cost no less than a smaller one that was laid out, and no other box is said to. */
    @Test
    void aBoxCostsNoLessThanASmallerOne() {
        Project project = project(22, new Space(0.6, 0.4, 0.3), new Choices(null, null, 1, 1, BACK, END));
        Brief brief = project.paths().get(0).brief();
        Pattern box = PatternGrid.ofEvery(brief, Freedom.of(brief), new Steps(project.units())).lines().stream()
                .map(PatternGrid.Line::longest)
                .filter(p -> p.passes() == 2)
                .findFirst()
                .orElseThrow();
        Kin kin = new Kin(new Kin(null));
        kin.costs(box, 40);
        double more = 0.02;
        assertThat(kin.leastCost(box)).isEqualTo(40);
        assertThat(kin.leastCost(box.ofLength(box.length() + more))).isEqualTo(40);
        assertThat(kin.leastCost(box.ofLength(box.length() - more))).isZero();
        assertThat(kin.leastCost(box.ofHeight(box.height() - more))).isZero();
        assertThat(kin.leastCost(box.ofWidth(box.width() + more, box.gap()))).isEqualTo(40);
        // A wider turn makes the baffle shorter.
        assertThat(kin.leastCost(box.ofWidth(box.width() + more, box.gap() + more)))
                .isZero();
        kin.forgetCosts();
        assertThat(kin.leastCost(box)).isZero();
    }

    /** Some of all sizes are every fourth from the most down, and the least. */
    @Test
    void someSizesReachFromTheMostToTheLeast() {
        Steps steps = new Steps(UnitSystem.METRIC);
        EverySize some = new EverySize(steps, 4);
        assertThat(some.widths(0.052, 0.1)).containsExactly(0.1, 0.08, 0.06, 0.055);
        assertThat(some.heights(0.06, 0.1, 0.07)).containsExactly(0.1, 0.08, 0.06);
        assertThat(some.widths(0.11, 0.1)).isEmpty();
        assertThat(some.lengths(0.09, 0.1)).containsExactly(0.1, 0.095, 0.09);
        assertThat(new EverySize(steps, 1).widths(0.09, 0.1)).containsExactly(0.1, 0.095, 0.09);
    }

    /** On what {@link Challengers} relies: by the estimate, of boxes that differ in length alone the longest is the quietest or nearly so. */
    @Test
    void longerBoxesAreHardlyLouder() {
        Random random = new Random(11);
        int compared = 0;
        for (String name : SampleProjects.names()) {
            Project project = AskedFlows.settled(SampleProjects.read(name));
            Brief brief = project.paths().get(0).brief();
            Appraiser appraiser = new BoxSearch(project, 0, Methods.QUICK, Progress.NONE).appraiser();
            List<PatternGrid.Line> lines = PatternGrid.ofSome(brief, Freedom.of(brief), new Steps(project.units()))
                    .lines();
            for (int i = 0; i < 150; i++) {
                PatternGrid.Line line = lines.get(random.nextInt(lines.size()));
                double longest = Double.NEGATIVE_INFINITY;
                double more =
                        line.longest().form() == Box.Form.MAZE ? Challengers.SHORTER_MAZE : Challengers.SHORTER_CHAMBER;
                for (Pattern pattern : line.all().toList()) {
                    Candidate c = appraiser.first(pattern, null).candidate();
                    if (c != null && Double.isInfinite(longest)) {
                        longest = c.margin(Level.ESTIMATE);
                    } else if (c != null) {
                        assertThat(c.margin(Level.ESTIMATE)).isLessThanOrEqualTo(longest + more);
                        compared++;
                    }
                }
            }
        }
        assertThat(compared).isGreaterThan(500);
    }
}
