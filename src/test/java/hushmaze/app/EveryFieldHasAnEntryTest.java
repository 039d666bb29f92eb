package hushmaze.app;

import static hushmaze.app.EntryRobot.open;
import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.entry.EntryColumn;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EntryPlace;
import hushmaze.app.model.Extra;
import hushmaze.project.Drive;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Fitting;
import hushmaze.project.Project;
import hushmaze.project.Seam;
import hushmaze.project.VentPath;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.regex.Pattern;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.TitledPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;

/**
 * Property tests of the entries: whatever a project says can be typed or chosen among them, and a link leads to each that a
 * notice can be about. A field that has no entry is listed here with the way it is changed by.
 */
@ExtendWith(ApplicationExtension.class)
class EveryFieldHasAnEntryTest {
    private static final String NUMBER = "N";

    /** Beginnings of names, and why there is no entry. */
    private static final List<String> OTHER_WAYS = List.of(
            // of the file, not of the project
            "formatVersion",
            // a button and a menu
            "units",
            // views of their own
            "readings",
            "path.kept",
            "path.readings",
            // written by the entry of the levels it is about, or by the choice of a preset
            "room.target.source",
            "path.brief.noise.source",
            "path.brief.outgoing.limit.source",
            "path.brief.sharedDuct.limit.source",
            // made with its card by choosing from a list
            "room.envelope.elements.N.kind",
            "path.brief.fittings.N.kind",
            // chosen among presets; figures come with them
            "path.brief.construction.liner.facing.name",
            "path.brief.construction.liner.facing.source",
            "path.brief.choices.boards.N",
            "path.brief.choices.liners.N",
            // what was found from readings
            "path.brief.construction.joinery.coverGap",
            // the box follows the construction
            "path.box.shell",
            "path.box.baffleBoard",
            "path.box.baffleLayers",
            "path.box.liner",
            "path.box.joinery",
            // points of a curve are one text
            "path.brief.drive.fan.points.N",
            // one switch for each face
            "path.brief.choices.openingFaces",
            "path.brief.choices.roomFaces");

    @TempDir
    static Path folder;

    private final BackgroundRunner runner = new BackgroundRunner();
    private Designer designer;

    @Start
    void start(Stage stage) {
        designer = TestWindow.show(stage, runner, folder, "unnamed.json");
    }

    @AfterEach
    void stop() {
        runner.close();
    }

    @BeforeEach
    void begin(FxRobot robot) throws Exception {
        WaitForAsyncUtils.waitFor(
                60,
                TimeUnit.SECONDS,
                () -> designer.edit().project().paths().get(0).box() != null);
        robot.interact(this::sayEverything);
    }

    @Test
    void everyPlaceIsOpenedFocusedAndInSight(FxRobot robot) {
        EntryColumn column = robot.lookup(".entry-column").queryAs(EntryColumn.class);
        for (EntryPlace place : EntryPlace.values()) {
            assertThat(place.words()).as("%s", place).isNotBlank();
            robot.interact(() -> column.show(place));
            WaitForAsyncUtils.waitForFxEvents();
            Node focused = column.getScene().getFocusOwner();
            assertThat(focused.getId()).as("%s", place).matches(Pattern.quote(place.id()) + "(-0)?");
            Node group = robot.lookup("#group-" + place.group()).query();
            Bounds inside = group.localToScene(group.getBoundsInLocal());
            assertThat(inside.contains(focused.localToScene(focused.getBoundsInLocal())))
                    .as("%s in sight", place)
                    .isTrue();
        }
    }

    /** What is switched off has no control to go to: the fold it would be in is opened instead. */
    @Test
    void whatIsSwitchedOffLeadsToItsFold(FxRobot robot) {
        robot.interact(() -> designer.extras().turn(Extra.MOUNTING, false));
        EntryColumn column = robot.lookup(".entry-column").queryAs(EntryColumn.class);
        robot.interact(() -> column.show(EntryPlace.SCREWS));
        WaitForAsyncUtils.waitForFxEvents();
        assertThat(column.getScene().getFocusOwner().getId()).isEqualTo("fold-mounting");
        assertThat(robot.lookup("#fold-mounting").queryAs(TitledPane.class).isExpanded())
                .isTrue();
    }

    @Test
    void allOfAProjectCanBeChanged(FxRobot robot) {
        List<TitledPane> groups =
                List.copyOf(robot.lookup(".accordion > .titled-pane").queryAllAs(TitledPane.class));
        assertThat(groups).hasSize(8);
        Set<String> ids = new LinkedHashSet<>();
        for (TitledPane group : groups) {
            open(robot, "#" + group.getId());
            // unfolding one may bring more
            for (int depth = 0; depth < 2; depth++) {
                robot.interact(
                        () -> robot.lookup(".fold").queryAllAs(TitledPane.class).forEach(f -> f.setExpanded(true)));
                WaitForAsyncUtils.waitForFxEvents();
            }
            collect(group, ids);
        }
        List<String> names = new ArrayList<>();
        collect("", Project.class, names);
        collect("path.", VentPath.class, names);
        List<String> missing = names.stream()
                .filter(name -> OTHER_WAYS.stream().noneMatch(way -> name.equals(way) || name.startsWith(way + ".")))
                .filter(name -> ids.stream().noneMatch(id -> isOf(id, name)))
                .toList();
        assertThat(missing).isEmpty();
        assertThat(names).hasSizeGreaterThan(150);
    }

    private static void collect(Node node, Set<String> ids) {
        if (node.getId() != null) {
            ids.add(node.getId());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, ids));
        }
    }

    /** Everything a project may leave out, one fitting of every kind and a joint. */
    private void sayEverything() {
        for (Extra extra : Extra.values()) {
            assertThat(designer.extras().turn(extra, true)).isEmpty();
        }
        for (Fitting.Kind kind : Fitting.Kind.values()) {
            designer.air().addFitting(kind);
        }
        assertThat(designer.air().setDriveKind("kind", Drive.Kind.FAN_CURVE)).isEmpty();
        designer.presets().elements().forEach(element -> designer.extras().addElement(element));
        designer.extras()
                .addElement(new EnvelopeElement(
                        "Glass",
                        EnvelopeElement.Kind.SURFACE,
                        1,
                        2.0,
                        null,
                        32.0,
                        null,
                        null,
                        null,
                        null,
                        "Invented."));
        designer.seams().add(Seam.Kind.PARTING);
    }

    private static boolean isOf(String id, String name) {
        String pattern = name.replace('.', '-').replace("-" + NUMBER + "-", "-\\d+-");
        return id.matches(pattern + "(-\\d+)?");
    }

    /** Names of all that is no record, numbers of lists as a letter. */
    private static void collect(String prefix, Class<?> type, List<String> names) {
        for (RecordComponent component : type.getRecordComponents()) {
            String name = prefix + component.getName();
            Class<?> of = component.getType();
            boolean paths = prefix.isEmpty() && component.getName().equals("paths");
            if (of == List.class && !paths) {
                Class<?> each = (Class<?>) ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
                if (each.isRecord()) {
                    collect(name + "." + NUMBER + ".", each, names);
                } else {
                    names.add(name);
                }
            } else if (of.isRecord() && !of.getSimpleName().equals("Spectrum")) {
                collect(name + ".", of, names);
            } else if (!paths) {
                names.add(name);
            }
        }
    }
}
