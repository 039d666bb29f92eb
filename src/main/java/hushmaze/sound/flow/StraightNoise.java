package hushmaze.sound.flow;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Noise of the air in a straight duct.
 *
 * <p>Formula: Lw = 7 + 50 lg v + 10 lg S; per octave dL = -2 - 26 lg(1.14 + 0.02 f/v).
 *
 * <p>Symbols: Lw in dB re 1 pW; v velocity in m/s; S clear area in m²; f octave centre in Hz.
 *
 * <p>Source: VDI 2081, from memory; the fifth power of the velocity and the area as read in test rules of silencers that
 * quote it.
 *
 * <p>Range: smooth ducts, about 2 to 20 m/s (from memory). Outside it the formula is carried on with a notice.
 *
 * <p>Accuracy: unknown over a rough liner; take it as 5 dB.
 *
 * <p>Differs from the source: used for a lined pass of a box.
 *
 * @param part the straight run
 * @param velocity m/s
 * @param area clear, m²
 */
public record StraightNoise(String part, double velocity, double area) implements FlowSource {
    private static final double SLOWEST = 2;
    private static final double FASTEST_PUBLISHED = 20;

    public StraightNoise {
        FlowSource.check(part, velocity, area);
    }

    @Override
    public String source() {
        return "straight duct after VDI 2081, from memory";
    }

    @Override
    public Spectrum power() {
        if (velocity == 0) {
            return Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY);
        }
        double whole = 7 + 50 * Math.log10(velocity) + 10 * Math.log10(area);
        return Spectrum.ofFrequency(BandSet.OCTAVE, f -> whole - 2 - 26 * Math.log10(1.14 + 0.02 * f / velocity));
    }

    @Override
    public List<Notice> notices() {
        return power().total() <= NEGLIGIBLE
                ? List.of()
                : FlowSource.outside(part, velocity, SLOWEST, FASTEST_PUBLISHED, Unit.METRE_PER_SECOND);
    }
}
