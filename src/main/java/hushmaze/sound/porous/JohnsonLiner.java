package hushmaze.sound.porous;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Fibrous liner with a stiff frame as an equivalent fluid from the physics of its pores: right in the limits of low and high
 * frequency, where a fitted model is not.
 *
 * <p>Formula, time factor exp(+jωt): ρ = (α ρ0 / φ) (1 + σφ / (jω ρ0 α) √(1 + jω 4 α² η ρ0 / (σ² Λ² φ²))); K = (γ P0 / φ) /
 * (γ - (γ - 1) / (1 + 8 η / (jω Λ'² Pr ρ0) √(1 + jω ρ0 Pr Λ'² / (16 η)))); Z = √(ρ K), k = ω √(ρ / K), each with the root
 * of a passive fluid. Lengths of fibres: Λ = √(8 η α / (σ φ)) / s with s = 1, and Λ' = 2 Λ.
 *
 * <p>Symbols: ρ and K density and bulk modulus of the liner as a whole, kg/m³ and Pa; ω = 2πf in 1/s; σ airflow resistivity
 * in Pa·s/m²; φ porosity; α tortuosity; Λ, Λ' viscous and thermal length in m; ρ0, η, γ, Pr density (kg/m³), viscosity
 * (Pa·s), ratio of specific heats and Prandtl number of air; P0 pressure of the air, Pa.
 *
 * <p>Source: density by Johnson, Koplik and Dashen (J. Fluid Mech. 176, 1987), modulus by Champoux and Allard (J. Appl.
 * Phys. 70, 1991), Λ' = 2 Λ for fibres across the wave by Allard and Champoux (J. Acoust. Soc. Am. 91, 1992); all from
 * memory. Porosity 0.98, tortuosity 1 and shape factor s = 1 are round figures for mineral and polyester fibres, from memory.
 * Air at 20 °C and 101 325 Pa: η = 1.813·10⁻⁵, ρ0 = 1.2041, γ = 1.40, Pr = 0.71, from memory.
 *
 * <p>Range: waves long to the pores (all of 10 Hz to 20 kHz); the frame does not move, so not for a light film or foam
 * near its own resonance.
 *
 * <p>Accuracy: within 7 % (impedance) and 11 % (wavenumber) of {@link MikiLiner} where that was fitted; σ is known to a
 * factor of two at best.
 *
 * <p>Differs from the source: divided by the porosity, so that pressure and volume flow go on at the liner's face.
 *
 * @param flowResistivity σ, Pa·s/m²
 */
public record JohnsonLiner(double flowResistivity) implements LinerModel {
    static final double POROSITY = 0.98;
    static final double TORTUOSITY = 1;
    static final double AIR_DENSITY = 1.2041;
    static final double VISCOSITY = 1.813e-5;
    static final double HEAT_RATIO = 1.40;
    static final double PRANDTL = 0.71;
    private static final double SHAPE = 1;

    public JohnsonLiner {
        InvalidValue.within("flowResistivity", flowResistivity, 1, 1e7, Unit.PASCAL_SECOND_PER_SQUARE_METRE);
    }

    @Override
    public Complex impedanceRatio(double frequency) {
        // Z / rho0 c0 = sqrt(rho/rho0 * K/K0)
        return densityRatio(frequency).times(modulusRatio(frequency)).sqrt();
    }

    @Override
    public Complex wavenumberRatio(double frequency) {
        // k / k0 = sqrt(rho/rho0 / (K/K0))
        return densityRatio(frequency).dividedBy(modulusRatio(frequency)).sqrt();
    }

    /** Viscous length Λ, m. */
    double viscousLength() {
        return Math.sqrt(8 * VISCOSITY * TORTUOSITY / (flowResistivity * POROSITY)) / SHAPE;
    }

    /** Thermal length Λ', m. */
    double thermalLength() {
        return 2 * viscousLength();
    }

    /** Density over that of air. */
    Complex densityRatio(double frequency) {
        double omega = 2 * Math.PI * frequency;
        double length = flowResistivity * viscousLength() * POROSITY;
        // G = sqrt(1 + j omega 4 alpha^2 eta rho0 / (sigma Lambda phi)^2)
        Complex g = new Complex(1, omega * 4 * TORTUOSITY * TORTUOSITY * VISCOSITY * AIR_DENSITY / (length * length))
                .sqrt();
        double drag = flowResistivity * POROSITY / (omega * AIR_DENSITY * TORTUOSITY);
        // alpha / phi (1 + sigma phi / (j omega rho0 alpha) G)
        Complex one = new Complex(1, 0);
        return one.plus(g.times(new Complex(0, -drag))).times(TORTUOSITY / POROSITY);
    }

    /** Bulk modulus over that of air without loss of heat. */
    Complex modulusRatio(double frequency) {
        double omega = 2 * Math.PI * frequency;
        double b = omega * AIR_DENSITY * PRANDTL * thermalLength() * thermalLength() / VISCOSITY;
        Complex one = new Complex(1, 0);
        // G' = sqrt(1 + j omega rho0 Pr Lambda'^2 / (16 eta)); H' = 1 + 8 eta / (j omega Lambda'^2 Pr rho0) G'
        Complex g = new Complex(1, b / 16).sqrt();
        Complex h = one.plus(g.times(new Complex(0, -8 / b)));
        Complex below = new Complex(HEAT_RATIO, 0).plus(one.dividedBy(h).times(1 - HEAT_RATIO));
        return new Complex(1 / POROSITY, 0).dividedBy(below);
    }
}
