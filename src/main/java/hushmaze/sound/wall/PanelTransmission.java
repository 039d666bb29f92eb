package hushmaze.sound.wall;

import hushmaze.material.Board;
import hushmaze.quantity.InvalidValue;
import java.util.List;

/**
 * Transmission loss of one to three boards glued into one plate.
 *
 * <p>Formula: up to fc/2 the field-incidence mass law R = 20 lg(m f) - 47; from fc up R = 20 lg(m f) - 42.4 + 10 lg[2 η f /
 * (π fc)], but no more than the mass law; between them a straight line over lg f. fc = c²/(2π) sqrt(m/B); B = E h³ / [12 (1
 * - ν²)] for one board, for several the sum about their common neutral plane.
 *
 * <p>Symbols: R in dB; m mass per area in kg/m²; f and critical frequency fc in Hz; η loss factor; B bending stiffness per
 * width in N·m; E modulus of elasticity in Pa; h thickness in m; ν = 0.3 Poisson's ratio; c speed of sound in m/s.
 *
 * <p>Source: mass law as read in <i>Engineering Acoustics</i>, example 12.13; the plateau between fc/2 and fc and the rise
 * above after Sharp (Noise Control Engineering, 1978), from memory; fc as in any textbook, compared with the products fc·h
 * printed in <i>Architectural Acoustics</i>, table 9.1.
 *
 * <p>Range: panels large to the wavelength. Below the first resonance of a small panel its stiffness makes it better than
 * this.
 *
 * <p>Accuracy: 3 dB away from fc, 5 dB near it; the modulus of fibreboard alone moves fc by a tenth.
 *
 * <p>Differs from the source: the least loss factor of the layers is used; boards that are screwed but not glued keep a
 * higher fc than this gives.
 */
public final class PanelTransmission {
    private static final double FIELD_INCIDENCE = 47;
    /** 20 lg(ρc / π) for ρc = 413 Pa·s/m: the normal-incidence mass law's constant. */
    private static final double NORMAL_INCIDENCE = 42.4;

    private static final double POISSON = 0.3;

    private final double mass;
    private final double criticalFrequency;
    private final double lossFactor;

    private PanelTransmission(double mass, double criticalFrequency, double lossFactor) {
        this.mass = mass;
        this.criticalFrequency = criticalFrequency;
        this.lossFactor = lossFactor;
    }

    /** A plate of boards glued together, innermost first; speed of sound in m/s. */
    public static PanelTransmission of(List<Board> layers, double soundSpeed) {
        if (layers.isEmpty()) {
            throw new InvalidValue("layers", "no board", "at least one board", "");
        }
        double mass = 0;
        double lossFactor = 1;
        for (Board board : layers) {
            mass += board.massPerArea();
            lossFactor = Math.min(lossFactor, board.lossFactor());
        }
        return new PanelTransmission(mass, criticalFrequency(mass, stiffness(layers), soundSpeed), lossFactor);
    }

    /** Field-incidence mass law, dB: mass per area in kg/m², frequency in Hz. */
    public static double massLaw(double massPerArea, double frequency) {
        return 20 * Math.log10(massPerArea * frequency) - FIELD_INCIDENCE;
    }

    /** Critical frequency, Hz: mass per area in kg/m², bending stiffness per width in N·m, speed of sound in m/s. */
    public static double criticalFrequency(double massPerArea, double stiffness, double soundSpeed) {
        return soundSpeed * soundSpeed / (2 * Math.PI) * Math.sqrt(massPerArea / stiffness);
    }

    /** Mass per area, kg/m². */
    public double massPerArea() {
        return mass;
    }

    /** Hz. */
    public double criticalFrequency() {
        return criticalFrequency;
    }

    /** Transmission loss at a frequency in Hz, dB, at least zero. */
    public double transmissionLoss(double frequency) {
        double half = criticalFrequency / 2;
        double loss;
        if (frequency <= half) {
            loss = massLaw(mass, frequency);
        } else if (frequency >= criticalFrequency) {
            loss = aboveCoincidence(frequency);
        } else {
            double from = massLaw(mass, half);
            double share = Math.log(frequency / half) / Math.log(2);
            loss = from + share * (aboveCoincidence(criticalFrequency) - from);
        }
        return Math.max(0, loss);
    }

    private double aboveCoincidence(double frequency) {
        double damped = 20 * Math.log10(mass * frequency)
                - NORMAL_INCIDENCE
                + 10 * Math.log10(2 * lossFactor * frequency / (Math.PI * criticalFrequency));
        return Math.min(massLaw(mass, frequency), damped);
    }

    /** Bending stiffness per width of layers glued together, N·m. */
    static double stiffness(List<Board> layers) {
        double stretch = 0;
        double moment = 0;
        double low = 0;
        for (Board board : layers) {
            stretch += board.youngModulus() * board.thickness();
            moment += board.youngModulus() * board.thickness() * (low + board.thickness() / 2);
            low += board.thickness();
        }
        double neutral = moment / stretch;
        double sum = 0;
        low = 0;
        for (Board board : layers) {
            double h = board.thickness();
            double arm = low + h / 2 - neutral;
            sum += board.youngModulus() * (h * h * h / 12 + h * arm * arm);
            low += h;
        }
        return sum / (1 - POISSON * POISSON);
    }
}
