package hushmaze.app.field;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;

/** Where a box and what is written about it lie on a canvas: x to the right, y upwards, whole pixels at its corners. */
final class BoxFrame {
    /** Around the box where nothing is written, and where an arrow with its word is, pixels. */
    private static final double MARGIN = 14;

    private static final double BESIDE = 66;
    private static final double OVER = 46;

    private final Cuboid outer;
    private final double scale;
    private final double left;
    private final double bottom;

    /**
     * @param flat whether ports through broad faces are shown in the long sides
     * @param width of the canvas, pixels
     * @param height of the room above the legend, pixels
     */
    BoxFrame(Solid solid, boolean flat, double width, double height) {
        outer = solid.outer();
        double toLeft = side(solid, flat, Role.NEAR_END) ? BESIDE : MARGIN;
        double toRight = side(solid, flat, Role.FAR_END) ? BESIDE : MARGIN;
        double above = side(solid, flat, Role.LAST_SIDE) ? OVER : MARGIN;
        double below = side(solid, flat, Role.FIRST_SIDE) ? OVER : MARGIN;
        double room = Math.max(1, width - toLeft - toRight);
        double up = Math.max(1, height - above - below);
        scale = Math.min(room / outer.size(Axis.X), up / outer.size(Axis.Y));
        left = Math.round(toLeft + (room - scale * outer.size(Axis.X)) / 2);
        bottom = Math.round(above + (up + scale * outer.size(Axis.Y)) / 2);
    }

    private static boolean side(Solid solid, boolean flat, Role role) {
        return shownIn(solid.openingPort(), true, flat) == role || shownIn(solid.roomPort(), false, flat) == role;
    }

    /** The wall a port is shown in. */
    static Role shownIn(PortPlace port, boolean opening, boolean flat) {
        boolean broad = port.port().face().isBroad();
        return broad && flat ? (opening ? Role.FIRST_SIDE : Role.LAST_SIDE) : port.role();
    }

    double x(double metres) {
        return Math.round(left + (metres - outer.x0()) * scale);
    }

    double y(double metres) {
        return Math.round(bottom - (metres - outer.y0()) * scale);
    }

    /** Metres from the box's near end. */
    double along(double pixels) {
        return (pixels - left) / scale;
    }

    /** Metres from the box's first side. */
    double across(double pixels) {
        return (bottom - pixels) / scale;
    }

    double left() {
        return x(outer.x0());
    }

    double top() {
        return y(outer.y1());
    }

    double width() {
        return x(outer.x1()) - left();
    }

    double height() {
        return y(outer.y0()) - top();
    }

    double scale() {
        return scale;
    }
}
