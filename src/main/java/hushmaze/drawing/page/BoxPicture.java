package hushmaze.drawing.page;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.axon.Form;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.axon.Marks;
import hushmaze.drawing.axon.Marks.Mark;
import hushmaze.drawing.axon.Picture;
import hushmaze.drawing.axon.Scene;
import hushmaze.drawing.axon.Scene.SeenArea;
import hushmaze.drawing.axon.Scene.Thing;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Parts of a box, each somewhere, drawn with their marks. */
final class BoxPicture {
    /** A region narrower than this is no place for the end of a leader if there is another, mm. */
    private static final double NARROW = 1.2;

    /**
     * A part where it is shown.
     *
     * @param part of the box; null for timber that goes on it
     * @param form as it is shown
     * @param body number of the body it belongs to
     */
    record Shown(Part part, Form form, int body) {}

    private final List<Shown> shown;
    private final Scene scene;

    BoxPicture(List<Shown> shown) {
        this.shown = List.copyOf(shown);
        this.scene =
                new Scene(shown.stream().map(s -> new Thing(s.form(), s.body())).toList());
    }

    /** Lowest z of all parts as shown, m. */
    double lowest() {
        return blocks().mapToDouble(Cuboid::z0).min().orElseThrow();
    }

    /** Highest z of all parts as shown, m. */
    double highest() {
        return blocks().mapToDouble(Cuboid::z1).max().orElseThrow();
    }

    private Stream<Cuboid> blocks() {
        return shown.stream().flatMap(s -> s.form().blocks().stream());
    }

    /** Room it takes on paper without marks, mm; corners of its hull. */
    List<Point> hull(Isometric view) {
        return Marks.hull(Picture.corners(scene, view));
    }

    /** Fills the parts in given inks, none for null, and draws their edges. */
    Picture draw(Sketch sketch, Isometric view, Function<Part, Ink> ink) {
        Picture picture = new Picture(scene, view, sketch);
        for (int i = 0; i < shown.size(); i++) {
            Ink fill = ink.apply(shown.get(i).part());
            if (fill != null) {
                picture.fill(i, fill);
            } else {
                picture.fill(i, Axis.Y, Ink.PALE);
            }
        }
        return picture.edges(true);
    }

    /** One mark for each name, at the part of that name that is seen best; parts without a name (null) have none. */
    List<Mark> marks(Isometric view, Function<Part, String> name) {
        Map<String, SeenArea> best = best(view, name);
        List<Mark> marks = new ArrayList<>();
        best.forEach((text, area) -> marks.add(new Mark(text, area.region().middle(view))));
        for (String text : missing(best, name)) {
            Shown first = shown.stream()
                    .filter(s -> text.equals(name.apply(s.part())))
                    .findFirst()
                    .orElseThrow();
            Cuboid block = first.form().blocks().get(0);
            marks.add(new Mark(text, view.paper(block.centre(Axis.X), block.centre(Axis.Y), block.centre(Axis.Z))));
        }
        return marks;
    }

    /** Names of which no part is seen. */
    Set<String> hidden(Function<Part, String> name) {
        return missing(best(new Isometric(100), name), name);
    }

    private Set<String> missing(Map<String, SeenArea> seen, Function<Part, String> name) {
        Set<String> missing = names(name);
        missing.removeAll(seen.keySet());
        return missing;
    }

    /** All names, each once. */
    Set<String> names(Function<Part, String> name) {
        return shown.stream()
                .map(s -> name.apply(s.part()))
                .filter(Objects::nonNull)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Map<String, SeenArea> best(Isometric view, Function<Part, String> name) {
        Map<String, SeenArea> best =
                new TreeMap<>(Comparator.comparing(String::length).thenComparing(Comparator.naturalOrder()));
        for (int i = 0; i < shown.size(); i++) {
            String text = name.apply(shown.get(i).part());
            if (text != null) {
                best(scene.areas(i), view)
                        .ifPresent(area -> best.merge(text, area, (p, q) -> worth(p, view) >= worth(q, view) ? p : q));
            }
        }
        return best;
    }

    private static Optional<SeenArea> best(List<SeenArea> areas, Isometric view) {
        return areas.stream().max(Comparator.comparingDouble(a -> worth(a, view)));
    }

    private static double worth(SeenArea area, Isometric view) {
        return Math.min(area.region().narrow(view), NARROW) * 1e3
                + Math.sqrt(area.region().area(view));
    }
}
