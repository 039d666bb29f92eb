package hushmaze.app.solid;

import hushmaze.app.solid.MeshDraft.Spot;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.PartCells;
import hushmaze.solid.PartSurface;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Faces and edges of one part, or of what a cut leaves of it; the cut closes with faces of its own. Edges run where the surface bends; those
 * of grooves are left out.
 */
final class PartMesh {
    private final Part part;
    /** Null for none. */
    private final CutAway cut;

    PartMesh(Part part) {
        this(part, null);
    }

    /** @param cut null for none */
    PartMesh(Part part, CutAway cut) {
        this.part = part;
        this.cut = cut;
    }

    /** The faces, grooves and all, but for those a cut has made. */
    MeshDraft faces() {
        return faces(face -> cut == null || !cut.made(face));
    }

    /** The faces a cut has made. */
    MeshDraft cutFaces() {
        return faces(face -> cut != null && cut.made(face));
    }

    private MeshDraft faces(Predicate<PartSurface.Face> wanted) {
        MeshDraft draft = new MeshDraft();
        for (PartSurface.Face face : PartSurface.of(cells(part.taken()))) {
            if (wanted.test(face)) {
                List<Spot> c = face.corners().stream()
                        .map(p -> new Spot(p[0], p[1], p[2]))
                        .toList();
                double out = face.high() ? 1 : -1;
                Spot outward = switch (face.across()) {
                    case X -> new Spot(out, 0, 0);
                    case Y -> new Spot(0, out, 0);
                    case Z -> new Spot(0, 0, out);
                };
                draft.quad(c.get(0), c.get(1), c.get(2), c.get(3), outward);
            }
        }
        return draft;
    }

    private PartCells cells(List<Cuboid> taken) {
        List<Cuboid> removed = new ArrayList<>(taken);
        if (cut != null) {
            removed.add(cut.removed());
        }
        return new PartCells(part.bounds(), removed);
    }

    /**
     * The edges, as thin bars.
     *
     * @param half half their thickness, m
     */
    MeshDraft edges(double half) {
        MeshDraft draft = new MeshDraft();
        PartCells cells = cells(part.cutouts().stream().map(part::space).toList());
        for (Axis along : Axis.values()) {
            for (int p = 0; p <= cells.count(along.u()); p++) {
                for (int q = 0; q <= cells.count(along.v()); q++) {
                    line(cells, along, p, q, half, draft);
                }
            }
        }
        return draft;
    }

    /** The edges on one line between cells, each as long as it goes on. */
    private static void line(PartCells cells, Axis along, int p, int q, double half, MeshDraft draft) {
        int from = -1;
        for (int t = 0; t <= cells.count(along); t++) {
            boolean edge = t < cells.count(along) && bends(cells, along, t, p, q);
            if (edge && from < 0) {
                from = t;
            } else if (!edge && from >= 0) {
                double u = cells.plane(along.u(), p);
                double v = cells.plane(along.v(), q);
                draft.block(new Cuboid(0, 0, 0, 1, 1, 1)
                        .with(along, cells.plane(along, from) - half, cells.plane(along, t) + half)
                        .with(along.u(), u - half, u + half)
                        .with(along.v(), v - half, v + half));
                from = -1;
            }
        }
    }

    /** Whether the surface bends on a line between four cells: it does not if nothing or everything is there, or two neighbours. */
    private static boolean bends(PartCells cells, Axis along, int t, int p, int q) {
        boolean a = cells.there(along, t, p - 1, q - 1);
        boolean b = cells.there(along, t, p, q - 1);
        boolean c = cells.there(along, t, p, q);
        boolean d = cells.there(along, t, p - 1, q);
        return (a == b) ? (c != d) : (c == d || a == c);
    }
}
