package hushmaze.air;

/**
 * One loss of pressure along the path.
 *
 * @param key what it is, a key of the wording: "entry", "friction", "turn90", "turn180", "areaChange", "exit", "grille",
 *     "louvre", "filter", "knownLoss", "flexibleDuct", "collar"
 * @param part which part it belongs to: "pass 1", "turn 2", "opening port"
 * @param source method and where it is published
 * @param zetaLow low loss coefficient, on {@code velocity}
 * @param zeta likely loss coefficient
 * @param zetaHigh high loss coefficient
 * @param velocity mean air velocity the coefficients are for, m/s
 * @param dynamicPressure density times velocity squared over two, Pa
 */
public record Loss(
        String key,
        String part,
        String source,
        double zetaLow,
        double zeta,
        double zetaHigh,
        double velocity,
        double dynamicPressure) {
    /** Low pressure loss, Pa. */
    public double pressureLow() {
        return zetaLow * dynamicPressure;
    }

    /** Likely pressure loss, Pa. */
    public double pressure() {
        return zeta * dynamicPressure;
    }

    /** High pressure loss, Pa. */
    public double pressureHigh() {
        return zetaHigh * dynamicPressure;
    }
}
