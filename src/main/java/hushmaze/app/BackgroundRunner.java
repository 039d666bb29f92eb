package hushmaze.app;

import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.Consumer;
import java.util.function.Function;
import javafx.application.Platform;

/**
 * Runs long work one piece after the other on a thread of its own, and hands the outcome to the window's thread. Closing
 * it stops what is running at its next step.
 */
final class BackgroundRunner implements TaskRunner, AutoCloseable {
    private static final long PATIENCE_S = 3;

    /** Between two pieces of news, so that the window has time for other things. */
    private static final long REST_MS = 50;

    private final ExecutorService worker = Executors.newSingleThreadExecutor(work -> {
        Thread thread = new Thread(work, "hushmaze-worker");
        thread.setDaemon(true);
        return thread;
    });
    /** What was told last and is not handed over yet. */
    private final AtomicReference<Runnable> news = new AtomicReference<>();

    private volatile boolean closed;

    @Override
    public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
        if (closed) {
            return;
        }
        worker.execute(() -> {
            try {
                T result = work.apply((fraction, doing) -> stopIfClosed());
                deliver(() -> done.accept(result));
            } catch (Progress.Cancelled e) {
                // Whoever cancelled it wants nothing more of it.
                return;
            } catch (RuntimeException e) {
                deliver(() -> failed.accept(e));
            } catch (StackOverflowError | OutOfMemoryError e) {
                deliver(() -> failed.accept(new IllegalStateException(e)));
            }
        });
    }

    /** The newest news, at most about twenty times a second; none after closing. */
    @Override
    public void tell(Runnable newest) {
        if (!closed && news.getAndSet(newest) == null) {
            CompletableFuture.delayedExecutor(REST_MS, TimeUnit.MILLISECONDS)
                    .execute(() -> deliver(() -> news.getAndSet(null).run()));
        }
    }

    private void stopIfClosed() {
        if (closed) {
            throw new Progress.Cancelled();
        }
    }

    private void deliver(Runnable outcome) {
        Platform.runLater(() -> {
            if (!closed) {
                outcome.run();
            }
        });
    }

    /** Stops the work and waits a little for it to end, so that nothing is written afterwards. */
    @Override
    public void close() {
        closed = true;
        worker.shutdown();
        try {
            worker.awaitTermination(PATIENCE_S, TimeUnit.SECONDS);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }
}
