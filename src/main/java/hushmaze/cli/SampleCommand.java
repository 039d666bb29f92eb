package hushmaze.cli;

import hushmaze.assess.Assessment;
import hushmaze.document.DocumentSet;
import hushmaze.drawing.Paper;
import hushmaze.project.Project;
import hushmaze.size.Sizing;
import hushmaze.store.ProjectFile;
import hushmaze.store.SampleProjects;
import hushmaze.wording.Report;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Designs one of the sample projects and writes its documents: the whole job in one go. */
@Command(
        name = "sample",
        mixinStandardHelpOptions = true,
        description = "Designs a sample project: looks for its boxes, prints the verdicts and writes its documents.")
final class SampleCommand implements Callable<Integer> {
    @CommandLine.Spec
    private CommandLine.Model.CommandSpec spec;

    @Parameters(arity = "0..1", paramLabel = "NAME", description = "Which sample; without it, the first one.")
    private String name;

    @Option(names = "--to", defaultValue = "exports", paramLabel = "DIR", description = "Folder (default exports).")
    private Path folder;

    @Option(names = "--quick", description = "Take the boxes stored with it, and leave out the wave solution.")
    private boolean quick;

    @Override
    public Integer call() {
        PrintWriter out = spec.commandLine().getOut();
        String chosen = name == null ? SampleProjects.names().get(0) : name;
        if (!SampleProjects.names().contains(chosen)) {
            throw new CommandLine.ParameterException(
                    spec.commandLine(),
                    "no sample \"" + chosen + "\"; there are " + String.join(", ", SampleProjects.names()));
        }
        PrintWriter talk = spec.commandLine().getErr();
        Project project = SampleProjects.read(chosen);
        if (!quick) {
            talk.println("Looking for the best boxes; this takes half a minute or so.");
            talk.flush();
            project = Sizing.of(project, 1, Progress.NONE, Sizing.Watch.NOBODY).project();
        }
        LoadedProject loaded = LoadedProject.of(project, quick, talk);
        Assessment assessment = loaded.assessment();
        Wording wording = new Wording(assessment.project().units());
        new Report(wording).brief(assessment).forEach(out::println);
        int files = DocumentSet.write(
                        assessment,
                        ProjectFile.text(loaded.project()),
                        folder,
                        Paper.usual(assessment.project().units()),
                        assessment.project().units(),
                        true)
                .size();
        out.println();
        out.println("Drawings, cut lists and cautions: " + files + " files in "
                + folder.toAbsolutePath().normalize());
        return ExitCode.DONE;
    }
}
