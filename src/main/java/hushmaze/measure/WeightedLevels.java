package hushmaze.measure;

import hushmaze.measure.Recording.Levels;
import java.util.EnumMap;
import java.util.Map;

/** Levels of a signal with all frequency weightings; A goes on from C, of which it has all sections. */
final class WeightedLevels {
    private static final double TENTH = 0.1;

    private final Biquad[] sections;
    private final WeightedLevel a;
    private final WeightedLevel c;
    private final WeightedLevel z;
    private final double[] throughC = new double[ThirdOctaveBank.BLOCK];
    private final double[] throughA = new double[ThirdOctaveBank.BLOCK];

    WeightedLevels(double rate) {
        sections = Weighting.A.sections(rate);
        a = new WeightedLevel(rate);
        c = new WeightedLevel(rate);
        z = new WeightedLevel(rate);
    }

    /** Takes the next samples, a block at most. With {@code count} false they only bring the filters into swing. */
    void run(double[] samples, int from, int n, boolean count) {
        Biquad.run(sections[0], sections[1], sections[2], samples, from, n, throughC, throughA);
        z.run(samples, from, n, count);
        c.run(throughC, 0, n, count);
        a.run(throughA, 0, n, count);
    }

    /**
     * Ends a column of a picture.
     *
     * @return mean square with the weighting A since the column before ended
     */
    double endColumn() {
        z.endColumn();
        c.endColumn();
        return a.endColumn();
    }

    /** All of them, a sine at full scale being 0 dB. */
    Map<Weighting, Levels> levels() {
        Map<Weighting, Levels> levels = new EnumMap<>(Weighting.class);
        levels.put(Weighting.A, levels(a));
        levels.put(Weighting.C, levels(c));
        levels.put(Weighting.Z, levels(z));
        return levels;
    }

    private static Levels levels(WeightedLevel level) {
        return new Levels(
                level.leq() - Recording.SINE,
                level.exceeded(TENTH) - Recording.SINE,
                level.exceeded(1 - TENTH) - Recording.SINE);
    }
}
