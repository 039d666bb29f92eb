package hushmaze.sound.porous;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.Optional;

/**
 * How sound dies away along a slit between two walls that both carry a porous layer on a rigid back, at low frequencies.
 *
 * <p>Formula: with q = (kx/k0)² and T = √(γ²-q)/(ζ γ) tan(k0 d √(γ²-q)), √(1-q) tan(k0 h √(1-q)) + T / (1 + j z T) = 0; the attenuation
 * is -8.686 k0 Im √q.
 *
 * <p>Symbols: k0 = 2πf/c in 1/m; h half the clear width and d the depth of each layer in m; γ = k/k0 and ζ = Z/(ρc) of the
 * layer ({@link MikiLiner}), z impedance of its facing over that of air, 0 if bare; kx wavenumber along the slit. The layer lets sound run along inside it (bulk reaction).
 *
 * <p>The root is found by the secant method from the limit for long waves, q = (h + d γ/ζ) / (h + d/(ζ γ)), in which
 * compressibilities and inverse densities of air and layer are averaged over the section.
 *
 * <p>Source: textbook mode of a slit with bulk-reacting walls; compared in a test with roots computed elsewhere.
 *
 * <p>Range: waves long to the slit, k0 h below {@value #LONGEST}; above it other modes may decay less. The layer's
 * model is fitted to f/σ above 0.01 m³/kg and is used below it too.
 *
 * <p>Accuracy: that of the layer's flow resistivity, known to a factor of 2.
 */
public final class LinedSlit {
    /** Largest k0 h for which the mode that grows out of the plane wave is taken to be the least attenuated. */
    static final double LONGEST = 1.2;

    private static final int STEPS = 40;
    private static final double SMALL = 1e-10;

    private LinedSlit() {}

    /**
     * (kx/k0)² of a slit; empty when the frequency is too high for it, or no root is found.
     *
     * @param clearWidth between the faces of the layers, m
     * @param depth of each layer, m
     * @param liner of both layers
     * @param frequency Hz
     * @param soundSpeed m/s
     */
    public static Optional<Complex> axialSquared(
            double clearWidth, double depth, LinerModel liner, double frequency, double soundSpeed) {
        InvalidValue.within("clearWidth", clearWidth, 1e-6, 100, Unit.MILLIMETRE);
        InvalidValue.within("depth", depth, 1e-6, 100, Unit.MILLIMETRE);
        double k0 = 2 * Math.PI * frequency / soundSpeed;
        double h = clearWidth / 2;
        if (k0 * h > LONGEST) {
            return Optional.empty();
        }
        Complex gamma = liner.wavenumberRatio(frequency);
        Complex zeta = liner.impedanceRatio(frequency);
        Complex facing = liner.facingRatio(frequency).times(new Complex(0, 1));
        Slit slit = new Slit(k0 * h, k0 * depth, gamma.times(gamma), zeta.times(gamma), facing);
        Complex springs = gamma.dividedBy(zeta).times(depth).plus(new Complex(h, 0));
        Complex masses = new Complex(depth, 0).dividedBy(slit.zetaGamma()).plus(new Complex(h, 0));
        return secant(slit, springs.dividedBy(masses));
    }

    /** The equation's left side; lengths in waves, the layer's γ² and ζγ, jz of the facing. */
    private record Slit(double h, double d, Complex gammaSquared, Complex zetaGamma, Complex facing) {
        Complex misfit(Complex q) {
            Complex air = rootTangent(new Complex(1 - q.re(), -q.im()), h);
            Complex layer = rootTangent(gammaSquared.plus(q.times(-1)), d);
            Complex open = layer.dividedBy(zetaGamma);
            return air.plus(open.dividedBy(open.times(facing).plus(new Complex(1, 0))));
        }

        /** √z tan(a √z): the same for both roots. */
        private static Complex rootTangent(Complex z, double a) {
            Complex root = z.sqrt();
            double x = 2 * a * root.re();
            double y = 2 * a * root.im();
            double below = Math.cos(x) + Math.cosh(y);
            return root.times(new Complex(Math.sin(x) / below, Math.sinh(y) / below));
        }
    }

    private static Optional<Complex> secant(Slit slit, Complex start) {
        Complex a = start;
        Complex b = start.times(1 + 1e-4);
        Complex atA = slit.misfit(a);
        for (int i = 0; i < STEPS; i++) {
            Complex atB = slit.misfit(b);
            Complex rise = atB.plus(atA.times(-1));
            if (rise.absSquared() == 0) {
                break;
            }
            Complex step = atB.times(b.plus(a.times(-1))).dividedBy(rise);
            a = b;
            atA = atB;
            b = b.plus(step.times(-1));
            if (step.absSquared() < SMALL * SMALL * b.absSquared()) {
                return Optional.of(b);
            }
        }
        return Optional.empty();
    }
}
