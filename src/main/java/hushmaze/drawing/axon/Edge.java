package hushmaze.drawing.axon;

import hushmaze.solid.Axis;

/**
 * A straight line in space along one of the axes.
 *
 * @param along its direction
 * @param from low end, m
 * @param to high end, m
 * @param u where it is in the first direction across ({@link Axis#u}), m
 * @param v where it is in the second direction across ({@link Axis#v}), m
 */
public record Edge(Axis along, double from, double to, double u, double v) {
    public Edge {
        if (!(to > from)) {
            throw new IllegalArgumentException("an edge without length: " + from + ".." + to + " m");
        }
    }

    /** m. */
    public double length() {
        return to - from;
    }

    /** A stretch of it. */
    public Edge stretch(double low, double high) {
        return new Edge(along, low, high, u, v);
    }

    /** Place along an axis of the point that is t along the edge, m. */
    public double at(double t, Axis axis) {
        if (axis == along) {
            return t;
        }
        return axis == along.u() ? u : v;
    }

    public Edge moved(double dx, double dy, double dz) {
        double d = along == Axis.X ? dx : along == Axis.Y ? dy : dz;
        double du = along == Axis.X ? dy : dx;
        double dv = along == Axis.Z ? dy : dz;
        return new Edge(along, from + d, to + d, u + du, v + dv);
    }

    /** Turned by half a turn about the x axis: y and z change their signs. */
    public Edge turnedOver() {
        return switch (along) {
            case X -> new Edge(along, from, to, -u, -v);
            case Y, Z -> new Edge(along, -to, -from, u, -v);
        };
    }
}
