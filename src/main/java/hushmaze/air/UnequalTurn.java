package hushmaze.air;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import java.util.Optional;

/**
 * A sharp turn by 90 degrees from one width into another of the same height.
 *
 * <p>Loss coefficient on the velocity before the turn: ζ = C(H/W, W₁/W) · k_Re; W and W₁ widths in the plane of the turn,
 * before and after; H height along its axis; k_Re as in {@link SharpTurn}.
 *
 * <p>Source: mitred rectangular elbow with change of width, duct construction handbook, table A-7 E; the cells H/W 0.25, 1, 4
 * at W₁/W 0.6 and 1.2, and H/W ∞ at 0.6, as read, the others from memory; W₁/W = 1 is the closed form of {@link SharpTurn}.
 * H/W ∞ is taken at 8. One edition refers the table to the velocity before the turn, another to that after it. Likely: before
 * it, because after it the wide outlets would cost less than a plain sudden widening. High: for a narrowing the other
 * edition, but no more than a turn of the narrower width after a plain sudden narrowing, with the largest Reynolds
 * correction. Low: no Reynolds correction. Range: W₁/W 0.6 to 2; below, the coefficient on
 * the velocity after the turn is held; above, that before it, but never less than a plain sudden widening. Accuracy: 20 %
 * within the table, our judgement. Differs from the source: none.
 */
final class UnequalTurn {
    static final String SOURCE = "duct construction handbook, table A-7 E, in part from memory";
    /** Least ratio of widths in the table. */
    static final double MIN_RATIO = 0.6;
    /** Largest ratio of widths in the table. */
    static final double MAX_RATIO = 2;
    /** Relative difference below which two widths are the same. */
    static final double SAME = 1e-9;

    private static final double RIGHT_ANGLE = 90;
    private static final double[] ASPECTS = {0.25, 1, 4, 8};
    private static final double[] RATIOS = {0.6, 0.8, 1, 1.2, 1.4, 1.6, 2};
    /** One row for each aspect; the column W₁/W = 1 is that of the closed form. */
    private static final double[][] C = {
        {1.8, 1.4, equal(0.25), 1.1, 1.1, 1.1, 1.1},
        {1.7, 1.4, equal(1), 1.0, 0.95, 0.90, 0.84},
        {1.5, 1.1, equal(4), 0.81, 0.76, 0.72, 0.66},
        {1.5, 1.0, equal(8), 0.69, 0.63, 0.60, 0.55},
    };

    private UnequalTurn() {}

    private static double equal(double aspect) {
        return SharpTurn.base(RIGHT_ANGLE, aspect);
    }

    /** Coefficient of the table; height over the width before the turn, width after over width before. */
    static double table(double aspect, double ratio) {
        double[] over = new double[ASPECTS.length];
        for (int i = 0; i < over.length; i++) {
            over[i] = Table.held(RATIOS, C[i], ratio);
        }
        double held = Table.heldOverLog(ASPECTS, over, aspect);
        if (ratio < MIN_RATIO) {
            return held * (MIN_RATIO / ratio) * (MIN_RATIO / ratio);
        }
        double widening = ratio > 1 ? (1 - 1 / ratio) * (1 - 1 / ratio) : 0;
        return Math.max(held, widening);
    }

    /**
     * Loss coefficient on the velocity before the turn.
     *
     * @param aspect height along the axis over the width before the turn
     * @param ratio width after over width before
     * @param reynolds before the turn, on the hydraulic diameter
     * @param relativeRoughness roughness over hydraulic diameter
     */
    static Zeta zeta(double aspect, double ratio, double reynolds, double relativeRoughness) {
        Zeta equal = SharpTurn.zeta(aspect, reynolds, relativeRoughness);
        double c = table(aspect, ratio);
        // the corrections are 1 and more; a quotient may round to a bit less
        double likely = c * Math.max(1, equal.likely() / equal.low());
        double most = Math.max(1, equal.high() / equal.low());
        double high = c * most;
        if (ratio < 1) {
            double narrower =
                    equal(aspect / ratio) * most + AreaChange.zeta(1, ratio).high();
            high = Math.max(high, Math.min(high, narrower) / (ratio * ratio));
        }
        return new Zeta(c, likely, Math.max(likely, high));
    }

    /** The notice when a turn is outside the table. */
    static Optional<Notice> notice(String part, double ratio) {
        if (ratio >= MIN_RATIO * (1 - SAME) && ratio <= MAX_RATIO * (1 + SAME)) {
            return Optional.empty();
        }
        double limit = ratio < 1 ? MIN_RATIO : MAX_RATIO;
        return Optional.of(
                Notice.of(NoticeKind.TURN_WIDTHS_OUTSIDE_RANGE, Severity.NOTE, part, ratio, limit, Unit.NUMBER));
    }
}
