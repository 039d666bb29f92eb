package hushmaze.store;

import java.nio.file.Path;
import java.util.List;

/**
 * What the window remembers from one run to the next; nothing of a project.
 *
 * @param recent files opened or saved last, the newest first, at most {@value #MOST_RECENT}
 * @param folder where a file was chosen last; null if nowhere yet
 * @param dark whether the window is dark
 * @param textPercent size of the texts, per cent of the normal one, from {@value #SMALLEST} to {@value #LARGEST}
 * @param place of the window; null for where the system puts it
 */
public record Settings(List<Path> recent, Path folder, boolean dark, int textPercent, Place place) {
    public static final int MOST_RECENT = 8;
    public static final int SMALLEST = 90;
    public static final int NORMAL = 100;
    public static final int LARGEST = 150;

    /** Those of the first run. */
    public static final Settings FIRST = new Settings(List.of(), null, false, NORMAL, null);

    /**
     * Of a window, pixels.
     *
     * @param whole whether it fills the screen; the other numbers are its size when it does not
     */
    public record Place(double x, double y, double width, double height, boolean whole) {}

    public Settings {
        recent = recent.stream().distinct().limit(MOST_RECENT).toList();
        textPercent = Math.max(SMALLEST, Math.min(LARGEST, textPercent));
    }
}
