package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;

/** Wave solution of one space at any number of frequencies. */
public final class WaveSolver {
    /** Lowest and highest frequency, Hz. */
    public static final double LOWEST = 1;

    public static final double HIGHEST = 50_000;

    private final WaveSpace space;
    private final WaveAccuracy accuracy;
    private final BlockGrid blocks;
    private final SharpEdges edges;

    /** The standard accuracy. */
    public WaveSolver(WaveSpace space) {
        this(space, WaveAccuracy.STANDARD);
    }

    /**
     * @throws InvalidValue if the space has no way from inlet to outlet, or a port does not fit it
     */
    public WaveSolver(WaveSpace space, WaveAccuracy accuracy) {
        this.space = space;
        this.accuracy = accuracy;
        blocks = new BlockGrid(space);
        edges = new SharpEdges(blocks);
    }

    /** What passes at a frequency in Hz. */
    public WaveAnswer solve(double frequency) {
        return system(frequency).solve(() -> {});
    }

    /** What passes at several frequencies in Hz, in their order. */
    public List<WaveAnswer> solve(double[] frequencies, Progress progress) {
        List<WaveAnswer> answers = new ArrayList<>();
        for (double frequency : frequencies) {
            progress.check((double) answers.size() / frequencies.length, "wave solution");
            answers.add(solve(frequency));
        }
        return answers;
    }

    WaveSystem system(double frequency) {
        if (!(frequency >= LOWEST && frequency <= HIGHEST)) {
            throw new InvalidValue("frequency", Double.toString(frequency), "from " + LOWEST + " to " + HIGHEST, "Hz");
        }
        return new WaveSystem(blocks, edges, space.soundSpeed(), frequency, accuracy);
    }
}
