package hushmaze.drawing.page;

import hushmaze.air.PathAir.PlaceVelocity;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Arrow;
import hushmaze.drawing.draft.Lettering;
import hushmaze.project.Purpose;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import java.util.ArrayList;
import java.util.List;

/** The way of the air through the plan: a line with an arrowhead and the mean velocity in every pass. */
final class AirLine {
    private static final Stroke STROKE = Stroke.THIN.in(Ink.ACCENT);
    private static final double OUTSIDE = 7;
    private static final double SIZE = Lettering.TABLE;

    private final PlanarView plan;
    private final Solid solid;
    private final boolean fromRoom;

    AirLine(PlanarView plan) {
        this.plan = plan;
        this.solid = plan.job().result().solid();
        // The port at the opening comes last when the air leaves the room.
        this.fromRoom = plan.job().result().path().purpose() != Purpose.SUPPLY;
    }

    void draw() {
        Sketch sketch = plan.sketch();
        List<Point> points = points();
        sketch.path(points, STROKE);
        broadPort(solid.openingPort());
        broadPort(solid.roomPort());
        solid.passes().forEach(this::inPass);
        List.of(solid.openingPort(), solid.roomPort()).forEach(this::name);
        if (fromRoom && !broad(solid.openingPort())) {
            headAt(points.get(0), points.get(1));
        } else if (!fromRoom && !broad(solid.roomPort())) {
            headAt(points.get(points.size() - 1), points.get(points.size() - 2));
        }
    }

    private void headAt(Point tip, Point before) {
        double length = Math.hypot(tip.x() - before.x(), tip.y() - before.y());
        double dx = (tip.x() - before.x()) / length;
        double dy = (tip.y() - before.y()) / length;
        Arrow.head(plan.sketch(), tip.x(), tip.y(), dx, dy, Ink.ACCENT);
    }

    private List<Point> points() {
        List<Point> points = new ArrayList<>(port(solid.openingPort(), first()));
        for (Turn turn : solid.turns()) {
            double x = plan.x(turn.clear().centre(Axis.X));
            points.add(new Point(x, middle(solid.passes().get(turn.number()))));
            points.add(new Point(x, middle(solid.passes().get(turn.number() + 1))));
        }
        List<Point> end =
                port(solid.roomPort(), solid.passes().get(solid.passes().size() - 1));
        for (int i = end.size() - 1; i >= 0; i--) {
            points.add(end.get(i));
        }
        return points;
    }

    /** From outside through the port to the middle of its pass. */
    private List<Point> port(PortPlace port, Pass pass) {
        Cuboid hole = port.hole();
        double x = plan.x(hole.centre(Axis.X));
        double y = plan.y(hole.centre(Axis.Y));
        Bounds outer = plan.picture(solid.outer());
        return switch (port.role()) {
            case NEAR_END ->
                List.of(
                        new Point(outer.x0() - OUTSIDE, y),
                        new Point(plan.x(hole.x1()), y),
                        inside(hole.x1() + 0.02, pass));
            case FAR_END ->
                List.of(
                        new Point(outer.x1() + OUTSIDE, y),
                        new Point(plan.x(hole.x0()), y),
                        inside(hole.x0() - 0.02, pass));
            case FIRST_SIDE -> List.of(new Point(x, outer.y1() + OUTSIDE), new Point(x, middle(pass)));
            case LAST_SIDE -> List.of(new Point(x, outer.y0() - OUTSIDE), new Point(x, middle(pass)));
            case BACK, FRONT, BAFFLE -> List.of(new Point(x, y), new Point(x, middle(pass)));
        };
    }

    private Point inside(double x, Pass pass) {
        return new Point(plan.x(x), middle(pass));
    }

    private Pass first() {
        return solid.passes().get(0);
    }

    private double middle(Pass pass) {
        return plan.y(pass.clear().centre(Axis.Y));
    }

    private void inPass(Pass pass) {
        Bounds clear = plan.picture(pass.clear());
        double direction = pass.forward() != fromRoom ? 1 : -1;
        double x = clear.centreX() + direction * Arrow.LENGTH / 2;
        if (clear.width() > 4 * Arrow.LENGTH) {
            Arrow.head(plan.sketch(), x, middle(pass), direction, 0, Ink.ACCENT);
        }
        String words = velocity(pass);
        TextMeasure measure = plan.job().measure();
        double room = clear.width() - 2 * plan.job().result().path().box().turnGap() * clear.width() / pass.length();
        if (words == null || clear.height() < 2 * SIZE + 1 || measure.width(words, SIZE, Weight.REGULAR) > room) {
            return;
        }
        double foot = middle(pass) - 1;
        double half = measure.width(words, SIZE, Weight.REGULAR) / 2 + 0.4;
        Bounds behind =
                new Bounds(clear.centreX() - half, foot - SIZE * 0.75, clear.centreX() + half, foot + SIZE * 0.2);
        plan.sketch().rectangle(behind, null, Ink.WHITE);
        plan.sketch().text(clear.centreX(), foot, words, SIZE, Weight.REGULAR, Anchor.MIDDLE, Ink.ACCENT);
    }

    private String velocity(Pass pass) {
        String part = "pass " + (pass.number() + 1);
        return plan.job().result().pathAir().velocities().stream()
                .filter(v -> v.part().equals(part))
                .map(PlaceVelocity::velocity)
                .map(v -> Labels.of(
                        "view.pass",
                        String.valueOf(pass.number() + 1),
                        plan.job().amounts().velocity(v)))
                .findFirst()
                .orElse(null);
    }

    /** A port in a broad face lies above or below the plan: its edge is drawn as a hidden one. */
    private void broadPort(PortPlace port) {
        if (broad(port)) {
            Bounds hole = plan.picture(port.hole());
            plan.sketch().rectangle(hole, Stroke.HIDDEN, null);
            plan.sketch().dot(hole.centreX(), hole.centreY(), 0.9, Ink.ACCENT);
        }
    }

    private void name(PortPlace port) {
        if (broad(port)) {
            Bounds hole = plan.picture(port.hole());
            PortLabel.putBelowMiddle(plan.sketch(), plan.job().measure(), hole, PortLabel.word(solid, port));
        }
    }

    private static boolean broad(PortPlace port) {
        return port.role().normal() == Axis.Z;
    }
}
