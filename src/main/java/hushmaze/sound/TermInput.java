package hushmaze.sound;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * One number that went into a {@link LossTerm}, so that the term can be worked again by hand.
 *
 * @param key what it is, in one word of the kind used for fields in files: "length", "clearWidth"
 * @param value in SI, finite
 * @param unit the unit to show it in
 */
public record TermInput(String key, double value, Unit unit) {
    public TermInput {
        InvalidValue.text("key", key, 60);
        InvalidValue.present("unit", unit);
        InvalidValue.within(key, value, -Double.MAX_VALUE, Double.MAX_VALUE, unit);
    }
}
