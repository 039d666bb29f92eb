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
    private final List<Stage> stages = new ArrayList<>();
    private final boolean[] covered = new boolean[BandSet.THIRD_OCTAVE.size()];

    ThirdOctaveBank(double rate) {
        this.rate = rate;
        double stageRate = rate;
        double[] work = new double[BLOCK];
        List<Band> bands = BandSet.THIRD_OCTAVE.bands();
        int left = bands.size();
        while (left > 0) {
            Stage stage = new Stage(stageRate, work);
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
        double[] input = samples;
        int n = count;
        for (int i = 0; i < stages.size(); i++) {
            stages.get(i).run(input, n, counted);
            if (i + 1 < stages.size()) {
                n = stages.get(i).halve(input, n);
                input = stages.get(i).halved;
            }
        }
    }

    /** Levels of the mean squares so far, dB re one; silence is far below anything. */
    BandLevels levels() {
        double[] levels = new double[covered.length];
        for (Stage stage : stages) {
            for (int i = 0; i < stage.places.size(); i++) {
                levels[stage.places.get(i)] = Energy.db(stage.sums[i] / Math.max(1, stage.counted));
            }
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
        private final double stageRate;
        private final double[] work;
        private final double[] halved = new double[BLOCK / 2 + 1];
        private final HalfRate halfRate = new HalfRate();
        private final List<Integer> places = new ArrayList<>();
        private final List<BandPass> filters = new ArrayList<>();
        private final double[] sums = new double[BandSet.THIRD_OCTAVE.size()];
        private long counted;

        Stage(double stageRate, double[] work) {
            this.stageRate = stageRate;
            this.work = work;
        }

        void add(int place, Band band) {
            places.add(place);
            filters.add(new BandPass(band, stageRate));
        }

        int halve(double[] input, int n) {
            return halfRate.run(input, n, halved);
        }

        void run(double[] input, int n, boolean count) {
            for (int i = 0; i < filters.size(); i++) {
                System.arraycopy(input, 0, work, 0, n);
                filters.get(i).run(work, n);
                if (count) {
                    double sum = 0;
                    for (int k = 0; k < n; k++) {
                        sum += work[k] * work[k];
                    }
                    sums[i] += sum;
                }
            }
            counted += count ? n : 0;
        }
    }
}
