package hushmaze.store;

import hushmaze.project.Project;

/**
 * Whole projects for tests: briefs alike those of the samples, all but one path of them without a box. That one has a box by hand:
 * 3 passes of 140 mm, walls of two layers. They stay as they are when the samples get other boxes.
 */
public final class TestProjects {
    private TestProjects() {}

    /** One by the name of its sample. */
    public static Project read(String name) {
        String file = "hushmaze/store/briefs/" + name + ".json";
        return ProjectFile.parse(file, BundledFile.text(file));
    }
}
