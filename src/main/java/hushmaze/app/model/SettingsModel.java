package hushmaze.app.model;

import hushmaze.store.Settings;
import hushmaze.store.SettingsFile;
import hushmaze.store.UnreadableFile;
import hushmaze.store.UnwritableFile;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/**
 * What the window remembers from one run to the next, kept in a file of the user's after every change. A file that cannot be
 * read is left as it is; then nothing is kept.
 */
public final class SettingsModel {
    private static final int STEP = 10;

    private final Path file;
    private final TaskRunner runner;
    private final ObjectProperty<Message> message;
    private final ReadOnlyObjectWrapper<Settings> settings = new ReadOnlyObjectWrapper<>(Settings.FIRST);
    private final boolean kept;
    private String problem = "";

    SettingsModel(Path file, TaskRunner runner, ObjectProperty<Message> message) {
        this.file = file;
        this.runner = runner;
        this.message = message;
        boolean readable = true;
        try {
            settings.set(SettingsFile.read(file));
        } catch (UnreadableFile e) {
            problem = Texts.of("settings.unreadable", e.getMessage());
            readable = false;
        }
        kept = readable;
    }

    /** All of it. */
    public ReadOnlyObjectProperty<Settings> settingsProperty() {
        return settings.getReadOnlyProperty();
    }

    public Settings settings() {
        return settings.get();
    }

    /** What is to be told of the settings, once. */
    public void tellProblem() {
        if (!problem.isEmpty()) {
            Message before = message.get();
            message.set(new Message(true, before == null ? problem : before.text() + "\n" + problem));
            problem = "";
        }
    }

    /** A file was opened or saved: it is the newest, and its folder the one to look in next. */
    void used(Path of) {
        Path whole = of.toAbsolutePath();
        List<Path> recent = new ArrayList<>(List.of(whole));
        recent.addAll(settings().recent());
        change(s -> new Settings(recent, whole.getParent(), s.dark(), s.textPercent(), s.place()));
    }

    /** A file is not there any more. */
    public void forget(Path of) {
        List<Path> recent =
                settings().recent().stream().filter(one -> !one.equals(of)).toList();
        change(s -> new Settings(recent, s.folder(), s.dark(), s.textPercent(), s.place()));
    }

    /** Something was chosen in a folder. */
    public void lookedIn(Path folder) {
        change(s -> new Settings(s.recent(), folder, s.dark(), s.textPercent(), s.place()));
    }

    /** The folder to begin a choice in, if one is known. */
    public Optional<Path> folder() {
        return Optional.ofNullable(settings().folder());
    }

    public void setDark(boolean dark) {
        change(s -> new Settings(s.recent(), s.folder(), dark, s.textPercent(), s.place()));
    }

    /** Makes texts larger or smaller by some steps of ten per cent; for 0 they become normal again. */
    public void resizeText(int steps) {
        change(s -> new Settings(
                s.recent(),
                s.folder(),
                s.dark(),
                steps == 0 ? Settings.NORMAL : s.textPercent() + steps * STEP,
                s.place()));
    }

    public void setPlace(Settings.Place place) {
        change(s -> new Settings(s.recent(), s.folder(), s.dark(), s.textPercent(), place));
    }

    private void change(UnaryOperator<Settings> to) {
        Settings after = to.apply(settings());
        if (after.equals(settings())) {
            return;
        }
        settings.set(after);
        if (kept) {
            runner.run(
                    progress -> {
                        SettingsFile.write(after, file);
                        return true;
                    },
                    done -> {},
                    e -> message.set(new Message(true, Texts.of("settings.unwritable", e.getMessage()))));
        }
    }

    /** Writes what is known at the end, when nothing else is run any more; then there is nobody left to tell of trouble. */
    public void keepAtTheEnd() {
        if (kept && !settings().equals(Settings.FIRST)) {
            try {
                SettingsFile.write(settings(), file);
            } catch (UnwritableFile e) {
                return;
            }
        }
    }
}
