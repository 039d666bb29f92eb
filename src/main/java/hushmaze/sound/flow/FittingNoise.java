package hushmaze.sound.flow;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Noise of the air at anything that costs pressure, from its loss coefficient.
 *
 * <p>Formula: Lw = 6 + 60 lg v + 18 lg ζ + 10 lg S + dL per octave, dL = -3.85 - 9.29 (lg(f/v) - 1.224)².
 *
 * <p>Symbols: Lw in dB re 1 pW; v velocity in the duct in m/s; ζ loss coefficient on that velocity; S clear area in m²; f
 * octave centre in Hz.
 *
 * <p>Source: both expressions are fits to the tables in a data sheet of dampers in ducts (levels by velocity and loss
 * coefficient, and relative octave levels by velocity), as read there; the fits reproduce them to 0.15 dB, except one cell
 * at 2 m/s and ζ = 0.1 that lies 3 dB off its row. The table's A-weighted corrections follow from its octave levels.
 *
 * <p>Range: v from 2 to 12 m/s, ζ from 0.1 to 3.5 (a second sheet goes to 10). Outside it the fit is carried on with a
 * notice.
 *
 * <p>Accuracy: unknown for anything but a damper; take it as 5 dB.
 *
 * <p>Differs from the source: used for turns and steps of a box, as one more loss in a duct.
 *
 * @param part that costs pressure
 * @param velocity on which the coefficient is, m/s
 * @param area clear, m²
 * @param zeta loss coefficient; zero makes no noise
 */
public record FittingNoise(String part, double velocity, double area, double zeta) implements FlowSource {
    private static final double SLOWEST = 2;
    private static final double FASTEST_PUBLISHED = 12;
    private static final double LEAST_ZETA = 0.1;
    private static final double MOST_ZETA = 10;

    public FittingNoise {
        FlowSource.check(part, velocity, area);
        InvalidValue.within("zeta", zeta, 0, 1000, Unit.NUMBER);
    }

    @Override
    public String source() {
        return "loss coefficient and velocity, fit to a data sheet of dampers";
    }

    @Override
    public Spectrum power() {
        double whole = perSquareMetre() + 10 * Math.log10(area);
        return Spectrum.ofFrequency(BandSet.OCTAVE, f -> whole + relative(f));
    }

    /** Power of a square metre before it is split over octaves, dB re 1 pW. */
    double perSquareMetre() {
        return velocity == 0 || zeta == 0
                ? Double.NEGATIVE_INFINITY
                : 6 + 60 * Math.log10(velocity) + 18 * Math.log10(zeta);
    }

    /** What an octave has of it, dB; frequency in Hz. */
    double relative(double frequency) {
        if (velocity == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double off = Math.log10(frequency / velocity) - 1.224;
        return -3.85 - 9.29 * off * off;
    }

    @Override
    public List<Notice> notices() {
        if (power().total() <= NEGLIGIBLE) {
            return List.of();
        }
        List<Notice> notices = new ArrayList<>();
        notices.addAll(FlowSource.outside(part, velocity, SLOWEST, FASTEST_PUBLISHED, Unit.METRE_PER_SECOND));
        notices.addAll(FlowSource.outside(part, zeta, LEAST_ZETA, MOST_ZETA, Unit.NUMBER));
        return notices;
    }
}
