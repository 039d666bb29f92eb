package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * Finds what might be recommended instead of a box, among all boxes of a small space whose clear sizes are whole steps.
 *
 * <p>Boxes that differ in length alone are not all judged: by the estimate the longest is the quietest, but for a little, and the
 * shorter the cheaper. That boxes keep limits from some length down is taken for granted.
 */
final class Challengers {
    /** Most lines of boxes that differ in length alone, and most of those that are not too dear beforehand. */
    private static final int MOST_LINES = 500_000;

    private static final int MOST_OPEN = 50_000;
    /**
     * By how much a shorter maze or chamber may be quieter by the estimate, dB: a shorter box has less wall, and the ports of a chamber
     * may come out of line. 0.01 and 1.7 were the most of some hundred.
     */
    static final double SHORTER_MAZE = 0.3;

    static final double SHORTER_CHAMBER = 2.5;
    /**
     * Of shorter chambers one in so many is looked at, then what lies between around the quietest: the margin goes up and down
     * over centimetres.
     */
    private static final int BETWEEN = 4;
    /** How many shorter boxes are looked at of a line where not all are. */
    private static final int FEW = 8;
    /** Lines judged between two looks at whether the work is still wanted. */
    private static final int CHUNK = 256;

    private static final String DOING = "holding the box against others";

    private final Appraiser appraiser;
    private final Candidate leader;
    /** Most it may cost to be better: what the leader costs if that has enough in hand. */
    private final double most;
    /** What a cheaper box may lack, dB. */
    private final double lack;
    /** Whether all shorter boxes are looked at that cost as much, not a few. */
    private final boolean thorough;

    private Challengers(Appraiser appraiser, Candidate leader, double lack, boolean thorough) {
        this.lack = lack;
        this.thorough = thorough;
        this.appraiser = appraiser;
        this.leader = leader;
        this.most = Kind.safe(leader) ? leader.cost() : Double.POSITIVE_INFINITY;
    }

    /**
     * What was found.
     *
     * @param boxes all there are
     * @param challengers that might be better by the estimate, the quietest first
     */
    record Found(long boxes, List<Candidate> challengers) {}

    /**
     * All that might be recommended instead of a box.
     *
     * @param every boxes of the space
     * @param lack how much less a cheaper box may have in hand than it should, dB
     * @param thorough whether all shorter boxes are looked at that cost as much and may be quieter all the same, not a few
     * @return nothing if there are too many
     * @throws java.util.concurrent.CancellationException if the work is no longer wanted
     */
    static Optional<Found> of(
            PatternGrid every,
            Appraiser appraiser,
            Candidate leader,
            double lack,
            boolean thorough,
            Progress progress) {
        return new Challengers(appraiser, leader, lack, thorough).found(every, progress);
    }

    private Optional<Found> found(PatternGrid every, Progress progress) {
        progress.check(0, DOING);
        PatternGrid.Count all = every.count();
        if (all.lines() > MOST_LINES) {
            return Optional.empty();
        }
        List<PatternGrid.Line> open = new ArrayList<>();
        every.each(line -> {
            if (open.size() <= MOST_OPEN && isCheapEnough(line)) {
                open.add(line);
            }
        });
        if (open.size() > MOST_OPEN) {
            return Optional.empty();
        }
        List<Candidate> challengers = new ArrayList<>();
        for (int from = 0; from < open.size(); from += CHUNK) {
            progress.check((double) from / open.size(), DOING);
            challengers.addAll(open.subList(from, Math.min(open.size(), from + CHUNK)).parallelStream()
                    .flatMap(this::of)
                    .toList());
        }
        challengers.sort(
                Comparator.comparingDouble((Candidate c) -> -c.margin()).thenComparingDouble(Candidate::cost));
        return Optional.of(new Found(all.boxes(), challengers));
    }

    private boolean isCheapEnough(PatternGrid.Line line) {
        Pattern shortest =
                line.longest().ofLength(line.lengths().get(line.lengths().size() - 1));
        return mightBeat(Double.POSITIVE_INFINITY, appraiser.leastCost(shortest));
    }

    private boolean mightBeat(double margin, double cost) {
        return Kind.beats(cost < leader.cost() ? margin + lack : margin, cost, leader);
    }

    /** Of the boxes that cost no more than the leader the quietest, of those that cost less than that one, and so on. */
    private Stream<Candidate> of(PatternGrid.Line line) {
        List<Candidate> found = new ArrayList<>();
        int at = firstUnder(line, 0, most, true);
        while (at < line.lengths().size()) {
            Optional<Candidate> quietest = quietest(line, at);
            quietest.ifPresent(found::add);
            at = quietest.isPresent()
                    ? firstUnder(line, at, quietest.get().cost(), false)
                    : line.lengths().size();
        }
        return found.stream();
    }

    /** The longest from some place on that keeps the limits and costs no more, or less, than so much; the number of lengths if none. */
    private int firstUnder(PatternGrid.Line line, int from, double cost, boolean orAsMuch) {
        int low = from;
        int high = line.lengths().size();
        while (low < high) {
            // The longest is looked at first: mostly it will do.
            int middle = low == from ? low : (low + high) / 2;
            double found = appraiser.cost(line.longest().ofLength(line.lengths().get(middle)));
            boolean under = Double.isFinite(found) && (orAsMuch ? found <= cost : found < cost);
            if (under) {
                high = middle;
            } else {
                low = middle + 1;
            }
        }
        return low;
    }

    private Optional<Candidate> quietest(PatternGrid.Line line, int from) {
        List<Double> lengths = line.lengths();
        if (from >= lengths.size()) {
            return Optional.empty();
        }
        Candidate longest = candidate(line, from);
        boolean maze = line.longest().form() == Box.Form.MAZE;
        double more = maze ? SHORTER_MAZE : SHORTER_CHAMBER;
        int few = maze ? 1 : BETWEEN;
        int stride = thorough ? few : Math.max(1, (lengths.size() - from) / FEW);
        if (longest == null || !mightBeat(longest.margin() + more, longest.cost())) {
            return Optional.empty();
        }
        Candidate best = longest;
        int bestAt = from;
        for (int i = from + stride; i < lengths.size() && best.margin() < longest.margin() + more; i += stride) {
            Candidate shorter = candidate(line, i);
            if (shorter != null && shorter.margin() < longest.margin() - more) {
                break;
            }
            if (shorter != null && shorter.margin() > best.margin()) {
                best = shorter;
                bestAt = i;
            }
        }
        int last = thorough ? Math.min(lengths.size() - 1, bestAt + stride - 1) : -1;
        for (int i = Math.max(from, bestAt - stride) + 1; i <= last; i++) {
            Candidate between = candidate(line, i);
            best = between != null && between.margin() > best.margin() ? between : best;
        }
        return mightBeat(best.margin(), best.cost()) ? Optional.of(best) : Optional.empty();
    }

    private Candidate candidate(PatternGrid.Line line, int at) {
        return appraiser
                .first(line.longest().ofLength(line.lengths().get(at)), null)
                .candidate();
    }
}
