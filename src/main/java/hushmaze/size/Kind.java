package hushmaze.size;

import java.util.Comparator;
import java.util.function.ToDoubleFunction;

/** What a design of a search is the best at. */
public enum Kind {
    /** Quiet enough with something in hand, and then the cheapest. */
    RECOMMENDED(Kind::unsafe, Kind::costIfSafe, Candidate::cost, Kind::reserve, Kind::effort, Kind::seams, Kind::mass),
    /** Most margin to the target. */
    QUIETEST(Kind::noise, Candidate::cost, Kind::mass),
    /** Least depth away from the surface of the opening. */
    SHALLOWEST(Kind::loud, Kind::shortfall, Kind::depth, Candidate::cost, Kind::reserve),
    /** Least cost of sheets. */
    CHEAPEST(Kind::loud, Kind::shortfall, Candidate::cost, Kind::seams, Kind::mass),
    /** Least drop of pressure. */
    LEAST_RESISTANCE(Kind::loud, Kind::shortfall, Kind::resistance, Candidate::cost),
    /** Least mass. */
    LIGHTEST(Kind::loud, Kind::shortfall, Kind::mass, Candidate::cost);

    /** Margin a recommended box has in hand, dB: our own choice. */
    public static final double IN_HAND = 2;
    /** Margin beyond which more is no longer worth anything, dB: our own choice. */
    public static final double ENOUGH = 4;

    private static final double HALF_DECIBEL = 0.5;
    private static final double MILLIMETRES = 0.005;
    private static final double TWENTIETH = 0.05;

    /** What a box that is not assessed yet must have in hand to be counted as quiet, dB. */
    static final double DOUBT = 0.3;

    private final Comparator<Candidate> order;

    @SafeVarargs
    Kind(ToDoubleFunction<Candidate>... keys) {
        Comparator<Candidate> comparator = Comparator.comparingDouble(keys[0]);
        for (int i = 1; i < keys.length; i++) {
            comparator = comparator.thenComparingDouble(keys[i]);
        }
        order = comparator;
    }

    /** The better comes first. */
    Comparator<Candidate> order() {
        return order;
    }

    /** Whether a candidate meets the target, as far as is known. */
    static boolean quiet(Candidate c) {
        return c.margin() >= (c.level() == Level.ASSESSED ? 0 : DOUBT);
    }

    private static double loud(Candidate c) {
        return quiet(c) ? 0 : 1;
    }

    /** Whether it also has something in hand, as far as is known. */
    static boolean safe(Candidate c) {
        return c.margin() >= IN_HAND + (c.level() == Level.ASSESSED ? 0 : DOUBT);
    }

    /**
     * Whether a box would be recommended before another for more than a trifle: it is quiet or has enough in hand and the other not, it
     * is cheaper, or half a decibel quieter where that counts.
     *
     * @param margin of the box, dB
     * @param cost of the box
     */
    static boolean beats(double margin, double cost, Candidate other) {
        boolean safe = margin >= IN_HAND + DOUBT;
        if (safe != safe(other)) {
            return safe;
        }
        if (safe) {
            boolean quieter = Math.min(margin, ENOUGH) >= other.margin() + HALF_DECIBEL;
            return cost < other.cost() || cost == other.cost() && quieter;
        }
        boolean quiet = margin >= DOUBT;
        if (quiet != quiet(other)) {
            return quiet;
        }
        return margin >= other.margin() + HALF_DECIBEL || margin >= other.margin() && cost < other.cost();
    }

    private static double unsafe(Candidate c) {
        if (!quiet(c)) {
            return 2;
        }
        return safe(c) ? 0 : 1;
    }

    private static double costIfSafe(Candidate c) {
        return safe(c) ? c.cost() : -steps(c.margin(), HALF_DECIBEL);
    }

    /** Of those that are not quiet enough, the least short comes first. */
    private static double shortfall(Candidate c) {
        return quiet(c) ? 0 : -steps(c.margin(), HALF_DECIBEL);
    }

    private static double reserve(Candidate c) {
        return -steps(Math.min(c.margin(), ENOUGH), HALF_DECIBEL);
    }

    private static double noise(Candidate c) {
        return -steps(c.margin(), HALF_DECIBEL);
    }

    private static double depth(Candidate c) {
        return steps(c.sizes().depth(), MILLIMETRES);
    }

    private static double resistance(Candidate c) {
        return steps(Math.log(c.sizes().drop()), TWENTIETH);
    }

    /** Twice the pressure drop is a step. */
    private static double effort(Candidate c) {
        return steps(Math.log(c.sizes().drop()), Math.log(2));
    }

    private static double seams(Candidate c) {
        return c.seams();
    }

    private static double mass(Candidate c) {
        return c.sizes().mass();
    }

    private static double steps(double value, double step) {
        return Math.floor(value / step);
    }
}
