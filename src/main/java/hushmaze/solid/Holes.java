package hushmaze.solid;

import java.util.ArrayList;
import java.util.List;

/** Port cut-outs of a part. */
final class Holes {
    private Holes() {}

    /** The cut-outs that ports through the given wall make in a part of that wall. */
    static List<Cutout> in(Cuboid bounds, Role role, List<PortPlace> ports) {
        List<Cutout> cutouts = new ArrayList<>();
        for (PortPlace port : ports) {
            if (port.role() == role && lies(port.hole(), bounds, role)) {
                cutouts.add(within(cutout(port.hole(), bounds, role.normal()), bounds, role.normal()));
            }
        }
        return cutouts;
    }

    /** A port as high as the wall ends where the wall does: above it is the cover's gasket, cut away there too. */
    private static Cutout within(Cutout c, Cuboid bounds, Axis normal) {
        return new Cutout(
                Math.max(0, c.u0()),
                Math.max(0, c.v0()),
                Math.min(bounds.size(normal.u()), c.u1()),
                Math.min(bounds.size(normal.v()), c.v1()));
    }

    /** A block as a cut-out of a part, measured from the part's low corner. */
    static Cutout cutout(Cuboid block, Cuboid bounds, Axis normal) {
        Axis u = normal.u();
        Axis v = normal.v();
        return new Cutout(
                block.low(u) - bounds.low(u),
                block.low(v) - bounds.low(v),
                block.high(u) - bounds.low(u),
                block.high(v) - bounds.low(v));
    }

    /**
     * What cut-outs take from a stretch of their part, measured from its beginning.
     *
     * @param alongU whether the stretch runs along u
     */
    static List<Cutout> between(List<Cutout> cutouts, boolean alongU, double from, double to) {
        List<Cutout> between = new ArrayList<>();
        for (Cutout c : cutouts) {
            double low = Math.max(from, alongU ? c.u0() : c.v0()) - from;
            double high = Math.min(to, alongU ? c.u1() : c.v1()) - from;
            if (high > low) {
                between.add(alongU ? new Cutout(low, c.v0(), high, c.v1()) : new Cutout(c.u0(), low, c.u1(), high));
            }
        }
        return between;
    }

    private static boolean lies(Cuboid hole, Cuboid bounds, Role role) {
        Axis u = role.normal().u();
        Axis v = role.normal().v();
        return hole.centre(u) > bounds.low(u)
                && hole.centre(u) < bounds.high(u)
                && hole.centre(v) > bounds.low(v)
                && hole.centre(v) < bounds.high(v);
    }
}
