package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * What the room leaks besides its door, as a test with a blower gives it.
 *
 * @param flow leaked at the pressure, m³/s
 * @param pressure of the test, Pa
 * @param exponent of the law between flow and pressure, 0.5 to 1; 0.65 is usual
 * @param source measured or assumed: where this is from
 */
public record Leakage(
        @Measured(Unit.LITRE_PER_SECOND) double flow,
        @Measured(Unit.PASCAL) double pressure,
        double exponent,
        String source) {
    public Leakage {
        InvalidValue.within("flow", flow, 1e-6, 10, Unit.LITRE_PER_SECOND);
        InvalidValue.within("pressure", pressure, 1, 100, Unit.PASCAL);
        InvalidValue.within("exponent", exponent, 0.5, 1, Unit.NUMBER);
        InvalidValue.text("source", source, 400);
    }
}
