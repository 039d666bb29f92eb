package hushmaze.build.fixing;

import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * What a box asks of its screws.
 *
 * <p>The cleats are between the box and its surface and hold it off by their thickness.
 *
 * <p>Formulas. On a wall: pull of the upper row = W e / h, shared by its screws; across each screw W / 2n down and W c / (h n)
 * sideways, together the root of the sum of squares; W weight, e distance of the centre of mass from the wall, h distance of
 * the rows, c distance of the centre of mass from the middle of the rows, n screws in a row, with the box pressing on the wall at the
 * lower row. Under a ceiling: load of the more loaded row = W (1/2 + d / h), d distance of the centre of mass from the middle between
 * the rows; its most loaded screw as {@link Spread} with c; no shear. Beyond the rows (d more than h / 2) the other row presses
 * against the ceiling and the same formula holds. By bevelled battens ({@link Hook}): all n screws are in the upper row; across each
 * W m / n, m the share of the most loaded one after {@link Spread}; pull of the row the larger of W, as the bevel draws, and W e / h, times m
 * and the lever of the batten. A further factor of 2 where people are below: always under a ceiling, on a wall
 * if the mounting says so.
 *
 * <p>Source: equilibrium of the box as a stiff body, as in worked examples; the further factor is our judgement. Range: screws
 * alike, all in studs or joists, rows even about the middle of the box. Accuracy: screening; the bending of studs and cleats, what the
 * studs hang on, resilient walls and earthquakes are outside it. The weight is that of boards and liner times 1.1 for screws,
 * glue and dust, our judgement.
 *
 * @param way by what it hangs
 * @param overhead whether it hangs under a ceiling
 * @param factor further factor on the load, 1 or {@link #OVER_PEOPLE}
 * @param weight N
 * @param arm distance of the centre of mass from the wall or ceiling, cleat included, m
 * @param offAlong distance of the centre of mass from the middle of the rows, along them, m
 * @param offBetween distance of the centre of mass from the middle between the rows, m
 * @param side of the box along the rows, m
 * @param reach side of the box from one row to the other, m
 * @param rowDistance between the rows, m
 * @param pull of the most loaded screw, N
 * @param shear of each screw, N
 * @param allowed what one screw may take
 * @param used share of that, with the further factor; 1 for all of it
 */
public record Hanging(
        Way way,
        boolean overhead,
        double factor,
        double weight,
        double arm,
        double offAlong,
        double offBetween,
        double side,
        double reach,
        double rowDistance,
        double pull,
        double shear,
        StudFixing allowed,
        double used) {
    /** Further factor where the box hangs over people. */
    public static final double OVER_PEOPLE = 2;

    /** Weight of the box with screws, glue and dust, in weights of boards and liner. */
    private static final double EXTRA_WEIGHT = 1.1;

    /**
     * The box over its opening.
     *
     * @param surface wall or ceiling; a box over a floor opening stands and is refused
     * @param level the side of the box that is level on a wall; of no matter under a ceiling
     * @throws InvalidValue if it is not fixed to studs or joists
     */
    public static Hanging of(Solid solid, Opening.Surface surface, Axis level, Mounting mounting) {
        if (surface == Opening.Surface.FLOOR) {
            throw new IllegalArgumentException("a box over a floor opening stands on it");
        }
        if (mounting.intoOrStuds() != Mounting.Into.STUDS) {
            throw new InvalidValue("into", mounting.intoOrStuds().name(), Mounting.Into.STUDS.name(), "");
        }
        Way way = Way.of(solid.openingPort().port().face(), surface);
        return of(way, Lie.of(solid, surface, level), surface == Opening.Surface.CEILING, mounting);
    }

    /** What the most loaded screw is asked for, N. */
    private record Load(double pull, double shear) {}

    private static Hanging of(Way way, Lie lie, boolean overhead, Mounting mounting) {
        double weight = EXTRA_WEIGHT * CentreOfMass.GRAVITY * lie.solid().mass();
        double arm = lie.arm() + mounting.cleat();
        Load load = way == Way.HOOKED
                ? hooked(lie, weight, arm, mounting)
                : overhead ? new Load(ceilingPull(lie, weight, mounting), 0) : through(lie, weight, arm, mounting);
        double factor = overhead || mounting.isAbovePeople() ? OVER_PEOPLE : 1;
        StudFixing allowed = StudFixing.of(mounting, way);
        return new Hanging(
                way,
                overhead,
                factor,
                weight,
                arm,
                lie.off(lie.along()),
                lie.off(lie.between()),
                lie.side(lie.along()),
                lie.side(lie.between()),
                mounting.rowDistance(),
                load.pull(),
                load.shear(),
                allowed,
                factor * allowed.used(load.pull(), load.shear()));
    }

    /** Rows of screws on a wall, driven through the back. */
    private static Load through(Lie lie, double weight, double arm, Mounting mounting) {
        double apart = mounting.rowDistance();
        int row = mounting.screwsPerRow();
        double sideways = weight * lie.off(lie.along()) / (apart * row);
        return new Load(weight * arm / apart / row, Math.hypot(weight / (2 * row), sideways));
    }

    /** The one row in the wall's batten. */
    private static Load hooked(Lie lie, double weight, double arm, Mounting mounting) {
        StudRow row = row(lie, mounting);
        double even =
                Spread.of(lie.side(lie.along()), mounting, row).most(lie.off(lie.along())) / mounting.screwsPerRow();
        double drawn = Math.max(weight, weight * arm / mounting.rowDistance());
        return new Load(
                drawn * even * Hook.of(mounting, row != null && row.paired()).lever(), weight * even);
    }

    /** Pull of the most loaded screw under a ceiling, N. */
    private static double ceilingPull(Lie lie, double weight, Mounting mounting) {
        Spread spread = Spread.of(lie.side(lie.along()), mounting, row(lie, mounting));
        double loaded = weight * (0.5 + lie.off(lie.between()) / mounting.rowDistance());
        return loaded * spread.most(lie.off(lie.along())) / mounting.screwsPerRow();
    }

    private static StudRow row(Lie lie, Mounting mounting) {
        return mounting.studSpacing() == null ? null : StudRow.of(lie.side(lie.along()), mounting);
    }

    /**
     * Least number of screws in each row with which the fixing takes the box; empty if no number does, also because the
     * thread is not deep enough or the rows are beyond the box.
     */
    public static OptionalInt enough(Solid solid, Opening.Surface surface, Axis level, Mounting mounting) {
        return IntStream.rangeClosed(1, Mounting.MOST_SCREWS)
                .filter(n -> of(solid, surface, level, mounting.withScrews(n)).holds())
                .findFirst();
    }

    /** Whether nothing is overloaded and the rules of the method are kept. */
    private boolean holds() {
        return used <= 1 && allowed.deepEnough() && !rowsBeyondBox() && !tipsOut();
    }

    /** Whether a box on bevelled battens tips out of them: its weight is further from the wall than the spacer is below the hook. */
    public boolean tipsOut() {
        return way == Way.HOOKED && arm > rowDistance;
    }

    /** Whether the rows are further apart than the box reaches. */
    public boolean rowsBeyondBox() {
        return rowDistance > reach;
    }

    /** Whether the centre of mass of a box under a ceiling lies beyond its rows. */
    public boolean centreBeyondRows() {
        return overhead && offBetween > rowDistance / 2;
    }
}
