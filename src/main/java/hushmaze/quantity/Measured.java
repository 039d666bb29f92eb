package hushmaze.quantity;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Says in which unit a record's component is stored in files, named in lists and shown by default. The component itself
 * is always in SI. In a file the component's name gets the unit's suffix: {@code clearWidth} becomes {@code
 * clearWidthMm}.
 */
@Retention(RetentionPolicy.RUNTIME)
@Target(ElementType.RECORD_COMPONENT)
public @interface Measured {
    Unit value();
}
