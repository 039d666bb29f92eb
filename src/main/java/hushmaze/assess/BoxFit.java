package hushmaze.assess;

import hushmaze.project.Brief;
import hushmaze.project.PortFace;
import hushmaze.project.Space;
import hushmaze.quantity.Severity;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;

/**
 * Whether a box goes into the space there is. The face with the port at the opening lies on the surface of the opening, so
 * the box's size across that face is its depth; the other two sizes lie along the surface so that the port lies as the opening
 * does, the longer side along the longer side.
 */
public final class BoxFit {
    private static final double SLACK = 1e-6;

    private BoxFit() {}

    /** The direction of the box that points away from the surface of the opening. */
    public static Axis away(PortFace openingFace) {
        return switch (openingFace) {
            case END -> Axis.X;
            case SIDE -> Axis.Y;
            case BACK, FRONT -> Axis.Z;
        };
    }

    /** How a box lies in the space of a brief, and whether it goes into it. */
    public static PathResult.Fits fits(Solid solid, Brief brief) {
        Axis away = away(solid.box().openingPort().face());
        double depth = solid.outer().size(away);
        double u = solid.outer().size(away.u());
        double v = solid.outer().size(away.v());
        Space space = brief.space();
        double off = brief.standOff(solid.box().joinery().gasket());
        boolean deep = depth + off <= space.depth() + SLACK;
        boolean straight = u <= space.width() + SLACK && v <= space.height() + SLACK;
        boolean turned = v <= space.width() + SLACK && u <= space.height() + SLACK;
        if (isTurned(solid, brief, away, straight, turned)) {
            return new PathResult.Fits(deep && turned, v, u, depth, off, true);
        }
        return new PathResult.Fits(deep && straight, u, v, depth, off, false);
    }

    /** The direction of a box that its width in the space is measured in: level on a wall. */
    public static Axis level(Solid solid, Brief brief) {
        return level(solid, fits(solid, brief));
    }

    /** The same where it is known how the box lies. */
    static Axis level(Solid solid, PathResult.Fits fits) {
        Axis away = solid.openingPort().role().normal();
        return fits.turned() ? away.v() : away.u();
    }

    /** Whether nothing stops a box from being hung or stood as its brief has it: rows, studs, screws and cleats do their work. */
    public static boolean holds(Solid solid, Brief brief) {
        return FixingNotices.of(solid, brief, level(solid, brief)).stream()
                .noneMatch(notice -> notice.severity() == Severity.STOP);
    }

    /** The port lies as the opening does; where it is as good either way, the box lies as it goes into the space. */
    private static boolean isTurned(Solid solid, Brief brief, Axis away, boolean straight, boolean turned) {
        double width = solid.openingPort().hole().size(away.u());
        double height = solid.openingPort().hole().size(away.v());
        boolean asOpening = brief.opening().width() >= brief.opening().height() == width >= height;
        boolean square = same(width, height)
                || same(brief.opening().width(), brief.opening().height());
        return square ? turned && !straight : !asOpening;
    }

    private static boolean same(double a, double b) {
        return Math.abs(a - b) < SLACK;
    }
}
