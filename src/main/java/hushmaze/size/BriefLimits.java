package hushmaze.size;

import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Opening;
import hushmaze.project.Space;
import hushmaze.quantity.Unit;

/** Reads and changes one limit of a brief, leaving the rest as it is. */
final class BriefLimits {
    private BriefLimits() {}

    /** The limit's value, SI; of several numbers the first; NaN when the brief does not set it. */
    static double get(Brief brief, Relaxation.Limit limit) {
        Doorway door = brief.construction().doorway();
        return switch (limit) {
            case SPACE_WIDTH -> brief.space().width();
            case SPACE_HEIGHT -> brief.space().height();
            case SPACE_DEPTH -> brief.space().depth();
            case PRESSURE_DROP -> brief.maxPressureDrop();
            case PATH_VELOCITY -> brief.maxPathVelocity();
            case OPENING_VELOCITY -> brief.maxOpeningVelocity();
            case FLOW -> brief.flow();
            case MASS ->
                brief.construction().maxMass() == null
                        ? Double.NaN
                        : brief.construction().maxMass();
            case DOORWAY_WIDTH -> door == null ? Double.NaN : door.width();
            case DOORWAY_HEIGHT -> door == null ? Double.NaN : door.height();
            case OPENING -> brief.opening().width();
            case SPACE -> brief.space().width();
            case DOORWAY -> door == null ? Double.NaN : door.width();
            case BOARD_SHEETS, LINER_SHEETS -> Double.NaN;
        };
    }

    static Unit unit(Relaxation.Limit limit) {
        return switch (limit) {
            case SPACE_WIDTH, SPACE_HEIGHT, SPACE_DEPTH, SPACE, DOORWAY_WIDTH, DOORWAY_HEIGHT, DOORWAY, OPENING ->
                Unit.MILLIMETRE;
            case BOARD_SHEETS, LINER_SHEETS -> Unit.SQUARE_METRE;
            case PRESSURE_DROP -> Unit.PASCAL;
            case PATH_VELOCITY, OPENING_VELOCITY -> Unit.METRE_PER_SECOND;
            case FLOW -> Unit.LITRE_PER_SECOND;
            case MASS -> Unit.KILOGRAM;
        };
    }

    static Brief with(Brief brief, Relaxation.Limit limit, double value) {
        Space s = brief.space();
        Construction c = brief.construction();
        return switch (limit) {
            case SPACE_WIDTH -> brief.withSpace(new Space(value, s.height(), s.depth()));
            case SPACE_HEIGHT -> brief.withSpace(new Space(s.width(), value, s.depth()));
            case SPACE_DEPTH -> brief.withSpace(new Space(s.width(), s.height(), value));
            case PRESSURE_DROP ->
                brief.withAir(brief.flow(), value, brief.maxPathVelocity(), brief.maxOpeningVelocity());
            case PATH_VELOCITY ->
                brief.withAir(brief.flow(), brief.maxPressureDrop(), value, brief.maxOpeningVelocity());
            case OPENING_VELOCITY ->
                brief.withAir(brief.flow(), brief.maxPressureDrop(), brief.maxPathVelocity(), value);
            case FLOW ->
                brief.withAir(value, brief.maxPressureDrop(), brief.maxPathVelocity(), brief.maxOpeningVelocity());
            case MASS -> carried(brief, value, c.doorway());
            case DOORWAY_WIDTH ->
                carried(brief, c.maxMass(), new Doorway(value, c.doorway().height()));
            case DOORWAY_HEIGHT ->
                carried(brief, c.maxMass(), new Doorway(c.doorway().width(), value));
            case SPACE -> {
                double more = value / s.width();
                yield brief.withSpace(new Space(value, s.height() * more, s.depth() * more));
            }
            case DOORWAY -> {
                Doorway door = c.doorway();
                yield carried(brief, c.maxMass(), new Doorway(value, door.height() * value / door.width()));
            }
            case BOARD_SHEETS, LINER_SHEETS ->
                throw new IllegalArgumentException(limit + " is none of a brief's limits");
            case OPENING -> brief.withAirFrom(enlarged(brief.opening(), value), brief.flow(), brief.drive());
        };
    }

    private static Opening enlarged(Opening old, double width) {
        double height = old.height() * width / old.width();
        return new Opening(old.kind(), old.surface(), old.beyond(), width, height);
    }

    private static Brief carried(Brief b, Double mass, Doorway doorway) {
        return b.withConstruction(b.construction().carried(mass, doorway));
    }
}
