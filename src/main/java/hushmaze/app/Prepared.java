package hushmaze.app;

import hushmaze.document.FontMeasure;
import hushmaze.drawing.TextMeasure;
import hushmaze.store.Presets;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.Executor;

/** What the window needs and what can be read while the toolkit starts. */
final class Prepared {
    private static final Executor THREADS = work -> {
        Thread thread = new Thread(work, "hushmaze-start");
        thread.setDaemon(true);
        thread.start();
    };
    private static Prepared begun;

    private final CompletableFuture<Presets> presets = CompletableFuture.supplyAsync(Presets::load, THREADS);
    private final CompletableFuture<TextMeasure> measure = CompletableFuture.supplyAsync(FontMeasure::new, THREADS);

    private Prepared() {}

    /** Begins to read, on threads of its own. */
    static synchronized void begin() {
        begun = new Prepared();
    }

    /** What was begun. */
    static synchronized Prepared begun() {
        if (begun == null) {
            begin();
        }
        return begun;
    }

    Presets presets() {
        return presets.join();
    }

    TextMeasure measure() {
        return measure.join();
    }
}
