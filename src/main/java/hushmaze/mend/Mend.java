package hushmaze.mend;

import hushmaze.project.Project;
import hushmaze.quantity.Unit;
import java.util.function.UnaryOperator;

/**
 * A change that mends what a notice is about, or the most it can do.
 *
 * @param kind what is changed
 * @param value the new value, in SI; NaN where there is none
 * @param unit to show it in
 * @param enough whether the notice is gone with it; else by how much it helps is in {@code gain}
 * @param gain of the margin to the target, dB; NaN where the notice is about something else
 * @param change makes the changed project
 */
public record Mend(Kind kind, double value, Unit unit, boolean enough, double gain, UnaryOperator<Project> change) {
    /** What is changed. */
    public enum Kind {
        PASS_WIDTH,
        PASS_HEIGHT,
        PASS_LENGTH,
        TURN_GAP,
        PASSES,
        BOARD_LAYER,
        SIDE_LINER,
        BAFFLE_LINER,
        END_LINER,
        BROAD_LINER,
        /** Hole in the room, as wide as it may be. */
        ROOM_PORT,
        /** Port over the opening as large as the opening. */
        OPENING_PORT,
        ROOM_PORT_PLACE,
        ROOM_PORT_WIDTH,
        ROOM_PORT_HEIGHT,
        OPENING_PORT_PLACE,
        OPENING_PORT_WIDTH,
        OPENING_PORT_HEIGHT,
        /** Joints at the places the notice names. */
        SEAMS,
        GASKET,
        PLAY,
        SCREWS,
        CLEAT_LENGTH,
        ROW_DISTANCE,
        THREAD,
        PATH_LIMIT,
        ROOM_LIMIT,
        /** Airflow of the path that the notice is about. */
        FLOW,
        FAN_SPEED,
        /** A path the other way. */
        WAY_BACK
    }
}
