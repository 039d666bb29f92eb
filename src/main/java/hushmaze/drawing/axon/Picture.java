package hushmaze.drawing.axon;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.axon.Scene.SeenArea;
import hushmaze.drawing.axon.Scene.SeenLine;
import hushmaze.drawing.axon.Stretches.Stretch;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Draws a scene on paper: fills first, then every line once. */
public final class Picture {
    /** Lines closer than this fall together on paper, m. */
    private static final double SAME = 1e-6;

    private record Key(Axis along, long place) {}

    private final Scene scene;
    private final Isometric view;
    private final Sketch sketch;

    /**
     * @param view projection and scale
     * @param sketch to draw into; the picture of the solid's origin is at its origin
     */
    public Picture(Scene scene, Isometric view, Sketch sketch) {
        this.scene = scene;
        this.view = view;
        this.sketch = sketch;
    }

    /** Fills what is seen of a thing's faces; a thin line in the same ink closes the joints between pieces. */
    public Picture fill(int thing, Ink ink) {
        Stroke close = Stroke.THIN.in(ink);
        for (SeenArea area : scene.areas(thing)) {
            sketch.polygon(distinct(area.region().corners(view)), close, ink);
        }
        return this;
    }

    /** Fills what is seen of those of a thing's faces that look in one direction. */
    public Picture fill(int thing, Axis facing, Ink ink) {
        Stroke close = Stroke.THIN.in(ink);
        for (SeenArea area : scene.areas(thing)) {
            if (area.facing() == facing) {
                sketch.polygon(distinct(area.region().corners(view)), close, ink);
            }
        }
        return this;
    }

    private static List<Point> distinct(List<Point> corners) {
        List<Point> distinct = new ArrayList<>();
        for (Point p : corners) {
            boolean again = distinct.stream().anyMatch(q -> Math.hypot(p.x() - q.x(), p.y() - q.y()) < 1e-6);
            if (!again) {
                distinct.add(p);
            }
        }
        return distinct.size() < 2 ? corners : distinct;
    }

    /** Draws all edges that are seen: outlines of bodies thick if wished, all others thin. */
    public Picture edges(boolean thickOutlines) {
        List<Edge> thick = new ArrayList<>();
        List<Edge> thin = new ArrayList<>();
        for (SeenLine line : scene.lines()) {
            (thickOutlines && line.outline() ? thick : thin).add(line.line());
        }
        Map<Key, Stretches> heavy = onPaper(thick);
        onPaper(thin).forEach((key, stretches) -> {
            Stretches under = heavy.getOrDefault(key, Stretches.union(List.of()));
            draw(key, stretches.minus(under), Stroke.THIN);
        });
        heavy.forEach((key, stretches) -> draw(key, stretches, Stroke.OUTLINE));
        return this;
    }

    /** Draws what is seen of further lines. */
    public Picture lines(List<Edge> lines, Stroke stroke) {
        List<Edge> seen =
                lines.stream().flatMap(line -> scene.seen(line).stream()).toList();
        onPaper(seen).forEach((key, stretches) -> draw(key, stretches, stroke));
        return this;
    }

    /** Lines that fall together on paper as one: their place across in one of a, b, c, their stretch in another. */
    private static Map<Key, Stretches> onPaper(List<Edge> edges) {
        Map<Key, List<Stretch>> groups = new LinkedHashMap<>();
        for (Edge e : edges) {
            boolean z = e.along() == Axis.Z;
            double place = z ? e.u() - e.v() : e.u() + e.v();
            double shift = z ? e.u() : e.v();
            groups.computeIfAbsent(new Key(e.along(), Math.round(place / SAME)), k -> new ArrayList<>())
                    .add(new Stretch(e.from() + shift, e.to() + shift));
        }
        Map<Key, Stretches> united = new LinkedHashMap<>();
        groups.forEach((key, all) -> united.put(key, Stretches.union(all)));
        return united;
    }

    private void draw(Key key, Stretches stretches, Stroke stroke) {
        for (Stretch s : stretches.all()) {
            Point p = point(key, s.low());
            Point q = point(key, s.high());
            sketch.line(p.x(), p.y(), q.x(), q.y(), stroke);
        }
    }

    private Point point(Key key, double t) {
        double place = key.place() * SAME;
        return switch (key.along()) {
            case X -> view.flat(t, place);
            case Y -> view.flat(place, t);
            case Z -> view.flat(t, t - place);
        };
    }

    /** Corners of all blocks on paper, mm: everything drawn of the scene lies in their hull. */
    public static List<Point> corners(Scene scene, Isometric view) {
        List<Point> corners = new ArrayList<>();
        for (Scene.Thing thing : scene.things()) {
            for (Cuboid c : thing.form().blocks()) {
                corners.addAll(Hexagon.of(c).corners(view));
            }
        }
        return corners;
    }
}
