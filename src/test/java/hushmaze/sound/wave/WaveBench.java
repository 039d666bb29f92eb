package hushmaze.sound.wave;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.work.Progress;
import java.lang.management.ManagementFactory;
import java.util.List;
import java.util.Locale;

/**
 * Benchmark: a lined maze of four passes, by its flat section 50 Hz to 5 kHz and in three directions 63 Hz to 800 Hz, five
 * frequencies a third octave, on all processors. The argument "flat" leaves the second out.
 */
public final class WaveBench {
    private static final int WARM_UP = 3;
    private static final double BILLION = 1e9;
    /** Additions and multiplications in one complex multiplication with addition. */
    private static final int OPERATIONS = 8;

    private WaveBench() {}

    /** Prints time, unknowns, rate of the factorisation and the largest error against a finer solution. */
    public static void main(String[] args) {
        WaveSpace flat = MazeSpaces.flat(4, 0.9, 0.6, 0.025, 20_000);
        List<Band> bands = BandSet.THIRD_OCTAVE.bands();
        WaveSolver solver = new WaveSolver(flat);
        for (int i = 0; i < WARM_UP; i++) {
            WaveBands.of(solver, bands.subList(0, 21), WaveBands.PER_BAND, Progress.NONE);
        }
        WaveBands standard = timed("flat", solver, bands.subList(0, 21));
        WaveBands fine = WaveBands.of(
                new WaveSolver(flat, new WaveAccuracy(6, 0)), bands.subList(0, 21), WaveBands.PER_BAND, Progress.NONE);
        errors(standard, fine);
        rate(solver.system(5000, () -> {}));
        if (args.length > 0 && args[0].equals("flat")) {
            return;
        }
        WaveSpace solid = MazeSpaces.solid(flat, 0.4, 0.025);
        WaveSolver coarse = new WaveSolver(solid, new WaveAccuracy(-2, 0));
        WaveBands first = timed("three directions", coarse, bands.subList(1, 13));
        WaveSystem largest = coarse.system(bands.get(12).upperHz(), () -> {});
        System.out.printf(Locale.ROOT, "memory of the largest %.0f MB%n", largest.bytes() / 1e6);
        rate(largest);
        WaveSolver finer = new WaveSolver(solid, new WaveAccuracy(-1, 0));
        errors(first, timed("three directions, one degree more", finer, bands.subList(1, 13)));
    }

    private static WaveBands timed(String name, WaveSolver solver, List<Band> bands) {
        long start = System.nanoTime();
        long busy = processorTime();
        WaveBands found = WaveBands.of(solver, bands, WaveBands.PER_BAND, Progress.NONE);
        double seconds = (System.nanoTime() - start) / BILLION;
        int count = found.answers().size();
        System.out.printf(
                Locale.ROOT,
                "%s: %d frequencies %.2f s, %.2f s of processors, %.1f ms each; up to %d unknowns%n",
                name,
                count,
                seconds,
                (processorTime() - busy) / BILLION,
                (processorTime() - busy) / 1e6 / count,
                found.answers().get(count - 1).unknowns());
        return found;
    }

    /** Of all threads, ns: on a machine that is shared it says more than the clock. */
    private static long processorTime() {
        var bean = (com.sun.management.OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
        return bean.getProcessCpuTime();
    }

    private static void errors(WaveBands some, WaveBands finer) {
        double single = 0;
        double audible = 0;
        double band = 0;
        for (int i = 0; i < some.answers().size(); i++) {
            double exact = finer.answers().get(i).transmissionLoss();
            double error = Math.abs(some.answers().get(i).transmissionLoss() - exact);
            single = Math.max(single, error);
            audible = exact < 100 ? Math.max(audible, error) : audible;
        }
        for (int i = 0; i < some.bands().size(); i++) {
            band = Math.max(band, Math.abs(some.losses().get(i) - finer.losses().get(i)));
        }
        System.out.printf(
                Locale.ROOT,
                "against the finer solution: %.3f dB at most, %.3f dB up to losses of 100 dB, %.3f dB in bands%n",
                single,
                audible,
                band);
    }

    private static void rate(WaveSystem system) {
        long best = Long.MAX_VALUE;
        for (int i = 0; i < WARM_UP; i++) {
            long start = System.nanoTime();
            system.solve(List.of(), Long.MAX_VALUE, () -> {});
            best = Math.min(best, System.nanoTime() - start);
        }
        System.out.printf(
                Locale.ROOT,
                "one factorisation with its solutions on one processor %.1f ms, %.1f GFLOP/s%n",
                best / 1e6,
                OPERATIONS * system.plan.multiplications / best);
    }
}
