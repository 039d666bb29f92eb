package hushmaze.drawing;

import java.util.List;

/**
 * One finished page.
 *
 * @param title as in the title block and the bookmarks
 * @param width mm
 * @param height mm
 * @param thinLine width of the thin line, mm; the thick one is twice as wide
 * @param shapes in the order they are painted
 */
public record Page(String title, double width, double height, double thinLine, List<Shape> shapes) {
    public Page {
        shapes = List.copyOf(shapes);
    }
}
