package hushmaze.store;

import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import java.util.List;

/** Projects that come with the program, to look at and to start from. Their rooms and noises are invented. */
public final class SampleProjects {
    /** The one that is opened first. */
    public static final String DEFAULT = "trio-cellar";

    private static final List<String> NAMES = List.of(DEFAULT, "lesson-cabin", "drama-corner", "story-booth");

    private SampleProjects() {}

    /** Their names, the default one first. */
    public static List<String> names() {
        return NAMES;
    }

    /** One of them. */
    public static Project read(String name) {
        if (!NAMES.contains(name)) {
            throw new InvalidValue("sample", "\"" + name + "\"", "one of " + String.join(", ", NAMES), "");
        }
        String file = "presets/projects/" + name + ".json";
        return ProjectFile.parse(file, BundledFile.text(file));
    }
}
