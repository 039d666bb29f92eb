package hushmaze.build.fixing;

import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;

/**
 * What a box asks of its screws.
 *
 * <p>Formulas. On a wall: pull of the upper row = W e / h, shared by its screws; shear shared by the screws of both rows; W weight,
 * e distance of the centre of mass from the wall, h distance of the rows, with the box pressing on the wall at the lower
 * row. Under a ceiling: pull of the more loaded row = W (1/2 + c / h), c distance of the centre of mass from the middle between
 * the rows along the longer side of the box; no shear; a further factor of 2, because it hangs over people.
 *
 * <p>Source: equilibrium of the box as a stiff body, as in worked examples; the further factor is our judgement. Range: screws
 * alike and all in studs or joists. Accuracy: screening; the bending of studs, what the studs hang on, resilient walls and
 * earthquakes are outside it. The weight is that of boards and liner times 1.1 for screws, glue and dust, our judgement.
 *
 * @param overhead whether it hangs under a ceiling
 * @param weight N
 * @param arm distance of the centre of mass from the wall or ceiling, m
 * @param pull of the most loaded screw, N
 * @param shear of each screw, N
 * @param allowed what one screw may take
 * @param used share of that, with the further factor overhead; 1 for all of it
 */
public record Hanging(
        boolean overhead, double weight, double arm, double pull, double shear, StudFixing allowed, double used) {
    /** Further factor where the box hangs over people. */
    public static final double OVERHEAD = 2;

    private static final double EXTRA_WEIGHT = 1.1;

    /**
     * The box over its opening.
     *
     * @param surface wall or ceiling; a box over a floor opening stands and is refused
     */
    public static Hanging of(Solid solid, Opening.Surface surface, Mounting mounting) {
        if (surface == Opening.Surface.FLOOR) {
            throw new IllegalArgumentException("a box over a floor opening stands on it");
        }
        double weight = EXTRA_WEIGHT * CentreOfMass.GRAVITY * solid.mass();
        double arm = arm(solid);
        StudFixing allowed = StudFixing.of(mounting);
        int row = mounting.screwsPerRow();
        if (surface == Opening.Surface.WALL) {
            double pull = weight * arm / mounting.rowDistance() / row;
            double shear = weight / (2 * row);
            return new Hanging(false, weight, arm, pull, shear, allowed, allowed.used(pull, shear));
        }
        double pull = weight * (0.5 + offCentre(solid) / mounting.rowDistance()) / row;
        return new Hanging(true, weight, arm, pull, 0, allowed, OVERHEAD * allowed.used(pull, 0));
    }

    /** Distance of the centre of mass from the face that lies against wall or ceiling, m. */
    static double arm(Solid solid) {
        Axis away = away(solid);
        double centre = CentreOfMass.along(solid, away);
        return lowFace(solid.openingPort())
                ? centre - solid.outer().low(away)
                : solid.outer().high(away) - centre;
    }

    private static Axis away(Solid solid) {
        return solid.openingPort().role().normal();
    }

    private static boolean lowFace(PortPlace port) {
        return switch (port.role()) {
            case BACK, FIRST_SIDE, NEAR_END -> true;
            case FRONT, LAST_SIDE, FAR_END -> false;
            case BAFFLE -> throw new IllegalArgumentException("no port is in a baffle");
        };
    }

    /** Distance of the centre of mass from the middle of the longer side along the surface, m. */
    private static double offCentre(Solid solid) {
        Axis away = away(solid);
        Axis u = away.u();
        Axis v = away.v();
        Axis longer = solid.outer().size(u) >= solid.outer().size(v) ? u : v;
        return Math.abs(CentreOfMass.along(solid, longer) - solid.outer().centre(longer));
    }
}
