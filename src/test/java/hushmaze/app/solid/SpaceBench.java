package hushmaze.app.solid;

import com.sun.management.OperatingSystemMXBean;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.SampleProjects;
import java.lang.management.ManagementFactory;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.animation.AnimationTimer;
import javafx.application.Application;
import javafx.application.Platform;
import javafx.scene.Scene;
import javafx.stage.Stage;

/**
 * Benchmark: pictures a second while the boxes of the sample projects turn, in 555 by 480 pixels, what the view has in the
 * smallest usual window, and in 1190 by 990. Pulses are as fast as they can be; a picture counts once it was rendered. Processor time counts
 * for all threads, so that it can be told how quick a machine with nothing else to do would be.
 */
public final class SpaceBench {
    private SpaceBench() {}

    public static void main(String[] args) {
        System.setProperty("javafx.animation.fullspeed", "true");
        // the main class itself must not be the application where the libraries are on the class path
        Application.launch(Turning.class, args);
    }

    /** The window in which the boxes turn, one after another. */
    public static final class Turning extends Application {
        private static final double NANO = 1e-9;
        private static final double EACH_S = 4;
        private static final double WARM_S = 1;

        private record Case(String name, Project project, VentPath path, double width, double height) {}

        private final List<Case> cases = new ArrayList<>();

        @Override
        public void start(Stage stage) {
            for (double[] size : new double[][] {{555, 480}, {1190, 990}}) {
                for (String sample : SampleProjects.names()) {
                    Project project = SampleProjects.read(sample);
                    for (VentPath path : project.paths()) {
                        cases.add(new Case(sample + ", " + path.name(), project, path, size[0], size[1]));
                    }
                }
            }
            next(stage);
        }

        /** Time that all processors have worked for this program, s. */
        private static double processors() {
            return ManagementFactory.getPlatformMXBean(OperatingSystemMXBean.class)
                            .getProcessCpuTime()
                    * NANO;
        }

        private void next(Stage stage) {
            if (cases.isEmpty()) {
                Platform.exit();
                return;
            }
            Case now = cases.remove(0);
            SpaceView view = new SpaceView();
            Scene scene = new Scene(view, now.width(), now.height());
            scene.getStylesheets()
                    .setAll(
                            SpaceBench.class
                                    .getResource("/hushmaze/app/window.css")
                                    .toExternalForm(),
                            SpaceBench.class
                                    .getResource("/hushmaze/app/light.css")
                                    .toExternalForm());
            BoxModel box = new BoxModel(
                    SolidBuilder.build(now.path().box()), now.path().purpose() == Purpose.SUPPLY, view);
            box.show(true, false, BoxModel.ALL_LAYERS);
            view.show(box, box.diagonal());
            stage.setScene(scene);
            stage.show();
            new AnimationTimer() {
                private double start = -1;
                private int frames;
                private double spent;

                @Override
                public void handle(long time) {
                    double at = time * NANO;
                    if (start < 0) {
                        start = at + WARM_S;
                    } else if (at >= start && frames == 0) {
                        spent = processors();
                    }
                    view.turn(1, 0);
                    frames = at < start ? 0 : frames + 1;
                    if (at > start + EACH_S) {
                        stop();
                        System.out.printf(
                                Locale.ROOT,
                                "%s, %.0f x %.0f: %.1f a second, %.0f ms of processors each%n",
                                now.name(),
                                now.width(),
                                now.height(),
                                frames / (at - start),
                                1000 * (processors() - spent) / frames);
                        next(stage);
                    }
                }
            }.start();
        }
    }
}
