package hushmaze.size;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.work.Progress;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Consumer;
import java.util.function.DoubleFunction;

/**
 * Judges a project at many values of one of its numbers. Every row depends on its step alone, so rows can be worked out in
 * any order and by any number of machines. Paths without a box get one laid out for each value; those with a box keep it. A value
 * that is refused gives a row that says so, and the sweep goes on.
 */
public final class Sweep {
    private final SweepRange range;
    private final DoubleFunction<Project> projects;
    private final Methods methods;

    /**
     * @param range of values
     * @param projects the project at a value; throws {@code IllegalArgumentException} for one that it may not have
     * @param methods of every assessment
     */
    public Sweep(SweepRange range, DoubleFunction<Project> projects, Methods methods) {
        this.range = range;
        this.projects = projects;
        this.methods = methods;
    }

    /** The row of one step, counted from 0. */
    public SweepRow row(int step, Progress progress) {
        double value = range.value(step);
        try {
            Project asked = projects.apply(value);
            Project complete = FirstLayout.complete(asked, progress);
            List<Boolean> laidOut = asked.paths().stream()
                    .map(VentPath::box)
                    .map(box -> box == null)
                    .toList();
            Assessment assessment = Assessor.assess(complete, methods, progress);
            return new SweepRow(step, value, laidOut, assessment, null);
        } catch (IllegalArgumentException | NoBox refused) {
            return new SweepRow(step, value, List.of(), null, refused);
        }
    }

    /**
     * Rows in the order asked for. Without the wave solution, which keeps all processors busy by itself, several are worked out
     * at once.
     *
     * @param steps counted from 0
     * @param progress told of the rows finished; may be called from several threads, one at a time
     * @param finished gets each row as soon as those before it are done, on the calling thread
     */
    public void rows(List<Integer> steps, Progress progress, Consumer<SweepRow> finished) {
        OneAtATime each = new OneAtATime(progress, steps.size());
        int threads = methods.wave() ? 1 : Runtime.getRuntime().availableProcessors();
        if (threads == 1 || steps.size() < 2) {
            for (int step : steps) {
                hand(row(step, each), each, finished);
            }
            return;
        }
        ExecutorService workers = Executors.newFixedThreadPool(threads);
        try {
            Deque<Future<SweepRow>> ahead = new ArrayDeque<>();
            for (int step : steps) {
                ahead.add(workers.submit(() -> row(step, each)));
                // A few rows ahead of the slowest, not all: assessments are large.
                if (ahead.size() > 2 * threads) {
                    hand(result(ahead.remove()), each, finished);
                }
            }
            while (!ahead.isEmpty()) {
                hand(result(ahead.remove()), each, finished);
            }
        } finally {
            workers.shutdownNow();
        }
    }

    private static void hand(SweepRow row, OneAtATime each, Consumer<SweepRow> finished) {
        finished.accept(row);
        each.done.incrementAndGet();
        each.check(0, "");
    }

    private static SweepRow result(Future<SweepRow> future) {
        try {
            return future.get();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException failed) {
                throw failed;
            }
            if (e.getCause() instanceof Error failed) {
                throw failed;
            }
            throw new IllegalStateException("a row of a sweep failed", e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Progress.Cancelled();
        }
    }

    /** Tells the share of rows done, whatever a single row says of itself. */
    private static final class OneAtATime implements Progress {
        private final Progress told;
        private final int rows;
        private final AtomicInteger done = new AtomicInteger();

        OneAtATime(Progress told, int rows) {
            this.told = told;
            this.rows = rows;
        }

        @Override
        public synchronized void check(double fraction, String doing) {
            told.check((double) done.get() / Math.max(1, rows), doing);
        }
    }
}
