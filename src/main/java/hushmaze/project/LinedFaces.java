package hushmaze.project;

import hushmaze.quantity.InvalidValue;

/**
 * How many layers of the liner lie on which inner faces; none on a bare one.
 *
 * @param walls on the two long sides of the box, 0 to 2
 * @param baffles on both faces of every baffle, 0 to 2
 * @param ends on the two ends, where the air turns, 0 to 2
 * @param broad on the two broad faces, 0 to 2
 */
public record LinedFaces(int walls, int baffles, int ends, int broad) {
    /** Most layers on a face. */
    public static final int MOST = 2;
    /** Everything the air path folds around, but not the broad faces. */
    public static final LinedFaces FOLD_PLANE = new LinedFaces(1, 1, 1, 0);
    /** Every inner face. */
    public static final LinedFaces ALL = new LinedFaces(1, 1, 1, 1);
    /** No liner at all. */
    public static final LinedFaces NONE = new LinedFaces(0, 0, 0, 0);

    public LinedFaces {
        InvalidValue.within("walls", walls, 0, MOST);
        InvalidValue.within("baffles", baffles, 0, MOST);
        InvalidValue.within("ends", ends, 0, MOST);
        InvalidValue.within("broad", broad, 0, MOST);
    }

    /** The same with as many layers on sides and baffles. */
    public LinedFaces withSides(int layers) {
        return new LinedFaces(layers, layers, ends, broad);
    }

    /** The same with other layers on the baffles. */
    public LinedFaces withBaffles(int layers) {
        return new LinedFaces(walls, layers, ends, broad);
    }

    /** The same with other layers on the ends. */
    public LinedFaces withEnds(int layers) {
        return new LinedFaces(walls, baffles, layers, broad);
    }

    /** The same with other layers on the broad faces. */
    public LinedFaces withBroad(int layers) {
        return new LinedFaces(walls, baffles, ends, layers);
    }

    /** Most layers on any face. */
    public int most() {
        return Math.max(Math.max(walls, baffles), Math.max(ends, broad));
    }
}
