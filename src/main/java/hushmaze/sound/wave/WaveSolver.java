package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.solid.Cuboid;
import hushmaze.work.Progress;
import java.util.List;
import java.util.function.LongConsumer;

/**
 * Wave solution of one space at any number of frequencies: ∇·(1/ρ ∇p) + k0² n²/ρ p = 0 with rigid walls, by finite elements
 * of high order, ports taken as infinite ducts by their modes.
 *
 * <p>Symbols: p pressure; ρ density over that of air; n wavenumber over that of air; k0 = 2πf/c in 1/m; time factor
 * exp(+jωt).
 *
 * <p>Source: textbook equation and element method; the order of elimination is minimum degree, the factorisation
 * multifrontal. Held in tests against tables computed by mode matching and against exact solutions.
 *
 * <p>Range: linear sound without flow, walls rigid, media that are equivalent fluids.
 *
 * <p>Accuracy at {@link WaveAccuracy#STANDARD}: lined slits, turns and chambers within 0.01 dB of mode matching; lined mazes
 * of three and four passes within 0.04 dB of a much finer solution up to losses of 100 dB. What the liner's model and the
 * walls add is much more.
 *
 * <p>A space that is its own mirror image along z is solved by halves, which gives the same for less.
 *
 * <p>Equal calls give equal answers to the last bit, whatever the number of processors.
 */
public final class WaveSolver {
    /** Lowest frequency, Hz. */
    public static final double LOWEST = 1;
    /** Highest frequency, Hz. */
    public static final double HIGHEST = 50_000;

    /** Share of the memory of the program that the solutions at one time may take. */
    private static final double MEMORY_SHARE = 0.6;

    private static final String DOING = "wave solution";

    private final WaveSpace space;
    private final WaveAccuracy accuracy;
    private final List<Cuboid> rooms;
    private final BlockGrid blocks;
    /** Of a space that is its own mirror image; null for others. */
    private final MirrorHalf half;

    private final long mostBytes;

    /** The standard accuracy. */
    public WaveSolver(WaveSpace space) {
        this(space, WaveAccuracy.STANDARD);
    }

    /**
     * @throws InvalidValue if the space has no way from inlet to outlet, or a port does not fit it
     */
    public WaveSolver(WaveSpace space, WaveAccuracy accuracy) {
        this(space, accuracy, List.of());
    }

    /**
     * @param space what is solved
     * @param accuracy how finely
     * @param rooms blocks whose mean square pressure every answer tells, in their order; m
     * @throws InvalidValue if the space has no way from inlet to outlet, or a port does not fit it
     */
    public WaveSolver(WaveSpace space, WaveAccuracy accuracy, List<Cuboid> rooms) {
        this.space = space;
        this.accuracy = accuracy;
        this.rooms = List.copyOf(rooms);
        InvalidValue.within("soundSpeed", space.soundSpeed(), 100, 1000, Unit.METRE_PER_SECOND);
        blocks = new BlockGrid(space);
        half = MirrorHalf.of(space, blocks).orElse(null);
        mostBytes = (long) (MEMORY_SHARE * Runtime.getRuntime().maxMemory());
    }

    /** How many rooms there are whose mean square pressure every answer tells. */
    public int rooms() {
        return rooms.size();
    }

    /**
     * Complex multiplications that the elimination at a frequency takes: a measure of its time that is the same on every
     * machine. A processor does about 10⁹ a second.
     *
     * @param frequency Hz
     * @throws InvalidValue if the frequency is out of range, or there are too many unknowns
     */
    public double multiplications(double frequency) {
        Runnable pause = () -> {};
        if (half == null) {
            return system(frequency, pause).plan.multiplications;
        }
        requireInRange(frequency);
        double even = system(half.even, frequency, pause).plan.multiplications;
        return half.needsOdd(frequency) ? even + system(half.odd, frequency, pause).plan.multiplications : even;
    }

    /**
     * What passes at a frequency.
     *
     * @param frequency Hz
     * @throws InvalidValue if the frequency is out of range, or there are too many unknowns for the memory
     */
    public WaveAnswer solve(double frequency) {
        return solve(frequency, bytes -> {}, () -> {});
    }

    /**
     * What passes at several frequencies, in their order; on all processors, as far as memory allows.
     *
     * @param frequencies Hz
     * @param progress told from the calling thread, some dozen times a second
     * @throws InvalidValue as for one frequency
     */
    public List<WaveAnswer> solve(double[] frequencies, Progress progress) {
        for (double frequency : frequencies) {
            requireInRange(frequency);
        }
        return new ParallelSolutions(mostBytes).run(frequencies, progress, this::solve);
    }

    private WaveAnswer solve(double frequency, LongConsumer memory, Runnable pause) {
        if (half == null) {
            WaveSystem system = fitting(blocks, frequency, pause);
            memory.accept(system.bytes());
            return system.solve(rooms, mostBytes, pause);
        }
        WaveSystem even = fitting(half.even, frequency, pause);
        // the odd part needs less: it has no unknowns on the plane between the halves
        memory.accept(even.bytes());
        WaveAnswer evenAnswer = even.solve(rooms, mostBytes, pause);
        return half.needsOdd(frequency)
                ? half.joined(evenAnswer, fitting(half.odd, frequency, pause).solve(List.of(), mostBytes, pause))
                : half.joined(evenAnswer);
    }

    /**
     * The pressure everywhere for a plane wave of amplitude 1 that comes in.
     *
     * @param frequency Hz
     * @throws InvalidValue as for {@link #solve(double)}
     */
    public WaveField solveField(double frequency) {
        return solveField(frequency, Progress.NONE);
    }

    /**
     * The same, and may be stopped.
     *
     * @param frequency Hz
     * @param progress asked now and then whether the field is still wanted; the share done is not known
     * @throws InvalidValue as for {@link #solve(double)}
     */
    public WaveField solveField(double frequency, Progress progress) {
        Runnable pause = () -> progress.check(0, DOING);
        return fitting(blocks, frequency, pause).field(mostBytes, pause);
    }

    private WaveSystem fitting(BlockGrid grid, double frequency, Runnable pause) {
        requireInRange(frequency);
        WaveSystem system = system(grid, frequency, pause);
        if (system.bytes() > mostBytes) {
            throw new InvalidValue(
                    "unknowns",
                    system.mesh.count() + ", for which " + system.bytes() / 1_000_000,
                    "few enough for " + mostBytes / 1_000_000,
                    "MB");
        }
        return system;
    }

    WaveSystem system(double frequency, Runnable pause) {
        requireInRange(frequency);
        return system(blocks, frequency, pause);
    }

    private WaveSystem system(BlockGrid grid, double frequency, Runnable pause) {
        return new WaveSystem(grid, space.soundSpeed(), frequency, accuracy, pause);
    }

    private static void requireInRange(double frequency) {
        if (!(frequency >= LOWEST && frequency <= HIGHEST)) {
            throw new InvalidValue("frequency", Double.toString(frequency), "from " + LOWEST + " to " + HIGHEST, "Hz");
        }
    }
}
