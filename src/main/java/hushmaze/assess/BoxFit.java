package hushmaze.assess;

import hushmaze.project.Brief;
import hushmaze.project.PortFace;
import hushmaze.project.Space;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;

/**
 * Whether a box goes into the space there is. The face with the port at the opening lies on the surface of the opening, so
 * the box's size across that face is its depth; the other two sizes may lie either way along the surface.
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

    static PathResult.Fits fits(Solid solid, Brief brief) {
        Axis away = away(solid.box().openingPort().face());
        double depth = solid.outer().size(away);
        double u = solid.outer().size(away.u());
        double v = solid.outer().size(away.v());
        Space space = brief.space();
        boolean deep = depth <= space.depth() + SLACK;
        boolean straight = u <= space.width() + SLACK && v <= space.height() + SLACK;
        boolean turned = v <= space.width() + SLACK && u <= space.height() + SLACK;
        return straight || !turned
                ? new PathResult.Fits(deep && straight, u, v, depth)
                : new PathResult.Fits(deep, v, u, depth);
    }
}
