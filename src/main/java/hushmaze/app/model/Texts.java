package hushmaze.app.model;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.Optional;
import java.util.ResourceBundle;

/** The window's own words, from one resource bundle. */
public final class Texts {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("hushmaze.app.texts", Locale.ROOT);

    private Texts() {}

    /** A text with its gaps filled in. */
    public static String of(String key, Object... gaps) {
        return new MessageFormat(BUNDLE.getString(key), Locale.ROOT).format(gaps);
    }

    /** A text that need not be there. */
    public static Optional<String> find(String key) {
        return BUNDLE.containsKey(key) ? Optional.of(of(key)) : Optional.empty();
    }

    /** The word for a value of an enumeration. */
    public static String word(Enum<?> value) {
        return of("word." + value.getDeclaringClass().getSimpleName() + "." + value.name());
    }
}
