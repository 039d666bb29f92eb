package hushmaze.build.fixing;

import hushmaze.solid.Part;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;

/**
 * How many have to lift a box, whole or first without its cover.
 *
 * <p>Limits: one person 23 kg, and 10 kg to the height of the head or above it; two people four thirds of that, because together
 * they manage two thirds of what each could. Above that a hoist or panel lift, or more people if there is room.
 *
 * <p>Source, all from memory: 23 kg is the load constant of the revised lifting equation of the US National Institute for
 * Occupational Safety and Health (1991); 10 kg at the height of the head and two thirds for two people are from the guidance on
 * the Manual Handling Operations Regulations of the British Health and Safety Executive (L23), whose figure for a man is 25 kg at
 * the best height. Range: healthy adults used to it, load close to the body, now and then. Accuracy: guidance, not a limit of
 * what holds; for others less.
 *
 * @param high whether it is lifted to the height of the head or above
 * @param whole mass of the box, kg
 * @param carcass mass without the cover, kg
 * @param cover mass of the cover with its lining, kg
 * @param apart whether the cover can be screwed on once the rest is in its place: it does not lie against the building
 */
public record Lifting(boolean high, double whole, double carcass, double cover, boolean apart) {
    /** Who or what lifts. */
    public enum Hands {
        ONE,
        TWO,
        /** A hoist or panel lift, or more than two. */
        AID
    }

    private static final double ONE_KG = 23;
    private static final double ONE_HIGH_KG = 10;
    private static final double PAIR = 2 * 2 / 3.0;
    /** With screws, glue, sealant and paint, which the masses of the parts leave out (an allowance of our own). */
    private static final double WITH_SMALL_THINGS = 1.05;

    /** @param high whether the box goes to the height of the head or above */
    public static Lifting of(Solid solid, boolean high) {
        double cover = solid.parts()
                .filter(p -> p.role() == Role.FRONT)
                .mapToDouble(Part::mass)
                .sum();
        boolean apart = solid.openingPort().role() != Role.FRONT;
        return new Lifting(high, solid.mass(), solid.mass() - cover, cover, apart);
    }

    /** Most that one person should lift, kg. */
    public double one() {
        return high ? ONE_HIGH_KG : ONE_KG;
    }

    /** Most that two people should lift, kg. */
    public double two() {
        return PAIR * one();
    }

    /** The heaviest single piece there is to lift, kg. */
    public double heaviest() {
        return apart ? Math.max(carcass, cover) : whole;
    }

    /** Who lifts parts of a mass, kg; a twentieth is added for what holds them together. */
    public Hands hands(double mass) {
        double all = WITH_SMALL_THINGS * mass;
        if (all <= one()) {
            return Hands.ONE;
        }
        return all <= two() ? Hands.TWO : Hands.AID;
    }
}
