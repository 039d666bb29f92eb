package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import java.util.ArrayList;
import java.util.List;

/** Collects what is wrong with one file, so that it can be shown together. */
final class Problems {
    private static final int SHOWN_LENGTH = 40;

    private final String file;
    private final List<FileProblem> found = new ArrayList<>();

    Problems(String file) {
        this.file = file;
    }

    int count() {
        return found.size();
    }

    /** Adds a problem in words of its own. */
    void add(String field, String text) {
        found.add(new FileProblem(file, field, text));
    }

    /** Adds a value that is not accepted. */
    void refuse(String field, String given, String limit, String unit) {
        String ending = unit.isEmpty() ? "" : " " + unit;
        add(field, given + ending + " is not accepted; it must be " + limit + ending);
    }

    /** Adds a value of the wrong kind. */
    void refuse(String field, JsonNode given, String wanted) {
        refuse(field, shown(given), wanted, "");
    }

    /** Stops if anything was wrong. */
    void throwIfAny() {
        if (!found.isEmpty()) {
            throw new UnreadableFile(found);
        }
    }

    /** A problem of the file as a whole, which ends the reading at once. */
    static UnreadableFile whole(String file, String text) {
        return new UnreadableFile(new FileProblem(file, "", text));
    }

    /** A value as it stands in the file, cut short where it is long. */
    static String shown(JsonNode node) {
        String text = node.toString();
        return text.length() > SHOWN_LENGTH ? text.substring(0, SHOWN_LENGTH) + "..." : text;
    }
}
