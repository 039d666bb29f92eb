package hushmaze.cli;

/** What a command ends with. */
final class ExitCode {
    /** Done. */
    static final int DONE = 0;
    /** The design fails its brief. */
    static final int DESIGN_FAILS = 1;
    /** The input cannot be used. */
    static final int BAD_INPUT = 2;

    private ExitCode() {}
}
