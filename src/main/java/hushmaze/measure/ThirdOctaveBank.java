package hushmaze.measure;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import java.util.ArrayList;
import java.util.List;

/**
 * Third-octave levels 50 Hz to 10 kHz of a signal by filters in time: a {@link BandPass} for each band, low bands on a signal
 * whose rate was halved once or several times ({@link HalfRate}). Meets the limits of IEC 61260-1 class 1 at 44.1, 48 and
 * 96 kHz; bands whose upper edge is above 0.4 of the sampling rate have no level.
 *
 * <p>Samples are handed over in blocks of at most {@link #BLOCK}; memory does not grow with the length of the signal.
 */
final class ThirdOctaveBank {
    /** Most samples of one call. */
    static final int BLOCK = 4096;
    /** A band runs at the lowest rate that is at least this many times its upper edge. */
    private static final double LEAST_RATE = 3.9;

    private final double rate;
    private final double[] work = new double[Stage.BEFORE + BLOCK];
    private final double[] halved = new double[Stage.BEFORE + BLOCK];
    private final List<Stage> stages = new ArrayList<>();
    private final boolean[] covered = new boolean[BandSet.THIRD_OCTAVE.size()];

    ThirdOctaveBank(double rate) {
        this.rate = rate;
        double stageRate = rate;
        double[] driven = new double[BLOCK];
        List<Band> bands = BandSet.THIRD_OCTAVE.bands();
        int left = bands.size();
        while (left > 0) {
            Stage stage = new Stage(stageRate, driven);
            double half = stageRate / 2;
            while (left > 0 && bands.get(left - 1).upperHz() * LEAST_RATE > half) {
                left--;
                if (bands.get(left).upperHz() <= BandPass.HIGHEST * stageRate) {
                    covered[left] = true;
                    stage.add(left, bands.get(left));
                }
            }
            stages.add(stage);
            stageRate = half;
        }
    }

    /** Takes the next samples. With {@code counted} false they only bring the filters into swing. */
    void run(double[] samples, int count, boolean counted) {
        run(samples, 0, count, counted);
    }

    /** Takes the next samples, which begin at a place of an array. */
    void run(double[] samples, int from, int count, boolean counted) {
        double[] input = work;
        double[] output = halved;
        System.arraycopy(samples, from, input, Stage.BEFORE, count);
        int n = count;
        for (Stage stage : stages) {
            n = stage.run(input, n, counted, output);
            double[] free = input;
            input = output;
            output = free;
        }
    }

    /**
     * Ends a column of a picture.
     *
     * @return mean squares in the bands since the column before ended; zero in bands without a level
     */
    double[] endColumn() {
        double[] means = new double[covered.length];
        for (Stage stage : stages) {
            stage.endColumn(means);
        }
        return means;
    }

    /** Whether bands have a level, one each. */
    boolean[] covered() {
        return covered.clone();
    }

    /** Levels of the mean squares so far, dB re one; silence is far below anything. */
    BandLevels levels() {
        double[] levels = new double[covered.length];
        for (Stage stage : stages) {
            stage.levels(levels);
        }
        return new BandLevels(BandSet.THIRD_OCTAVE, levels, covered);
    }

    /** Attenuation of a tone by a band's filter and what goes before it, dB; folded tones count where they come from. */
    double attenuation(int band, double hz) {
        double power = 1;
        double stageRate = rate;
        for (Stage stage : stages) {
            double omega = 2 * Math.PI * hz / stageRate;
            int place = stage.places.indexOf(band);
            if (place >= 0) {
                return -Energy.db(power * stage.filters.get(place).power(omega));
            }
            power *= HalfRate.power(omega);
            stageRate /= 2;
        }
        throw new IllegalArgumentException("no filter for band " + band);
    }

    boolean covers(int band) {
        return covered[band];
    }

    /** The bands at one rate. */
    private static final class Stage {
        /** So many samples of before stand before the new ones. */
        private static final int BEFORE = HalfRate.PAST;

        private final double stageRate;
        private final double[] driven;
        private final Zeros zeros = new Zeros();
        private final HalfRate halfRate = new HalfRate();
        private final List<Integer> places = new ArrayList<>();
        private final List<BandPass> filters = new ArrayList<>();
        private final double[] sums = new double[BandSet.THIRD_OCTAVE.size()];
        private final double[] columnSums = new double[BandSet.THIRD_OCTAVE.size()];
        private long counted;
        private long columnCounted;

        /** @param driven room for samples that went through the zeros */
        Stage(double stageRate, double[] driven) {
            this.stageRate = stageRate;
            this.driven = driven;
        }

        void add(int place, Band band) {
            places.add(place);
            filters.add(new BandPass(band, stageRate));
        }

        /**
         * Takes samples and makes the next stage's of them.
         *
         * @return how many those are
         */
        int run(double[] input, int n, boolean count, double[] output) {
            if (!filters.isEmpty()) {
                zeros.run(input, BEFORE, n, driven);
                for (int i = 0; i < filters.size(); i++) {
                    double squares = filters.get(i).squares(driven, n);
                    columnSums[i] += count ? squares : 0;
                }
            }
            columnCounted += count ? n : 0;
            return halfRate.run(input, n, output, BEFORE);
        }

        void endColumn(double[] means) {
            for (int i = 0; i < places.size(); i++) {
                means[places.get(i)] = columnSums[i] / Math.max(1, columnCounted);
                sums[i] += columnSums[i];
                columnSums[i] = 0;
            }
            counted += columnCounted;
            columnCounted = 0;
        }

        void levels(double[] levels) {
            long all = Math.max(1, counted + columnCounted);
            for (int i = 0; i < places.size(); i++) {
                levels[places.get(i)] = Energy.db((sums[i] + columnSums[i]) / all);
            }
        }
    }
}
