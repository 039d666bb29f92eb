package hushmaze.cli;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.project.Project;
import hushmaze.quantity.InvalidValue;
import hushmaze.size.LayoutRules;
import hushmaze.store.ProjectFile;
import hushmaze.work.Progress;
import java.nio.file.Path;

/** Reads a project file, lays out the boxes it leaves open, and judges it. */
final class LoadedProject {
    private LoadedProject() {}

    static Assessment assess(Path file) {
        Project project = ProjectFile.read(file);
        try {
            return assess(project);
        } catch (InvalidValue e) {
            throw e.inside(file.toString());
        }
    }

    static Assessment assess(Project project) {
        return Assessor.assess(LayoutRules.complete(project, Progress.NONE), Progress.NONE);
    }
}
