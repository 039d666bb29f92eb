package hushmaze.drawing;

import java.util.List;

/**
 * Shapes of one kind on a page, so that a machine or a person can take them apart from the others.
 *
 * @param id short name, unlike those of the page's other layers; empty for a page that is not divided
 * @param title what it holds, in words
 * @param shapes in the order they are painted
 */
public record Layer(String id, String title, List<Shape> shapes) {
    public Layer {
        shapes = List.copyOf(shapes);
    }

    /** Whether it has a name. */
    public boolean isNamed() {
        return !id.isEmpty();
    }
}
