package hushmaze.build.fixing;

import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;

/**
 * How a box lies on its surface.
 *
 * @param away from the surface
 * @param along the rows of screws: level on a wall, under a ceiling along the shorter side
 * @param between one row and the other
 */
record Lie(Solid solid, Axis away, Axis along, Axis between) {
    /** @param level the side of the box that is level on a wall; of no matter elsewhere */
    static Lie of(Solid solid, Opening.Surface surface, Axis level) {
        Axis away = solid.openingPort().role().normal();
        Axis along = surface == Opening.Surface.WALL ? level : shorter(solid, away.u(), away.v());
        if (along == away) {
            throw new IllegalArgumentException("the level side points away from the surface: " + level);
        }
        return new Lie(solid, away, along, along == away.u() ? away.v() : away.u());
    }

    private static Axis shorter(Solid solid, Axis u, Axis v) {
        return solid.outer().size(u) >= solid.outer().size(v) ? v : u;
    }

    /** Distance of the centre of mass from the face that lies against the building, m. */
    double arm() {
        double centre = CentreOfMass.along(solid, away);
        return solid.openingPort().role().isLow()
                ? centre - solid.outer().low(away)
                : solid.outer().high(away) - centre;
    }

    /** Distance of the centre of mass from the middle of the box, m. */
    double off(Axis axis) {
        return Math.abs(CentreOfMass.along(solid, axis) - solid.outer().centre(axis));
    }

    double side(Axis axis) {
        return solid.outer().size(axis);
    }
}
