package hushmaze.drawing.page;

import hushmaze.build.joint.Fastening;
import hushmaze.build.joint.Joint;
import hushmaze.build.joint.SeamEdges;
import hushmaze.drawing.axon.Edge;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Seal;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Predicate;

/** Where glue, sealant and gaskets run, as lines in space. */
final class JointLines {
    /** From a port's edge to the middle of the gasket round it, m. */
    private static final double ROUND = 0.012;

    private static final double SLACK = 1e-6;

    private final Solid solid;
    private final List<Joint> joints;

    JointLines(Solid solid) {
        this.solid = solid;
        this.joints =
                Fastening.of(solid).held().stream().map(Fastening.Held::joint).toList();
    }

    /** Joints of back, ends and long sides. */
    List<Edge> carcass() {
        return both(j -> !j.cover() && j.edge().role() != Role.BAFFLE);
    }

    /** Joints of the baffles with back and end. */
    List<Edge> baffles() {
        return both(j -> !j.cover() && j.edge().role() == Role.BAFFLE);
    }

    /**
     * Round the edges at which halves of boards are glued together.
     *
     * @param lift how far the cover is held above its place, m
     */
    List<Edge> glued(double lift) {
        List<Edge> lines = new ArrayList<>();
        for (Panel half : SeamEdges.glued(solid)) {
            Cuboid b = half.bounds();
            double up = half.role() == Role.FRONT ? lift : 0;
            for (double z : new double[] {b.z0() + up, b.z1() + up}) {
                lines.add(new Edge(Axis.Y, b.y0(), b.y1(), b.x1(), z));
            }
            for (double y : new double[] {b.y0(), b.y1()}) {
                lines.add(new Edge(Axis.Z, b.z0() + up, b.z1() + up, b.x1(), y));
            }
        }
        return lines;
    }

    /** All joints inside, under the cover. */
    List<Edge> inside() {
        Cuboid cavity = solid.cavity();
        return both(j -> !j.cover()).stream().filter(e -> lies(e, cavity)).toList();
    }

    private static boolean lies(Edge e, Cuboid in) {
        double middle = (e.from() + e.to()) / 2;
        return Arrays.stream(Axis.values())
                .allMatch(a -> e.at(middle, a) > in.low(a) - SLACK && e.at(middle, a) < in.high(a) + SLACK);
    }

    /** Both long sides of the strips in which boards meet. */
    private List<Edge> both(Predicate<Joint> which) {
        List<Edge> lines = new ArrayList<>();
        joints.stream().filter(which).forEach(j -> {
            lines.add(along(j, j.middle() - j.width() / 2));
            lines.add(along(j, j.middle() + j.width() / 2));
        });
        return lines;
    }

    private static Edge along(Joint j, double across) {
        Axis normal = j.face().normal();
        double plane = j.face().role().isLow()
                ? j.face().bounds().high(normal)
                : j.face().bounds().low(normal);
        return edge(j.along(), j.from(), j.to(), j.across(), across, plane);
    }

    private static Edge edge(Axis along, double from, double to, Axis across, double at, double other) {
        return along.u() == across ? new Edge(along, from, to, at, other) : new Edge(along, from, to, other, at);
    }

    /** Middle lines of the edges the cover lies on. */
    List<Edge> cover() {
        List<Edge> lines = new ArrayList<>();
        for (Joint j : joints) {
            if (j.cover()) {
                double top = j.edge().bounds().z1();
                lines.add(edge(j.along(), j.from(), j.to(), j.across(), j.middle(), top));
            }
        }
        for (Seal seal : solid.seals()) {
            if (seal.kind() == Seal.Kind.COVER_GASKET) {
                Cuboid b = seal.bounds();
                boolean x = b.size(Axis.X) > b.size(Axis.Y);
                lines.addAll(besidePorts(
                        x
                                ? new Edge(Axis.X, b.x0(), b.x1(), b.centre(Axis.Y), b.z0())
                                : new Edge(Axis.Y, b.y0(), b.y1(), b.centre(Axis.X), b.z0())));
            }
        }
        return lines;
    }

    /** What is left of a line where a port as high as its wall leaves no edge for the cover to lie on. */
    private List<Edge> besidePorts(Edge line) {
        List<Edge> left = List.of(line);
        for (PortPlace port : List.of(solid.openingPort(), solid.roomPort())) {
            Cuboid hole = port.hole();
            Axis across = line.along() == Axis.X ? Axis.Y : Axis.X;
            double at = line.at(0, across);
            double height = line.at(0, Axis.Z);
            boolean meets = hole.low(across) < at && at < hole.high(across) && hole.z1() > height - SLACK;
            if (meets && port.role() != Role.FRONT && port.role() != Role.BACK) {
                left = left.stream()
                        .flatMap(e -> beside(e, hole.low(e.along()), hole.high(e.along())).stream())
                        .toList();
            }
        }
        return left;
    }

    private static List<Edge> beside(Edge e, double low, double high) {
        List<Edge> beside = new ArrayList<>();
        if (Math.min(e.to(), low) > e.from() + SLACK) {
            beside.add(e.stretch(e.from(), Math.min(e.to(), low)));
        }
        if (Math.max(e.from(), high) < e.to() - SLACK) {
            beside.add(e.stretch(Math.max(e.from(), high), e.to()));
        }
        return beside;
    }

    /** Round the port over the opening, on the outside of the box. */
    List<Edge> mouth() {
        Role role = solid.openingPort().role();
        Axis n = role.normal();
        Cuboid hole = solid.openingPort().hole().grown(ROUND);
        Cuboid outer = solid.outer();
        double plane = role.isLow() ? outer.low(n) : outer.high(n);
        Axis u = n.u();
        Axis v = n.v();
        double u0 = Math.max(hole.low(u), outer.low(u));
        double u1 = Math.min(hole.high(u), outer.high(u));
        double v0 = Math.max(hole.low(v), outer.low(v));
        double v1 = Math.min(hole.high(v), outer.high(v));
        return List.of(
                edge(u, u0, u1, v, v0, plane),
                edge(u, u0, u1, v, v1, plane),
                edge(v, v0, v1, u, u0, plane),
                edge(v, v0, v1, u, u1, plane));
    }
}
