package hushmaze.document;

import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.drawing.Paper;
import hushmaze.project.Project;
import hushmaze.size.FirstLayout;
import hushmaze.store.ProjectFile;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Benchmark: time of one whole export, assessment with sheet search included, for every sample project. */
public final class ExportBench {
    private static final int RUNS = 8;

    private ExportBench() {}

    /** Prints each run in seconds, the first one cold. */
    public static void main(String[] args) throws IOException {
        Path folder = Files.createTempDirectory("hushmaze-bench");
        for (String name : SampleProjects.names()) {
            Project project = FirstLayout.complete(SampleProjects.read(name), Progress.NONE);
            StringBuilder line = new StringBuilder(String.format(
                    Locale.ROOT, "%-14s %d paths, s:", name, project.paths().size()));
            for (int i = 0; i < RUNS; i++) {
                long start = System.nanoTime();
                DocumentSet.write(
                        Assessor.assess(project, Methods.ALL, Progress.NONE),
                        ProjectFile.text(project),
                        folder.resolve(name),
                        Paper.A4,
                        project.units(),
                        true);
                line.append(String.format(Locale.ROOT, " %.2f", (System.nanoTime() - start) / 1e9));
            }
            System.out.println(line);
        }
    }
}
