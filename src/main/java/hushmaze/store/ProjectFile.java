package hushmaze.store;

import com.fasterxml.jackson.databind.JsonNode;
import hushmaze.project.Project;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;

/**
 * A project as a JSON file in UTF-8. What is written and read back is the same project to the last bit (but minus
 * zero comes back as zero), and writing it again gives the same bytes. A file has at most {@value FileBytes#MAX_BYTES} bytes.
 */
public final class ProjectFile {
    private static final String FORMAT_VERSION = "formatVersion";

    private ProjectFile() {}

    /**
     * The project in a file.
     *
     * @throws UnreadableFile with everything that is wrong with the file
     */
    public static Project read(Path file) {
        return parse(file.toString(), FileBytes.text(file));
    }

    /**
     * Writes a project, replacing the file if there is one. Either all of it is written or nothing is changed.
     *
     * @throws UnwritableFile if that is not possible
     */
    public static void write(Project project, Path file) {
        byte[] bytes = text(project).getBytes(StandardCharsets.UTF_8);
        if (bytes.length > FileBytes.MAX_BYTES) {
            throw new UnwritableFile(new FileProblem(
                    file.toString(),
                    "",
                    "the project takes " + bytes.length + " bytes; it must be at most " + FileBytes.MAX_BYTES
                            + " bytes"));
        }
        AtomicFile.write(file, stream -> stream.write(bytes));
    }

    /** The project as it stands in a file. */
    public static String text(Project project) {
        return JsonText.print(RecordWriter.write(project));
    }

    /**
     * The project in a text.
     *
     * @param name of the file, for messages
     */
    static Project parse(String name, String text) {
        JsonNode tree = JsonText.parse(name, text);
        // A newer format comes first: of a file one does not know, nothing else can be said.
        JsonNode version = tree.path(FORMAT_VERSION);
        if (version.isIntegralNumber() && version.doubleValue() > Project.FORMAT_VERSION) {
            throw new UnreadableFile(new FileProblem(
                    name,
                    FORMAT_VERSION,
                    "written by a newer version: format " + Problems.shown(version) + "; this program reads up to "
                            + Project.FORMAT_VERSION));
        }
        OlderFiles.update(tree);
        Problems problems = new Problems(name);
        Project project = new RecordReader(problems).read(tree, Project.class, "");
        problems.throwIfAny();
        return project;
    }
}
