package hushmaze.assess;

import hushmaze.quantity.Band;

/**
 * What a pattern of measured and predicted reductions points to; the words are made later.
 *
 * @param kind what it is
 * @param from lowest band it shows in
 * @param to highest band it shows in
 * @param amount how much, dB: shortfall or rise; null where no number belongs to it
 */
public record Finding(Kind kind, Band from, Band to, Double amount) {
    /** What may be found. */
    public enum Kind {
        /** No band is below the predicted range. */
        AS_PREDICTED,
        /** Half the bands or more are above the predicted range. */
        MORE_THAN_PREDICTED,
        /** Short by the same amount everywhere. */
        SAME_EVERYWHERE,
        /** Short by much the same amount from 1 kHz up, or reduced by the same there, and not so below. */
        GAP_OR_THIN_PANEL,
        /** Louder with the fan on. */
        FLOW_NOISE,
        /** Short where half a wave or several fit into a pass, and less so between. */
        LINER_MISSING,
        /** A little short at low frequencies only, close to the background. */
        LOW_NEAR_BACKGROUND,
        /** A little short at low frequencies only. */
        LOW_FEW_MODES,
        /** Short in one or two bands only. */
        SINGLE_BANDS,
        /** Short with no pattern that names a cause. */
        UNEXPLAINED,
        /** Background hides some bands. */
        BACKGROUND_HIDES,
        /** No band can be held against the prediction. */
        NOTHING_TO_JUDGE
    }
}
