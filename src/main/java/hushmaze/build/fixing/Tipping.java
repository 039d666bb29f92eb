package hushmaze.build.fixing;

import hushmaze.project.Opening;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;

/**
 * Whether somebody who stumbles against a standing box can tip it over.
 *
 * <p>Formula: push = W a / H; W weight, a least distance of the centre of mass from an edge of the base, H height of the push:
 * the top of the box, at most 1.5 m. It has to be 200 N at least, and the box at most three times as high as its base is wide.
 *
 * <p>Source: equilibrium; 200 N, 1.5 m and three times are common practice, no source. Range: a level floor, a base that does
 * not slide. Accuracy: of the weight of boards and liner.
 *
 * @param height of the box, m
 * @param base lesser side of its base, m
 * @param push that tips it, N
 */
public record Tipping(double height, double base, double push) {
    /** A push it has to stand, N. */
    public static final double PUSH = 200;

    private static final double PUSHED_AT = 1.5;
    private static final double SLENDER = 3;

    static Tipping of(Solid solid) {
        Lie lie = Lie.of(solid, Opening.Surface.FLOOR, null);
        double height = lie.side(lie.away());
        double lever = Math.min(lever(lie, lie.along()), lever(lie, lie.between()));
        double weight = CentreOfMass.GRAVITY * solid.mass();
        return new Tipping(height, lie.side(lie.along()), weight * lever / Math.min(height, PUSHED_AT));
    }

    private static double lever(Lie lie, Axis axis) {
        return lie.side(axis) / 2 - lie.off(axis);
    }

    /** Whether it is so high and narrow that it has to be tied whatever it weighs. */
    public boolean slender() {
        return height > SLENDER * base;
    }

    /** Whether it stands without being tied to the wall. */
    public boolean stands() {
        return push >= PUSH && !slender();
    }
}
