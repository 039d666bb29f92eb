package hushmaze.app.model;

/**
 * Something to tell in the strip above the work.
 *
 * @param problem whether something went wrong
 * @param text one or more lines
 */
public record Message(boolean problem, String text) {}
