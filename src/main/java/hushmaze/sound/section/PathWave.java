package hushmaze.sound.section;

import hushmaze.material.Liner;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveBands;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.stream.IntStream;

/**
 * Wave solution of the path of a box, third octave by third octave, 50 Hz to 5 kHz.
 *
 * <p>Every band is the mean transmitted energy at some frequencies, spread evenly over its logarithm. A box that its flat
 * section cannot show, with a port through a broad face or with lined broad faces, is computed in all three directions up to
 * the 800 Hz band, and further as long as that does not take too long: a small box up to about 1 kHz. Everything
 * else is of the flat section.
 *
 * <p>Cost on two processors, seven boxes: 0.1 s by the flat section; in three directions 0.3 to 0.9 s up to 800 Hz. A box that is its
 * own mirror image between its broad faces takes a third or so of what it would otherwise.
 */
public final class PathWave {
    /** Number of bands, 50 Hz to 5 kHz. */
    public static final int BANDS = 21;
    /** Bands that are always computed in three directions for a box that needs it, 50 to 800 Hz. */
    public static final int FULL_BANDS = 13;

    /** Most multiplications at one frequency for a band above: some tenths of a second. */
    private static final double MOST_MULTIPLICATIONS = 6e7;

    /** Frequencies in a band, by the flat section and in three directions. */
    private static final int FLAT_SAMPLES = 5;

    private static final int FULL_SAMPLES = 3;
    /** Share of the time that the bands in three directions take, where there are some; only for the progress. */
    private static final double FULL_SHARE = 0.9;

    /** By the flat section: within 0.1 dB of a much finer solution for eight boxes, 0.2 dB for one narrow deeply lined one. */
    private static final WaveAccuracy FLAT_ACCURACY = new WaveAccuracy(-2, -1);
    /** In three directions: for six boxes up to 800 Hz within 0.2 dB of a much finer solution, 0.8 dB at a loss of 102 dB. */
    static final WaveAccuracy FULL_ACCURACY = new WaveAccuracy(-3, 0);

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
        LinerModel model = liner == null ? null : FacedLiner.miki(liner);
        return of(
                solid,
                model,
                soundSpeed,
                SolidSpace.needsFull(solid) ? fullBands(solid, model, soundSpeed) : 0,
                progress);
    }

    /** Bands of a box that are computed in three directions: all that do not take too long. */
    private static int fullBands(Solid solid, LinerModel liner, double soundSpeed) {
        WaveSolver solver = new WaveSolver(SolidSpace.full(solid, liner, soundSpeed), FULL_ACCURACY);
        int bands = FULL_BANDS;
        while (bands < BANDS
                && solver.multiplications(
                                BandSet.THIRD_OCTAVE.bands().get(bands).upperHz())
                        <= MOST_MULTIPLICATIONS) {
            bands++;
        }
        return bands;
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
        List<Band> bands = BandSet.THIRD_OCTAVE.bands().subList(0, BANDS);
        List<Cuboid> passes = solid.passes().stream().map(Pass::clear).toList();
        List<WaveBands> parts = new ArrayList<>();
        double fullShare = fullBands == 0 ? 0 : FULL_SHARE;
        if (fullBands > 0) {
            WaveSolver full = new WaveSolver(SolidSpace.full(solid, liner, soundSpeed), FULL_ACCURACY, passes);
            parts.add(WaveBands.of(full, bands.subList(0, fullBands), FULL_SAMPLES, within(progress, 0, fullShare)));
        }
        if (fullBands < BANDS) {
            WaveSolver flat = new WaveSolver(SolidSpace.flat(solid, liner, soundSpeed), FLAT_ACCURACY, passes);
            parts.add(WaveBands.of(
                    flat, bands.subList(fullBands, BANDS), FLAT_SAMPLES, within(progress, fullShare, 1 - fullShare)));
        }
        return new WaveResult(
                joined(parts, WaveBands::losses),
                joined(parts, WaveBands::lossesAllModes),
                IntStream.range(0, passes.size())
                        .mapToObj(pass -> joined(parts, part -> part.levels().get(pass)))
                        .toList(),
                fullBands,
                SolidSpace.hasBroadPort(solid),
                parts.stream().mapToDouble(WaveBands::worstResidual).max().orElseThrow(),
                SolidSpace.flatNotices(solid));
    }

    private static Progress within(Progress progress, double start, double share) {
        return (fraction, doing) -> progress.check(start + share * fraction, doing);
    }

    private static List<Double> joined(List<WaveBands> parts, Function<WaveBands, List<Double>> part) {
        return parts.stream().flatMap(p -> part.apply(p).stream()).toList();
    }
}
