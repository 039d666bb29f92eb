package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.Medium;

/**
 * A limp film or cloth on a liner, as a fluid that fills a thin block.
 *
 * <p>Formula, time factor exp(+jωt): density over that of air z / (j k0 t), bulk modulus {@value #STIFFNESS} times that of air: over
 * the block's thickness pressure falls by the facing's impedance times the velocity, and the block hardly springs. With the
 * springiness of air in it a heavy film would already be half a wave long at some kHz.
 *
 * <p>Symbols: z impedance of the facing over that of air ({@link LinerModel#facingRatio}); t thickness of the block, across which the
 * facing lies, in m; k0 = 2πf/c in 1/m.
 *
 * <p>Source: textbook; our own use of it.
 *
 * <p>Range: blocks thin to the wave. Sound along the block meets the same density.
 *
 * <p>Accuracy: that of z; the loss of a film across a duct comes out within 0.001 dB of the closed form. What the block takes the place
 * of is missing: a path or a liner is short by t.
 *
 * @param liner on whose face it lies
 * @param thickness t of the block, m
 * @param soundSpeed c, m/s
 */
public record FacingMedium(LinerModel liner, double thickness, double soundSpeed) implements Medium {
    /** Bulk modulus of the block over that of air. */
    private static final int STIFFNESS = 1000;

    public FacingMedium {
        InvalidValue.present("liner", liner);
        InvalidValue.within("thickness", thickness, 1e-6, 0.01, Unit.MILLIMETRE);
        InvalidValue.within("soundSpeed", soundSpeed, 100, 2000, Unit.METRE_PER_SECOND);
    }

    @Override
    public Complex densityRatio(double frequency) {
        double waves = 2 * Math.PI * frequency / soundSpeed * thickness;
        return liner.facingRatio(frequency).dividedBy(new Complex(0, waves));
    }

    @Override
    public Complex squaredIndex(double frequency) {
        return densityRatio(frequency).times(1.0 / STIFFNESS);
    }
}
