package hushmaze.build.fixing;

import hushmaze.project.Opening;
import hushmaze.solid.Solid;

/**
 * A box that stands on the opening it covers: whether its weight alone holds it down against the pressure below, seals, and keeps
 * it upright.
 *
 * <p>Formula: lift = p A; p pressure in the duct, A area of the opening. Seal: weight over the length around the opening, at
 * least 350 N/m: a gasket 10 mm wide pressed with 35 kPa.
 *
 * <p>Source: equilibrium. 35 kPa is what the softest grade of closed-cell sponge rubber takes at most for a quarter of its
 * thickness (ASTM D1056, from memory); open cells take less. Range: a level floor. Accuracy: of the pressure; that a double-layer
 * box seals is common practice too, no source.
 *
 * @param weight N
 * @param lift N
 * @param line weight over the length around the opening, N/m
 * @param tipping whether it can be tipped over
 */
public record Standing(double weight, double lift, double line, Tipping tipping) {
    /** Weight over the length around the opening with which a soft gasket seals, N/m. */
    public static final double SEALS = 350;

    /**
     * The box over its opening.
     *
     * @param pressure largest there may be in the duct, Pa
     */
    public static Standing of(Solid solid, Opening opening, double pressure) {
        double weight = CentreOfMass.GRAVITY * solid.mass();
        double around = 2 * (opening.width() + opening.height());
        return new Standing(weight, pressure * opening.area(), weight / around, Tipping.of(solid));
    }

    /** Whether the weight is at least twice the lift. */
    public boolean holds() {
        return weight >= 2 * lift;
    }

    /** Whether the weight presses a soft gasket tight. */
    public boolean seals() {
        return line >= SEALS;
    }
}
