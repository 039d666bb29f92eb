package hushmaze.cli;

/** What a command ends with. */
final class ExitCode {
    /** Done. */
    static final int DONE = 0;
    /** The design fails its brief, no box can be laid out, or not every piece can be placed. */
    static final int DESIGN_FAILS = 1;
    /** The input cannot be used. */
    static final int BAD_INPUT = 2;

    private ExitCode() {}
}
