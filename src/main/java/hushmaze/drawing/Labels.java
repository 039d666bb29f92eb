package hushmaze.drawing;

import java.text.MessageFormat;
import java.util.Locale;
import java.util.ResourceBundle;

/** The documents' own words, from one resource bundle. */
public final class Labels {
    private static final ResourceBundle BUNDLE = ResourceBundle.getBundle("hushmaze.drawing.labels", Locale.ROOT);

    private Labels() {}

    /**
     * A text with its gaps filled in.
     *
     * @param key in the bundle
     * @param gaps texts for {0}, {1}, ...
     */
    public static String of(String key, String... gaps) {
        String text = BUNDLE.getString(key);
        return gaps.length == 0 ? text : new MessageFormat(text, Locale.ROOT).format(gaps);
    }

    /** The word for something that is named by a key elsewhere, or that name itself if there is no word for it. */
    public static String word(String group, String name) {
        String key = group + "." + name;
        return BUNDLE.containsKey(key) ? BUNDLE.getString(key) : name;
    }

    /** The texts whose keys are {@code key.1}, {@code key.2}, ... up to the first that is missing. */
    public static java.util.List<String> list(String key) {
        java.util.List<String> all = new java.util.ArrayList<>();
        for (int i = 1; BUNDLE.containsKey(key + "." + i); i++) {
            all.add(BUNDLE.getString(key + "." + i));
        }
        return all;
    }
}
