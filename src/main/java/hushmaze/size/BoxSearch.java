package hushmaze.size;

import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.build.Supply;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Looks for the boxes that are the best of their {@link Kind} for one path.
 *
 * <p>All patterns of the {@link PatternGrid} are put to the test of space and air, then judged by the estimate; boxes shorter than
 * one that is far from quiet are left out, since the loss grows with the length, and so are most with more than one layer where one
 * does. From then on the one that leads its kind is
 * judged by the next better method, with what such methods made of boxes like it taken into account for all others, until
 * the leader is one that the best method has judged. Around every leader its neighbours are tried, so that sizes between the
 * rungs of the grid are found. The same brief gives the same boxes: nothing depends on time or chance.
 */
final class BoxSearch {
    /** A box this far from quiet by the estimate is not made shorter, dB: further than better methods have differed from it. */
    private static final double HOPELESS = -8;
    /** With one layer as quiet as that by the estimate, more layers serve the quietest box alone, dB. */
    private static final double ONE_DOES = 3.5;
    /** Most boxes judged at each level, per round of a search. */
    private static final Map<Level, Integer> MOST =
            new EnumMap<>(Map.of(Level.QUICK, 120, Level.LINERS, 14, Level.ASSESSED, 3));
    /** Most leaders whose neighbours are tried. */
    private static final int MOST_SURROUNDED = 30;
    /** How much louder by the quick wave another form may be to be assessed beside a leader, dB, and how many are. */
    private static final double NEARLY = 1.5;

    private static final int MOST_FORMS = 2;
    /** How much less than it should have in hand a box has at the least around which safe and cheaper ones are looked for, dB. */
    private static final double NEARLY_SAFE = 1;

    private static final int MOST_CHEAPER = 16;
    /** Most of the smallest boxes tried where larger ones go on no sheets, and how many at once. */
    private static final int MOST_SMALL = 64;

    private static final int SOME_SMALL = 16;
    /** Most boxes judged by the quick wave before more sizes are tried, and rounds in which cheaper ones are for shares of the target. */
    private static final int FEW_QUICK = 40;

    private static final int MOST_OFFERS = 10;
    /** Length of a box that is tried where another goes on no sheets, a share of that one's. */
    private static final double SHORTER = 0.95;
    /** Lines judged between two looks at whether the work is still wanted. */
    private static final int CHUNK = 64;

    /** Most boxes of a space that are all judged by the estimate at the beginning. */
    private static final long MOST_OF_ALL = 100_000;

    private final Appraiser appraiser;
    private final Steps steps;
    private final PatternGrid every;
    private final Holding holding;
    private PatternGrid grid;
    private final Neighbours neighbours;
    private final Pool pool = new Pool();
    private Tally tally = Tally.NONE;
    private int surrounded;
    private int surroundedCheaper;
    private int mostQuick = MOST.get(Level.QUICK);
    private int mostSurrounded = MOST_SURROUNDED;
    private Progress progress;

    /**
     * @param project with every flow settled
     * @param path its number
     */
    BoxSearch(Project project, int path, Progress progress) {
        this(project, path, Methods.ALL, progress);
    }

    /** @param confirming methods of the last level */
    BoxSearch(Project project, int path, Methods confirming, Progress progress) {
        this(
                project,
                path,
                confirming,
                Freedom.of(project.paths().get(path).brief()),
                Assessor.supply(project, path, confirming.sheets(), progress),
                progress);
    }

    /**
     * @param freedom what it may choose among
     * @param left what the boxes of the paths before leave of sheets
     */
    BoxSearch(Project project, int path, Methods confirming, Freedom freedom, Supply left, Progress progress) {
        Brief brief = project.paths().get(path).brief();
        this.steps = new Steps(project.units());
        this.every = PatternGrid.ofEvery(brief, freedom.everyLining(), steps);
        this.appraiser = new Appraiser(project, path, confirming, left);
        this.grid = PatternGrid.ofSome(brief, freedom, steps);
        this.holding = new Holding(this, every, brief, freedom, steps);
        this.neighbours = new Neighbours(brief, freedom, steps);
        this.progress = progress;
    }

    /** From now on the path has another share of the target; see {@link Appraiser#share}. */
    void share(Project shared, double bonus) {
        appraiser.share(shared, bonus);
    }

    /**
     * From now on boxes are cut from what others leave. Those known cost another sum then; those for which there are too few
     * sheets are dropped.
     */
    void cutFrom(Supply left) {
        appraiser.cutFrom(left);
        progress.check(0, "sharing sheets");
        List<Appraiser.Verdict> verdicts = pool.known(Level.ESTIMATE).parallelStream()
                .map(appraiser::again)
                .toList();
        verdicts.forEach(Appraiser.Verdict::apply);
    }

    Appraiser appraiser() {
        return appraiser;
    }

    /** From now on judges no more than so many by the quick wave, and looks around no more than so many leaders. */
    void sparing(int quick, int around) {
        mostQuick = quick;
        mostSurrounded = around;
    }

    /** Tells somebody else from now on. */
    void report(Progress other) {
        progress = other;
    }

    Tally tally() {
        return tally;
    }

    Pool pool() {
        return pool;
    }

    /**
     * Begins with all boxes whose sizes are whole steps, whatever their lining, if there are few enough; else with some, to which are
     * added those that might be better than the best of these.
     */
    void beginWide() {
        boolean all = every.count().boxes() <= MOST_OF_ALL;
        grid = all ? every : grid;
        begin();
        if (!all) {
            Map<Level, Integer> few = new EnumMap<>(MOST);
            few.put(Level.QUICK, FEW_QUICK);
            Candidate leader =
                    settled(List.of(Kind.RECOMMENDED), Level.LINERS, few).get(Kind.RECOMMENDED);
            if (leader != null) {
                holding.widen(leader, progress);
            }
        }
    }

    /**
     * Judges those that are cheaper than the recommended box and lack so little that a larger share of the target may make up for it,
     * and tries what lies around them.
     */
    void offerCheaper() {
        Candidate leader = pool.best(Kind.RECOMMENDED, Level.LINERS);
        for (int i = 0; i < MOST_OFFERS && leader != null; i++) {
            List<Candidate> next = pool.bestOfCheaper(leader).stream()
                    .filter(c -> c.margin() >= Kind.IN_HAND - Holding.SHARED)
                    .toList();
            judge(next.stream().filter(c -> c.level() == Level.ESTIMATE).toList());
            next.stream().filter(c -> !c.dropped() && !c.surrounded()).forEach(this::surround);
        }
    }

    /**
     * Judges the grid by the estimate: first walls of one layer, then, for more layers, the longest of every line, which are the
     * quietest; the shorter ones only where one layer does not do.
     */
    void begin() {
        Map<Boolean, List<PatternGrid.Line>> lines = grid.lines().stream()
                .collect(
                        Collectors.partitioningBy(line -> line.longest().build().layers() == 1));
        tally = tally.plus(Tally.noRoom(grid.tooNarrow()));
        double all = lines.get(true).size() + lines.get(false).size();
        judge(lines.get(true), false, 0, all);
        Candidate quietest = pool.best(Kind.QUIETEST, Level.ESTIMATE);
        boolean oneDoes = quietest != null && quietest.margin(Level.ESTIMATE) >= ONE_DOES;
        judge(lines.get(false), oneDoes, lines.get(true).size(), all);
    }

    /** Judges the longest of every line alone, which are the quietest. */
    void beginWithLongest() {
        List<PatternGrid.Line> lines = grid.lines();
        judge(lines, true, 0, lines.size());
    }

    private void judge(List<PatternGrid.Line> lines, boolean longestOnly, int done, double all) {
        for (int from = 0; from < lines.size(); from += CHUNK) {
            progress.check((done + from) / all, "estimating boxes");
            List<PatternGrid.Line> some = lines.subList(from, Math.min(lines.size(), from + CHUNK));
            for (Judged judged :
                    some.parallelStream().map(line -> judged(line, longestOnly)).toList()) {
                tally = tally.plus(judged.tally());
                pool.add(judged.candidates());
            }
        }
    }

    private record Judged(List<Candidate> candidates, Tally tally) {}

    private Judged judged(PatternGrid.Line line, boolean longestOnly) {
        List<Candidate> found = new ArrayList<>();
        Tally ended = Tally.NONE;
        boolean enough = false;
        for (double length : line.lengths()) {
            if (enough) {
                ended = ended.plus(Tally.hopeless(1));
                continue;
            }
            Appraiser.First first = appraiser.first(line.longest().ofLength(length), null);
            ended = ended.plus(Tally.of(first.end()));
            if (first.end() == Appraiser.End.DONE) {
                found.add(first.candidate());
                enough = longestOnly || first.candidate().margin(Level.ESTIMATE) < HOPELESS;
            }
        }
        return new Judged(found, ended);
    }

    /**
     * Judges the leaders of some kinds until they are known so well, or as many were judged as may be; what lies around the best
     * of every form is tried too, because margins may change by decibels within a centimetre.
     *
     * @return the leaders that are known so well, without those of kinds that have none
     */
    Map<Kind, Candidate> settle(List<Kind> kinds, Level target) {
        Map<Level, Integer> left = new EnumMap<>(MOST);
        left.put(Level.QUICK, mostQuick);
        Map<Kind, Candidate> leaders = settled(kinds, target, left);
        if (pool.known(Level.QUICK).isEmpty() && trySmallest()) {
            leaders = settled(kinds, target, left);
        }
        leaders.values().removeIf(c -> c.level().compareTo(target) < 0);
        return leaders;
    }

    /**
     * Where all that was laid out was put aside for want of sheets: the boxes that take the least of boards, until one is
     * found that goes on what there is.
     */
    private boolean trySmallest() {
        List<Candidate> smallest = pool.known(Level.ESTIMATE).stream()
                .sorted(Comparator.comparingDouble(c -> c.sizes().boards()))
                .limit(MOST_SMALL)
                .toList();
        for (int from = 0; from < smallest.size() && pool.known(Level.QUICK).isEmpty(); from += SOME_SMALL) {
            judge(smallest.subList(from, Math.min(smallest.size(), from + SOME_SMALL)));
        }
        return !pool.known(Level.QUICK).isEmpty();
    }

    private Map<Kind, Candidate> settled(List<Kind> kinds, Level target, Map<Level, Integer> left) {
        Map<Kind, Candidate> leaders = leaders(kinds, target, left);
        while (!surround(leaders.values())
                || !raise(leaders.values(), target, left)
                || !surround(pool.bestOfForms(kinds.get(0)))
                || !surroundCheaper(leaders.get(Kind.RECOMMENDED))) {
            leaders = leaders(kinds, target, left);
        }
        return leaders;
    }

    /**
     * Tries what lies around boxes that are cheaper than the recommended one and lack little of what it has in hand: one that has it
     * may be among them. True if there is nothing left to try.
     */
    private boolean surroundCheaper(Candidate recommended) {
        if (recommended == null || !Kind.safe(recommended)) {
            return true;
        }
        Optional<Candidate> next = pool.bestOfCheaper(recommended).stream()
                .filter(c -> c.margin() >= Kind.IN_HAND - NEARLY_SAFE && !c.surrounded())
                .findFirst();
        if (next.isEmpty() || surroundedCheaper >= MOST_CHEAPER) {
            return true;
        }
        surroundedCheaper++;
        surround(next.get());
        return false;
    }

    private Map<Kind, Candidate> leaders(List<Kind> kinds, Level target, Map<Level, Integer> left) {
        Level least = Level.ESTIMATE;
        for (Level level = Level.ESTIMATE; level != target; level = level.next()) {
            least = left.get(level.next()) <= 0 ? level.next() : least;
        }
        Map<Kind, Candidate> leaders = new EnumMap<>(Kind.class);
        for (Kind kind : kinds) {
            Candidate best = pool.best(kind, least);
            if (best != null) {
                leaders.put(kind, best);
            }
        }
        return leaders;
    }

    /** Tries what lies around leaders that are worth it; true if there is nothing left to try. */
    private boolean surround(Iterable<Candidate> leaders) {
        boolean nothing = true;
        for (Candidate leader : leaders) {
            boolean worth = leader.level() != Level.ESTIMATE && !leader.surrounded() && surrounded < mostSurrounded;
            if (worth) {
                nothing = false;
                surrounded++;
                surround(leader);
            }
        }
        return nothing;
    }

    private void surround(Candidate leader) {
        leader.surround();
        List<Pattern> around =
                neighbours.of(leader.pattern()).stream().filter(pool::isNew).toList();
        List<Appraiser.First> firsts =
                around.parallelStream().map(p -> appraiser.first(p, leader)).toList();
        for (Appraiser.First first : firsts) {
            tally = tally.plus(Tally.of(first.end()));
            if (first.end() == Appraiser.End.DONE) {
                pool.add(Collections.singleton(first.candidate()));
            }
        }
    }

    /**
     * Assesses the best of other forms that are nearly as quiet as a leader by the quick wave: the wave solution moves forms by
     * unlike amounts, by more than a decibel. Serves where every half decibel counts.
     */
    void compareForms(Candidate leader) {
        List<Candidate> others = pool.bestOfForms(Kind.QUIETEST).stream()
                .filter(c -> !c.pattern().isOfFormOf(leader.pattern()))
                .filter(c -> c.margin(Level.QUICK) >= leader.margin(Level.QUICK) - NEARLY)
                .sorted(Comparator.comparingDouble(c -> -c.margin(Level.QUICK)))
                .limit(MOST_FORMS)
                .toList();
        judge(others.stream().filter(c -> c.level() == Level.QUICK).toList());
        for (Candidate other : others) {
            if (other.level() == Level.LINERS) {
                tally = tally.plus(Tally.inFull());
                appraiser.next(other, progress).apply();
            }
        }
    }

    /**
     * Holds the recommended box against others of the space; see {@link Holding#hold}.
     *
     * @param recommended an assessed box
     */
    Optional<HeldAgainst> hold(Candidate recommended) {
        return holding.hold(recommended, progress);
    }

    /** Judges leaders at their next level; true if there is nothing left to judge. */
    private boolean raise(Iterable<Candidate> leaders, Level target, Map<Level, Integer> left) {
        Set<Candidate> batch = new LinkedHashSet<>();
        for (Candidate leader : leaders) {
            boolean wanted = leader.level().compareTo(target) < 0
                    && left.get(leader.level().next()) > 0
                    && leader.level().next() != Level.ASSESSED;
            if (wanted) {
                batch.add(leader);
            }
        }
        if (batch.isEmpty()) {
            return !assessOne(leaders, target, left);
        }
        batch.forEach(c -> left.merge(c.level().next(), -1, Integer::sum));
        List<Candidate> estimated =
                batch.stream().filter(c -> c.level() == Level.ESTIMATE).toList();
        judge(batch);
        pool.addNew(estimated.stream()
                .filter(Candidate::dropped)
                .map(c -> shorter(c.pattern()))
                .filter(Objects::nonNull)
                .toList());
        return false;
    }

    /** One that may go on sheets on which a longer one does not; null if it is no box that keeps the limits. */
    private Candidate shorter(Pattern pattern) {
        return appraiser
                .first(pattern.ofLength(steps.down(SHORTER * pattern.length())), null)
                .candidate();
    }

    /** Judges some at their next level. */
    private void judge(Collection<Candidate> batch) {
        progress.check(0, "comparing boxes");
        tally = tally.plus(Tally.quick(
                batch.stream().filter(c -> c.level() == Level.ESTIMATE).count()));
        List<Appraiser.Verdict> verdicts = batch.parallelStream()
                .map(c -> appraiser.next(c, Progress.NONE))
                .toList();
        verdicts.forEach(Appraiser.Verdict::apply);
    }

    /** The wave solution uses all processors by itself. */
    private boolean assessOne(Iterable<Candidate> leaders, Level target, Map<Level, Integer> left) {
        for (Candidate leader : leaders) {
            if (leader.level() == Level.LINERS && target == Level.ASSESSED && left.get(Level.ASSESSED) > 0) {
                left.merge(Level.ASSESSED, -1, Integer::sum);
                tally = tally.plus(Tally.inFull());
                appraiser.next(leader, progress).apply();
                return true;
            }
        }
        return false;
    }
}
