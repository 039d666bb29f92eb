package hushmaze.cli;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.LayoutRules;
import hushmaze.store.ProjectFile;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;

/** Reads a project file, lays out the boxes it leaves open, and judges it. */
final class LoadedProject {
    private static final Methods WITHOUT_WAVE = new Methods(Methods.ALL.quick(), false, Methods.ALL.sheets());

    private LoadedProject() {}

    /**
     * The assessment of a file.
     *
     * @param file of the project
     * @param quick whether the wave solution is left out
     * @param talk is told which boxes were laid out
     */
    static Assessment assess(Path file, boolean quick, PrintWriter talk) {
        Project project = ProjectFile.read(file);
        try {
            return assess(project, quick, talk);
        } catch (InvalidValue e) {
            throw new InvalidValue(file + ": " + e.field(), e.given(), e.limit(), e.unit());
        }
    }

    /** The assessment of a project. */
    static Assessment assess(Project project, boolean quick, PrintWriter talk) {
        Project complete = LayoutRules.complete(project, Progress.NONE);
        Wording wording = new Wording(project.units());
        project.paths().stream()
                .filter(path -> path.box() == null)
                .map(VentPath::name)
                .forEach(name -> talk.println(wording.text("box.laidOut", name)));
        return Assessor.assess(complete, quick ? WITHOUT_WAVE : Methods.ALL, Progress.NONE);
    }
}
