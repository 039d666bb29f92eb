package hushmaze.app.solid;

import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import javafx.scene.Group;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;

/** One part in space: whole or cut, plain or chosen. */
final class PartNode extends Group {
    /** Half the thickness of drawn edges, m; half of it again for liner, which has softer ones. */
    private static final double EDGE = 0.0012;
    /** The same of a chosen part. */
    private static final double CHOSEN_EDGE = 0.004;

    /** What its sides, its cut faces, its edges and those of a chosen part are painted with. */
    record Paints(PhongMaterial face, PhongMaterial cut, PhongMaterial edge, PhongMaterial chosen) {}

    private final Part part;
    private final Paints paints;
    private CutAway cut;
    private boolean chosen;

    PartNode(Part part, Paints paints) {
        this.part = part;
        this.paints = paints;
        build();
    }

    Part part() {
        return part;
    }

    /** @param cut null for none */
    void cut(CutAway now) {
        CutAway through = now != null && now.crosses(part.bounds()) ? now : null;
        if (through == null ? cut != null : !through.equals(cut)) {
            cut = through;
            build();
        }
    }

    void choose(boolean now) {
        if (now != chosen) {
            chosen = now;
            build();
        }
    }

    private void build() {
        PartMesh mesh = new PartMesh(part, cut);
        double half = chosen ? CHOSEN_EDGE : part instanceof LinerPiece ? EDGE / 2 : EDGE;
        getChildren()
                .setAll(
                        view(mesh.faces(), paints.face()),
                        view(mesh.edges(half), chosen ? paints.chosen() : paints.edge()));
        if (cut != null) {
            getChildren().add(view(mesh.cutFaces(), paints.cut()));
        }
    }

    static MeshView view(MeshDraft draft, PhongMaterial material) {
        MeshView view = new MeshView(draft.mesh());
        view.setMaterial(material);
        view.setCullFace(CullFace.BACK);
        return view;
    }
}
