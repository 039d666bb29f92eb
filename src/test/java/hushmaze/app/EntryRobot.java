package hushmaze.app;

import hushmaze.wording.Unbroken;
import java.util.stream.Collectors;
import javafx.scene.Node;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.TextInputControl;
import javafx.scene.control.TitledPane;
import javafx.scene.input.KeyCode;
import org.testfx.api.FxRobot;
import org.testfx.util.WaitForAsyncUtils;

/** What a robot does with the entries of the window. */
final class EntryRobot {
    private EntryRobot() {}

    /** Unfolds groups. */
    static void open(FxRobot robot, String... panes) {
        for (String pane : panes) {
            robot.interact(() -> robot.lookup(pane).queryAs(TitledPane.class).setExpanded(true));
        }
    }

    /** Works a button by its action: it may be scrolled out of sight. */
    static void click(FxRobot robot, String id) {
        // what was typed before may still be on its way
        WaitForAsyncUtils.waitForFxEvents();
        robot.interact(() -> robot.lookup(id).queryAs(ButtonBase.class).fire());
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Types over what is in a field, and Enter. */
    static void type(FxRobot robot, String id, String text) {
        TextInputControl field = robot.lookup(id).queryAs(TextInputControl.class);
        robot.interact(field::requestFocus);
        robot.interact(field::clear);
        robot.write(text).type(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** Whether a field and all it is in are visible. */
    static boolean isShown(FxRobot robot, String id) {
        Node node = robot.lookup(id).queryAs(TextField.class);
        for (Node at = node; at != null; at = at.getParent()) {
            if (!at.isVisible()) {
                return false;
            }
        }
        return true;
    }

    /** Of a label. */
    static String text(FxRobot robot, String id) {
        return Unbroken.plain(robot.lookup(id).queryAs(Label.class).getText());
    }

    /** All words on what is wrong. */
    static String wrongs(FxRobot robot) {
        return robot.lookup(".entry-wrong").queryAllAs(Label.class).stream()
                .map(Label::getText)
                .filter(t -> !t.isEmpty())
                .collect(Collectors.joining("\n"));
    }
}
