package hushmaze.sound.section;

import hushmaze.material.Liner;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Wave solution of the path of a box, third octave by third octave, 50 Hz to 5 kHz.
 *
 * <p>Every band is the mean transmitted energy at some frequencies, spread evenly over its logarithm. A box that its flat
 * section cannot show, with a port through a broad face, is computed in all three directions up to the 400 Hz band; everything
 * else by the flat section.
 *
 * <p>Cost of a box of four passes: 0.01 s of processor time a frequency by the flat section at low frequencies, 0.2 s at 5
 * kHz; in three directions from 0.1 s at 63 Hz to some seconds at 800 Hz.
 */
public final class PathWave {
    /** Number of bands, 50 Hz to 5 kHz. */
    public static final int BANDS = 21;
    /**
     * Bands that are computed in three directions for a box that needs it, 50 to 400 Hz: above, the walls of most boxes decide,
     * and the time grows steeply.
     */
    public static final int FULL_BANDS = 10;

    /** Frequencies in a band, by the flat section and in three directions. */
    private static final int FLAT_SAMPLES = 5;

    private static final int FULL_SAMPLES = 3;
    /** By the flat section: errors of some hundredths of a decibel. */
    private static final WaveAccuracy FLAT_ACCURACY = new WaveAccuracy(-1, -1);
    /** In three directions: errors below 0.1 dB up to 800 Hz, at a hundredth of the standard's cost. */
    static final WaveAccuracy FULL_ACCURACY = new WaveAccuracy(-2, -2);

    private PathWave() {}

    /**
     * The path of a box with the usual liner model.
     *
     * @param solid of the box
     * @param liner on its faces; null for a bare box
     * @param soundSpeed m/s
     * @param progress told before every frequency
     */
    public static WaveResult of(Solid solid, Liner liner, double soundSpeed, Progress progress) {
        LinerModel model = liner == null ? null : new MikiLiner(liner.flowResistivity());
        return of(solid, model, soundSpeed, SolidSpace.needsFull(solid) ? FULL_BANDS : 0, progress);
    }

    /**
     * The path of a box.
     *
     * @param solid of the box
     * @param liner model of the liner on its faces; null for a bare box
     * @param soundSpeed m/s
     * @param fullBands how many of the lowest bands are computed in all three directions
     * @param progress told before every frequency
     */
    public static WaveResult of(Solid solid, LinerModel liner, double soundSpeed, int fullBands, Progress progress) {
        InvalidValue.within("fullBands", fullBands, 0, BANDS);
        WaveSolver flat = new WaveSolver(SolidSpace.flat(solid, liner, soundSpeed), FLAT_ACCURACY);
        WaveSolver full =
                fullBands > 0 ? new WaveSolver(SolidSpace.full(solid, liner, soundSpeed), FULL_ACCURACY) : flat;
        List<Double> plane = new ArrayList<>();
        List<Double> equal = new ArrayList<>();
        double residual = 0;
        for (int i = 0; i < BANDS; i++) {
            Band band = BandSet.THIRD_OCTAVE.bands().get(i);
            double done = (double) i / BANDS;
            List<WaveAnswer> answers = i < fullBands
                    ? answers(full, samples(band, FULL_SAMPLES), done, progress)
                    : answers(flat, samples(band, FLAT_SAMPLES), done, progress);
            plane.add(mean(answers, WaveAnswer::transmissionLoss));
            equal.add(mean(answers, WaveAnswer::transmissionLossAllModes));
            for (WaveAnswer answer : answers) {
                residual = Math.max(residual, answer.residual());
            }
        }
        return new WaveResult(plane, equal, fullBands, residual, SolidSpace.flatNotices(solid));
    }

    private static List<WaveAnswer> answers(WaveSolver solver, double[] frequencies, double done, Progress progress) {
        List<WaveAnswer> answers = new ArrayList<>();
        for (double frequency : frequencies) {
            progress.check(done + (double) answers.size() / frequencies.length / BANDS, "wave solution");
            answers.add(solver.solve(frequency));
        }
        return answers;
    }

    private static double mean(List<WaveAnswer> answers, ToDoubleFunction<WaveAnswer> loss) {
        return Energy.meanLoss(answers.stream().mapToDouble(loss).toArray());
    }

    /** Frequencies of a band, evenly over its logarithm, Hz. */
    static double[] samples(Band band, int count) {
        double[] samples = new double[count];
        double ratio = band.upperHz() / band.lowerHz();
        for (int i = 0; i < count; i++) {
            samples[i] = band.lowerHz() * Math.pow(ratio, (i + 0.5) / count);
        }
        return samples;
    }
}
