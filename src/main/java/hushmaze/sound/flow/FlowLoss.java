package hushmaze.sound.flow;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A loss of pressure along the path, for the noise it makes.
 *
 * @param key what it is: "entry", "friction", "turn90", "turn180", "areaChange", "exit"
 * @param part which part it belongs to: "pass 1", "turn 2", "opening port", "room port"
 * @param zeta loss coefficient on {@code velocity}
 * @param velocity m/s
 */
public record FlowLoss(String key, String part, double zeta, double velocity) {
    public FlowLoss {
        InvalidValue.present("key", key);
        InvalidValue.present("part", part);
        InvalidValue.within("zeta", zeta, 0, 1000, Unit.NUMBER);
        InvalidValue.within("velocity", velocity, 0, FlowSource.FASTEST, Unit.METRE_PER_SECOND);
    }
}
