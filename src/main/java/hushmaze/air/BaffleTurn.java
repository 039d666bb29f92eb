package hushmaze.air;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * A turn by 180 degrees around the tip of a baffle, from one pass into the next of the same width.
 *
 * <p>Loss coefficient on the velocity in the pass: ζ = ζ1(g/w) · F(L/w); g clear gap at the tip; w clear width of the
 * pass; L straight length between this tip and the one before; F = 1 for the first turn.
 *
 * <p>Source: computed, not measured: own two-dimensional flow solutions (steady Reynolds-averaged, k-omega SST), baffle
 * 0.18 w thick, smooth, Reynolds number 2e4 on 2 w, friction of the straight runs taken off. The same method gives 1.13 for
 * one sharp turn by 90 degrees (handbooks 0.9 to 1.2). At Re 1e4 it gives 3 % more. F is fitted by us to the totals of two
 * and three turns in series at L/w 6 and 3, and set to 1 from L/w = 12; it gives the four totals within 3 %. No published
 * table of this turn was available to compare with.
 *
 * <p>Likely: the table, read over logarithms of both, times F. Low: the table times 0.85 without F. High: likely times
 * 1.3. Other turbulence models give series totals 12 to 27 % lower, inside that range. Range: g/w 0.5 to 2, L/w from 3.
 * Above g/w 2 the coefficient is held. Below 0.5 it follows ζ = 7.17 (0.5 w/g)², a constant loss of the gap's own dynamic
 * pressure, which is steeper than the table's last stretch. Below L/w 3, F is held. Each case gives a notice. Accuracy:
 * judged 15 % for one turn, 25 % at g/w 0.5, 30 % in series. Differs from the source: real baffles with liner are thicker
 * than 0.18 w, and a real box has broad faces; neither is corrected for.
 */
final class BaffleTurn {
    static final String SOURCE =
            "own two-dimensional flow solutions (k-omega SST), computed and not measured; baffle 0.18 of "
                    + "the pass width";
    /** Narrowest gap in the table, over the width of the pass. */
    static final double MIN_GAP = 0.5;
    /** Widest gap in the table, over the width of the pass. */
    static final double MAX_GAP = 2;
    /** Shortest straight length between tips in the table, over the width of the pass. */
    static final double MIN_STRAIGHT = 3;
    /** Stands for the straight length before the first turn. */
    static final double FIRST = Double.POSITIVE_INFINITY;

    private static final double[] GAPS = {0.5, 0.75, 1, 1.25, 1.5, 2};
    private static final double[] ZETAS = {7.17, 3.39, 2.51, 2.50, 2.61, 2.65};
    private static final double[] STRAIGHTS = {3, 6, 12};
    /** Fitted to totals 7.74, 13.35 (L/w 3) and 6.12, 9.18 (L/w 6) of two and three turns. */
    private static final double[] FACTORS = {2.12, 1.38, 1};
    /** Low edge over the plain table. */
    private static final double LOW = 0.85;
    /** High edge over the likely value. */
    private static final double HIGH = 1.3;
    /** Relative difference below which two sizes are the same. */
    private static final double SAME = 1e-9;

    private BaffleTurn() {}

    /** Coefficient of one turn by itself; gap over width of the pass. */
    static double single(double gapRatio) {
        if (gapRatio < MIN_GAP) {
            return ZETAS[0] * Math.pow(MIN_GAP / gapRatio, 2);
        }
        return Table.heldLogOverLog(GAPS, ZETAS, gapRatio);
    }

    /** By how much a turn costs more because of the one before; straight length over width of the pass. */
    static double series(double straightRatio) {
        return Table.held(STRAIGHTS, FACTORS, straightRatio);
    }

    /**
     * Loss coefficient on the velocity in the pass.
     *
     * @param gapRatio gap over width of the pass
     * @param straightRatio straight length since the tip before over width of the pass; {@link #FIRST} for the first turn
     */
    static Zeta zeta(double gapRatio, double straightRatio) {
        double single = single(gapRatio);
        double likely = single * series(straightRatio);
        return new Zeta(LOW * single, likely, HIGH * likely);
    }

    /** What is doubtful about a turn; gap, width and straight length in m. */
    static List<Notice> notices(String part, double gap, double width, double straight) {
        List<Notice> notices = new ArrayList<>();
        double ratio = gap / width;
        if (ratio < 1 - SAME) {
            notices.add(Notice.of(NoticeKind.TURN_GAP_NARROW, Severity.WARNING, part, gap, width, Unit.MILLIMETRE));
        }
        if (ratio < MIN_GAP - SAME) {
            notices.add(outside(NoticeKind.TURN_OUTSIDE_RANGE, Severity.WARNING, part, ratio, MIN_GAP));
        }
        if (ratio > MAX_GAP + SAME) {
            notices.add(outside(NoticeKind.TURN_OUTSIDE_RANGE, Severity.NOTE, part, ratio, MAX_GAP));
        }
        if (straight / width < MIN_STRAIGHT - SAME) {
            notices.add(outside(NoticeKind.TURNS_CLOSE, Severity.NOTE, part, straight / width, MIN_STRAIGHT));
        }
        return notices;
    }

    private static Notice outside(NoticeKind kind, Severity severity, String part, double ratio, double limit) {
        return Notice.of(kind, severity, part, ratio, limit, Unit.NUMBER);
    }
}
