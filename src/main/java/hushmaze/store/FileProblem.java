package hushmaze.store;

/**
 * One thing that is wrong with a file.
 *
 * @param file as the user named it
 * @param field where in the file, such as {@code paths[0].box.clearWidthMm}; empty if it is the file as a whole
 * @param text what is wrong, with the value, the limit and the unit
 */
public record FileProblem(String file, String field, String text) {
    /** The whole sentence. */
    public String message() {
        return file + ": " + (field.isEmpty() ? "" : field + ": ") + text;
    }
}
