package hushmaze.air;

/**
 * Friction of a straight run of air.
 *
 * <p>Loss coefficient ζ = f L / D on the mean velocity, with the Darcy friction factor f = 8 [(8/Re)^12 + 1/(A +
 * B)^1.5]^(1/12), A = {2.457 ln [1 / ((7/Re)^0.9 + 0.27 ε/D)]}^16, B = (37530/Re)^16; Re Reynolds number on D, D hydraulic
 * diameter in m (four areas over the perimeter), L length in m, ε equivalent sand roughness in m.
 *
 * <p>Source: Churchill, Chemical Engineering 84(24), 1977, 91-92; constants from memory, checked against the Colebrook
 * equation. Range: every Reynolds number above zero, laminar, transition and turbulent in one formula; ε/D up to 0.05 is
 * common use; it is computed up to 0.5 and held there, since the formula turns meaningless beyond. Accuracy: within 3.5 % of Colebrook for Re from 5000 and ε/D up to 0.03;
 * the range carried is 15 % either way, our judgement for a liner's roughness that is known to a factor of two. Differs
 * from the source: none. The laminar part is that of a round pipe, f Re = 64; a rectangle has 56.9 (square) to 96 (wide
 * slot) (from memory), so below Re 2000 the factor of a flat pass is up to a third too low: the pressures there are tiny.
 */
final class ChurchillFriction {
    static final String SOURCE = "Churchill, Chemical Engineering 84(24), 1977";
    /** Share carried to either side, our judgement. */
    static final double SPREAD = 0.15;

    /** Largest relative roughness that is put into the formula. */
    private static final double MAX_RELATIVE_ROUGHNESS = 0.5;

    private ChurchillFriction() {}

    /**
     * Darcy friction factor.
     *
     * @param reynolds on the hydraulic diameter
     * @param relativeRoughness roughness over hydraulic diameter
     */
    static double factor(double reynolds, double relativeRoughness) {
        double rough = Math.min(MAX_RELATIVE_ROUGHNESS, relativeRoughness);
        double a = Math.pow(2.457 * Math.log(1 / (Math.pow(7 / reynolds, 0.9) + 0.27 * rough)), 16);
        double b = Math.pow(37_530 / reynolds, 16);
        // laminar and turbulent joined
        return 8 * Math.pow(Math.pow(8 / reynolds, 12) + 1 / Math.pow(a + b, 1.5), 1.0 / 12);
    }

    /**
     * Loss coefficient of a run.
     *
     * @param length m
     * @param diameter hydraulic diameter, m
     * @param roughness m
     * @param reynolds on the hydraulic diameter
     */
    static Zeta zeta(double length, double diameter, double roughness, double reynolds) {
        return Zeta.around(factor(reynolds, roughness / diameter) * length / diameter, SPREAD);
    }
}
