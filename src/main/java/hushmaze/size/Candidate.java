package hushmaze.size;

import hushmaze.assess.PathResult;
import hushmaze.assess.SoundMargins;
import hushmaze.project.Box;

/** One box of a search, known ever better. Not for use by several threads at once. */
final class Candidate {
    private final Pattern pattern;
    private final Sizes sizes;
    private final Kin kin;
    private final Known target;
    private final Known others;
    private Level level = Level.ESTIMATE;
    private Box box;
    private double cost;
    private int seams;
    private PathResult result;
    private boolean dropped;
    private boolean surrounded;

    /**
     * What is known of a box for sure.
     *
     * @param depth away from the surface of the opening, m
     * @param mass kg
     * @param drop of pressure at the high edge, Pa
     * @param boards area of all boards, m²
     * @param liners area of all pieces of liner, m²
     */
    record Sizes(double depth, double mass, double drop, double boards, double liners) {}

    /**
     * @param box in one piece
     * @param estimate margins by the estimate
     * @param cost expected
     * @param lead the candidate around which it was found; null if it is of the grid
     */
    Candidate(Pattern pattern, Box box, Sizes sizes, SoundMargins estimate, double cost, Candidate lead, Kin kin) {
        this.pattern = pattern;
        this.box = box;
        this.sizes = sizes;
        this.cost = cost;
        this.kin = kin;
        this.target = new Known(estimate.target(), lead == null ? null : lead.target, kin.target());
        this.others = new Known(estimate.others(), lead == null ? null : lead.others, kin.others());
    }

    Pattern pattern() {
        return pattern;
    }

    /** In one piece as long as only estimated, then with its seams. */
    Box box() {
        return box;
    }

    Sizes sizes() {
        return sizes;
    }

    Level level() {
        return level;
    }

    /** What is known, and as long as it was not laid out, what smaller boxes tell. */
    double cost() {
        return level == Level.ESTIMATE ? Math.max(cost, kin.leastCost(pattern)) : cost;
    }

    int seams() {
        return seams;
    }

    /** Null before it was assessed. */
    PathResult result() {
        return result;
    }

    boolean dropped() {
        return dropped;
    }

    void drop() {
        dropped = true;
    }

    /** Whether its neighbours were tried. */
    boolean surrounded() {
        return surrounded;
    }

    void surround() {
        surrounded = true;
    }

    /** The less of both margins at a level that was reached, at the share of the target that was judged first, dB. */
    double margin(Level at) {
        return Math.min(target.at(at), others.at(at));
    }

    /** The less of both margins as they are expected, dB. */
    double margin() {
        return Math.min(targetMargin(), othersMargin());
    }

    /** Margin to the target: what is known, and where it is not yet known by the best methods, what these made of boxes like it, dB. */
    double targetMargin() {
        return target.expected() + kin.bonus();
    }

    /** The same of what others hear; positive infinity where nobody is asked about. */
    double othersMargin() {
        return others.expected();
    }

    /** It is known better now; the margin to the target without the bonus. */
    void raise(Level to, SoundMargins margins) {
        level = to;
        target.raise(to, margins.target());
        others.raise(to, margins.others());
    }

    /** Sheets cost another sum than before. */
    void costs(double other) {
        cost = other;
    }

    /** There are too few sheets for it. */
    void hasNoSheets() {
        dropped = true;
        kin.costs(pattern, Double.POSITIVE_INFINITY);
    }

    void laidOut(Box seamed, double realCost, int seamCount) {
        if (realCost > cost) {
            kin.costs(pattern, realCost);
        }
        box = seamed;
        cost = realCost;
        seams = seamCount;
    }

    void assessed(PathResult judged, double realCost) {
        result = judged;
        cost = realCost;
    }
}
