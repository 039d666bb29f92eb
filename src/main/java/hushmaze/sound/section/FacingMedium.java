package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.wave.Medium;

/**
 * A limp film or cloth on a liner, as a fluid that fills a thin block.
 *
 * <p>Formula, time factor exp(+jωt): ρ = (m + R / (jω)) / t, bulk modulus {@value #STIFFNESS} times that of air, so that n² =
 * ρ / ({@value #STIFFNESS} ρ0): over the block's thickness pressure falls by (jω m + R) times the velocity, and the block
 * hardly springs. With the springiness of air in it a heavy film would already be half a wave long at some kHz.
 *
 * <p>Symbols: m mass per area in kg/m²; R flow resistance in Pa·s/m; t thickness of the block in m, across which the
 * film lies; ρ0 density of air in kg/m³; ω = 2πf in 1/s.
 *
 * <p>Source: mass law of a limp sheet and Darcy's law for a thin layer, textbook, from memory.
 *
 * <p>Range: blocks thin to the wave; a film that is free to move, with air on both sides or a soft liner behind it, and
 * not a stretched or stiff one. Sound along the block meets the same density.
 *
 * <p>Accuracy: that of m and R; the loss of a film across a duct comes out within 0.001 dB of the closed form. The air that the block
 * takes the place of is missing: a path is short by t.
 *
 * @param massPerArea m, kg/m², above 0: a cloth too has a mass
 * @param flowResistance R, Pa·s/m; 0 for a film, which lets no air through
 * @param thickness t of the block, m
 * @param airDensity ρ0, kg/m³
 */
public record FacingMedium(double massPerArea, double flowResistance, double thickness, double airDensity)
        implements Medium {
    /** Bulk modulus of the block over that of air. */
    private static final int STIFFNESS = 1000;

    public FacingMedium {
        InvalidValue.within("massPerArea", massPerArea, 1e-6, 100, Unit.NUMBER);
        InvalidValue.within("flowResistance", flowResistance, 0, 1e6, Unit.NUMBER);
        InvalidValue.within("thickness", thickness, 1e-6, 0.01, Unit.MILLIMETRE);
        InvalidValue.within("airDensity", airDensity, 0.1, 10, Unit.KILOGRAM_PER_CUBIC_METRE);
    }

    @Override
    public Complex densityRatio(double frequency) {
        double perArea = thickness * airDensity;
        return new Complex(massPerArea / perArea, -flowResistance / (2 * Math.PI * frequency * perArea));
    }

    @Override
    public Complex squaredIndex(double frequency) {
        return densityRatio(frequency).times(1.0 / STIFFNESS);
    }
}
