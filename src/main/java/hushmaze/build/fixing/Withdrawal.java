package hushmaze.build.fixing;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Allowable pull along a screw in the side grain of timber, for normal load duration.
 *
 * <p>Formulas, in pounds for each inch of thread: lag screw W = 1800 G^1.5 D^0.75, wood screw W = 2850 G² D; G specific gravity
 * of the timber, D nominal diameter in inches.
 *
 * <p>Source: National Design Specification for Wood Construction, 12.2, as read; every cell of its lag screw table is
 * reproduced. Range: G 0.31 to 0.73, thread fully in one piece of timber, its tapered tip not counted, hole drilled before.
 * Wood screws hold nothing in end grain. Accuracy: design values, about 1/4.5 (lag) and 1/5.5 (wood screw) of what breaks in
 * tests (from memory). Differs from the source: none.
 */
public final class Withdrawal {
    private Withdrawal() {}

    /**
     * A lag screw, N.
     *
     * @param gravity specific gravity of the timber
     * @param diameter nominal, m
     * @param thread length of thread in the timber without the tip, m
     */
    public static double lag(double gravity, double diameter, double thread) {
        check(gravity, diameter, thread);
        double perInch = 1800 * Math.pow(gravity, 1.5) * Math.pow(diameter / Pounds.INCH, 0.75);
        return perInch * Pounds.POUND * thread / Pounds.INCH;
    }

    /**
     * A wood screw, N.
     *
     * @param gravity specific gravity of the timber
     * @param diameter nominal, m
     * @param thread length of thread in the timber without the tip, m
     */
    public static double woodScrew(double gravity, double diameter, double thread) {
        check(gravity, diameter, thread);
        double perInch = 2850 * gravity * gravity * diameter / Pounds.INCH;
        return perInch * Pounds.POUND * thread / Pounds.INCH;
    }

    private static void check(double gravity, double diameter, double thread) {
        InvalidValue.within("gravity", gravity, 0.31, 0.73, Unit.NUMBER);
        InvalidValue.within("diameter", diameter, 0.003, 0.013, Unit.MILLIMETRE);
        InvalidValue.within("thread", thread, 0.01, 0.3, Unit.MILLIMETRE);
    }
}
