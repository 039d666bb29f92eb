package hushmaze.drawing.page;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.DimensionChain;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Hatching;
import hushmaze.drawing.draft.Scale;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Seal;
import java.util.EnumMap;
import java.util.Map;

/**
 * A view of the box along one of its directions: places in the box become places on paper. The origin on paper is the
 * box's own origin; the second direction runs upwards.
 */
final class PlanarView {
    private final Job job;
    private final Axis right;
    private final Axis up;
    private final boolean mirrored;
    private final Scale scale;
    private final Sketch sketch = new Sketch();
    private final Map<Side, Double> distances = new EnumMap<>(Side.class);

    /**
     * @param right direction that runs to the right on paper
     * @param up direction that runs upwards
     * @param mirrored whether the first direction runs to the left after all
     */
    PlanarView(Job job, Axis right, Axis up, boolean mirrored, Scale scale) {
        this.job = job;
        this.right = right;
        this.up = up;
        this.mirrored = mirrored;
        this.scale = scale;
    }

    Sketch sketch() {
        return sketch;
    }

    Job job() {
        return job;
    }

    /** Place on paper along the first direction, mm. */
    double x(double metres) {
        return mirrored ? -scale.paper(metres) : scale.paper(metres);
    }

    /** Place on paper along the second direction, mm. */
    double y(double metres) {
        return -scale.paper(metres);
    }

    /** The block's picture. */
    Bounds picture(Cuboid block) {
        double a = x(block.low(right));
        double b = x(block.high(right));
        return new Bounds(Math.min(a, b), y(block.high(up)), Math.max(a, b), y(block.low(up)));
    }

    /** Draws everything that a plane across an axis cuts. */
    void cut(Axis across, double at) {
        for (Part part : job.result().solid().parts().toList()) {
            for (Cutting.Piece piece : Cutting.pieces(part, across, at)) {
                Bounds picture = picture(piece.block());
                if (part instanceof LinerPiece) {
                    Hatching.CROSSED.fill(sketch, picture, Stroke.THIN.in(Ink.LIGHT));
                    sketch.rectangle(picture, Stroke.THIN.in(Ink.GREY), null);
                } else {
                    (part.layer() % 2 == 0 ? Hatching.RISING : Hatching.FALLING)
                            .fill(sketch, picture, Stroke.THIN.in(Ink.GREY));
                    sketch.rectangle(picture, Stroke.OUTLINE, null);
                }
            }
        }
    }

    /** Draws the gaskets a plane across an axis cuts, in solid black. */
    void gaskets(Axis across, double at) {
        for (Seal seal : job.result().solid().seals()) {
            Cuboid block = seal.bounds();
            if (seal.kind() != Seal.Kind.PLAY && block.low(across) < at && at < block.high(across)) {
                sketch.rectangle(picture(block), Stroke.THIN, Ink.BLACK);
            }
        }
    }

    /** A port seen against its wall: a hole has diagonals. */
    void port(PortPlace port, Stroke outline) {
        Bounds hole = picture(port.hole());
        sketch.line(hole.x0(), hole.y0(), hole.x1(), hole.y1(), Stroke.RULE);
        sketch.line(hole.x0(), hole.y1(), hole.x1(), hole.y0(), Stroke.RULE);
        sketch.rectangle(hole, outline, null);
        PortLabel.put(sketch, job.measure(), hole, PortLabel.word(job.result().solid(), port));
    }

    /** Dimensions along one side of the whole box, outside those drawn there before. */
    void dimension(Side side, Places places) {
        Bounds outer = picture(job.result().solid().outer());
        double outline = switch (side) {
            case ABOVE -> outer.y0();
            case BELOW -> outer.y1();
            case LEFT -> outer.x0();
            case RIGHT -> outer.x1();
        };
        double distance = distances.getOrDefault(side, DimensionChain.FIRST);
        boolean across = side == Side.ABOVE || side == Side.BELOW;
        double next = places.draw(
                new DimensionChain(sketch, job.measure(), side, outline, distance), across ? this::x : this::y, job);
        distances.put(side, next);
    }
}
