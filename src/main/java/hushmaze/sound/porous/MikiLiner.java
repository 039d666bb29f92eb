package hushmaze.sound.porous;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * Fibrous liner as an equivalent fluid: characteristic impedance and wavenumber, and the absorption of a layer on a rigid
 * wall at normal incidence.
 *
 * <p>Formula, time factor exp(+jωt), X = 1000 f / σ: Zc / ρc = 1 + 5.50 X^-0.632 - j 8.43 X^-0.632; k / k0 = 1 + 7.81
 * X^-0.618 - j 11.41 X^-0.618. Layer on a rigid wall: Zs = -j Zc cot(k d), α = 1 - |(Zs - ρc) / (Zs + ρc)|².
 *
 * <p>Symbols: f frequency in Hz; σ airflow resistivity in Pa·s/m²; ρc impedance of air in Pa·s/m; k0 = 2πf/c in 1/m; d
 * thickness in m; α between 0 and 1.
 *
 * <p>Source: Miki's model (J. Acoust. Soc. Jpn. (E) 11, 1990; citation from memory), coefficients as read in two published
 * descriptions of the model, which agree.
 *
 * <p>Range: fitted for 0.01 &lt; f/σ &lt; 1 (SI), porosity near one; said to behave well below 0.01,
 * where it is an extrapolation; far below (f/σ under 0.001) the absorption can come out slightly negative.
 *
 * <p>Accuracy: σ of liners is known to a factor of two at best, and that is larger than the model's own error.
 *
 * <p>Differs from the source: nothing.
 *
 * @param flowResistivity σ, Pa·s/m²
 */
public record MikiLiner(double flowResistivity) implements LinerModel {
    private static final double IMPEDANCE_RE = 5.50;
    private static final double IMPEDANCE_IM = 8.43;
    private static final double IMPEDANCE_POWER = -0.632;
    private static final double WAVENUMBER_RE = 7.81;
    private static final double WAVENUMBER_IM = 11.41;
    private static final double WAVENUMBER_POWER = -0.618;
    /** Lower end of the range of f/σ, m³/kg. */
    private static final double FITTED_FROM = 0.01;

    public MikiLiner {
        InvalidValue.within("flowResistivity", flowResistivity, 1, 1e7, Unit.PASCAL_SECOND_PER_SQUARE_METRE);
    }

    @Override
    public Complex impedanceRatio(double frequency) {
        double power = Math.pow(1000 * frequency / flowResistivity, IMPEDANCE_POWER);
        return new Complex(1 + IMPEDANCE_RE * power, -IMPEDANCE_IM * power);
    }

    @Override
    public Complex wavenumberRatio(double frequency) {
        double power = Math.pow(1000 * frequency / flowResistivity, WAVENUMBER_POWER);
        return new Complex(1 + WAVENUMBER_RE * power, -WAVENUMBER_IM * power);
    }

    /**
     * Lowest frequency the model was fitted to, Hz: f/σ = 0.01 m³/kg. Below it the figures are an extrapolation; the real
     * part of the density, ζγ, is even negative below 0.0065 σ, and below 0.001 σ the layer would give energy.
     */
    public double fittedFrom() {
        return FITTED_FROM * flowResistivity;
    }

    /** Highest frequency the model was fitted to, Hz: f/σ = 1 m³/kg. Above it the liner is nearly air. */
    public double fittedTo() {
        return flowResistivity;
    }
}
