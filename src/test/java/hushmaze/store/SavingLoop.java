package hushmaze.store;

import hushmaze.project.Project;
import java.nio.file.Path;

/**
 * Saves a project under ever new names, its side file each time before, until it is killed. Each name is said when its save
 * begins and when it is done. Arguments: the file, and the first number of a name.
 */
final class SavingLoop {
    private SavingLoop() {}

    public static void main(String[] args) {
        Path file = Path.of(args[0]);
        Project project = SampleProjects.read(SampleProjects.DEFAULT);
        for (int i = Integer.parseInt(args[1]); ; i++) {
            Project next = named(project, i);
            Autosave.save(next, file);
            say("begun " + i);
            ProjectFile.write(next, file);
            say("saved " + i);
            Autosave.discard(file);
        }
    }

    /** A project that is named by a number. */
    static Project named(Project project, int number) {
        String name = "\"name\": \"" + project.name() + "\"";
        String text = ProjectFile.text(project);
        if (!text.contains(name)) {
            throw new IllegalStateException("the file has no " + name);
        }
        return ProjectFile.parse("loop", text.replace(name, "\"name\": \"save " + number + "\""));
    }

    private static void say(String what) {
        System.out.println(what);
        System.out.flush();
    }
}
