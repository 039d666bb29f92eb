package hushmaze.size;

/** No box can be laid out for a path; the proposal says which limit would have to give. */
public final class NoBox extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String path;
    private final transient Proposal proposal;

    NoBox(String path, Proposal proposal) {
        super("no box keeps every limit of the path " + path);
        this.path = path;
        this.proposal = proposal;
    }

    /** Name of the path. */
    public String path() {
        return path;
    }

    /** What was looked at and what would help. */
    public Proposal proposal() {
        return proposal;
    }
}
