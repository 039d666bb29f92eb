package hushmaze.build;

import hushmaze.build.joint.Hole;
import hushmaze.solid.AirEdge;
import hushmaze.solid.Axis;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Part;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiPredicate;

/**
 * A flat part as it lies on the bench, seen from above.
 *
 * @param length to the right, m
 * @param width upwards, m
 * @param cutouts right through
 * @param grooves {@link Groove#inLowFace} here means in the face below, which is not seen
 * @param holes right through
 */
public record Plate(double length, double width, List<Cutout> cutouts, List<Groove> grooves, List<Hole> holes) {
    /** Sizes and places that differ by less are the same, m. */
    static final double SAME = CutListMaker.SAME;

    public Plate {
        cutouts = List.copyOf(cutouts);
        grooves = List.copyOf(grooves);
        holes = List.copyOf(holes);
    }

    /** A part with its u to the right and its v upwards: what is seen is the face towards u × v. */
    static Plate of(Part part, List<Hole> holes) {
        // x × y = +z and y × z = +x look at the high face, x × z = -y at the low one.
        boolean highSeen = part.normal() != Axis.Y;
        List<Groove> grooves = part.grooves().stream()
                .map(g -> new Groove(g.u0(), g.v0(), g.u1(), g.v1(), g.depth(), g.inLowFace() == highSeen))
                .toList();
        return new Plate(part.uSize(), part.vSize(), part.cutouts(), grooves, holes);
    }

    /** The same plate laid down in another way. */
    Plate turned(Turning t) {
        double newLength = t.exchange() ? width : length;
        double newWidth = t.exchange() ? length : width;
        return new Plate(
                newLength,
                newWidth,
                cutouts.stream().map(c -> rectangle(c, t, newLength, newWidth)).toList(),
                grooves.stream().map(g -> groove(g, t, newLength, newWidth)).toList(),
                holes.stream().map(h -> hole(h, t, newLength, newWidth)).toList());
    }

    static Cutout rectangle(Cutout c, Turning t, double length, double width) {
        Cutout e = t.exchange() ? new Cutout(c.v0(), c.u0(), c.v1(), c.u1()) : c;
        Cutout m = t.mirrorU() ? new Cutout(length - e.u1(), e.v0(), length - e.u0(), e.v1()) : e;
        return t.mirrorV() ? new Cutout(m.u0(), width - m.v1(), m.u1(), width - m.v0()) : m;
    }

    /** A stretch of edge laid down in another way; length and width are those it has then. */
    static AirEdge edge(AirEdge e, Turning t, double length, double width) {
        Hole low = hole(new Hole(e.u0(), e.v0()), t, length, width);
        Hole high = hole(new Hole(e.u1(), e.v1()), t, length, width);
        return new AirEdge(
                Math.min(low.u(), high.u()),
                Math.min(low.v(), high.v()),
                Math.max(low.u(), high.u()),
                Math.max(low.v(), high.v()));
    }

    static boolean near(AirEdge e, AirEdge f) {
        return near(e.u0(), f.u0()) && near(e.v0(), f.v0()) && near(e.u1(), f.u1()) && near(e.v1(), f.v1());
    }

    private static Groove groove(Groove g, Turning t, double length, double width) {
        Cutout c = rectangle(new Cutout(g.u0(), g.v0(), g.u1(), g.v1()), t, length, width);
        return new Groove(c.u0(), c.v0(), c.u1(), c.v1(), g.depth(), g.inLowFace() ^ t.flips());
    }

    private static Hole hole(Hole h, Turning t, double length, double width) {
        double u = t.exchange() ? h.v() : h.u();
        double v = t.exchange() ? h.u() : h.v();
        return new Hole(t.mirrorU() ? length - u : u, t.mirrorV() ? width - v : v);
    }

    /** Whether both are one and the same thing to make, as they lie. */
    boolean same(Plate other) {
        return near(length, other.length)
                && near(width, other.width)
                && covered(cutouts, other.cutouts, Plate::near)
                && covered(grooves, other.grooves, Plate::near)
                && covered(holes, other.holes, (p, q) -> near(p.u(), q.u()) && near(p.v(), q.v()));
    }

    private static <T> boolean covered(List<T> p, List<T> q, BiPredicate<T, T> near) {
        if (p.size() != q.size()) {
            return false;
        }
        List<T> open = new ArrayList<>(q);
        for (T mine : p) {
            T twin = open.stream().filter(o -> near.test(mine, o)).findFirst().orElse(null);
            if (twin == null) {
                return false;
            }
            open.remove(twin);
        }
        return true;
    }

    private static boolean near(Cutout c, Cutout d) {
        return near(c.u0(), d.u0()) && near(c.v0(), d.v0()) && near(c.u1(), d.u1()) && near(c.v1(), d.v1());
    }

    private static boolean near(Groove g, Groove h) {
        return g.inLowFace() == h.inLowFace()
                && near(g.depth(), h.depth())
                && near(new Cutout(g.u0(), g.v0(), g.u1(), g.v1()), new Cutout(h.u0(), h.v0(), h.u1(), h.v1()));
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= SAME;
    }
}
