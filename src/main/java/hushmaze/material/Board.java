package hushmaze.material;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A sheet material for panels.
 *
 * @param name as bought
 * @param thickness real, measured thickness, m (3 mm to 100 mm)
 * @param density kg/m³
 * @param youngModulus modulus of elasticity in bending, Pa; sets the coincidence frequency
 * @param lossFactor internal loss factor, 0 to 1
 * @param grain whether panels must keep their direction on the sheet
 * @param source where the numbers are from
 */
public record Board(
        String name,
        @Measured(Unit.MILLIMETRE) double thickness,
        @Measured(Unit.KILOGRAM_PER_CUBIC_METRE) double density,
        @Measured(Unit.GIGAPASCAL) double youngModulus,
        double lossFactor,
        boolean grain,
        String source) {
    public Board {
        InvalidValue.text("name", name, 80);
        InvalidValue.within("thickness", thickness, 0.003, 0.1, Unit.MILLIMETRE);
        InvalidValue.within("density", density, 100, 9000, Unit.KILOGRAM_PER_CUBIC_METRE);
        InvalidValue.within("youngModulus", youngModulus, 1e7, 3e11, Unit.GIGAPASCAL);
        InvalidValue.within("lossFactor", lossFactor, 0.0001, 1, Unit.NUMBER);
        InvalidValue.text("source", source, 400);
    }

    /** The same under another name. */
    public Board named(String other) {
        return new Board(other, thickness, density, youngModulus, lossFactor, grain, source);
    }

    /** Mass per area, kg/m². */
    public double massPerArea() {
        return density * thickness;
    }
}
