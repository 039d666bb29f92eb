package hushmaze.drawing;

import java.util.List;

/**
 * One finished page.
 *
 * @param title as in the title block and the bookmarks
 * @param width mm
 * @param height mm
 * @param thinLine width of the thin line, mm; the thick one is twice as wide
 * @param layers in the order they are painted; every shape is in one of them
 */
public record Page(String title, double width, double height, double thinLine, List<Layer> layers) {
    public Page {
        layers = List.copyOf(layers);
    }

    /** A page that is not divided into layers. */
    public static Page of(String title, double width, double height, double thinLine, List<Shape> shapes) {
        return new Page(title, width, height, thinLine, List.of(new Layer("", "", shapes)));
    }

    /** The shapes of all layers, in the order they are painted. */
    public List<Shape> shapes() {
        return layers.stream().flatMap(layer -> layer.shapes().stream()).toList();
    }
}
