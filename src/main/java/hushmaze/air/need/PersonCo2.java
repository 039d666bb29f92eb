package hushmaze.air.need;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Carbon dioxide that one person gives off, by two formulas.
 *
 * <p>Formulas: by body area V = 0.00276 A M RQ / (0.23 RQ + 0.77) L/s with RQ 0.83 and the body area A = 0.20247 h^0.725
 * w^0.425; by basal rate V = RQ B M (T / P) · 0.000211 L/s with RQ 0.85. A in m², M metabolic rate in met, RQ respiratory
 * quotient, h height in m, w mass in kg, B basal metabolic rate in MJ a day, T absolute temperature in K, P pressure in
 * kPa. Results here are in m³/s.
 *
 * <p>Source: the first is the older form of ASTM D6245 and the ASHRAE handbook, as read in a published calculation of it;
 * the second is Persily and de Jonge, Indoor Air 27, 2017, from memory (ASTM D6245-18, as read, confirms RQ 0.85 and the
 * inputs). Range: adults at 0.8 to 10 met. Accuracy: about 20 % between persons, our judgement; the two differ by 7 % for
 * a seated adult. Differs from the source: none.
 */
public final class PersonCo2 {
    /** Respiratory quotient of the older form. */
    private static final double RQ_BODY_AREA = 0.83;
    /** Respiratory quotient of the newer form. */
    private static final double RQ_BASAL = 0.85;
    /** Factor of the older form, L/s for each m² and met. */
    private static final double AREA_FACTOR = 0.00276;
    /** Factor of the newer form, L/s · kPa/K for each MJ a day and met. */
    private static final double BASAL_FACTOR = 0.000211;

    private static final double PASCAL_PER_KILOPASCAL = 1000;
    private static final double LITRES = 1000;

    private PersonCo2() {}

    /**
     * Area of the body, m².
     *
     * @param height m
     * @param mass kg
     */
    public static double bodyArea(double height, double mass) {
        InvalidValue.within("height", height, 0.4, 2.5, Unit.METRE);
        InvalidValue.within("mass", mass, 3, 400, Unit.KILOGRAM);
        // DuBois area
        return 0.20247 * Math.pow(height, 0.725) * Math.pow(mass, 0.425);
    }

    /**
     * By the body area, m³/s.
     *
     * @param bodyArea m²
     * @param met metabolic rate, met
     */
    public static double byBodyArea(double bodyArea, double met) {
        InvalidValue.within("bodyArea", bodyArea, 0.2, 4, Unit.SQUARE_METRE);
        InvalidValue.within("met", met, 0.5, 12, Unit.NUMBER);
        return AREA_FACTOR * bodyArea * met * RQ_BODY_AREA / (0.23 * RQ_BODY_AREA + 0.77) / LITRES;
    }

    /**
     * By the basal metabolic rate, m³/s.
     *
     * @param basalRate MJ a day
     * @param met metabolic rate, met
     * @param kelvin absolute temperature of the air, K
     * @param pressure of the air, Pa
     */
    public static double byBasalRate(double basalRate, double met, double kelvin, double pressure) {
        InvalidValue.within("basalRate", basalRate, 1, 20, Unit.NUMBER);
        InvalidValue.within("met", met, 0.5, 12, Unit.NUMBER);
        InvalidValue.within("temperature", kelvin, 200, 350, Unit.NUMBER);
        InvalidValue.within("pressure", pressure, 2e4, 2e5, Unit.PASCAL);
        return RQ_BASAL * basalRate * met * (kelvin / (pressure / PASCAL_PER_KILOPASCAL)) * BASAL_FACTOR / LITRES;
    }
}
