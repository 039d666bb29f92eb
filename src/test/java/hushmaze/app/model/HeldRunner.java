package hushmaze.app.model;

import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;

/** Keeps work until it is told to do it, so that a test can edit in between. */
final class HeldRunner implements TaskRunner {
    private final List<Runnable> held = new ArrayList<>();

    @Override
    public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
        held.add(() -> TaskRunner.ON_THIS_THREAD.run(work, done, failed));
    }

    void doAll() {
        while (!held.isEmpty()) {
            held.remove(0).run();
        }
    }

    /** Does the work of all that is held, and gives back what hands the outcomes over. */
    void doNext() {
        held.remove(0).run();
    }

    int waiting() {
        return held.size();
    }
}
