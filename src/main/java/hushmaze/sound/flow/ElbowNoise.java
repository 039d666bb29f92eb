package hushmaze.sound.flow;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Noise of the air in square 90-degree turns.
 *
 * <p>Formula: Lw = K + 10 lg F + 50 lg U + 10 lg S + 10 lg D + EC. Without vanes K = -9.22 - 16.48 lg St - 5.05 (lg St)²
 * and EC = -107; with n vanes K = -47.5 - 7.69 (lg St)^2.5 and EC = 10 lg n - 107. A sharp inner edge adds 6.793 - 1.86 lg
 * St.
 *
 * <p>Symbols: Lw in dB re 1 pW per octave; F octave centre in Hz; U velocity in ft/min; S clear area in ft²; D in ft,
 * without vanes the height of the turn, with vanes their chord; St = 60 F D / U Strouhal number. Components are in SI and
 * converted here.
 *
 * <p>Source: as read in <i>Minimizing Excessive Sound in Ventilation System Design</i> (2009), pages 35 and 36, with the
 * worked example of its chapter 5; the term for a sharp edge after <i>Algorithms for HVAC Acoustics</i> (ASHRAE, 1991),
 * from memory.
 *
 * <p>Range: none is printed. The worked example covers St from 2.4 to 307 at 6.4 m/s; where an octave outside it is not
 * negligible, a notice says so.
 *
 * <p>Accuracy: unknown below 5 m/s, where the fifth power of the velocity is carried on; take it as 5 dB.
 *
 * <p>Differs from the source: a negative level stays as it is, where the source prints zero. A U-turn counts as two bends,
 * 3 dB more than one. Below St = 1 the power of lg St for vanes is held at zero.
 *
 * @param part that turns the air
 * @param velocity of the air, m/s
 * @param area clear, m²
 * @param dimension D, m
 * @param corner what guides the air
 * @param count bends that follow each other; for vanes how many there are in the one bend
 */
public record ElbowNoise(String part, double velocity, double area, double dimension, Corner corner, int count)
        implements FlowSource {
    private static final double END = -107;
    private static final double LOWEST_STROUHAL = 2.4;
    private static final double HIGHEST_STROUHAL = 307.2;
    private static final int MOST = 200;

    /** What guides the air round the corner. */
    public enum Corner {
        /** No vanes, as the source prints it. */
        PLAIN,
        /** No vanes, and the inner edge is sharp. */
        SHARP,
        /** Turning vanes. */
        VANES
    }

    public ElbowNoise {
        FlowSource.check(part, velocity, area);
        InvalidValue.within("dimension", dimension, 0.001, 10, Unit.MILLIMETRE);
        InvalidValue.present("corner", corner);
        InvalidValue.within("count", count, 1, MOST);
    }

    @Override
    public String source() {
        return "square turns by Strouhal number, ventilation design guide of 2009"
                + (corner == Corner.SHARP ? "; sharp edge after Algorithms for HVAC Acoustics, from memory" : "");
    }

    @Override
    public Spectrum power() {
        return Spectrum.ofFrequency(BandSet.OCTAVE, this::level);
    }

    /** Power in the octave around a frequency in Hz, dB re 1 pW. */
    double level(double frequency) {
        if (velocity == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double u = Unit.FOOT_PER_MINUTE.fromSi(velocity);
        double s = Unit.SQUARE_FOOT.fromSi(area);
        double d = Unit.FOOT.fromSi(dimension);
        return k(Math.log10(strouhal(frequency)))
                + 10 * Math.log10(frequency)
                + 50 * Math.log10(u)
                + 10 * Math.log10(s)
                + 10 * Math.log10(d)
                + 10 * Math.log10(count)
                + END;
    }

    @Override
    public List<Notice> notices() {
        Spectrum power = power();
        double low = HIGHEST_STROUHAL;
        double high = LOWEST_STROUHAL;
        for (int i = 0; i < power.size(); i++) {
            if (power.value(i) > NEGLIGIBLE) {
                double strouhal = strouhal(BandSet.OCTAVE.bands().get(i).nominalHz());
                low = Math.min(low, strouhal);
                high = Math.max(high, strouhal);
            }
        }
        List<Notice> below = FlowSource.outside(part, low, LOWEST_STROUHAL, HIGHEST_STROUHAL, Unit.NUMBER);
        return below.isEmpty() ? FlowSource.outside(part, high, LOWEST_STROUHAL, HIGHEST_STROUHAL, Unit.NUMBER) : below;
    }

    /** St = F D / U, the same in any units. */
    private double strouhal(double frequency) {
        return frequency * dimension / velocity;
    }

    private double k(double lgSt) {
        return switch (corner) {
            case PLAIN -> plain(lgSt);
            case SHARP -> plain(lgSt) + Math.max(0, 6.793 - 1.86 * lgSt);
            case VANES -> -47.5 - 7.69 * Math.pow(Math.max(0, lgSt), 2.5);
        };
    }

    // Written so that very slow air, lg St large, gives no difference of infinities.
    private static double plain(double lgSt) {
        return -9.22 - lgSt * (16.48 + 5.05 * lgSt);
    }
}
