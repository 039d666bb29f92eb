package hushmaze.build.joint;

import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * How the joints of a box are held.
 *
 * <p>Every joint but the cover's is glued; what is driven in clamps it until the glue holds. Screws go through the face of one
 * board into the edge of the other where their middle is at least {@link #FACE_EDGE} from the edge of the face, and the
 * joint is long enough to keep {@link #EDGE_CORNER} from its ends; else brads do. The cover has screws everywhere, because it
 * comes off again; in boards of less than twice {@link #FACE_EDGE} they sit nearer to its edge than the guide asks, which
 * {@link #coverScrewsNearEdge} tells.
 *
 * <p>Source: 12 mm from the edge and 25 mm from the corner in a face, 70 mm from the corner in an edge, an MDF industry guide, as
 * read; brads 19 mm from corners, a board maker's advice, as read; no further apart than 150 mm, brads 100 mm, common
 * practice, no source.
 */
public final class Fastening {
    /** Least distance of a screw in a face from the edge, m. */
    public static final double FACE_EDGE = 0.012;
    /** Least distance of a screw in a face from the corner, m. */
    public static final double FACE_CORNER = 0.025;
    /** Least distance of a screw in an edge from the corner, m. */
    public static final double EDGE_CORNER = 0.07;

    static final Spacing SCREWS = new Spacing(EDGE_CORNER, 0.15);
    static final Spacing BRADS = new Spacing(0.025, 0.1);
    private static final double SLACK = 1e-9;

    /** What holds a joint. */
    public enum Hold {
        SCREWS,
        BRADS
    }

    /**
     * A joint and what holds it.
     *
     * @param joint where
     * @param hold by what
     * @param places along the joint, from the solid's origin, m; none in the second board of a laminated baffle
     */
    public record Held(Joint joint, Hold hold, List<Double> places) {
        public Held {
            places = List.copyOf(places);
        }
    }

    private final List<Held> held = new ArrayList<>();
    private final Map<Panel, List<Hole>> holes = new HashMap<>();

    private Fastening(Solid solid) {
        for (Joint joint : Joints.of(solid)) {
            hold(joint, solid);
        }
    }

    /** The fastening of a box. */
    public static Fastening of(Solid solid) {
        return new Fastening(solid);
    }

    /** All joints. */
    public List<Held> held() {
        return List.copyOf(held);
    }

    /** The holes to drill through a board of this solid. */
    public List<Hole> holes(Panel panel) {
        return List.copyOf(holes.getOrDefault(panel, List.of()));
    }

    /** Distance of the cover's screws from its edge where that is less than {@link #FACE_EDGE}, else that, m. */
    public double coverScrewsNearEdge() {
        return held.stream()
                .filter(h -> h.joint().cover() && !h.places().isEmpty())
                .mapToDouble(h -> h.joint().edgeDistance())
                .min()
                .orElse(FACE_EDGE);
    }

    private void hold(Joint joint, Solid solid) {
        boolean legal = joint.edgeDistance() >= FACE_EDGE - SLACK && SCREWS.fits(joint.length());
        Hold hold = joint.cover() || legal ? Hold.SCREWS : Hold.BRADS;
        boolean second = joint.edge().role() == Role.BAFFLE && joint.edge().layer() > 0;
        List<Double> places =
                second ? List.of() : (hold == Hold.SCREWS ? SCREWS : BRADS).places(joint.from(), joint.to());
        held.add(new Held(joint, hold, places));
        if (hold == Hold.SCREWS) {
            for (Panel panel : joint.cover() ? lid(solid, joint) : List.of(joint.face())) {
                places.forEach(place -> drill(panel, joint, place));
            }
        }
    }

    /** All layers of the cover over a joint: its screws go through them together. */
    private static List<Panel> lid(Solid solid, Joint joint) {
        return solid.panels().stream()
                .filter(p -> p.role() == Role.FRONT)
                .filter(p -> p.bounds().low(joint.across()) < joint.middle()
                        && joint.middle() < p.bounds().high(joint.across()))
                .toList();
    }

    private void drill(Panel panel, Joint joint, double place) {
        Axis u = panel.normal().u();
        double atU = joint.along() == u ? place : joint.middle();
        double atV = joint.along() == u ? joint.middle() : place;
        double fromU = atU - panel.bounds().low(u);
        double fromV = atV - panel.bounds().low(panel.normal().v());
        if (fromU > 0 && fromV > 0 && fromU < panel.uSize() && fromV < panel.vSize()) {
            holes.computeIfAbsent(panel, p -> new ArrayList<>()).add(new Hole(fromU, fromV));
        }
    }
}
