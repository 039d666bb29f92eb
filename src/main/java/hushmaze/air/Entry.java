package hushmaze.air;

/**
 * Where air comes out of a space into a flush, sharp-edged opening.
 *
 * <p>Loss coefficient on the velocity in the opening: ζ = 0.5.
 *
 * <p>Source: Handbook of Hydraulic Resistance, diagram 3-1, an opening flush with its wall, as read in a duct design text;
 * other handbooks give 0.50 to 0.57. Range: Re from 1e4; used at every Re. Accuracy: the range carried is 0.45 (10 %
 * below, our judgement) to 0.57 (the largest of the handbooks). Differs from the source: none.
 */
final class Entry {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagram 3-1";
    /** Loss coefficient: low our judgement, high the largest handbook value. */
    static final Zeta ZETA = new Zeta(0.45, 0.5, 0.57);

    private Entry() {}
}
