package hushmaze.store;

/** A file that could not be written. Whatever was there before is still there, unchanged. */
public final class UnwritableFile extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final transient FileProblem problem;

    UnwritableFile(FileProblem problem) {
        super(problem.message());
        this.problem = problem;
    }

    /** What is in the way. */
    public FileProblem problem() {
        return problem;
    }
}
