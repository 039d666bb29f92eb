package hushmaze.assess;

import hushmaze.project.Drive;
import java.util.List;

/**
 * What one path carries with the door shut, in the sense of its purpose.
 *
 * @param drive what moves its air
 * @param least with the high losses of all paths, m³/s
 * @param likely with their likely losses, m³/s
 * @param most with their low losses, m³/s
 * @param fan how its fan stands; null without one
 * @param speed of the fan, over that of its curve, that brings the flow of the brief against the high losses; null without a
 *     fan, or if no speed up to five times that of the curve does
 * @param curve drive and path with the room over the flow, for a chart; the path alone without a fan or a given pressure; empty
 *     where the room would be sealed
 */
public record PathFlow(
        Drive.Kind drive,
        double least,
        double likely,
        double most,
        FanState fan,
        Double speed,
        List<DrivePoint> curve) {
    /** How a fan stands. */
    public enum FanState {
        /** On the falling part of its curve. */
        STEADY,
        /** Left of the summit of its curve, where a fan may surge. */
        BEFORE_SUMMIT,
        /** Overcome: less than the first flow of its curve, or backwards. */
        TOO_WEAK,
        /** Beyond the last point of its curve, where nothing is known. */
        OFF_CURVE
    }

    /**
     * One flow of a chart.
     *
     * @param flow m³/s
     * @param drive pressure the fan gives or there is, Pa; null where there is none
     * @param low pressure taken at the low losses, Pa
     * @param likely at the likely losses, Pa
     * @param high at the high losses, Pa
     */
    public record DrivePoint(double flow, Double drive, double low, double likely, double high) {}

    public PathFlow {
        curve = List.copyOf(curve);
    }

    /** Whether a drive of its own answers to what the path takes. */
    public boolean answers() {
        return drive.hasCurve();
    }
}
