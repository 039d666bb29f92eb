package hushmaze.drawing.page;

import hushmaze.drawing.axon.Form;
import hushmaze.solid.Axis;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * Pulls the parts of a box apart along their normals: back down, cover up, ends along the passes, and long sides, baffles and
 * their liner across them, each by as much again as the one further in. Everything keeps the order it has in the box.
 */
final class Explosion {
    /** Between parts that follow each other across the passes, as a share of the clear height. */
    private static final double ACROSS = 0.55;
    /** Between layers of the ends, of back and cover, as a share of the shorter side of the box. */
    private static final double LAYER = 0.22;

    private static final double SAME = 1e-6;

    private final Solid solid;
    private final double step;
    private final double across;
    private final double apart;
    private final List<Double> places = new ArrayList<>();

    /**
     * @param apart 1, or more for parts further apart
     */
    Explosion(Solid solid, double apart) {
        this.solid = solid;
        this.apart = apart;
        double length = solid.outer().size(Axis.X);
        double width = solid.outer().size(Axis.Y);
        // Outer layers overhang the inner ones by the thickness of the shell.
        step = apart * (LAYER * Math.min(length, width) + 2 * solid.box().shellThickness());
        across = apart * Math.min(ACROSS * solid.outer().size(Axis.Z), 0.25 * length);
        solid.parts()
                .filter(p -> p.normal() == Axis.Y)
                .mapToDouble(p -> p.bounds().centre(Axis.Y))
                .sorted()
                .filter(this::isNew)
                .forEach(places::add);
    }

    private boolean isNew(double y) {
        return places.isEmpty() || y - places.get(places.size() - 1) > SAME;
    }

    /** All parts, each a body of its own. */
    List<BoxPicture.Shown> parts() {
        List<BoxPicture.Shown> shown = new ArrayList<>();
        solid.parts().forEach(p -> shown.add(new BoxPicture.Shown(p, moved(p), shown.size())));
        return shown;
    }

    private Form moved(Part part) {
        double along = part.stretch() * 1.5 * step;
        return switch (part.normal()) {
            case X -> Form.of(part).moved(out(part) * (rank(part) * step + step) + along, 0, 0);
            case Y -> Form.of(part).moved(along, sideways(part), 0);
            case Z -> Form.of(part).moved(along, 0, out(part) * (rank(part) * step + upright()));
        };
    }

    private static double out(Part part) {
        return part.role().isLow() ? -1 : 1;
    }

    /** Liner first, then boards, both from the inside out. */
    private int rank(Part part) {
        int plies = Math.max(1, solid.box().linedFaces().most());
        return part instanceof LinerPiece piece ? plies - 1 - piece.ply() : plies + ((Panel) part).layer();
    }

    /** How far the broad liner keeps from what stands between back and cover. */
    private double upright() {
        double spread = (places.size() - 1) * across;
        double broad = (solid.outer().size(Axis.X) + solid.outer().size(Axis.Y)) / 2;
        return apart * (0.55 * broad + 0.2 * spread);
    }

    private double sideways(Part part) {
        double y = part.bounds().centre(Axis.Y);
        int place = 0;
        while (place < places.size() - 1 && places.get(place) < y - SAME) {
            place++;
        }
        return (place - (places.size() - 1) / 2.0) * across;
    }
}
