package hushmaze.work;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** <em>Property</em> tests: every run ends in exactly one way. */
class TaskRunnerTest {
    private final List<String> events = new ArrayList<>();

    @Test
    void success() {
        TaskRunner.ON_THIS_THREAD.run(progress -> 42, value -> events.add("done " + value), e -> events.add("failed"));
        assertThat(events).containsExactly("done 42");
    }

    @Test
    void failure() {
        TaskRunner.ON_THIS_THREAD.run(
                progress -> {
                    throw new IllegalStateException("broken");
                },
                value -> events.add("done"),
                e -> events.add("failed " + e.getMessage()));
        assertThat(events).containsExactly("failed broken");
    }

    @Test
    void cancelledCallsNeither() {
        TaskRunner.ON_THIS_THREAD.run(
                progress -> {
                    throw new Progress.Cancelled();
                },
                value -> events.add("done"),
                e -> events.add("failed"));
        assertThat(events).isEmpty();
    }

    /** What goes wrong while the result is taken is the caller's fault, not the work's. */
    @Test
    void failureOfTheReceiverIsNotTheWorks() {
        assertThatThrownBy(() -> TaskRunner.ON_THIS_THREAD.run(
                        progress -> 1,
                        value -> {
                            throw new IllegalArgumentException("receiver");
                        },
                        e -> events.add("failed")))
                .isInstanceOf(IllegalArgumentException.class);
        assertThat(events).isEmpty();
    }

    @Test
    void workGetsAProgressThatIsNeverCancelled() {
        TaskRunner.ON_THIS_THREAD.run(
                progress -> {
                    for (int i = 0; i <= 10; i++) {
                        progress.check(i / 10.0, "step " + i);
                    }
                    return "end";
                },
                events::add,
                e -> events.add("failed"));
        assertThat(events).containsExactly("end");
    }
}
