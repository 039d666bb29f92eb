package hushmaze.build.fixing;

import hushmaze.project.Opening;
import hushmaze.solid.Solid;

/**
 * A box that stands on the opening it covers: whether its weight alone holds it down against the pressure below.
 *
 * <p>Formula: lift = p A; p pressure in the duct, A area of the opening. Seal: weight over the length around the opening.
 *
 * <p>Source: equilibrium. Range: a level floor. Accuracy: of the pressure. Whether the weight seals as well depends on the
 * gasket; that a double-layer box does is common practice, no source.
 *
 * @param weight N
 * @param lift N
 * @param line weight over the length around the opening, N/m
 */
public record Standing(double weight, double lift, double line) {
    /**
     * The box over its opening.
     *
     * @param pressure largest there may be in the duct, Pa
     */
    public static Standing of(Solid solid, Opening opening, double pressure) {
        double weight = CentreOfMass.GRAVITY * solid.mass();
        double around = 2 * (opening.width() + opening.height());
        return new Standing(weight, pressure * opening.area(), weight / around);
    }

    /** Whether the weight is at least twice the lift. */
    public boolean holds() {
        return weight >= 2 * lift;
    }
}
