package hushmaze.document;

import java.util.HashSet;
import java.util.Locale;
import java.util.Set;

/** Names of files made of what people called things. */
final class FileNames {
    private static final int LONGEST = 50;

    private final Set<String> given = new HashSet<>();

    /** The name with everything but letters, digits, dots and underscores turned into single hyphens. */
    static String safe(String name) {
        String clean = name.strip().replaceAll("[^\\p{L}\\p{N}._]+", "-").replaceAll("^[-.]+|[-.]+$", "");
        if (clean.codePointCount(0, clean.length()) > LONGEST) {
            clean = clean.substring(0, clean.offsetByCodePoints(0, LONGEST));
        }
        return clean.isEmpty() ? "unnamed" : clean;
    }

    /** A safe name no other call has returned, whatever the case of its letters. */
    String unique(String name) {
        String safe = safe(name);
        String result = safe;
        for (int i = 2; !given.add(result.toLowerCase(Locale.ROOT)); i++) {
            result = safe + "-" + i;
        }
        return result;
    }
}
