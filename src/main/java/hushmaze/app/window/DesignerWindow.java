package hushmaze.app.window;

import hushmaze.app.entry.EntryColumn;
import hushmaze.app.guide.GuidePane;
import hushmaze.app.model.Designer;
import hushmaze.app.sheet.ScreenFonts;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.VerdictColumn;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.MenuBar;
import javafx.scene.control.SplitPane;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;

/** The window: wishes on the left, what comes of them in the middle, the verdict on the right. */
public final class DesignerWindow {
    private static final double WIDTH = 1280;
    private static final double HEIGHT = 800;
    private static final double LEAST_WIDTH = 1080;
    private static final double LEAST_HEIGHT = 640;
    /** With larger texts the window must be wider, but never wider than a small screen. */
    private static final double MOST_WIDENED = 1.18;
    /** Widths of the outer columns with texts of the normal size, in parts of the window's. */
    private static final double ENTRIES = 0.252;

    private static final double VERDICT = 0.298;
    /** How much of the growth of the texts the columns follow; the rest of the width is the drawing's. */
    private static final double ENTRIES_WIDENED = 0.55;

    private static final double VERDICT_WIDENED = 0.15;

    private final Designer designer;
    private final Commands commands;
    private final Stage stage;
    private final Scene scene;
    private SplitPane columns;
    private GuidePane guide;
    private final Theme theme;
    private final FirstFrameFirst later;

    public DesignerWindow(Designer designer, Commands commands, Stage stage) {
        ScreenFonts.load();
        this.designer = designer;
        this.stage = stage;
        BorderPane root = new BorderPane();
        // What is still being typed is taken before anything else is done.
        this.commands = commands.after(root::requestFocus);
        root.getStyleClass().add("designer");
        this.scene = new Scene(root, WIDTH, HEIGHT);
        this.later = new FirstFrameFirst(scene);
        designer.results().refineBy(later);
        this.theme = new Theme(scene, designer.settings());
        Views views = new Views(designer, this.commands::readings);
        Menus menus = new Menus(designer, this.commands, theme, views, this::close);
        MenuBar menuBar = menus.bar();
        menus.moreKeys(scene);
        FileDrop.into(scene, this.commands);
        root.setTop(new VBox(menuBar, bar(theme), new MessageStrip(designer.messageProperty())));
        StackPane middle = new StackPane();
        root.setCenter(middle);
        fill(middle, views);
        designer.guide().openProperty().addListener((p, before, now) -> fill(middle, views));
        designer.guide().whenFinished(() -> views.show("sections"));
    }

    /** The questions or what lies under them, each made when it is first wanted. */
    private void fill(StackPane middle, Views views) {
        boolean asking = designer.guide().openProperty().get();
        if (asking && guide == null) {
            guide = new GuidePane(designer);
            middle.getChildren().add(guide);
        } else if (!asking && columns == null) {
            columns = columns(views);
            // What lies under the questions must take no keys.
            columns.visibleProperty().bind(designer.guide().openProperty().not());
            middle.getChildren().add(0, columns);
        }
    }

    /** What the window shows. */
    public Scene scene() {
        return scene;
    }

    /** Whether the window has all that it shows, what it leaves for after its first frame too. */
    public boolean isWhole() {
        return later.isDone();
    }

    /** Shows the window. */
    public void show() {
        stage.titleProperty().bind(designer.titleProperty());
        stage.setMinWidth(LEAST_WIDTH * Math.max(1, Math.min(MOST_WIDENED, theme.textFactor())));
        stage.setMinHeight(LEAST_HEIGHT);
        stage.setScene(scene);
        stage.setOnCloseRequest(e -> {
            if (!commands.mayLeave()) {
                e.consume();
            }
        });
        WindowPlace.remember(stage, designer.settings());
        stage.show();
    }

    private void close() {
        if (commands.mayLeave()) {
            stage.close();
        }
    }

    private HBox bar(Theme theme) {
        PathChooser paths = new PathChooser(designer);
        paths.visibleProperty().bind(designer.guide().openProperty().not());
        HBox.setHgrow(paths, Priority.ALWAYS);
        Button undo = KeyedButton.of("bar.undo", designer.edit()::undo);
        undo.disableProperty().bind(designer.edit().undoableProperty().isEmpty());
        Button redo = KeyedButton.of("bar.redo", designer.edit()::redo);
        redo.disableProperty().bind(designer.edit().redoableProperty().isEmpty());
        Button export = KeyedButton.of("bar.export", commands::export);
        export.disableProperty().bind(designer.files().exportingProperty());
        HBox bar = new HBox(
                paths,
                undo,
                redo,
                KeyedButton.of("bar.units", commands::switchUnits),
                KeyedButton.of(
                        "bar.theme",
                        () -> theme.darkProperty().set(!theme.darkProperty().get())),
                export);
        bar.getStyleClass().add("top-bar");
        return bar;
    }

    private SplitPane columns(Views views) {
        EntryColumn entries = new EntryColumn(designer, later);
        VerdictColumn verdict = new VerdictColumn(designer, views::show, entries::show, later);
        SplitPane all = new SplitPane(entries, views, verdict);
        SplitPane.setResizableWithParent(entries, false);
        SplitPane.setResizableWithParent(verdict, false);
        divide(all);
        designer.settings().settingsProperty().addListener((p, before, after) -> {
            if (before.textPercent() != after.textPercent()) {
                divide(all);
            }
        });
        return all;
    }

    /** Wider columns for larger texts. */
    private void divide(SplitPane columns) {
        double factor = theme.textFactor();
        columns.setDividerPositions(
                ENTRIES * (1 + ENTRIES_WIDENED * (factor - 1)), 1 - VERDICT * (1 + VERDICT_WIDENED * (factor - 1)));
    }
}
