package hushmaze.app.window;

import hushmaze.app.model.Designer;
import hushmaze.app.model.SizingModel;
import hushmaze.app.model.Texts;
import hushmaze.store.SampleProjects;
import java.nio.file.Path;
import java.util.List;
import javafx.beans.binding.Bindings;
import javafx.beans.value.ObservableStringValue;
import javafx.scene.Scene;
import javafx.scene.control.CheckMenuItem;
import javafx.scene.control.Menu;
import javafx.scene.control.MenuBar;
import javafx.scene.control.MenuItem;
import javafx.scene.control.SeparatorMenuItem;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyCodeCombination;
import javafx.scene.input.KeyCombination;

/** The menu bar, with mnemonics and keys for everything. */
final class Menus {
    private final Designer designer;
    private final Commands commands;
    private final Theme theme;
    private final Views views;
    private final Runnable close;

    Menus(Designer designer, Commands commands, Theme theme, Views views, Runnable close) {
        this.designer = designer;
        this.commands = commands;
        this.theme = theme;
        this.views = views;
        this.close = close;
    }

    MenuBar bar() {
        MenuBar bar = new MenuBar(file(), edit(), view());
        bar.setId("menus");
        return bar;
    }

    private Menu file() {
        Menu samples = new Menu(Texts.of("menu.new"));
        samples.setId("menu-new");
        List<String> names = SampleProjects.names();
        for (int i = 0; i < names.size(); i++) {
            String sample = names.get(i);
            MenuItem one = new MenuItem(Texts.find("sample." + sample).orElse(sample));
            one.setOnAction(e -> commands.newFrom(sample));
            if (i == 0) {
                one.setAccelerator(KeyCombination.valueOf("Shortcut+N"));
            }
            samples.getItems().add(one);
        }
        MenuItem export = item("menu.export", "Shortcut+E", commands::export);
        export.disableProperty().bind(designer.files().exportingProperty());
        Menu menu = new Menu(Texts.of("menu.file"));
        menu.getItems()
                .addAll(
                        item("menu.guide", "Shortcut+G", commands::guide),
                        samples,
                        item("menu.open", "Shortcut+O", commands::open),
                        recent(),
                        item("menu.save", "Shortcut+S", commands::save),
                        item("menu.saveAs", "Shortcut+Shift+S", commands::saveAs),
                        new SeparatorMenuItem(),
                        export,
                        item("menu.print", "Shortcut+P", commands::print),
                        new SeparatorMenuItem(),
                        item("menu.close", "Shortcut+Q", close));
        return menu;
    }

    /** The files used last, by number, name and folder. */
    private Menu recent() {
        Menu recent = new Menu(Texts.of("menu.recent"));
        recent.setId("menu-recent");
        fill(recent);
        designer.settings().settingsProperty().addListener((p, before, after) -> {
            if (!before.recent().equals(after.recent())) {
                fill(recent);
            }
        });
        return recent;
    }

    private void fill(Menu recent) {
        List<Path> files = designer.settings().settings().recent();
        recent.setDisable(files.isEmpty());
        recent.getItems().clear();
        for (int i = 0; i < files.size(); i++) {
            Path file = files.get(i);
            MenuItem one = new MenuItem(Texts.of("menu.recent.one", String.valueOf(i + 1), file.toString()));
            one.setMnemonicParsing(true);
            one.setId("menu-recent-" + i);
            one.setOnAction(e -> commands.openRecent(file));
            recent.getItems().add(one);
        }
    }

    private Menu edit() {
        MenuItem undo = item("menu.undo", "Shortcut+Z", designer.edit()::undo);
        MenuItem redo = item("menu.redo", "Shortcut+Y", designer.edit()::redo);
        follow(undo, "menu.undo", designer.edit().undoableProperty());
        follow(redo, "menu.redo", designer.edit().redoableProperty());
        MenuItem layOut = item("menu.layOut", "Shortcut+L", designer.results()::layOut);
        layOut.disableProperty().bind(designer.results().layingOutProperty());
        MenuItem keep = item("menu.keep", "Shortcut+K", commands::keep);
        MenuItem find = item("menu.find", "Shortcut+B", this::find);
        Menu menu = new Menu(Texts.of("menu.edit"));
        MenuItem add = item("menu.pathAdd", "Shortcut+Shift+P", designer.paths()::add);
        MenuItem remove = item("menu.pathRemove", "Shortcut+Shift+R", designer.paths()::remove);
        menu.setOnShowing(e -> {
            add.setDisable(!designer.paths().mayAdd());
            remove.setDisable(!designer.paths().mayRemove());
        });
        menu.getItems()
                .addAll(undo, redo, new SeparatorMenuItem(), layOut, find, keep, new SeparatorMenuItem(), add, remove);
        return menu;
    }

    /** Shows the best boxes and begins to look for them, unless that is going on. */
    private void find() {
        views.show("found");
        if (designer.sizing().stateProperty().get() != SizingModel.State.SEARCHING) {
            designer.sizing().start();
        }
    }

    private static void follow(MenuItem item, String key, ObservableStringValue what) {
        item.textProperty()
                .bind(Bindings.createStringBinding(
                        () -> what.get().isEmpty() ? Texts.of(key) : Texts.of(key + ".what", what.get()), what));
        item.disableProperty()
                .bind(Bindings.createBooleanBinding(() -> what.get().isEmpty(), what));
    }

    private Menu view() {
        Menu menu = new Menu(Texts.of("menu.view"));
        for (int i = 0; i < Views.NAMES.size(); i++) {
            int number = i;
            menu.getItems().add(item("view." + Views.NAMES.get(i), "Shortcut+" + (i + 1), () -> views.show(number)));
        }
        CheckMenuItem dark = new CheckMenuItem(Texts.of("menu.dark"));
        dark.selectedProperty().bindBidirectional(theme.darkProperty());
        dark.setAccelerator(KeyCombination.valueOf("Shortcut+D"));
        menu.getItems()
                .addAll(
                        new SeparatorMenuItem(),
                        item(
                                "menu.textLarger",
                                "Shortcut+Plus",
                                () -> designer.settings().resizeText(1)),
                        item(
                                "menu.textSmaller",
                                "Shortcut+Minus",
                                () -> designer.settings().resizeText(-1)),
                        item(
                                "menu.textNormal",
                                "Shortcut+0",
                                () -> designer.settings().resizeText(0)),
                        new SeparatorMenuItem(),
                        item("menu.units", "Shortcut+U", commands::switchUnits),
                        dark);
        return menu;
    }

    /** Other keys of the same meaning: on many keyboards plus is typed as equals, and there are those of the number pad. */
    void moreKeys(Scene scene) {
        for (KeyCode plus : List.of(KeyCode.EQUALS, KeyCode.ADD)) {
            scene.getAccelerators().put(with(plus), () -> designer.settings().resizeText(1));
        }
        scene.getAccelerators()
                .put(with(KeyCode.SUBTRACT), () -> designer.settings().resizeText(-1));
        scene.getAccelerators()
                .put(with(KeyCode.NUMPAD0), () -> designer.settings().resizeText(0));
    }

    private static KeyCombination with(KeyCode key) {
        return new KeyCodeCombination(key, KeyCombination.SHORTCUT_DOWN, KeyCombination.SHIFT_ANY);
    }

    private static MenuItem item(String key, String keys, Runnable action) {
        MenuItem item = new MenuItem(Texts.of(key));
        item.setMnemonicParsing(true);
        item.setId(key.replace('.', '-'));
        item.setAccelerator(KeyCombination.valueOf(keys));
        item.setOnAction(e -> action.run());
        return item;
    }
}
