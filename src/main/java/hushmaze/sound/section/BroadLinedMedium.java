package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.LinedSlit;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.Medium;
import java.util.Optional;

/**
 * The air between two lined broad faces, as a fluid of a flat section.
 *
 * <p>Formula: n² = q = (kx/k0)² of the slit between the two layers ({@link LinedSlit}); density over that of air r = h / (h +
 * d/(ζγ)), the layers' share of the flow for long waves. Above k0 h = 1.2 the density goes to that of air, r = 1 - (1 - r₁)
 * (f₁/f)², and so does n² where the slit gives no root: then its cross wavenumber is held, n² = 1 - (1 - q₁) (f₁/f)². r₁ and
 * q₁ are those at f₁ = 1.2 c / (2π h), so that there is no step; a beam of high frequency does not see the broad faces.
 *
 * <p>Symbols: h half the clear height and d the depth of each layer in m; ζγ density of the layer over that of air; f
 * frequency in Hz, c speed of sound in m/s, k0 = 2πf/c in 1/m.
 *
 * <p>Source: separation of the pressure into a mode across the clear height and a field along the section; our own use of it.
 *
 * <p>Range: passes whose clear height is the same all along, lined on both broad faces alike.
 *
 * <p>Accuracy: an approximation. The mode is taken to be the same everywhere, so corners, where the lining of a side meets that
 * of a broad face, and ports are not seen by it. Straight passes lined on all four sides lose 5 to 15 % less in dB than in
 * solutions in all three directions, 63 to 400 Hz, and up to a quarter less above 437 Hz where the cross wavenumber is held (clear
 * heights 200 to 300 mm).
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
        double top = highest();
        return frequency <= top ? share(frequency) : fading(share(top), frequency / top);
    }

    @Override
    public Complex squaredIndex(double frequency) {
        double top = highest();
        return frequency <= top
                ? slit(frequency).orElseThrow(() -> noRoot(frequency))
                : slit(frequency).orElseGet(() -> fading(slit(top).orElseThrow(() -> noRoot(top)), frequency / top));
    }

    /** f₁, Hz. */
    private double highest() {
        return HELD_FROM * soundSpeed / (Math.PI * clearHeight);
    }

    private Optional<Complex> slit(double frequency) {
        return LinedSlit.axialSquared(clearHeight, depth, liner, frequency, soundSpeed);
    }

    /** h / (h + d/(ζγ)). */
    private Complex share(double frequency) {
        Complex half = new Complex(clearHeight / 2, 0);
        Complex layer = liner.impedanceRatio(frequency).times(liner.wavenumberRatio(frequency));
        return half.dividedBy(half.plus(new Complex(depth, 0).dividedBy(layer)));
    }

    /** 1 - (1 - value) / ratio². */
    private static Complex fading(Complex value, double ratio) {
        Complex from = ONE.plus(value.times(-1));
        return ONE.plus(from.times(-1 / (ratio * ratio)));
    }

    private InvalidValue noRoot(double frequency) {
        return new InvalidValue(
                "broad lining of " + depth + " m beside a clear height of " + clearHeight + " m",
                Double.toString(frequency),
                "a frequency at which the mode of the slit can be found",
                "Hz");
    }
}
