package hushmaze.solid;

import hushmaze.project.Box;

/** Makes the solid of a box. */
public final class SolidBuilder {
    private SolidBuilder() {}

    /** The solid of a box: panels, liner pieces, passes, turns and ports in their places. */
    public static Solid build(Box box) {
        throw new UnsupportedOperationException("being written: " + box.form());
    }
}
