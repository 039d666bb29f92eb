package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.project.Project;
import hushmaze.size.FirstLayout;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.Arrays;
import java.util.Locale;

/** Benchmark: time of one assessment without wave methods or sheet search, and of one layout, for every sample project. */
public final class AssessBench {
    private static final int WARM_UP = 3000;
    private static final int RUNS = 100;

    private AssessBench() {}

    /** Prints median and 90th percentile in milliseconds; the number of warming runs may be given. */
    public static void main(String[] args) {
        int warmUp = args.length > 0 ? Integer.parseInt(args[0]) : WARM_UP;
        for (String name : SampleProjects.names()) {
            Project asked = SampleProjects.read(name);
            long start = System.nanoTime();
            Project project = FirstLayout.complete(asked, Progress.NONE);
            double layout = (System.nanoTime() - start) / 1e6;
            double check = 0;
            for (int i = 0; i < warmUp; i++) {
                check += Assessor.assess(project, Methods.QUICK, Progress.NONE)
                        .room()
                        .rating()
                        .dbA();
            }
            double[] times = new double[RUNS];
            for (int i = 0; i < RUNS; i++) {
                long begin = System.nanoTime();
                check += Assessor.assess(project, Methods.QUICK, Progress.NONE)
                        .room()
                        .rating()
                        .dbA();
                times[i] = (System.nanoTime() - begin) / 1e6;
            }
            Arrays.sort(times);
            start = System.nanoTime();
            for (int i = 0; i < RUNS; i++) {
                check += roomAir(project);
            }
            double air = (System.nanoTime() - start) / 1e6 / RUNS;
            System.out.printf(
                    Locale.ROOT,
                    "%-24s %d paths: assess median %.2f ms, 90 %% %.2f ms; of it room air %.2f ms; first layout %.0f ms (%.1f)%n",
                    name,
                    project.paths().size(),
                    times[RUNS / 2],
                    times[RUNS * 9 / 10],
                    air,
                    layout,
                    check / (warmUp + RUNS));
        }
    }

    private static double roomAir(Project project) {
        Project settled = AskedFlows.settled(project);
        RoomAir air = RoomAir.of(
                settled,
                settled.paths().stream().map(p -> SolidBuilder.build(p.box())).toList(),
                AirState.of(settled.room()));
        return air.missing();
    }
}
