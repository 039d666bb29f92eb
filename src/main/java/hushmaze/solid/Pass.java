package hushmaze.solid;

/**
 * One straight run of air between liner faces.
 *
 * @param number counted from 0 at the opening
 * @param clear the air, over the full clear length
 * @param forward whether the way from the opening to the room runs towards high x
 * @param lowLiner liner thickness on the low-y side, m
 * @param highLiner liner thickness on the high-y side, m
 * @param broadLiner liner thickness on each broad face, m
 */
public record Pass(int number, Cuboid clear, boolean forward, double lowLiner, double highLiner, double broadLiner) {
    /** Clear width across y, m. */
    public double width() {
        return clear.size(Axis.Y);
    }

    /** Clear height across z, m. */
    public double height() {
        return clear.size(Axis.Z);
    }

    /** Clear length along x, m. */
    public double length() {
        return clear.size(Axis.X);
    }

    /** Clear area across the air, m². */
    public double area() {
        return width() * height();
    }

    /** Clear perimeter across the air, m. */
    public double perimeter() {
        return 2 * (width() + height());
    }

    /** Part of the perimeter that is lined, m. */
    public double linedPerimeter() {
        return (lowLiner > 0 ? height() : 0) + (highLiner > 0 ? height() : 0) + (broadLiner > 0 ? 2 * width() : 0);
    }

    /** Thickness of the lining, the mean over the lined perimeter, m; zero if there is none. */
    public double meanLiner() {
        double lined = linedPerimeter();
        return lined == 0 ? 0 : ((lowLiner + highLiner) * height() + 2 * broadLiner * width()) / lined;
    }

    /** Hydraulic diameter, four areas over the perimeter, m. */
    public double hydraulicDiameter() {
        return 4 * area() / perimeter();
    }
}
