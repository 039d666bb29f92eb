package hushmaze.work;

import java.util.function.Consumer;
import java.util.function.Function;

/** Runs long work somewhere and hands the outcome back; tests use one that runs on the calling thread. */
public interface TaskRunner {
    /** Runs everything at once, on the calling thread. */
    TaskRunner ON_THIS_THREAD = new TaskRunner() {
        @Override
        public <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed) {
            T result;
            try {
                result = work.apply(Progress.NONE);
            } catch (Progress.Cancelled e) {
                return;
            } catch (RuntimeException e) {
                failed.accept(e);
                return;
            }
            done.accept(result);
        }
    };

    /**
     * Runs work and reports how it ended. A cancelled run calls neither.
     *
     * @param work gets the progress to report to
     * @param done called with the result
     * @param failed called with what went wrong
     */
    <T> void run(Function<Progress, T> work, Consumer<T> done, Consumer<Exception> failed);

    /**
     * Hands news of running work to the thread the outcome goes to. Each piece tells all there is to know: a newer one may take the
     * place of one that was not handed over yet. Unless a runner says otherwise it is handed over at once, on the calling thread.
     *
     * @param news called once, or never if newer news or the end of the runner came before it
     */
    default void tell(Runnable news) {
        news.run();
    }
}
