package hushmaze.size;

import hushmaze.quantity.UnitSystem;

/** No box can be laid out for a path; the proposal says which limit would have to give. */
public final class NoBox extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String path;
    private final UnitSystem units;
    private final transient Proposal proposal;

    NoBox(String path, UnitSystem units, Proposal proposal) {
        super("no box keeps every limit of the path " + path);
        this.path = path;
        this.units = units;
        this.proposal = proposal;
    }

    /** Name of the path. */
    public String path() {
        return path;
    }

    /** Units of the project. */
    public UnitSystem units() {
        return units;
    }

    /** What was looked at and what would help. */
    public Proposal proposal() {
        return proposal;
    }
}
