package hushmaze.sound.wave;

import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorCompletionService;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.Semaphore;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.function.LongConsumer;

/**
 * Solves at several frequencies at a time. The highest start first, since they take longest; a solution waits until there is
 * memory for it. The calling thread only watches.
 */
final class ParallelSolutions {
    private static final int MEGABYTE = 1 << 20;
    /** How often the caller is asked whether to go on, ms. */
    private static final long WATCH = 20;

    /** One solution; it says how much memory it needs before it takes it. */
    interface Work {
        WaveAnswer at(double frequency, LongConsumer memory, Runnable pause);
    }

    private final int megabytes;
    private final Semaphore memory;
    private final AtomicBoolean stopped = new AtomicBoolean();

    ParallelSolutions(long mostBytes) {
        megabytes = (int) Math.max(1, mostBytes / MEGABYTE);
        memory = new Semaphore(megabytes, true);
    }

    List<WaveAnswer> run(double[] frequencies, Progress progress, Work work) {
        if (frequencies.length == 0) {
            return List.of();
        }
        int threads = Math.min(frequencies.length, Runtime.getRuntime().availableProcessors());
        ExecutorService pool = Executors.newFixedThreadPool(threads, task -> {
            Thread thread = new Thread(task, "wave solution");
            thread.setDaemon(true);
            return thread;
        });
        try {
            return watch(start(pool, frequencies, work), progress);
        } finally {
            stopped.set(true);
            pool.shutdownNow();
        }
    }

    private record Started(List<Future<WaveAnswer>> inOrder, ExecutorCompletionService<WaveAnswer> finished) {}

    private Started start(ExecutorService pool, double[] frequencies, Work work) {
        ExecutorCompletionService<WaveAnswer> service = new ExecutorCompletionService<>(pool);
        Integer[] order = new Integer[frequencies.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> -frequencies[i]));
        List<Future<WaveAnswer>> futures = new ArrayList<>(Arrays.asList(newArray(frequencies.length)));
        for (int i : order) {
            futures.set(i, service.submit(() -> one(frequencies[i], work)));
        }
        return new Started(futures, service);
    }

    @SuppressWarnings("unchecked")
    private static Future<WaveAnswer>[] newArray(int length) {
        return new Future[length];
    }

    private WaveAnswer one(double frequency, Work work) throws InterruptedException {
        int[] taken = new int[1];
        try {
            return work.at(frequency, bytes -> taken[0] = take(bytes), this::pause);
        } finally {
            memory.release(taken[0]);
        }
    }

    private int take(long bytes) {
        int need = (int) Math.min(megabytes, 1 + bytes / MEGABYTE);
        try {
            memory.acquire(need);
        } catch (InterruptedException e) {
            throw new Progress.Cancelled();
        }
        return need;
    }

    private void pause() {
        if (stopped.get()) {
            throw new Progress.Cancelled();
        }
    }

    private static List<WaveAnswer> watch(Started started, Progress progress) {
        int done = 0;
        int count = started.inOrder.size();
        try {
            while (done < count) {
                progress.check((double) done / count, "wave solution");
                Future<WaveAnswer> next = started.finished.poll(WATCH, TimeUnit.MILLISECONDS);
                while (next != null) {
                    next.get();
                    done++;
                    next = started.finished.poll();
                }
            }
            List<WaveAnswer> answers = new ArrayList<>();
            for (Future<WaveAnswer> future : started.inOrder) {
                answers.add(future.get());
            }
            return answers;
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new Progress.Cancelled();
        } catch (ExecutionException e) {
            if (e.getCause() instanceof RuntimeException cause) {
                throw cause;
            }
            if (e.getCause() instanceof Error cause) {
                throw cause;
            }
            throw new IllegalStateException(e.getCause());
        }
    }
}
