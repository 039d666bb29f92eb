package hushmaze.air;

/**
 * Where air leaves an opening into a large space and all its dynamic pressure is lost.
 *
 * <p>Loss coefficient on the velocity in the opening: ζ = 1.
 *
 * <p>Source: sudden widening to an endless area, Handbook of Hydraulic Resistance, diagram 4-1; printed as 1.0 in
 * ventilation tables. Range: Re from 3300; used at every Re. Accuracy: 1 for an even velocity; the range carried is 10 %
 * either way, our judgement, because a jet straight after a turn is uneven. Differs from the source: none.
 */
final class Exit {
    static final String SOURCE = "Handbook of Hydraulic Resistance, diagram 4-1";
    /** Loss coefficient. */
    static final Zeta ZETA = Zeta.around(1, 0.10);

    private Exit() {}
}
