package hushmaze.app.solid;

import hushmaze.app.solid.MeshDraft.Spot;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Part;
import hushmaze.solid.PartSurface;
import java.util.List;
import java.util.TreeSet;

/**
 * Faces and edges of one part. The lines of all cut-outs divide the part's face into cells that are there or not as a
 * whole; edges run where a cell meets a missing one. Edges of grooves are left out.
 */
final class PartMesh {
    private final Part part;
    private final Axis n;
    private final double[] us;
    private final double[] vs;

    PartMesh(Part part) {
        this.part = part;
        this.n = part.normal();
        TreeSet<Double> u = new TreeSet<>();
        TreeSet<Double> v = new TreeSet<>();
        u.add(0.0);
        u.add(part.uSize());
        v.add(0.0);
        v.add(part.vSize());
        for (Cutout c : part.cutouts()) {
            u.add(within(c.u0(), part.uSize()));
            u.add(within(c.u1(), part.uSize()));
            v.add(within(c.v0(), part.vSize()));
            v.add(within(c.v1(), part.vSize()));
        }
        us = u.stream().mapToDouble(Double::doubleValue).toArray();
        vs = v.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private static double within(double place, double size) {
        return Math.max(0, Math.min(size, place));
    }

    private boolean there(int i, int j) {
        if (i < 0 || j < 0 || i >= us.length - 1 || j >= vs.length - 1) {
            return false;
        }
        double u = (us[i] + us[i + 1]) / 2;
        double v = (vs[j] + vs[j + 1]) / 2;
        return part.cutouts().stream().noneMatch(c -> u > c.u0() && u < c.u1() && v > c.v0() && v < c.v1());
    }

    /** The faces, grooves and all. */
    MeshDraft faces() {
        MeshDraft draft = new MeshDraft();
        for (PartSurface.Face face : PartSurface.of(part)) {
            List<Spot> c =
                    face.corners().stream().map(p -> new Spot(p[0], p[1], p[2])).toList();
            double out = face.high() ? 1 : -1;
            Spot outward = switch (face.across()) {
                case X -> new Spot(out, 0, 0);
                case Y -> new Spot(0, out, 0);
                case Z -> new Spot(0, 0, out);
            };
            draft.quad(c.get(0), c.get(1), c.get(2), c.get(3), outward);
        }
        return draft;
    }

    /**
     * The edges, as thin bars.
     *
     * @param half half their thickness, m
     */
    MeshDraft edges(double half) {
        MeshDraft draft = new MeshDraft();
        double t = part.thickness();
        for (int i = 0; i < us.length; i++) {
            for (int j = 0; j < vs.length; j++) {
                for (double at : new double[] {0, t}) {
                    if (i + 1 < us.length && there(i, j - 1) != there(i, j)) {
                        draft.block(bar(us[i], vs[j], at, us[i + 1], vs[j], at, half));
                    }
                    if (j + 1 < vs.length && there(i - 1, j) != there(i, j)) {
                        draft.block(bar(us[i], vs[j], at, us[i], vs[j + 1], at, half));
                    }
                }
                if (corner(i, j)) {
                    draft.block(bar(us[i], vs[j], 0, us[i], vs[j], t, half));
                }
            }
        }
        return draft;
    }

    /** Whether the outline bends here: it does not if nothing or everything meets, or two neighbours. */
    private boolean corner(int i, int j) {
        boolean a = there(i - 1, j - 1);
        boolean b = there(i, j - 1);
        boolean c = there(i, j);
        boolean d = there(i - 1, j);
        return (a == b) ? (c != d) : (c == d || a == c);
    }

    private Cuboid bar(double u0, double v0, double n0, double u1, double v1, double n1, double half) {
        Spot a = spot(u0, v0, n0);
        Spot b = spot(u1, v1, n1);
        return new Cuboid(a.x() - half, a.y() - half, a.z() - half, b.x() + half, b.y() + half, b.z() + half);
    }

    private Spot spot(double u, double v, double across) {
        Cuboid b = part.bounds();
        return new Spot(b.x0(), b.y0(), b.z0()).plus(direction(u, v, across));
    }

    private Spot direction(double u, double v, double across) {
        return switch (n) {
            case X -> new Spot(across, u, v);
            case Y -> new Spot(u, across, v);
            case Z -> new Spot(u, v, across);
        };
    }
}
