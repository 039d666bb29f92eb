package hushmaze.assess;

import hushmaze.quantity.Band;

/**
 * Measured against predicted in one band.
 *
 * @param band octave or third octave
 * @param before level without the box, dB; null where there is none
 * @param after level with the box, dB; null where there is none
 * @param reduction before less after, dB; null where it cannot be said
 * @param uncertainty of the reduction, dB; null without one
 * @param overBackground of the reading with the box, dB; null without a background
 * @param atLeast whether the reduction may be more, because background hides the rest
 * @param low pessimistic edge of the predicted insertion loss, dB
 * @param likely predicted insertion loss, dB
 * @param high optimistic edge of the predicted insertion loss, dB
 * @param verdict what it comes to
 */
public record ComparedBand(
        Band band,
        Double before,
        Double after,
        Double reduction,
        Double uncertainty,
        Double overBackground,
        boolean atLeast,
        double low,
        double likely,
        double high,
        Verdict verdict) {
    /** How a measured band stands to the predicted range. */
    public enum Verdict {
        /** Between low and high, or outside by no more than the uncertainty. */
        WITHIN,
        /** Less than low by more than the uncertainty. */
        BELOW_LOW,
        /** More than high by more than the uncertainty. */
        ABOVE_HIGH,
        /** At least as much as low; background hides whether more. */
        NOT_BELOW_LOW,
        /** Background hides too much. */
        HIDDEN,
        /** The readings do not cover the band. */
        NOT_MEASURED
    }

    /** Whether the band can be held against the prediction. */
    boolean judged() {
        return verdict != Verdict.HIDDEN && verdict != Verdict.NOT_MEASURED;
    }

    boolean below() {
        return verdict == Verdict.BELOW_LOW;
    }

    /** Likely less measured, dB. */
    double shortfall() {
        return likely - reduction;
    }

    static Verdict verdict(Double reduction, Double uncertainty, boolean atLeast, double low, double high) {
        if (reduction - uncertainty > high) {
            return Verdict.ABOVE_HIGH;
        }
        if (atLeast) {
            return reduction >= low ? Verdict.NOT_BELOW_LOW : Verdict.HIDDEN;
        }
        return reduction + uncertainty < low ? Verdict.BELOW_LOW : Verdict.WITHIN;
    }
}
