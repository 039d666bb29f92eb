package hushmaze.build.joint;

import hushmaze.material.Screw;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * How the joints of a box are held.
 *
 * <p>Every joint but the cover's is glued; what is driven in clamps it until the glue holds. Screws go through the face of one
 * board into the edge of the other where their middle is at least {@link #FACE_EDGE} from the edge of the face, and the
 * joint is long enough to keep {@link #EDGE_CORNER} from its ends; else brads do. The cover has screws everywhere, because it
 * comes off again; in boards of less than twice {@link #FACE_EDGE} they sit nearer to its edge than the guide asks, which
 * {@link #coverScrewsNearEdge} tells.
 *
 * <p>At a corner the brads of two joints go into neighbouring edges of one board, in the middle of its thickness, and would
 * cross there. So fasteners are placed one joint after another, the cover's first, then the other screws, then the brads from the shortest
 * joint on. Each keeps the least distance from the ends or up to 60 mm more, by steps of 5 mm, until none of them comes near
 * another fastener; where the joint is too short for that, those that would are left out. For holes, which are part of a board, all screws count as no
 * longer than {@link FastenerList} asks for; brads keep clear of the project's own.
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
    /** How far fasteners move from the ends to keep clear of others, and by what steps, m. */
    private static final double MOST_MOVED = 0.06;

    private static final double STEP = 0.005;
    /** Holes and joints are the same for every screw. */
    private static final Screw ANY = new Screw("4 × 40", 0.004, 0.04, 0.002, "any");

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

    private final Solid solid;
    private Screw screw = ANY;
    private final List<Joint> joints;
    private final Map<Joint, Held> held = new LinkedHashMap<>();
    private final List<Driven> driven = new ArrayList<>();
    private final Map<Panel, List<Hole>> holes = new HashMap<>();

    private Fastening(Solid solid) {
        this.solid = solid;
        joints = Joints.of(solid);
        joints.stream().filter(Joint::cover).forEach(this::screw);
        joints.stream().filter(j -> !j.cover() && screwed(j)).forEach(this::screw);
    }

    /** Brads, clear of the screws as they are. */
    private Fastening bradded(Screw as) {
        driven.clear();
        screw = as;
        held.values().forEach(this::drive);
        joints.stream()
                .filter(joint -> !screwed(joint))
                .sorted(Comparator.comparingDouble(Joint::length))
                .forEach(joint -> hold(joint, Hold.BRADS));
        return this;
    }

    /** The holes to drill, by board of this solid; brads need none. */
    public static Map<Panel, List<Hole>> holes(Solid solid) {
        return new Fastening(solid).holes;
    }

    /** The joints and holes of a box; its brads as they are with a usual screw. */
    public static Fastening of(Solid solid) {
        return of(solid, ANY);
    }

    /**
     * The fastening of a box.
     *
     * @param screw the project's own, which brads keep clear of
     */
    public static Fastening of(Solid solid, Screw screw) {
        return new Fastening(solid).bradded(screw);
    }

    /** All joints. */
    public List<Held> held() {
        return joints.stream().map(held::get).toList();
    }

    /** The holes to drill through a board of this solid. */
    public List<Hole> holes(Panel panel) {
        return List.copyOf(holes.getOrDefault(panel, List.of()));
    }

    /** Distance of the cover's screws from its edge where that is less than {@link #FACE_EDGE}, else that, m. */
    public double coverScrewsNearEdge() {
        return held().stream()
                .filter(h -> h.joint().cover() && !h.places().isEmpty())
                .mapToDouble(h -> h.joint().edgeDistance())
                .min()
                .orElse(FACE_EDGE);
    }

    private static boolean screwed(Joint joint) {
        return joint.cover() || joint.edgeDistance() >= FACE_EDGE - SLACK && SCREWS.fits(joint.length());
    }

    private static boolean second(Joint joint) {
        return joint.edge().role() == Role.BAFFLE && joint.edge().layer() > 0;
    }

    private void screw(Joint joint) {
        List<Double> places = hold(joint, Hold.SCREWS).places();
        for (Panel panel : joint.cover() ? lid(solid, joint) : List.of(joint.face())) {
            places.forEach(place -> drill(panel, joint, place));
        }
    }

    private Held hold(Joint joint, Hold hold) {
        Held all = new Held(joint, hold, second(joint) ? List.of() : free(joint, hold));
        held.put(joint, all);
        drive(all);
        return all;
    }

    private void drive(Held all) {
        all.places().forEach(place -> driven.addAll(driven(all.joint(), all.hold(), place)));
    }

    /** The first places that are all free; if there are none, those that are where most are. */
    private List<Double> free(Joint joint, Hold hold) {
        Spacing rule = hold == Hold.SCREWS ? SCREWS : BRADS;
        List<Double> best = List.of();
        for (double moved = 0; moved <= MOST_MOVED + SLACK; moved += STEP) {
            Spacing spacing = new Spacing(rule.fromEnd() + moved, rule.apart());
            List<Double> places = spacing.places(joint.from(), joint.to());
            List<Double> free =
                    places.stream().filter(p -> isFree(joint, hold, p)).toList();
            if (free.size() == places.size()) {
                return free;
            }
            best = free.size() > best.size() ? free : best;
        }
        return best;
    }

    private boolean isFree(Joint joint, Hold hold, double place) {
        return driven(joint, hold, place).stream().allMatch(d -> driven.stream().allMatch(d::clears));
    }

    /** What is driven in at a place, as sold in either system of units. */
    private List<Driven> driven(Joint joint, Hold hold, double place) {
        return Stream.of(UnitSystem.values())
                .map(units -> FastenerList.holding(joint, hold, solid, screw, units))
                .map(fastener -> Driven.at(joint, place, fastener, solid))
                .toList();
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
