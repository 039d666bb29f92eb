package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * How the boards of a box are joined. Clear sizes do not depend on it: it moves cut sizes only.
 *
 * @param fitClearance gap all round a board that goes into a frame of others, and the play of a baffle in its groove, m (0 to
 *     3 mm)
 * @param gasket thickness of the gasket under the cover, and between the parts of a box that comes apart, once it is
 *     pressed, m (0 to 10 mm); 0 for a strip so soft that it needs no room
 * @param groove depth of the grooves that hold the baffles in the back and in the end they start from, m (0 to 15 mm); 0 for
 *     baffles that butt
 * @param pinsAbove mean air faster than this needs pins in the liner besides adhesive, m/s (1 to 30); absent for {@link
 *     #USUAL_PINS_ABOVE}
 * @param coverGap gap of the cover's joint as a measurement gave it; absent for what the edges of a prediction allow for
 */
public record Joinery(
        @Measured(Unit.MILLIMETRE) double fitClearance,
        @Measured(Unit.MILLIMETRE) double gasket,
        @Measured(Unit.MILLIMETRE) double groove,
        @MayBeAbsent @Measured(Unit.METRE_PER_SECOND) Double pinsAbove,
        @MayBeAbsent JointGap coverGap) {
    /** Air faster than this gets behind liner that is only glued, m/s; our own judgement, no source: see the liner's maker. */
    public static final double USUAL_PINS_ABOVE = 5;

    /** Boards that butt with no allowance for anything. */
    public static final Joinery PLAIN = new Joinery(0, 0, 0);

    public Joinery {
        InvalidValue.within("fitClearance", fitClearance, 0, 0.003, Unit.MILLIMETRE);
        InvalidValue.within("gasket", gasket, 0, 0.01, Unit.MILLIMETRE);
        InvalidValue.within("groove", groove, 0, 0.015, Unit.MILLIMETRE);
        if (groove > 0 && groove <= fitClearance) {
            throw new InvalidValue(
                    "groove",
                    InvalidValue.shown(groove, Unit.MILLIMETRE),
                    "0, or deeper than the fit clearance, " + InvalidValue.shown(fitClearance, Unit.MILLIMETRE),
                    "mm");
        }
        if (pinsAbove != null) {
            InvalidValue.within("pinsAbove", pinsAbove, 1, 30, Unit.METRE_PER_SECOND);
        }
    }

    /** Joints of whose gaps nothing was measured. */
    public Joinery(double fitClearance, double gasket, double groove, Double pinsAbove) {
        this(fitClearance, gasket, groove, pinsAbove, null);
    }

    /** Joints that say nothing of pins. */
    public Joinery(double fitClearance, double gasket, double groove) {
        this(fitClearance, gasket, groove, null, null);
    }

    /** The same joints with another measured gap of the cover's joint; null for none. */
    public Joinery gapping(JointGap other) {
        return new Joinery(fitClearance, gasket, groove, pinsAbove, other);
    }

    /** Velocity above which liner needs pins, m/s. */
    public double pinVelocity() {
        return pinsAbove == null ? USUAL_PINS_ABOVE : pinsAbove;
    }

    /**
     * What a person with a hand-held or table saw can keep: half a millimetre of play, and a foam strip of 3 mm once it is
     * pressed. Common practice, no source.
     */
    public static Joinery usual() {
        return new Joinery(0.0005, 0.003, 0);
    }
}
