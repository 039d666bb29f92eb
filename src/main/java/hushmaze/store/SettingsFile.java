package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Settings as a small JSON file. Fields it does not know are left out when it is written again. */
public final class SettingsFile {
    private SettingsFile() {}

    /**
     * The settings in a file; those of the first run if there is no such file.
     *
     * @throws UnreadableFile if the file cannot be used
     */
    public static Settings read(Path file) {
        if (Files.notExists(file)) {
            return Settings.FIRST;
        }
        String name = file.toString();
        JsonNode tree = JsonText.parse(name, FileBytes.text(file));
        if (!tree.isObject()) {
            throw Problems.whole(name, "this is no settings file of this program");
        }
        List<Path> recent = new ArrayList<>();
        for (JsonNode one : tree.path("recent")) {
            recent.add(path(name, "recent", one));
        }
        JsonNode folder = tree.path("folder");
        JsonNode percent = tree.path("textPercent");
        if (!percent.isMissingNode() && !percent.canConvertToInt()) {
            throw wrong(name, "textPercent", percent, "a whole number of per cent");
        }
        return new Settings(
                recent,
                folder.isMissingNode() || folder.isNull() ? null : path(name, "folder", folder),
                tree.path("dark").asBoolean(false),
                percent.asInt(Settings.NORMAL),
                place(name, tree.path("window")));
    }

    private static Path path(String name, String field, JsonNode value) {
        try {
            if (value.isTextual()) {
                return Path.of(value.asText());
            }
        } catch (InvalidPathException e) {
            throw wrong(name, field, value, "the name of a file");
        }
        throw wrong(name, field, value, "the name of a file");
    }

    private static Settings.Place place(String name, JsonNode window) {
        if (window.isMissingNode() || window.isNull()) {
            return null;
        }
        for (String field : List.of("xPx", "yPx", "widthPx", "heightPx")) {
            JsonNode value = window.path(field);
            if (!value.isNumber() || !Double.isFinite(value.doubleValue())) {
                throw wrong(name, "window." + field, value, "a number of pixels");
            }
        }
        return new Settings.Place(
                window.path("xPx").doubleValue(),
                window.path("yPx").doubleValue(),
                window.path("widthPx").doubleValue(),
                window.path("heightPx").doubleValue(),
                window.path("whole").asBoolean(false));
    }

    private static UnreadableFile wrong(String name, String field, JsonNode value, String must) {
        return new UnreadableFile(
                new FileProblem(name, field, Problems.shown(value) + " is not accepted; it must be " + must));
    }

    /**
     * Writes settings, with the folder they go to if that is not there yet.
     *
     * @throws UnwritableFile if that is not possible
     */
    public static void write(Settings settings, Path file) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        ArrayNode recent = tree.putArray("recent");
        settings.recent().forEach(one -> recent.add(one.toString()));
        if (settings.folder() != null) {
            tree.put("folder", settings.folder().toString());
        }
        tree.put("dark", settings.dark());
        tree.put("textPercent", settings.textPercent());
        Settings.Place place = settings.place();
        if (place != null) {
            tree.putObject("window")
                    .put("xPx", place.x())
                    .put("yPx", place.y())
                    .put("widthPx", place.width())
                    .put("heightPx", place.height())
                    .put("whole", place.whole());
        }
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
        } catch (IOException e) {
            throw new UnwritableFile(
                    new FileProblem(file.toString(), "", "its folder cannot be made: " + FileBytes.reason(e)));
        }
        byte[] bytes = JsonText.print(tree).getBytes(StandardCharsets.UTF_8);
        AtomicFile.write(file, stream -> stream.write(bytes));
    }
}
