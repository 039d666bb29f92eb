package hushmaze.build.joint;

import hushmaze.solid.Axis;
import hushmaze.solid.Panel;

/**
 * A strip where the edge of one board meets the face of another.
 *
 * @param face board whose face is met
 * @param edge board whose edge meets it
 * @param cover whether the face is the cover's, which comes off again
 * @param along direction of the strip
 * @param from low end, from the solid's origin, m
 * @param to high end, m
 * @param across direction across the strip in the plane of the face
 * @param middle of the edge, across, m
 * @param width of the strip, m
 */
public record Joint(
        Panel face,
        Panel edge,
        boolean cover,
        Axis along,
        double from,
        double to,
        Axis across,
        double middle,
        double width) {
    /** m. */
    public double length() {
        return to - from;
    }

    /** m². */
    public double area() {
        return length() * width;
    }

    /** From the middle of the edge to the nearest edge of the board that is met, m. */
    public double edgeDistance() {
        return Math.min(middle - face.bounds().low(across), face.bounds().high(across) - middle);
    }
}
