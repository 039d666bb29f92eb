package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinedSlit;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.Medium;

/**
 * The air between two lined broad faces, as a fluid of a flat section.
 *
 * <p>Formula: n² = q = (kx/k0)² of the slit between the two layers ({@link LinedSlit}), density that of air. Above k0 h = 1.2
 * the slit's cross wavenumber is held: n² = 1 - (1 - q₁) (f₁/f)², with q₁ at f₁ = 1.2 c / (2π h). So there is no step, and
 * at high frequencies n² goes to 1: a beam along the path does not see the broad faces.
 *
 * <p>Symbols: h half the clear height in m, f frequency in Hz, c speed of sound in m/s, k0 = 2πf/c in 1/m.
 *
 * <p>Source: separation of the pressure in a mode across the clear height and a field along the section; our own use of it.
 *
 * <p>Range: passes whose clear height is the same all along, lined on both broad faces alike.
 *
 * <p>Accuracy: an approximation. The mode's shape is taken to be the same everywhere, so corners, where the lining of a side meets
 * that of a broad face, and ports are not seen by it. Compared with solid solutions in a test.
 *
 * @param liner on both broad faces
 * @param clearHeight between them, m
 * @param depth of each, m
 * @param soundSpeed m/s
 */
public record BroadLinedMedium(LinerModel liner, double clearHeight, double depth, double soundSpeed)
        implements Medium {
    /** k0 h above which the slit's cross wavenumber is held; just inside the range of {@link LinedSlit}. */
    private static final double HELD_FROM = 1.2 * (1 - 1e-9);

    private static final Complex ONE = new Complex(1, 0);

    public BroadLinedMedium {
        InvalidValue.present("liner", liner);
        InvalidValue.within("clearHeight", clearHeight, 1e-4, 100, Unit.MILLIMETRE);
        InvalidValue.within("depth", depth, 1e-4, 100, Unit.MILLIMETRE);
        InvalidValue.within("soundSpeed", soundSpeed, 100, 2000, Unit.METRE_PER_SECOND);
    }

    @Override
    public Complex densityRatio(double frequency) {
        return ONE;
    }

    @Override
    public Complex squaredIndex(double frequency) {
        double highest = HELD_FROM * soundSpeed / (Math.PI * clearHeight);
        if (frequency <= highest) {
            return slit(frequency);
        }
        double ratio = highest / frequency;
        Complex cross = ONE.plus(slit(highest).times(-1));
        return ONE.plus(cross.times(-ratio * ratio));
    }

    private Complex slit(double frequency) {
        return LinedSlit.axialSquared(clearHeight, depth, liner, frequency, soundSpeed)
                .orElseThrow(() -> new InvalidValue(
                        "broad lining of " + depth + " m beside a clear height of " + clearHeight + " m",
                        Double.toString(frequency),
                        "a frequency at which the mode of the slit can be found",
                        "Hz"));
    }
}
