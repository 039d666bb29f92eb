package hushmaze.measure;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import java.util.Arrays;
import java.util.Locale;

/**
 * Sums narrow bands, or the lines of a Fourier analysis, into third octaves by energy.
 *
 * <p>A line stands for the stretch of one step around it: with equal steps from half a step below to half a step above, with
 * equal ratios from the root of the ratio below to the root above. A line across the edge of a third gives each side its
 * share of the stretch. A third counts as covered where the stretches leave no part of it out and are narrow enough: a third
 * of it with equal steps, half of it with equal ratios (sixths of an octave are halves of thirds).
 *
 * <p>Our own rule for the widths, no source; the share of a line is right for broad noise, for a tone near an edge it is as
 * undecided as the tone's place between two lines is.
 */
final class NarrowBands {
    /** A step may be so much off the usual one, as a share of it; printed frequencies are rounded. */
    private static final double SAME_STEP = 0.1;
    /** So many steps must be as the usual one; the others are holes. */
    private static final double MOST_STEPS = 0.9;
    /** So much of a band may be left out between stretches by rounding. */
    private static final double ROUNDING = 0.02;

    private final LevelTable table;
    private final double[] frequencies;
    private final double[] levels;
    private final boolean equalSteps;
    private final double step;

    private NarrowBands(LevelTable table) {
        this.table = table;
        this.frequencies = table.frequencies();
        this.levels = table.levels();
        requireRising();
        double[] steps = new double[frequencies.length - 1];
        double[] ratios = new double[frequencies.length - 1];
        for (int i = 0; i < steps.length; i++) {
            steps[i] = frequencies[i + 1] - frequencies[i];
            ratios[i] = frequencies[i] == 0 ? Double.MAX_VALUE : Math.log(frequencies[i + 1] / frequencies[i]);
        }
        this.equalSteps = regular(steps);
        if (!equalSteps && !regular(ratios)) {
            throw new InvalidValue(
                    table.name(),
                    "frequencies that are neither centres of bands nor evenly apart",
                    "third octaves, octaves, or lines with equal steps",
                    "");
        }
        this.step = median(equalSteps ? steps : ratios);
    }

    /**
     * Third-octave levels.
     *
     * @throws InvalidValue if the lines cover no third octave
     */
    static BandLevels of(LevelTable table) {
        NarrowBands narrow = new NarrowBands(table);
        BandSet set = BandSet.THIRD_OCTAVE;
        double[] sums = new double[set.size()];
        boolean[] covered = new boolean[set.size()];
        for (int i = 0; i < sums.length; i++) {
            Band band = set.bands().get(i);
            sums[i] = narrow.level(band);
            covered[i] = narrow.covers(band);
        }
        BandLevels found = new BandLevels(set, sums, covered);
        if (found.missing().size() == set.size()) {
            throw new InvalidValue(
                    table.name(),
                    "lines from " + Hertz.text(narrow.frequencies[0]) + " to "
                            + Hertz.text(narrow.frequencies[narrow.frequencies.length - 1]) + " Hz, "
                            + narrow.stepText() + " apart, which cover no third octave",
                    "closer lines over whole third octaves from 50 Hz to 10 kHz",
                    "");
        }
        return found;
    }

    private String stepText() {
        return equalSteps ? Hertz.text(step) + " Hz" : String.format(Locale.ROOT, "a factor %.3f", Math.exp(step));
    }

    private double level(Band band) {
        double[] parts = new double[frequencies.length];
        for (int i = 0; i < parts.length; i++) {
            double share = overlap(i, band) / (upper(i) - lower(i));
            parts[i] = share > 0 ? levels[i] + Energy.db(share) : Double.NEGATIVE_INFINITY;
        }
        return Energy.sum(parts);
    }

    private boolean covers(Band band) {
        double width = band.upperHz() - band.lowerHz();
        double sum = 0;
        for (int i = 0; i < frequencies.length; i++) {
            sum += overlap(i, band);
        }
        double widest = equalSteps ? width / 3 : width / 2 * (1 + SAME_STEP);
        double stretch = equalSteps ? step : band.centreHz() * 2 * Math.sinh(step / 2);
        boolean ends = lower(0) <= band.lowerHz() * (1 + ROUNDING / 10)
                && upper(frequencies.length - 1) >= band.upperHz() * (1 - ROUNDING / 10);
        return ends && stretch <= widest && sum >= (1 - ROUNDING) * width;
    }

    private double overlap(int i, Band band) {
        return Math.max(0, Math.min(upper(i), band.upperHz()) - Math.max(lower(i), band.lowerHz()));
    }

    private double lower(int i) {
        return equalSteps ? frequencies[i] - step / 2 : frequencies[i] * Math.exp(-step / 2);
    }

    private double upper(int i) {
        return equalSteps ? frequencies[i] + step / 2 : frequencies[i] * Math.exp(step / 2);
    }

    private void requireRising() {
        for (int i = 1; i < frequencies.length; i++) {
            if (!(frequencies[i] > frequencies[i - 1])) {
                throw new InvalidValue(
                        table.name() + ", frequency",
                        Hertz.text(frequencies[i]) + " Hz after " + Hertz.text(frequencies[i - 1]) + " Hz",
                        "rising from line to line where they are not centres of bands",
                        "");
            }
        }
    }

    private static boolean regular(double[] steps) {
        double usual = median(steps);
        long like = Arrays.stream(steps)
                .filter(s -> Math.abs(s - usual) <= SAME_STEP * usual)
                .count();
        return like >= MOST_STEPS * steps.length;
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }
}
