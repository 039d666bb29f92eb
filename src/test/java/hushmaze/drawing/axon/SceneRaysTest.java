package hushmaze.drawing.axon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.Point;
import hushmaze.drawing.axon.Scene.SeenLine;
import hushmaze.drawing.axon.Scene.Thing;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Property: over seeded random boxes, whole, opened and pulled apart, what is said to be seen is not met by a ray along the line
 * of sight, and what is said to be hidden is. The ray is cut by the sides of whole parts less their cut-outs, in space.
 */
class SceneRaysTest {
    private static final double CLEAR = 1e-7;

    private static List<Thing> things(Solid solid, double apart, boolean open) {
        List<Thing> things = new ArrayList<>();
        Cuboid outer = solid.outer();
        for (Part part : solid.parts().toList()) {
            if (open && part.bounds().z1() > solid.cavity().z1() - 1e-6) {
                continue;
            }
            Form form = Form.of(part);
            Cuboid b = part.bounds();
            things.add(new Thing(
                    form.moved(
                            apart * (b.centre(Axis.X) - outer.centre(Axis.X)),
                            apart * (b.centre(Axis.Y) - outer.centre(Axis.Y)),
                            apart * (b.centre(Axis.Z) - outer.centre(Axis.Z))),
                    things.size()));
        }
        return things;
    }

    /** Length of a ray from a point to the viewer inside blocks, m. */
    private static double met(List<Thing> things, double x, double y, double z) {
        double met = 0;
        for (Thing thing : things) {
            for (Cuboid c : thing.form().blocks()) {
                double in = Math.max(0, Math.max(Math.max(x - c.x1(), y - c.y1()), c.z0() - z));
                double out = Math.min(Math.min(x - c.x0(), y - c.y0()), c.z1() - z);
                met = Math.max(met, out - in);
            }
        }
        return met;
    }

    private static double met(List<Thing> things, Edge edge, double t) {
        return met(things, edge.at(t, Axis.X), edge.at(t, Axis.Y), edge.at(t, Axis.Z));
    }

    private static void check(List<Thing> things, String where) {
        Scene scene = new Scene(things);
        for (Thing thing : things) {
            for (Edge edge : thing.form().edges()) {
                double from = edge.from();
                double length = 0;
                for (Edge seen : scene.seen(edge)) {
                    hidden(things, edge, from, seen.from(), where);
                    double middle = (seen.from() + seen.to()) / 2;
                    assertThat(met(things, edge, middle))
                            .as("%s: seen %s", where, seen)
                            .isLessThan(CLEAR);
                    from = seen.to();
                    length += seen.length();
                }
                hidden(things, edge, from, edge.to(), where);
                assertThat(length).as("%s: %s", where, edge).isLessThanOrEqualTo(edge.length() + CLEAR);
            }
        }
        // Seen lines are the same stretches, cut only where the outline ends.
        double all = scene.lines().stream().mapToDouble(l -> l.line().length()).sum();
        double each = things.stream()
                .flatMap(t -> t.form().edges().stream())
                .flatMap(e -> scene.seen(e).stream())
                .mapToDouble(Edge::length)
                .sum();
        assertThat(all).as(where).isEqualTo(each, within(1e-5));
    }

    private static void hidden(List<Thing> things, Edge edge, double from, double to, String where) {
        for (double share : new double[] {0.02, 0.5, 0.97}) {
            if (to - from > 1e-5) {
                double t = from + share * (to - from);
                assertThat(met(things, edge, t))
                        .as("%s: hidden %s at %s", where, edge, t)
                        .isGreaterThan(0);
            }
        }
    }

    @Test
    void raysAgree() {
        RandomBoxes boxes = new RandomBoxes(5456);
        for (int i = 0; i < 40; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            check(things(solid, 0, false), "box " + i);
            check(things(solid, 0, true), "open box " + i);
            check(things(solid, 1.3, false), "exploded box " + i);
        }
    }

    @Test
    void areasAgreeWithRaysToo() {
        RandomBoxes boxes = new RandomBoxes(5457);
        Random random = new Random(3);
        for (int i = 0; i < 15; i++) {
            List<Thing> things = things(SolidBuilder.build(boxes.next()), 1, false);
            Scene scene = new Scene(things);
            for (int k = 0; k < things.size(); k++) {
                List<Scene.SeenArea> areas = scene.areas(k);
                for (Cuboid c : things.get(k).form().blocks()) {
                    double x = c.x0() + random.nextDouble() * c.size(Axis.X);
                    double y = c.y0() + random.nextDouble() * c.size(Axis.Y);
                    boolean free = met(things, x, y, c.z1()) < 1e-12;
                    long held = areas.stream()
                            .filter(a -> a.facing() == Axis.Z)
                            .filter(a -> a.region().holds(x + c.z1(), y + c.z1()))
                            .count();
                    // Pieces of two blocks of one part may lie over each other on paper only if one hides the other.
                    assertThat(held > 0 || !free)
                            .as("box %d, part %d: seen", i, k)
                            .isTrue();
                    assertThat(held).as("box %d, part %d", i, k).isLessThanOrEqualTo(1);
                }
            }
        }
    }

    @Test
    void linesStayInTheHullOfTheCorners() {
        RandomBoxes boxes = new RandomBoxes(5458);
        Isometric view = new Isometric(100);
        for (int i = 0; i < 10; i++) {
            Scene scene = new Scene(things(SolidBuilder.build(boxes.next()), 1, false));
            List<Point> corners = Picture.corners(scene, view);
            double right = corners.stream().mapToDouble(Point::x).max().orElseThrow();
            double top = corners.stream().mapToDouble(Point::y).min().orElseThrow();
            for (SeenLine l : scene.lines()) {
                for (double t : new double[] {l.line().from(), l.line().to()}) {
                    Point p = view.paper(
                            l.line().at(t, Axis.X),
                            l.line().at(t, Axis.Y),
                            l.line().at(t, Axis.Z));
                    assertThat(p.x()).isLessThanOrEqualTo(right + 1e-6);
                    assertThat(p.y()).isGreaterThanOrEqualTo(top - 1e-6);
                }
            }
        }
    }
}
