package hushmaze.air;

/**
 * A clear rectangle that air goes through where it turns.
 *
 * @param width in the plane of the turn, m
 * @param height along the axis of the turn, m
 */
record Section(double width, double height) {
    /** m². */
    double area() {
        return width * height;
    }

    /** Four areas over the perimeter, m. */
    double hydraulicDiameter() {
        return 2 * width * height / (width + height);
    }

    /** Height along the axis of the turn over the width in its plane. */
    double aspect() {
        return height / width;
    }
}
