package hushmaze.app;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Field;
import hushmaze.app.model.ResultModel.State;
import hushmaze.app.model.Runners;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.assess.Methods;
import hushmaze.document.FontMeasure;
import hushmaze.store.Presets;
import hushmaze.store.SampleProjects;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.concurrent.FutureTask;
import java.util.concurrent.SynchronousQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;

/**
 * How long an edit takes, ms: from a clear width that is typed to the frame with the redrawn section and the verdicts of the
 * estimate, and to the frame with the verdicts and the spectrum of the quick wave; median and 95th percentile of
 * {@value #EDITS} edits of each sample, in the view of the section and in that of the spectrum. Runs on any screen, also one in
 * memory.
 */
public final class EditBench {
    private static final int WARM = 40;
    private static final int EDITS = 40;
    private static final long PATIENCE_S = 120;
    private static final long REST_MS = 60;
    private static final Field WIDTH = Field.of("path.box.clearWidth");

    private final BackgroundRunner runner = new BackgroundRunner();
    private final BackgroundRunner mends = new BackgroundRunner();
    private Designer designer;
    private Scene scene;

    private EditBench() {}

    public static void main(String[] args) throws Exception {
        Platform.startup(() -> {});
        EditBench bench = new EditBench();
        Path folder = Files.createTempDirectory("edit-bench");
        ask(() -> bench.open(folder));
        try {
            for (String sample : SampleProjects.names()) {
                for (String view : List.of("sections", "spectra")) {
                    bench.measure(sample, view);
                }
            }
        } finally {
            bench.runner.close();
            bench.mends.close();
            Platform.exit();
        }
    }

    private void open(Path folder) {
        designer = new Designer(
                new Runners(runner, runner, runner, mends),
                Presets.load(),
                new FontMeasure(),
                folder.resolve("unnamed.json"),
                List.of(Methods.ESTIMATE, Methods.QUICK));
        Stage stage = new Stage();
        Commands commands = new Commands(designer, new Answers(folder));
        DesignerWindow window = new DesignerWindow(designer, commands, stage);
        window.show();
        commands.begin(Optional.empty());
        scene = window.scene();
    }

    private void measure(String sample, String view) throws Exception {
        frame(() -> {
            designer.files().newFrom(sample);
            ((ToggleButton) scene.lookup("#view-" + view)).setSelected(true);
        });
        double[] first = new double[EDITS];
        double[] quick = new double[EDITS];
        double start = designer.edit().project().paths().get(0).box().clearWidth() * 1000;
        for (int i = -WARM; i < EDITS; i++) {
            // A little wider than the sample: each edit is another one.
            String typed = Double.toString(start + 1 + 0.2 * (i + WARM)) + " mm";
            long[] took = frame(
                    () -> designer.edit().enter(WIDTH, "Clear width", typed).ifPresent(why -> {
                        throw new IllegalStateException(sample + ": " + why);
                    }));
            if (i >= 0) {
                first[i] = took[0] / 1e6;
                quick[i] = took[1] / 1e6;
            }
        }
        System.out.printf(
                Locale.ROOT,
                "%-20s %-9s section and verdicts %s, with the quick wave %s%n",
                sample,
                view,
                spread(first),
                spread(quick));
    }

    /** Times from an action to the frames with the first and with the last results, ns. */
    private long[] frame(Runnable action) throws Exception {
        SynchronousQueue<long[]> done = new SynchronousQueue<>();
        ask(() -> {
            long begin = System.nanoTime();
            long[] times = new long[2];
            when(() -> designer.results().stateProperty().get() == State.CURRENT, () -> {
                times[0] = System.nanoTime() - begin;
                when(() -> !designer.results().refiningProperty().get(), () -> {
                    times[1] = System.nanoTime() - begin;
                    new Thread(() -> hand(done, times)).start();
                });
            });
            action.run();
        });
        long[] times = done.poll(PATIENCE_S, TimeUnit.SECONDS);
        if (times == null) {
            throw new IllegalStateException(
                    "no results: " + designer.results().problemProperty().get());
        }
        TimeUnit.MILLISECONDS.sleep(REST_MS);
        return times;
    }

    private static void hand(SynchronousQueue<long[]> done, long[] times) {
        try {
            done.put(times);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Runs something at the end of the first frame in which a condition holds. */
    private void when(BooleanSupplier holds, Runnable then) {
        Runnable[] watch = new Runnable[1];
        watch[0] = () -> {
            if (holds.getAsBoolean()) {
                scene.removePostLayoutPulseListener(watch[0]);
                Platform.runLater(then);
            } else {
                Platform.requestNextPulse();
            }
        };
        Platform.runLater(() -> {
            scene.addPostLayoutPulseListener(watch[0]);
            Platform.requestNextPulse();
        });
    }

    private static void ask(Runnable what) throws Exception {
        FutureTask<Boolean> task = new FutureTask<>(what, true);
        Platform.runLater(task);
        task.get(PATIENCE_S, TimeUnit.SECONDS);
    }

    private static String spread(double[] each) {
        double[] sorted = each.clone();
        Arrays.sort(sorted);
        int high = (int) Math.ceil(0.95 * sorted.length) - 1;
        return String.format(Locale.ROOT, "%.0f, 95 %% %.0f", sorted[sorted.length / 2], sorted[high]);
    }
}
