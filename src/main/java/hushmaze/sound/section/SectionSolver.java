package hushmaze.sound.section;

import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveAnswer;
import hushmaze.sound.wave.WaveBlock;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * Solves a raw section, as finely as its size allows: a section of very many regions has small elements anyway, and gets simpler
 * ones.
 */
public final class SectionSolver {
    /** First the one whose errors are about 0.01 dB at losses of 20 dB beside sharp edges, at eight times the standard's cost. */
    private static final List<WaveAccuracy> ACCURACIES =
            List.of(new WaveAccuracy(1, 1), WaveAccuracy.STANDARD, new WaveAccuracy(-2, -1), new WaveAccuracy(-3, -2));
    /** Most square waves in the rectangle around a section: what a gigabyte holds, by trial. */
    private static final double SQUARE_WAVES = 4000;
    /** From so many crossings of the regions' edges on the elements are small enough without refinement beside edges. */
    private static final int MANY_CELLS = 2000;
    /** What the solver calls the number of its unknowns when it refuses it. */
    private static final String UNKNOWNS = "unknowns";

    private final SectionTask task;
    private int accuracy;
    private WaveSolver solver;

    private SectionSolver(SectionTask task) {
        this.task = task;
        Snap planes = Snap.of(task.space().blocks().stream().map(WaveBlock::place));
        int cells = planes.planes(Axis.X).length * planes.planes(Axis.Y).length;
        accuracy = cells < MANY_CELLS ? 0 : ACCURACIES.size() - 2;
        solver = new WaveSolver(task.space(), ACCURACIES.get(accuracy));
    }

    /**
     * What passes at each of the frequencies, in their order.
     *
     * @param progress told before every frequency
     * @throws InvalidValue with the name in the file, if the ports do not fit, there is no way between them, or the section
     *     is too large
     */
    public static List<WaveAnswer> solve(SectionTask task, Progress progress) {
        requireSmall(task);
        SectionSolver section = new SectionSolver(task);
        List<WaveAnswer> answers = new ArrayList<>();
        for (double frequency : task.frequencies()) {
            progress.check((double) answers.size() / task.frequencies().size(), "wave solution");
            answers.add(section.solve(frequency));
        }
        return answers;
    }

    private WaveAnswer solve(double frequency) {
        while (true) {
            Optional<WaveAnswer> answer = tried(frequency);
            if (answer.isPresent()) {
                return answer.get();
            }
            if (accuracy == ACCURACIES.size() - 1) {
                throw new InvalidValue(
                        "regions",
                        task.space().blocks().size() + " regions at " + frequency + " Hz",
                        "fewer or simpler ones, or a lower frequency: they do not fit into the memory",
                        "");
            }
            accuracy++;
            solver = new WaveSolver(task.space(), ACCURACIES.get(accuracy));
        }
    }

    /** The answer, or nothing if it would be too large. */
    private Optional<WaveAnswer> tried(double frequency) {
        try {
            return Optional.of(solver.solve(frequency));
        } catch (InvalidValue e) {
            if (e.field().equals(UNKNOWNS)) {
                return Optional.empty();
            }
            throw e;
        } catch (OutOfMemoryError e) {
            // One large array could not be had; everything else is still there.
            return Optional.empty();
        }
    }

    private static void requireSmall(SectionTask task) {
        double area = size(task, Axis.X) * size(task, Axis.Y);
        double highest = task.space().soundSpeed() * Math.sqrt(SQUARE_WAVES / area);
        for (int i = 0; i < task.frequencies().size(); i++) {
            double frequency = task.frequencies().get(i);
            if (frequency > highest) {
                throw new InvalidValue(
                        "frequenciesHz[" + i + "] of a section of this size",
                        Double.toString(frequency),
                        String.format(Locale.ROOT, "at most %.0f", highest),
                        "Hz");
            }
        }
    }

    private static double size(SectionTask task, Axis axis) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (WaveBlock block : task.space().blocks()) {
            low = Math.min(low, block.place().low(axis));
            high = Math.max(high, block.place().high(axis));
        }
        return high - low;
    }
}
