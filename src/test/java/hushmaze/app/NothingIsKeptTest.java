package hushmaze.app;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.Designer;
import hushmaze.app.model.TestDesigner;
import hushmaze.app.window.Commands;
import hushmaze.app.window.DesignerWindow;
import hushmaze.store.ProjectFile;
import hushmaze.store.SampleProjects;
import hushmaze.work.TaskRunner;
import java.lang.ref.WeakReference;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TitledPane;
import javafx.scene.control.ToggleButton;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Property: a project that was opened and put away again leaves nothing behind in view models and window, however often
 * that happens, and neither does a window that was closed.
 */
@ExtendWith(ApplicationExtension.class)
class NothingIsKeptTest {
    private static final int TIMES = 200;
    private static final int WINDOWS = 5;
    /** The present one, the one before it that something not yet redrawn may still show, and what the robot holds. */
    private static final int FEW = 4;

    private static final long PATIENCE_S = 30;
    private static final List<String> VIEWS =
            List.of("space", "spectra", "field", "air", "pages", "found", "kept", "sections");

    @TempDir
    static Path folder;

    private final Map<String, List<WeakReference<Object>>> seen = new HashMap<>();
    private Designer designer;
    private Stage stage;

    @Start
    void start(Stage first) {
        stage = first;
        designer = TestWindow.show(first, TaskRunner.ON_THIS_THREAD, folder, "unnamed.json");
    }

    @Test
    void projectsDrawingsAndNodesAreLetGo(FxRobot robot) throws Exception {
        Path file = folder.resolve("cabin.json");
        ProjectFile.write(SampleProjects.read("lesson-cabin"), file);
        for (TitledPane group : robot.lookup(".titled-pane").queryAllAs(TitledPane.class)) {
            robot.interact(() -> group.setExpanded(true));
        }
        int early = 0;
        for (int i = 0; i < TIMES; i++) {
            openOnce(robot, file, VIEWS.get(i % VIEWS.size()));
            early = i == 2 * VIEWS.size() - 1 ? nodes(stage.getScene().getRoot()) : early;
            if (i % VIEWS.size() == VIEWS.size() - 1 && early > 0) {
                assertThat(nodes(stage.getScene().getRoot()))
                        .as("nodes after %d", i)
                        .isEqualTo(early);
            }
        }
        robot.interact(() -> designer.files().newFrom("trio-cellar"));
        seen.forEach((what, all) -> {
            assertThat(all).as(what).hasSizeGreaterThan(TIMES / VIEWS.size());
            assertThat(left(robot, all)).as("%s left of %d", what, all.size()).isLessThanOrEqualTo(FEW);
        });
        assertThat(seen).containsKeys("project", "assessment", "drawing", "path button", "verdict");
    }

    private void openOnce(FxRobot robot, Path file, String view) {
        robot.interact(() -> {
            assertThat(designer.files().open(file)).isTrue();
            stage.getScene().getRoot().applyCss();
            ((ToggleButton) stage.getScene().lookup("#view-" + view)).setSelected(true);
        });
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> {
            watch("project", designer.edit().project());
            watch("assessment", designer.results().assessmentProperty().get());
            watch("drawing", designer.pages().drawingProperty().get());
            watch("path button", stage.getScene().lookup("#path-0"));
            watch("verdict", stage.getScene().lookup("#verdicts .sentence"));
        });
    }

    @Test
    void closedWindowsAreLetGo(FxRobot robot) {
        for (int i = 0; i < WINDOWS; i++) {
            robot.interact(() -> {
                Stage other = new Stage();
                Designer of = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("other.json"));
                Commands commands = new Commands(of, new Answers(folder));
                new DesignerWindow(of, commands, other).show();
                commands.begin(Optional.empty());
                watch("designer", of);
                watch("scene", other.getScene());
                other.close();
            });
            WaitForAsyncUtils.waitForFxEvents();
        }
        assertThat(left(robot, seen.get("designer"))).isLessThanOrEqualTo(1);
        assertThat(left(robot, seen.get("scene"))).isLessThanOrEqualTo(1);
    }

    private void watch(String what, Object one) {
        List<WeakReference<Object>> known = seen.computeIfAbsent(what, k -> new ArrayList<>());
        if (one != null && known.stream().noneMatch(r -> r.get() == one)) {
            known.add(new WeakReference<>(one));
        }
    }

    /** How many are still there, given time and memory to collect. */
    private static long left(FxRobot robot, List<WeakReference<Object>> of) {
        long end = System.nanoTime() + TimeUnit.SECONDS.toNanos(PATIENCE_S);
        long there = of.size();
        while (there > 1 && System.nanoTime() < end) {
            System.gc();
            // A frame lets go of what the last one showed.
            robot.interact(() -> {});
            WaitForAsyncUtils.sleep(50, TimeUnit.MILLISECONDS);
            long now = of.stream().filter(r -> r.get() != null).count();
            if (now == there && now <= FEW) {
                return now;
            }
            there = now;
        }
        return there;
    }

    private static int nodes(Node of) {
        return 1
                + (of instanceof Parent parent
                        ? parent.getChildrenUnmodifiable().stream()
                                .mapToInt(NothingIsKeptTest::nodes)
                                .sum()
                        : 0);
    }
}
