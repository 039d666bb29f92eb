package hushmaze.size;

import hushmaze.project.Brief;
import hushmaze.work.Progress;
import java.util.List;
import java.util.Optional;

/**
 * Holds the box a search recommends against others, which lead from then on if they are better.
 *
 * <p>In a small space the others are all there are, in a large one those made as the box is, until a box stays that was held so.
 */
final class Holding {
    /** From one width or height to the next when more sizes are tried, steps: the first that leaves few enough lines. */
    private static final int[] APART = {4, 6, 8, 12, 16, 24, 32, 48};

    private static final int MOST_LINES = 12_000;
    /** How much less a cheaper box may have in hand to be tried, dB: a larger share of the target may make up for that. */
    static final double SHARED = 2;
    /** How often others are judged until none is left that might be better. */
    private static final int MOST_ROUNDS = 2;
    /** Most boxes of a large space that are held against those made alike, one after the other. */
    private static final int MOST_LEADERS = 3;

    private static final List<Kind> RECOMMENDED = List.of(Kind.RECOMMENDED);

    private final BoxSearch search;
    private final PatternGrid every;
    private final Brief brief;
    private final Freedom freedom;
    private final Steps steps;

    /**
     * @param every all boxes of the space
     * @param freedom what the search may choose among
     */
    Holding(BoxSearch search, PatternGrid every, Brief brief, Freedom freedom, Steps steps) {
        this.search = search;
        this.every = every;
        this.brief = brief;
        this.freedom = freedom;
        this.steps = steps;
    }

    /** Adds to the search what might be better than a box, of some widths and heights with every length, lining and pair of faces. */
    void widen(Candidate leader, Progress progress) {
        PatternGrid some = null;
        for (int i = 0; i < APART.length && (some == null || some.count().lines() > MOST_LINES); i++) {
            some = PatternGrid.ofEvery(brief, freedom.everyLining(), steps, APART[i]);
        }
        Challengers.of(some, search.appraiser(), leader, SHARED, false, progress)
                .ifPresent(found -> search.pool().addNew(found.challengers()));
    }

    private record Held(HeldAgainst against, Candidate leader) {}

    /**
     * Holds a box against others.
     *
     * @param recommended an assessed box
     * @return what the box that leads then was held against; nothing if there is too much of it, or another came off best each time
     */
    Optional<HeldAgainst> hold(Candidate recommended, Progress progress) {
        Optional<Held> all = hold(HeldAgainst.Among.ALL, every, recommended, progress);
        if (all.isPresent()) {
            return all.map(Held::against);
        }
        Candidate leader = recommended;
        for (int i = 0; i < MOST_LEADERS; i++) {
            Pattern before = leader.pattern();
            PatternGrid alike = PatternGrid.ofEvery(brief, freedom.asMade(before), steps);
            Optional<Held> held = hold(HeldAgainst.Among.AS_MADE, alike, leader, progress);
            leader = held.map(Held::leader).orElse(leader);
            if (held.isEmpty() || leader.pattern().isMadeAs(before)) {
                return held.map(Held::against);
            }
        }
        return Optional.empty();
    }

    private Optional<Held> hold(HeldAgainst.Among among, PatternGrid others, Candidate leader, Progress progress) {
        return Challengers.of(others, search.appraiser(), leader, 0, true, progress)
                .map(found -> hold(among, found, leader));
    }

    private Held hold(HeldAgainst.Among among, Challengers.Found found, Candidate recommended) {
        List<Candidate> others = found.challengers().stream()
                .map(search.pool()::known)
                .distinct()
                .toList();
        search.pool().addNew(others);
        Candidate leader = recommended;
        long open = open(others, leader);
        for (int i = 0; i < MOST_ROUNDS && open > 0; i++) {
            leader = search.settle(RECOMMENDED, Level.ASSESSED).getOrDefault(Kind.RECOMMENDED, leader);
            open = open(others, leader);
        }
        long judged = others.stream()
                .filter(c -> c.dropped() || c.level() != Level.ESTIMATE)
                .count();
        return new Held(new HeldAgainst(among, steps.size(), found.boxes(), (int) judged, (int) open), leader);
    }

    /** How many might still be better. */
    private static long open(List<Candidate> others, Candidate leader) {
        return others.stream()
                .filter(c -> !c.dropped() && c.level().compareTo(Level.LINERS) < 0)
                .filter(c -> Kind.beats(c.margin(), c.cost(), leader))
                .count();
    }
}
