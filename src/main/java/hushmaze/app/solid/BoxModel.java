package hushmaze.app.solid;

import hushmaze.app.solid.MeshDraft.Spot;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Seal;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.Group;
import javafx.scene.paint.PhongMaterial;
import javafx.scene.shape.Box;
import javafx.scene.shape.CullFace;
import javafx.scene.shape.MeshView;

/** All parts of a box, about the middle of the box, with what can be done to them. */
final class BoxModel extends Group {
    /** Half the thickness of drawn edges, m; half of it again for liner, which has softer ones. */
    private static final double EDGE = 0.0012;

    private final List<Group> groups = new ArrayList<>();
    private final List<Part> parts;
    private final Group gaskets = new Group();
    private final Group air;
    private final Cuboid outer;

    /**
     * @param intoRoom whether the air runs from the opening to the room
     * @param colours of everything
     */
    BoxModel(Solid solid, boolean intoRoom, SpaceColours colours) {
        this.outer = solid.outer();
        this.parts = solid.parts().toList();
        PhongMaterial wall = SpaceColours.material(colours.wall());
        PhongMaterial baffle = SpaceColours.material(colours.baffle());
        PhongMaterial liner = SpaceColours.material(colours.liner());
        PhongMaterial edge = SpaceColours.material(colours.edge());
        for (Part part : parts) {
            boolean soft = part instanceof LinerPiece;
            PhongMaterial face = soft ? liner : part.role() == Role.BAFFLE ? baffle : wall;
            PartMesh mesh = new PartMesh(part);
            groups.add(new Group(view(mesh.faces(), face), view(mesh.edges(soft ? EDGE / 2 : EDGE), edge)));
        }
        for (Seal seal : solid.seals()) {
            if (seal.kind() != Seal.Kind.PLAY) {
                gaskets.getChildren().add(gasket(seal.bounds(), edge));
            }
        }
        air = new Group(view(AirWay.mesh(solid, intoRoom), SpaceColours.material(colours.air())));
        Group middle = new Group();
        middle.getChildren().addAll(groups);
        middle.getChildren().addAll(gaskets, air);
        middle.setTranslateX(-500 * (outer.x0() + outer.x1()));
        middle.setTranslateY(500 * (outer.y0() + outer.y1()));
        middle.setTranslateZ(500 * (outer.z0() + outer.z1()));
        getChildren().add(middle);
    }

    private static Box gasket(Cuboid block, PhongMaterial material) {
        Box box = new Box(1000 * block.size(Axis.X), 1000 * block.size(Axis.Y), 1000 * block.size(Axis.Z));
        box.setMaterial(material);
        box.setTranslateX(1000 * block.centre(Axis.X));
        box.setTranslateY(-1000 * block.centre(Axis.Y));
        box.setTranslateZ(-1000 * block.centre(Axis.Z));
        return box;
    }

    private static MeshView view(MeshDraft draft, PhongMaterial material) {
        MeshView view = new MeshView(draft.mesh());
        view.setMaterial(material);
        view.setCullFace(CullFace.BACK);
        return view;
    }

    /** Longest way through the box, mm. */
    double diagonal() {
        double x = outer.x1() - outer.x0();
        double y = outer.y1() - outer.y0();
        double z = outer.z1() - outer.z0();
        return 1000 * Math.sqrt(x * x + y * y + z * z);
    }

    void showAir(boolean shown) {
        air.setVisible(shown);
    }

    /** Whether the liner, and whether the cover with all its layers, is in its place. */
    void show(boolean liner, boolean cover) {
        for (int i = 0; i < parts.size(); i++) {
            boolean soft = parts.get(i) instanceof LinerPiece;
            boolean front = parts.get(i).role() == Role.FRONT;
            groups.get(i).setVisible((liner || !soft) && (cover || !front));
        }
    }

    /** Moves every part out of its place. @param share 0 together, 1 well apart */
    void pullApart(double share) {
        double reach = share * diagonal() / 4;
        gaskets.setTranslateZ(-reach / 2);
        for (int i = 0; i < parts.size(); i++) {
            Part part = parts.get(i);
            Spot out = AirWay.outward(part.role());
            double far = reach * (1 + 0.35 * part.layer());
            if (part instanceof LinerPiece piece) {
                boolean onBaffle = part.role() == Role.BAFFLE;
                out = onBaffle ? new Spot(0, part.layer() == 0 ? -1 : 1, 0) : out;
                far = onBaffle ? reach / 8 * (1 + piece.ply()) : reach / 2 * (1 - 0.35 * piece.ply());
            }
            groups.get(i).setTranslateX(out.x() * far);
            groups.get(i).setTranslateY(-out.y() * far);
            groups.get(i).setTranslateZ(-out.z() * far);
        }
    }
}
