package hushmaze.app.sheet;

import hushmaze.drawing.Page;

/** Gives what a canvas of some size shows. */
public interface PageSource {
    /**
     * The page for so much room.
     *
     * @param width mm
     * @param height mm
     */
    Page page(double width, double height);
}
