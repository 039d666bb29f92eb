package hushmaze.cli;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.FirstLayout;
import hushmaze.store.ProjectFile;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;

/**
 * A project that was read, with the boxes laid out that it leaves open, and judged.
 *
 * @param project with a box in every path
 * @param assessment of it
 */
record LoadedProject(Project project, Assessment assessment) {
    private static final Methods WITHOUT_WAVE = new Methods(Methods.ALL.quick(), false, Methods.ALL.sheets());

    /**
     * A project file judged.
     *
     * @param file of the project
     * @param quick whether the wave solution is left out
     * @param talk is told which boxes were laid out
     */
    static LoadedProject of(Path file, boolean quick, PrintWriter talk) {
        return of(file, ProjectFile.read(file), quick, talk, Progress.NONE);
    }

    /** What was read from a file judged, or what was made of it. */
    static LoadedProject of(Path file, Project project, boolean quick, PrintWriter talk, Progress progress) {
        try {
            return of(project, quick, talk, progress);
        } catch (InvalidValue e) {
            throw e.in(file);
        }
    }

    /** A project judged. */
    static LoadedProject of(Project project, boolean quick, PrintWriter talk) {
        return of(project, quick, talk, Progress.NONE);
    }

    private static LoadedProject of(Project project, boolean quick, PrintWriter talk, Progress progress) {
        Project complete = FirstLayout.complete(project, progress);
        Wording wording = new Wording(project.units());
        project.paths().stream()
                .filter(path -> path.box() == null)
                .map(VentPath::name)
                .forEach(name -> talk.println(wording.text("box.laidOut", name)));
        return new LoadedProject(complete, Assessor.assess(complete, methods(quick), progress));
    }

    /** Methods of the commands, with or without the wave solution. */
    static Methods methods(boolean quick) {
        return quick ? WITHOUT_WAVE : Methods.ALL;
    }
}
