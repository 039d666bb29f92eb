package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.concurrent.CopyOnWriteArrayList;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.util.WaitForAsyncUtils;

/** Property tests: of much news little but always the last is handed over, on the window's thread; none after closing. */
@ExtendWith(ApplicationExtension.class)
class BackgroundRunnerTest {
    @Test
    void muchNewsIsThinnedButTheLastArrives() throws Exception {
        List<Integer> heard = new CopyOnWriteArrayList<>();
        AtomicBoolean onWindowThread = new AtomicBoolean(true);
        try (BackgroundRunner runner = new BackgroundRunner()) {
            long begin = System.nanoTime();
            for (int i = 0; i < 100; i++) {
                int number = i;
                runner.tell(() -> {
                    onWindowThread.set(onWindowThread.get() && Platform.isFxApplicationThread());
                    heard.add(number);
                });
                TimeUnit.MILLISECONDS.sleep(2);
            }
            WaitForAsyncUtils.waitFor(10, TimeUnit.SECONDS, () -> heard.contains(99));
            double seconds = (System.nanoTime() - begin) / 1e9;
            assertThat(heard).isSorted().hasSizeBetween(2, 2 + (int) (20 * seconds));
            assertThat(onWindowThread).isTrue();
        }
    }

    @Test
    void nothingIsHandedOverAfterClosing() throws Exception {
        AtomicBoolean heard = new AtomicBoolean();
        BackgroundRunner runner = new BackgroundRunner();
        runner.tell(() -> heard.set(true));
        runner.close();
        runner.tell(() -> heard.set(true));
        TimeUnit.MILLISECONDS.sleep(200);
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(heard).isFalse();
    }
}
