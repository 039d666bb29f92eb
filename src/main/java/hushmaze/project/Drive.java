package hushmaze.project;

import hushmaze.material.Fan;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What moves the air through a path.
 *
 * @param kind of drive
 * @param pressure static pressure there is at the end away from the room, towards the room for a supply and away from it
 *     else, Pa; only for {@link Kind#GIVEN_PRESSURE}
 * @param fan with its curve; only for {@link Kind#FAN_CURVE}
 * @param speed of the fan over the speed of its curve; absent for 1
 * @param source measured, data sheet or assumed: where this is from
 */
public record Drive(
        Kind kind,
        @MayBeAbsent @Measured(Unit.PASCAL) Double pressure,
        @MayBeAbsent Fan fan,
        @MayBeAbsent Double speed,
        String source) {
    /** Kinds of drive. */
    public enum Kind {
        /** Nothing: the path carries what the pressure in the room drives through it. */
        NOTHING,
        /** A system that brings the flow of the brief whatever the path costs. */
        GIVEN_FLOW,
        /** A duct or register with a pressure of its own. */
        GIVEN_PRESSURE,
        /** A fan. */
        FAN_CURVE;

        /** Whether how much it brings depends on what the path takes. */
        public boolean hasCurve() {
            return this == GIVEN_PRESSURE || this == FAN_CURVE;
        }
    }

    public Drive {
        InvalidValue.present("kind", kind);
        if (kind == Kind.GIVEN_PRESSURE) {
            InvalidValue.present("pressure", pressure);
        }
        if (kind == Kind.FAN_CURVE) {
            InvalidValue.present("fan", fan);
        }
        // What another kind needs may stay beside the chosen one, but must be a value all the same.
        if (pressure != null) {
            InvalidValue.within("pressure", pressure, 0.1, 5000, Unit.PASCAL);
        }
        if (speed != null) {
            InvalidValue.within("speed", speed, 0.1, 2, Unit.NUMBER);
        }
        InvalidValue.text("source", source, 400);
    }

    /** Speed over that of the curve. */
    public double speedOrFull() {
        return speed == null ? 1 : speed;
    }
}
