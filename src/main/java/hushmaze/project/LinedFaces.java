package hushmaze.project;

/**
 * Which inner faces carry the liner.
 *
 * @param walls the two long sides of the box
 * @param baffles both faces of every baffle
 * @param ends the two ends, where the air turns
 * @param broad the two broad faces
 */
public record LinedFaces(boolean walls, boolean baffles, boolean ends, boolean broad) {
    /** Everything the air path folds around, but not the broad faces. */
    public static final LinedFaces FOLD_PLANE = new LinedFaces(true, true, true, false);
    /** Every inner face. */
    public static final LinedFaces ALL = new LinedFaces(true, true, true, true);
    /** No liner at all. */
    public static final LinedFaces NONE = new LinedFaces(false, false, false, false);
}
