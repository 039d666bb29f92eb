package hushmaze.build.fixing;

import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;

/**
 * How a box lies on its surface, and where its cleats with the two rows of screws go. Places are the solid's own, m.
 *
 * @param away direction of the box that points away from the surface
 * @param along direction of the rows
 * @param between direction from one row to the other
 * @param centre distance of the centre of mass from the face at the surface, m
 * @param cleats the timber between box and surface, the lowest first; none for a box that stands or is not fixed to studs
 */
public record Rows(Axis away, Axis along, Axis between, double centre, List<Cleat> cleats) {
    /** What a piece of timber between box and surface is for. */
    public enum Kind {
        /** On the box, screwed through. */
        CLEAT,
        /** On the wall, its upper edge bevelled: screwed into the studs. */
        WALL_HOOK,
        /** On the box, its lower edge bevelled: hangs in the wall's. */
        BOX_HOOK,
        /** On the box, keeps its lower part as far from the wall. */
        SPACER;

        /** What it is called among others: both bevelled ones are cut alike. */
        public String timber() {
            return this == WALL_HOOK || this == BOX_HOOK ? "HOOK" : name();
        }
    }

    /** Screws that hold timber on the box are no further apart, m; as screws of other joints. */
    public static final double APART = 0.15;

    /**
     * A piece of timber along a row.
     *
     * @param from where it begins along the row
     * @param to where it ends
     * @param low its lower edge from one row to the other; of a bevelled one at its tip
     * @param high its upper edge, likewise
     * @param at place of the row of screws; of a piece without screws its middle
     * @param thickness that holds the box off its surface, m
     * @param diameter of its screws, m
     * @param paired whether two of them may have to stand one above the other in a stud
     * @param screws places of the screws along the row if the opening is in the middle between two studs; spread evenly over the
     *     cleat where their spacing is not known. Where two share a stud the place is there twice. None in what goes on the box
     *     alone
     */
    public record Cleat(
            Kind kind,
            double from,
            double to,
            double low,
            double high,
            double at,
            double thickness,
            double diameter,
            boolean paired,
            List<Double> screws) {

        public Cleat {
            screws = List.copyOf(screws);
        }

        /** Across the row, at least, m. */
        public double width() {
            return high - low;
        }

        /** Half the distance of two screws one above the other, m. */
        public double half() {
            return StudRow.APART * diameter / 2;
        }

        /** How far a box is lifted over its place to be hooked in, m. */
        public double lift() {
            return Hook.lift(thickness);
        }

        /** Where it is to be marked: its screws or its middle, of the batten on the box its upper edge. */
        public double mark() {
            return kind == Kind.BOX_HOOK ? high : at;
        }

        /** Along the row, m. */
        public double length() {
            return to - from;
        }
    }

    public Rows {
        cleats = List.copyOf(cleats);
    }

    /**
     * The box over its opening.
     *
     * @param level the side of the box that is level on a wall; of no matter elsewhere
     */
    public static Rows of(Solid solid, Brief brief, Axis level) {
        Opening.Surface surface = brief.opening().surface();
        Lie lie = Lie.of(solid, surface, level);
        Mounting mounting = brief.construction().mounting();
        List<Cleat> cleats = new ArrayList<>();
        if (brief.onCleats()) {
            cleats.addAll(new Timbers(lie, mounting)
                    .all(Way.of(solid.openingPort().port().face(), surface)));
        }
        return new Rows(lie.away(), lie.along(), lie.between(), lie.arm(), cleats);
    }

    private static final double SLACK = 1e-9;

    /** How many screws hold the timber on the box: one at each end and the others between. */
    public int screwsFromInside() {
        return cleats.stream()
                .filter(cleat -> cleat.kind() != Kind.WALL_HOOK)
                .mapToInt(cleat -> 1 + (int) Math.ceil(cleat.length() / APART - SLACK))
                .sum();
    }

    /** What carries screws, the lowest first. */
    public List<Cleat> screwed() {
        return cleats.stream().filter(cleat -> !cleat.screws().isEmpty()).toList();
    }
}
