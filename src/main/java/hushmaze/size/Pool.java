package hushmaze.size;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** All candidates of a search. */
final class Pool {
    private final List<Candidate> candidates = new ArrayList<>();
    private final Set<Pattern> tried = new HashSet<>();
    private final Map<Pattern, Candidate> byPattern = new HashMap<>();

    void add(Collection<Candidate> more) {
        for (Candidate candidate : more) {
            candidates.add(candidate);
            byPattern.put(candidate.pattern(), candidate);
            tried.add(candidate.pattern());
        }
    }

    /** Adds those whose patterns were not tried before. */
    void addNew(Collection<Candidate> more) {
        add(more.stream().filter(c -> isNew(c.pattern())).toList());
    }

    /** The one of the same pattern that is in the pool, else the same one. */
    Candidate known(Candidate other) {
        return byPattern.getOrDefault(other.pattern(), other);
    }

    /** Remembers a pattern; false if it was tried before. */
    boolean isNew(Pattern pattern) {
        return tried.add(pattern);
    }

    /** The best of a kind among those known at least so well; null if there is none. */
    Candidate best(Kind kind, Level atLeast) {
        Candidate best = null;
        for (Candidate candidate : candidates) {
            boolean known = candidate.level().compareTo(atLeast) >= 0 && !candidate.dropped();
            if (known && (best == null || kind.order().compare(candidate, best) < 0)) {
                best = candidate;
            }
        }
        return best;
    }

    /** The best of a kind of every form, number of passes and most layers of liner, among those that were judged by more than the estimate. */
    List<Candidate> bestOfForms(Kind kind) {
        Map<List<Object>, Candidate> best = new LinkedHashMap<>();
        for (Candidate candidate : known(Level.QUICK)) {
            Pattern pattern = candidate.pattern();
            List<Object> form = List.of(
                    pattern.form(), pattern.passes(), pattern.build().lined().most());
            best.merge(form, candidate, (a, b) -> kind.order().compare(b, a) < 0 ? b : a);
        }
        return List.copyOf(best.values());
    }

    /** Of every cost below that of a box the one with the most margin, the most first. */
    List<Candidate> bestOfCheaper(Candidate than) {
        Map<Double, Candidate> best = new LinkedHashMap<>();
        for (Candidate candidate : known(Level.ESTIMATE)) {
            if (candidate.cost() < than.cost()) {
                best.merge(candidate.cost(), candidate, (a, b) -> b.margin() > a.margin() ? b : a);
            }
        }
        return best.values().stream()
                .sorted(Comparator.comparingDouble(c -> -c.margin()))
                .toList();
    }

    /** Those known at least so well. */
    List<Candidate> known(Level atLeast) {
        return candidates.stream()
                .filter(c -> c.level().compareTo(atLeast) >= 0 && !c.dropped())
                .toList();
    }

    boolean isEmpty() {
        return candidates.isEmpty();
    }
}
