package hushmaze.sound.flow;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Noise of the air at a grille or an open mouth, radiated into the room.
 *
 * <p>Formula: Lw = 10 + 10 lg S + 30 lg ζ + 60 lg u for all octaves together, the loudest at 160 u; from there the octaves
 * fall by 3 dB per octave downwards and 5 dB per octave upwards.
 *
 * <p>Symbols: Lw in dB re 1 pW; S area of the mouth in m²; ζ loss coefficient of what is in it, on u; u mean velocity in
 * front of it in m/s; the loudest frequency in Hz.
 *
 * <p>Source: the level after Hubert and Beranek (<i>Noise and Vibration Control Engineering</i>), from memory; the loudest
 * frequency and the slopes as read in an explanation of CIBSE Guide B (2005), 5.A2.5, whose level in the loudest octave, 10
 * + 10 lg S + 30 lg Δp, lies 2.7 dB below this one.
 *
 * <p>Range: diffusers and grilles, about 1 to 10 m/s, ζ about 1 to 10 (from memory). Outside it the formula is carried on
 * with a notice.
 *
 * <p>Accuracy: 5 dB; a grille's own data sheet is better.
 *
 * <p>Differs from the source: an open mouth is taken as a grille of ζ = 1, the loss of its jet.
 *
 * @param part the mouth
 * @param velocity mean in the mouth, m/s
 * @param area of the mouth, m²
 * @param zeta loss coefficient
 */
public record GrilleNoise(String part, double velocity, double area, double zeta) implements FlowSource {
    /** Loss coefficient that an open mouth counts with: the velocity head of its jet. */
    public static final double OPEN_MOUTH = 1;

    /** Largest loss coefficient the formula takes. */
    static final double MOST_ZETA = 1000;

    private static final double PEAK_HZ_PER_SPEED = 160;
    private static final double DOWNWARDS = 3;
    private static final double UPWARDS = 5;
    /** 10 lg of the sum of an endless row of octaves with these slopes, the loudest at 0 dB: 1 + 1.005 + 0.462. */
    private static final double ALL_OCTAVES = 3.92;

    private static final double SLOWEST = 1;
    private static final double FASTEST_PUBLISHED = 10;

    public GrilleNoise {
        FlowSource.check(part, velocity, area);
        InvalidValue.within("zeta", zeta, 0, MOST_ZETA, Unit.NUMBER);
    }

    @Override
    public String source() {
        return "mouth by loss coefficient and velocity, from memory; octaves after CIBSE Guide B";
    }

    @Override
    public Spectrum power() {
        double whole = whole();
        return Spectrum.ofFrequency(BandSet.OCTAVE, f -> whole + relative(f));
    }

    /** Power of all octaves together, also those below 63 Hz, dB re 1 pW. */
    double whole() {
        return velocity == 0 || zeta == 0
                ? Double.NEGATIVE_INFINITY
                : 10 + 10 * Math.log10(area) + 30 * Math.log10(zeta) + 60 * Math.log10(velocity);
    }

    private double relative(double frequency) {
        if (velocity == 0) {
            return Double.NEGATIVE_INFINITY;
        }
        double octaves = Math.log10(frequency / (PEAK_HZ_PER_SPEED * velocity)) / Math.log10(Band.OCTAVE_RATIO);
        return -ALL_OCTAVES - (octaves < 0 ? -octaves * DOWNWARDS : octaves * UPWARDS);
    }

    @Override
    public List<Notice> notices() {
        return power().total() <= NEGLIGIBLE
                ? List.of()
                : FlowSource.outside(part, velocity, SLOWEST, FASTEST_PUBLISHED, Unit.METRE_PER_SECOND);
    }
}
