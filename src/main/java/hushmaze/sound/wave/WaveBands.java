package hushmaze.sound.wave;

import hushmaze.quantity.Band;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;

/**
 * Losses in bands: in each band the mean transmitted energy at some frequencies, spread evenly over its logarithm.
 *
 * @param bands in the order asked for
 * @param losses for a plane wave that comes in, dB
 * @param lossesAllModes for equal energy in all inlet modes that carry sound, dB
 * @param levels mean square pressure in each of the solver's rooms, over that of a plane wave coming in alone, dB: a list
 *     for each room, with one figure for each band
 * @param answers of all frequencies, band by band, lowest first
 */
public record WaveBands(
        List<Band> bands,
        List<Double> losses,
        List<Double> lossesAllModes,
        List<List<Double>> levels,
        List<WaveAnswer> answers) {
    /** Frequencies in a third octave, unless others are asked for. */
    public static final int PER_BAND = 5;

    public WaveBands {
        bands = List.copyOf(bands);
        losses = List.copyOf(losses);
        lossesAllModes = List.copyOf(lossesAllModes);
        levels = levels.stream().map(List::copyOf).toList();
        answers = List.copyOf(answers);
    }

    /**
     * Losses of a space.
     *
     * @param solver of the space
     * @param bands wanted
     * @param perBand frequencies in each band, 1 to 100
     * @param progress told from the calling thread
     */
    public static WaveBands of(WaveSolver solver, List<Band> bands, int perBand, Progress progress) {
        double[] frequencies = bands.stream()
                .flatMapToDouble(band -> Arrays.stream(frequencies(band, perBand)))
                .toArray();
        List<WaveAnswer> answers = solver.solve(frequencies, progress);
        return new WaveBands(
                bands,
                losses(answers, perBand, WaveAnswer::transmissionLoss),
                losses(answers, perBand, WaveAnswer::transmissionLossAllModes),
                IntStream.range(0, solver.rooms())
                        .mapToObj(room -> losses(
                                        answers,
                                        perBand,
                                        a -> -Energy.db(a.meanSquare().get(room)))
                                .stream()
                                .map(loss -> -loss)
                                .toList())
                        .toList(),
                answers);
    }

    /** Largest error of the equations over the right side, at any frequency. */
    public double worstResidual() {
        return answers.stream().mapToDouble(WaveAnswer::residual).max().orElse(0);
    }

    private static List<Double> losses(List<WaveAnswer> answers, int perBand, ToDoubleFunction<WaveAnswer> loss) {
        List<Double> losses = new ArrayList<>();
        for (int i = 0; i < answers.size(); i += perBand) {
            losses.add(Energy.meanLoss(
                    answers.subList(i, i + perBand).stream().mapToDouble(loss).toArray()));
        }
        return losses;
    }

    /** Frequencies that stand for a band, Hz: the middles of equal parts of its logarithm. */
    public static double[] frequencies(Band band, int count) {
        InvalidValue.within("perBand", count, 1, 100);
        double[] frequencies = new double[count];
        double ratio = band.upperHz() / band.lowerHz();
        for (int i = 0; i < count; i++) {
            frequencies[i] = band.lowerHz() * Math.pow(ratio, (i + 0.5) / count);
        }
        return frequencies;
    }
}
