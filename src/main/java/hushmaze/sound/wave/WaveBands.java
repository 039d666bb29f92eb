package hushmaze.sound.wave;

import hushmaze.quantity.Band;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Losses in bands: in each band the mean transmitted energy at some frequencies, spread evenly over its logarithm.
 *
 * @param bands in the order asked for
 * @param losses for a plane wave that comes in, dB
 * @param lossesAllModes for equal energy in all inlet modes that carry sound, dB
 * @param answers of all frequencies, band by band, lowest first
 */
public record WaveBands(List<Band> bands, List<Double> losses, List<Double> lossesAllModes, List<WaveAnswer> answers) {
    /** Frequencies in a third octave, unless others are asked for. */
    public static final int PER_BAND = 5;

    public WaveBands {
        bands = List.copyOf(bands);
        losses = List.copyOf(losses);
        lossesAllModes = List.copyOf(lossesAllModes);
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
        List<Double> losses = new ArrayList<>();
        List<Double> lossesAllModes = new ArrayList<>();
        for (int i = 0; i < bands.size(); i++) {
            List<WaveAnswer> own = answers.subList(i * perBand, (i + 1) * perBand);
            losses.add(Energy.meanLoss(
                    own.stream().mapToDouble(WaveAnswer::transmissionLoss).toArray()));
            lossesAllModes.add(Energy.meanLoss(own.stream()
                    .mapToDouble(WaveAnswer::transmissionLossAllModes)
                    .toArray()));
        }
        return new WaveBands(bands, losses, lossesAllModes, answers);
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
