package hushmaze.size;

import hushmaze.assess.AskedFlows;
import hushmaze.project.Project;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Prints how long a search takes for the sample projects: the estimate of the whole grid with the candidates it judged, the first
 * recommended box with wave solution and sheet layout of each path, and all kinds.
 *
 * <p>Arguments: names of samples; none for all. Each is sized twice in one process: the first time the virtual machine is cold.
 */
final class SizeBench {
    private SizeBench() {}

    public static void main(String[] args) {
        List<String> names = args.length > 0 ? List.of(args) : SampleProjects.names();
        System.out.println(
                "| project | run | path | candidates, grid in s | recommended after s | all kinds after s |");
        System.out.println("|---|---|---|---|---|---|");
        for (String name : names) {
            for (String run : new String[] {"cold", "warm"}) {
                run(name, SampleProjects.read(name), run);
            }
        }
    }

    private static void run(String name, Project project, String run) {
        List<String> grids = new ArrayList<>();
        for (int path = 0; path < project.paths().size(); path++) {
            long start = System.nanoTime();
            BoxSearch search = new BoxSearch(AskedFlows.settled(project), path, Progress.NONE);
            search.begin();
            grids.add(String.format(Locale.ROOT, "%,d, %.1f", search.tally().all(), seconds(start)));
        }
        double[] first = new double[project.paths().size()];
        long start = System.nanoTime();
        Sizing.of(project, Kind.values().length, Progress.NONE, (path, designs) -> {
            if (first[path] == 0) {
                first[path] = seconds(start);
            }
        });
        double all = seconds(start);
        for (int path = 0; path < first.length; path++) {
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %s | %s | %s | %.1f | %.1f |%n",
                    name,
                    run,
                    project.paths().get(path).name(),
                    grids.get(path),
                    first[path],
                    all);
        }
    }

    private static double seconds(long start) {
        return (System.nanoTime() - start) / 1e9;
    }
}
