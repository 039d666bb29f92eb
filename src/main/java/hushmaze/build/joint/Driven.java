package hushmaze.build.joint;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;

/**
 * The axis of a screw or brad in its place, through the face of a joint into the middle of its edge.
 *
 * @param joint it holds
 * @param place along the joint, from the solid's origin, m
 * @param from low end across the face, from the solid's origin, m
 * @param to high end across the face, m
 * @param diameter m
 */
record Driven(Joint joint, double place, double from, double to, double diameter) {
    /** Board that is left between two fasteners, so that one that wanders does not meet the other (common practice, no source), m. */
    private static final double BETWEEN = 0.004;

    /** A fastener with its head in the outer side of the joint's face. */
    static Driven at(Joint joint, double place, Fastener fastener, Solid solid) {
        Axis n = joint.face().normal();
        Cuboid board = joint.cover() ? solid.outer() : joint.face().bounds();
        boolean low = joint.face().role().isLow();
        double from = low ? board.low(n) : board.high(n) - fastener.length();
        return new Driven(joint, place, from, from + fastener.length(), fastener.diameter());
    }

    /** From axis to axis where they are nearest, m; exact, because every axis runs along an edge of the box. */
    double distance(Driven other) {
        double squares = 0;
        for (Axis a : Axis.values()) {
            double apart = Math.max(end(a, from) - other.end(a, other.to), other.end(a, other.from) - end(a, to));
            squares += apart > 0 ? apart * apart : 0;
        }
        return Math.sqrt(squares);
    }

    private double end(Axis axis, double ofTheAxis) {
        if (axis == joint.face().normal()) {
            return ofTheAxis;
        }
        return axis == joint.along() ? place : joint.middle();
    }

    /** Whether there is board enough between them. */
    boolean clears(Driven other) {
        return distance(other) >= (diameter + other.diameter) / 2 + BETWEEN;
    }
}
