package hushmaze.store;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;

/**
 * Finds the known name that a mistyped one most likely stands for: the one with the fewest inserted, left out or changed
 * letters, upper and lower case being the same.
 */
final class NearestName {
    private NearestName() {}

    /** The nearest of some names; the first of them where several are as near. */
    static String of(String typed, Collection<String> known) {
        return known.stream()
                .min(Comparator.comparingInt(name -> distance(lower(typed), lower(name))))
                .orElseThrow();
    }

    /** Number of single-letter edits that turn one text into another (edit distance by dynamic programming). */
    static int distance(String from, String to) {
        int[] row = new int[to.length() + 1];
        for (int j = 0; j <= to.length(); j++) {
            row[j] = j;
        }
        for (int i = 1; i <= from.length(); i++) {
            int diagonal = row[0];
            row[0] = i;
            for (int j = 1; j <= to.length(); j++) {
                int changed = diagonal + (from.charAt(i - 1) == to.charAt(j - 1) ? 0 : 1);
                diagonal = row[j];
                row[j] = Math.min(changed, 1 + Math.min(row[j], row[j - 1]));
            }
        }
        return row[to.length()];
    }

    private static String lower(String text) {
        // A long key is no typing slip; its start is enough to compare.
        return text.substring(0, Math.min(text.length(), 60)).toLowerCase(Locale.ROOT);
    }
}
