package hushmaze.app.model;

import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.function.Consumer;
import java.util.function.Function;

/** Runs at once, and does something else at every piece of news. */
final class InterruptedRunner implements TaskRunner {
    Runnable meanwhile = () -> {};

    @Override
    public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
        ON_THIS_THREAD.run(work, done, failed);
    }

    @Override
    public void tell(Runnable news) {
        news.run();
        meanwhile.run();
    }
}
