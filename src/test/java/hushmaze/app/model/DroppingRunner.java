package hushmaze.app.model;

import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.util.function.Consumer;
import java.util.function.Function;

/** Does no work, and keeps none. */
final class DroppingRunner implements TaskRunner {
    @Override
    public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
        // as if it were cancelled at once
    }
}
