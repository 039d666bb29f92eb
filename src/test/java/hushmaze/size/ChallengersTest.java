package hushmaze.size;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.AskedFlows;
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
            Challengers.Found found = Challengers.of(every(project), appraiser, leader, Progress.NONE)
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
        HeldAgainst held = search.holdAgainstAll(poor).orElseThrow();
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
        HeldAgainst held = search.holdAgainstAll(found).orElseThrow();
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
