package hushmaze.air;

import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Unit;
import java.util.Optional;

/**
 * A single turn with sharp corners and no vanes, as between a port in a side and its pass.
 *
 * <p>Loss coefficient on the mean velocity: ζ = A(δ) · C1(H/W) · ζ_loc · k_Re, ζ_loc = 0.95 sin²(δ/2) + 2.05 sin⁴(δ/2); δ
 * angle of the turn; W width in the plane of the turn; H height along its axis; Re Reynolds number on 2HW/(H + W).
 *
 * <p>Source: Handbook of Hydraulic Resistance, 2006, diagram 6-7, as quoted in an open library of pressure losses; A and
 * C1 from memory, checked against all 66 cells of the mitred rectangular elbow table of a 1989 duct fitting handbook.
 * k_Re: the table printed with that elbow, Re 1e4 to 1.4e5. The second correction 24.8/Re^0.263 is from Internal Flow
 * Systems as coded in the same library, blended to 1 between Re 1e5 and 2e5. The roughness factor 1 + 500 ε/D, at most 1.5
 * and only above Re 4e4, is from a public copy of the handbook's chapter 6.
 *
 * <p>Likely: the printed table, held at 1.40 below Re 1e4 with a notice. Low: no Reynolds correction. High: the larger of
 * the second correction, its Re held at 4000 (2.80, where the flow stops being turbulent), and the printed table times the
 * roughness factor. Range: 20 to 90 degrees, H/W 0.25 to 8; outside, A and C1 are held at their last rows. Accuracy:
 * within 0.035 of the printed table; the corrections themselves differ by 57 % at Re 1e4. Differs from the source: the
 * roughness factor acts on the high edge only.
 */
final class SharpTurn {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagram 6-7, with the Reynolds table of the duct "
            + "fitting handbook; high edge: Internal Flow Systems";
    /** Lowest Reynolds number of the printed correction. */
    static final double MIN_REYNOLDS = 1e4;

    private static final double RIGHT_ANGLE = 90;
    private static final double[] ANGLES = {20, 30, 45, 60, 75, 90};
    private static final double[] A = {2.50, 2.22, 1.87, 1.50, 1.28, 1.20};
    private static final double[] ASPECTS = {0.25, 0.5, 0.75, 1, 1.5, 2, 3, 4, 5, 6, 8};
    private static final double[] C1 = {1.10, 1.07, 1.04, 1.00, 0.95, 0.90, 0.83, 0.78, 0.75, 0.72, 0.70};
    private static final double[] REYNOLDS = {1e4, 1.4e4, 2e4, 3e4, 4e4, 6e4, 8e4, 1e5, 1.4e5};
    private static final double[] K_RE = {1.40, 1.33, 1.26, 1.19, 1.14, 1.09, 1.06, 1.04, 1.00};

    /** Lowest Reynolds number put into the second correction: the end of transition. */
    private static final double MIN_SECOND_REYNOLDS = 4000;
    /** Where the second correction starts to be blended to 1. */
    private static final double BLEND_START = 1e5;
    /** Where the second correction is 1. */
    private static final double BLEND_END = 2e5;
    /** Reynolds number above which roughness counts. */
    private static final double ROUGH_REYNOLDS = 4e4;

    private SharpTurn() {}

    /** The local part of the coefficient; angle in degrees. */
    static double local(double angle) {
        double square = Math.pow(Math.sin(Math.toRadians(angle) / 2), 2);
        // diagram 6-7, zeta_loc
        return 0.95 * square + 2.05 * square * square;
    }

    /** The coefficient at high Reynolds number; angle in degrees, aspect is height over width. */
    static double base(double angle, double aspect) {
        return Table.held(ANGLES, A, angle) * Table.held(ASPECTS, C1, aspect) * local(angle);
    }

    /** The printed Reynolds correction, held at 1.40 below Re 1e4. */
    static double correction(double reynolds) {
        return Table.heldOverLog(REYNOLDS, K_RE, reynolds);
    }

    /** The second published Reynolds correction, held below Re 4000. */
    static double secondCorrection(double reynolds) {
        double fit = 24.8 / Math.pow(Math.min(BLEND_START, Math.max(MIN_SECOND_REYNOLDS, reynolds)), 0.263);
        return Table.heldOverLog(new double[] {BLEND_START, BLEND_END}, new double[] {fit, 1}, reynolds);
    }

    /**
     * Loss coefficient of a turn by 90 degrees.
     *
     * @param aspect height along the axis over width in the plane of the turn
     * @param reynolds on the hydraulic diameter
     * @param relativeRoughness roughness over hydraulic diameter
     */
    static Zeta zeta(double aspect, double reynolds, double relativeRoughness) {
        double base = base(RIGHT_ANGLE, aspect);
        double k = correction(reynolds);
        double rough = reynolds > ROUGH_REYNOLDS ? Math.min(1.5, 1 + 500 * relativeRoughness) : 1;
        return new Zeta(base, base * k, base * Math.max(k * rough, secondCorrection(reynolds)));
    }

    /** The notice when a turn's Reynolds number is below what was published. */
    static Optional<Notice> notice(String part, double reynolds) {
        if (reynolds >= MIN_REYNOLDS) {
            return Optional.empty();
        }
        return Optional.of(
                Notice.of(NoticeKind.REYNOLDS_BELOW_RANGE, Severity.NOTE, part, reynolds, MIN_REYNOLDS, Unit.NUMBER));
    }
}
