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
import java.util.Optional;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.paint.PhongMaterial;

/** All parts of a box, about the middle of the box, with what can be done to them. */
final class BoxModel extends Group {
    /** All layers of board. */
    static final int ALL_LAYERS = -1;

    private final List<PartNode> nodes = new ArrayList<>();
    private final List<Cuboid> seals = new ArrayList<>();
    private final Group gaskets = new Group();
    private final Group air;
    private final Cuboid outer;
    private final PhongMaterial edge;
    private boolean liner = true;
    private boolean cover = true;
    private int layer = ALL_LAYERS;
    private CutAway cut;

    /**
     * @param intoRoom whether the air runs from the opening to the room
     * @param colours of everything
     */
    BoxModel(Solid solid, boolean intoRoom, SpaceColours colours) {
        this.outer = solid.outer();
        PhongMaterial wall = SpaceColours.material(colours.wall());
        PhongMaterial baffle = SpaceColours.material(colours.baffle());
        PhongMaterial soft = SpaceColours.material(colours.liner());
        PhongMaterial sawn = SpaceColours.material(colours.cut());
        PhongMaterial chosen = SpaceColours.material(colours.chosen());
        edge = SpaceColours.material(colours.edge());
        solid.parts().forEach(part -> {
            boolean lining = part instanceof LinerPiece;
            PhongMaterial face = lining ? soft : part.role() == Role.BAFFLE ? baffle : wall;
            nodes.add(new PartNode(part, new PartNode.Paints(face, lining ? soft : sawn, edge, chosen)));
        });
        for (Seal seal : solid.seals()) {
            if (seal.kind() != Seal.Kind.PLAY) {
                seals.add(seal.bounds());
            }
        }
        air = new Group(PartNode.view(AirWay.mesh(solid, intoRoom), SpaceColours.material(colours.air())));
        air.setMouseTransparent(true);
        gaskets.setMouseTransparent(true);
        Group middle = new Group();
        middle.getChildren().addAll(nodes);
        middle.getChildren().addAll(gaskets, air);
        middle.setTranslateX(-500 * (outer.x0() + outer.x1()));
        middle.setTranslateY(500 * (outer.y0() + outer.y1()));
        middle.setTranslateZ(500 * (outer.z0() + outer.z1()));
        getChildren().add(middle);
        drawGaskets();
    }

    private void drawGaskets() {
        MeshDraft draft = new MeshDraft();
        for (Cuboid block : seals) {
            if (cut == null || !cut.takes(block)) {
                boolean through = cut != null && cut.crosses(block);
                draft.block(through ? block.with(cut.axis(), block.low(cut.axis()), cut.at()) : block);
            }
        }
        gaskets.getChildren().setAll(PartNode.view(draft, edge));
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

    /**
     * What is in its place.
     *
     * @param withLiner whether the liner is
     * @param withCover whether the cover with all its layers is
     * @param ofBoard the one layer of board that is, counted from the inside; {@link #ALL_LAYERS} for all
     */
    void show(boolean withLiner, boolean withCover, int ofBoard) {
        liner = withLiner;
        cover = withCover;
        layer = ofBoard;
        nodes.forEach(node -> node.setVisible(isShown(node.part())));
        // without one of the boards they lie between they would hang in the air
        gaskets.setVisible(layer == ALL_LAYERS);
    }

    /** Cuts the box open. @param share of its size that is taken away from the high end of the axis; 0 for nothing */
    void cutOpen(Axis axis, double share) {
        cut = share <= 0 ? null : new CutAway(axis, outer.high(axis) - share * outer.size(axis));
        for (PartNode node : nodes) {
            node.cut(cut);
            node.setVisible(isShown(node.part()));
        }
        drawGaskets();
    }

    private boolean isShown(Part part) {
        boolean inPlace = part instanceof LinerPiece ? liner : layer == ALL_LAYERS || part.layer() == layer;
        boolean there = cut == null || !cut.takes(part.bounds());
        return inPlace && there && (cover || part.role() != Role.FRONT);
    }

    /** The parts that are in their places, in the order of the box. */
    List<Part> shown() {
        return nodes.stream().map(PartNode::part).filter(this::isShown).toList();
    }

    /** Marks one part by a heavy outline. @param part null for none */
    void choose(Part part) {
        nodes.forEach(node -> node.choose(node.part().equals(part)));
    }

    /** The part that a node is a picture of. */
    static Optional<Part> partOf(Node node) {
        for (Node at = node; at != null; at = at.getParent()) {
            if (at instanceof PartNode found) {
                return Optional.of(found.part());
            }
        }
        return Optional.empty();
    }

    /** Moves every part out of its place. @param share 0 together, 1 well apart */
    void pullApart(double share) {
        double reach = share * diagonal() / 4;
        gaskets.setTranslateZ(-reach / 2);
        for (PartNode node : nodes) {
            Part part = node.part();
            Spot out = AirWay.outward(part.role());
            double far = reach * (1 + 0.35 * part.layer());
            if (part instanceof LinerPiece piece) {
                boolean onBaffle = part.role() == Role.BAFFLE;
                out = onBaffle ? new Spot(0, part.layer() == 0 ? -1 : 1, 0) : out;
                far = onBaffle ? reach / 8 * (1 + piece.ply()) : reach / 2 * (1 - 0.35 * piece.ply());
            }
            node.setTranslateX(out.x() * far);
            node.setTranslateY(-out.y() * far);
            node.setTranslateZ(-out.z() * far);
        }
    }
}
