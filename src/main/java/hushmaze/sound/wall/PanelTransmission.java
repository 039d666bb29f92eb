package hushmaze.sound.wall;

import hushmaze.material.Board;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Transmission loss of a wall of one or more boards that lie on each other.
 *
 * <p>Formula: up to fc/2 the field-incidence mass law R = 20 lg(m f) - 47; from fc to 2 fc R = 20 lg(m f) - 42.4 + 10 lg[2 η
 * f / (π fc)]; between fc/2 and fc a straight line over lg f; above 2 fc 20 lg(f / 2 fc) more than at 2 fc. Never more than
 * the mass law. fc = c²/(2π) sqrt(m/B); B = E h³ / [12 (1 - ν²)] for one board. Several boards: glued, the sum about their
 * common neutral plane; separate, the plain sum of their own. First resonance of a panel a × b on simple supports: f1 =
 * c²/(4 fc) (1/a² + 1/b²).
 *
 * <p>Symbols: R in dB; m mass per area in kg/m²; f and critical frequency fc in Hz; η loss factor; B bending stiffness per
 * width in N·m; E modulus of elasticity in Pa; h thickness in m; ν = 0.3 Poisson's ratio; c speed of sound in m/s; a, b in m.
 *
 * <p>Source: mass law as read in <i>Engineering Acoustics</i>, example 12.13; the straight line between fc/2 and fc and the
 * rise above after Sharp (Noise Control Engineering, 1978), from memory; fc and f1 as in any textbook, fc compared with the
 * products fc·h printed in <i>Architectural Acoustics</i>, table 9.1.
 *
 * <p>Range: panels large to the wavelength. Below f1 a small panel is held by its stiffness and lets through less than this
 * says. Near f1 (up to 1.8 f1 if its edges are clamped) one third octave can be about 10 dB worse: own estimate for the
 * first mode alone, loss factor 0.05 with the edges, radiating as a small source. {@link BoxWalls} raises a notice.
 *
 * <p>Accuracy: 4 dB. Against twelve sheets measured in octaves (<i>Engineering Noise Control</i>, table 7.6, as read in a
 * public copy: chipboard, plywood, plasterboard, hardwood, glass) the mean deviation is 0.2 dB, the root mean square
 * 3.7 dB, the largest 11 dB (6 mm plywood at 125 Hz, better than computed). 6 mm fibreboard was measured at Rw 28 (abstract of
 * a paper on wood composites); this gives 24 at 750 kg/m³.
 *
 * <p>Differs from the source: above 2 fc the rise is 6 dB an octave, not 9: so the measured sheets do, and a thick plate
 * that shears must. The least loss factor of the layers is used. Two 13 mm plasterboards in the same table are nearer to
 * glued than to separate, so separate layers are the optimistic choice.
 */
public final class PanelTransmission {
    private static final double FIELD_INCIDENCE = 47;
    /** 20 lg(ρc / π) for ρc = 413 Pa·s/m: the normal-incidence mass law's constant. */
    private static final double NORMAL_INCIDENCE = 42.4;

    private static final double POISSON = 0.3;

    private final double mass;
    private final double criticalFrequency;
    private final double lossFactor;
    private final double soundSpeed;

    private PanelTransmission(double mass, double criticalFrequency, double lossFactor, double soundSpeed) {
        this.mass = mass;
        this.criticalFrequency = criticalFrequency;
        this.lossFactor = lossFactor;
        this.soundSpeed = soundSpeed;
    }

    /** A plate of boards glued together, innermost first; speed of sound in m/s. */
    public static PanelTransmission of(List<Board> layers, double soundSpeed) {
        return of(layers, Lamination.GLUED, soundSpeed);
    }

    /** A wall of boards, innermost first; speed of sound in m/s. */
    public static PanelTransmission of(List<Board> layers, Lamination lamination, double soundSpeed) {
        if (layers.isEmpty()) {
            throw new InvalidValue("layers", "no board", "at least one board", "");
        }
        double mass = 0;
        double lossFactor = 1;
        double separate = 0;
        for (Board board : layers) {
            mass += board.massPerArea();
            lossFactor = Math.min(lossFactor, board.lossFactor());
            separate += stiffness(List.of(board));
        }
        double stiffness = lamination == Lamination.GLUED ? stiffness(layers) : separate;
        return new PanelTransmission(mass, criticalFrequency(mass, stiffness, soundSpeed), lossFactor, soundSpeed);
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

    /** First resonance of a panel on simple supports, Hz; its sides in m. With clamped edges up to 1.8 times as high. */
    public double firstResonance(double length, double width) {
        InvalidValue.within("length", length, 1e-6, 1e6, Unit.METRE);
        InvalidValue.within("width", width, 1e-6, 1e6, Unit.METRE);
        double sides = 1 / (length * length) + 1 / (width * width);
        return soundSpeed * soundSpeed / (4 * criticalFrequency) * sides;
    }

    /** Transmission loss at the exact centres of the third octaves, dB. */
    public Spectrum transmissionLoss() {
        return Spectrum.ofFrequency(BandSet.THIRD_OCTAVE, this::transmissionLoss);
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
        double damped = Math.min(frequency, 2 * criticalFrequency);
        double loss = 20 * Math.log10(mass * frequency)
                - NORMAL_INCIDENCE
                + 10 * Math.log10(2 * lossFactor * damped / (Math.PI * criticalFrequency));
        return Math.min(massLaw(mass, frequency), loss);
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
