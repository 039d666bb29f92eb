package hushmaze.sound.section;

import hushmaze.air.AirState;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.Locale;

/** Benchmark: seconds that the sound field of every box of the sample projects takes, at some frequencies. */
public final class PathFieldBench {
    private PathFieldBench() {}

    public static void main(String[] args) {
        for (int round = 0; round < 2; round++) {
            for (String sample : SampleProjects.names()) {
                Project project = SampleProjects.read(sample);
                for (VentPath path : project.paths()) {
                    Solid solid = SolidBuilder.build(path.box());
                    StringBuilder line = new StringBuilder(path.name());
                    for (double frequency : new double[] {50, 250, 500, 800, 1250, 2000, 5000}) {
                        long start = System.nanoTime();
                        PathField field = PathField.of(
                                solid,
                                path.box().liner(),
                                AirState.of(project.room()).soundSpeed(),
                                frequency,
                                Progress.NONE);
                        line.append(String.format(
                                Locale.ROOT,
                                "; %.0f Hz %s %.2f s, falls %.1f dB",
                                frequency,
                                field.flat() ? "flat" : "full",
                                (System.nanoTime() - start) / 1e9,
                                field.fall()));
                    }
                    System.out.println(line);
                }
            }
        }
    }
}
