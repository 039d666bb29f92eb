package hushmaze.size;

import hushmaze.assess.PathResult;
import hushmaze.project.Box;
import java.util.Arrays;

/** One box of a search, known ever better. Not for use by several threads at once. */
final class Candidate {
    private final Pattern pattern;
    private final Sizes sizes;
    private final Candidate lead;
    private final Kin kin;
    private final double[] margins = new double[Level.values().length];
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
     * @param estimate margin by the estimate, dB
     * @param cost expected
     * @param lead the candidate around which it was found; null if it is of the grid
     */
    Candidate(Pattern pattern, Box box, Sizes sizes, double estimate, double cost, Candidate lead, Kin kin) {
        this.pattern = pattern;
        this.box = box;
        this.sizes = sizes;
        this.cost = cost;
        this.lead = lead;
        this.kin = kin;
        Arrays.fill(margins, Double.NaN);
        margins[0] = estimate;
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

    double cost() {
        return cost;
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

    /** Margin at a level that was reached, at the share of the target that was judged first, dB. */
    double margin(Level at) {
        return margins[at.ordinal()];
    }

    /** Margin, dB: what is known, and where it is not yet known by the best methods, what these made of boxes like it. */
    double margin() {
        double margin = margins[level.ordinal()] + kin.bonus();
        for (int i = level.ordinal(); i < margins.length - 1; i++) {
            margin += step(i);
        }
        return margin;
    }

    private double step(int from) {
        boolean led = lead != null && lead.level.ordinal() > from;
        return led ? lead.margins[from + 1] - lead.margins[from] : kin.step(from);
    }

    /** It is known better now; the margin without the bonus. */
    void raise(Level to, double margin) {
        level = to;
        margins[to.ordinal()] = margin;
        kin.learn(to.ordinal() - 1, margin - margins[to.ordinal() - 1]);
    }

    /** Sheets cost another sum than before. */
    void costs(double other) {
        cost = other;
    }

    void laidOut(Box seamed, double realCost, int seamCount) {
        box = seamed;
        cost = realCost;
        seams = seamCount;
    }

    void assessed(PathResult judged, double realCost) {
        result = judged;
        cost = realCost;
    }
}
