package hushmaze.store;

import hushmaze.project.Target;
import hushmaze.quantity.InvalidValue;

/**
 * A target to choose from a list.
 *
 * @param name the target and what it is usual for
 * @param target with its source
 */
public record TargetPreset(String name, Target target) {
    public TargetPreset {
        InvalidValue.text("name", name, 80);
        InvalidValue.present("target", target);
    }
}
