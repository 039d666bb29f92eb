package hushmaze.sound.quick;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.MikiLiner;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Random;

/**
 * Benchmark of the quick wave, in processor time of the one thread that computes: boxes of 1 to 6 passes whose tables are
 * known, each kind of table when it is new, and a search over many boxes that share sections.
 */
public final class QuickWaveBench {
    private static final int WARM_UP = 3000;
    private static final int RUNS = 1000;
    private static final int WIDTHS = 30;
    /** Frequencies up to the 5 kHz band. */
    private static final int UP_TO_5_KHZ = 105;

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static double check;

    private QuickWaveBench() {}

    public static void main(String[] args) {
        // twice, the first time for the compiler
        for (int round = 0; round < 2; round++) {
            for (int passes : new int[] {1, 2, 3, 4, 5, 6}) {
                known(passes + " lined passes", SolidBuilder.build(SampleBoxes.maze(passes)));
            }
            known("4 bare passes", SolidBuilder.build(SampleBoxes.maze(4, 0.6, null, LinedFaces.NONE, 1)));
            known("chamber", SolidBuilder.build(SampleBoxes.chamber(SampleBoxes.liner(0.05))));
            tables();
        }
        search(args.length > 0 ? Integer.parseInt(args[0]) : 20_000);
        System.out.printf(Locale.ROOT, "(%.0f)%n", check);
    }

    private static void known(String name, Solid solid) {
        QuickTables tables = new QuickTables(new MikiLiner(20000), TestPaths.SOUND_SPEED);
        double cold =
                milliseconds(() -> check += QuickWave.of(solid, tables).thirds().value(0));
        double[] all = times(() -> check += QuickWave.of(solid, tables).thirds().value(0));
        Chain chain = new Chain(PathPlan.of(solid), tables);
        double[] some = times(() -> {
            for (int f = 0; f < UP_TO_5_KHZ; f++) {
                check += chain.transmitted(f);
            }
        });
        System.out.printf(
                Locale.ROOT,
                "%-16s tables known: chain of %d frequencies median %.0f us, 90 %% %.0f us; result of %d median %.0f us,"
                        + " 90 %% %.0f us; first time %.0f ms%n",
                name,
                UP_TO_5_KHZ,
                some[RUNS / 2],
                some[RUNS * 9 / 10],
                QuickGrid.FINE.size(),
                all[RUNS / 2],
                all[RUNS * 9 / 10],
                cold);
    }

    /** What each table costs when it is asked for the first time: median over passes of 90 to 119 mm with 25 mm liner. */
    private static void tables() {
        double[][] times = new double[6][WIDTHS];
        for (int i = 0; i < WIDTHS; i++) {
            QuickTables tables = new QuickTables(new MikiLiner(20000), TestPaths.SOUND_SPEED);
            double width = 0.09 + 0.001 * i;
            PathPlan ends = plan(width, new Port(PortFace.END, width, 0.3, 0));
            PathPlan sides = plan(width, new Port(PortFace.SIDE, 0.12, 0.3, 0));
            TurnPlace turn = ends.turns().get(0);
            TurnMouth.Shape mouth = turn.mouth();
            times[0][i] = milliseconds(() -> tables.section(ends.sections().get(0), ends.fluids()));
            times[1][i] = milliseconds(() -> tables.section(mouth.wide(), ends.fluids()));
            times[2][i] = milliseconds(() -> tables.turn(turn));
            times[3][i] = milliseconds(() -> tables.turn(new TurnPlace(mouth, turn.gap() + 0.01)));
            times[4][i] = milliseconds(() -> tables.port(ends.inlet()));
            times[5][i] = milliseconds(() -> tables.port(sides.inlet()));
        }
        System.out.printf(
                Locale.ROOT,
                "first time, %d frequencies: modes of the pass %.1f ms, of the section beyond a tip %.1f ms; turn with its"
                        + " modes known %.1f ms, the same with a new gap %.1f ms; end port %.1f ms, side port with the modes"
                        + " under its mouth %.1f ms%n",
                QuickGrid.FINE.size(),
                median(times[0]),
                median(times[1]),
                median(times[2]),
                median(times[3]),
                median(times[4]),
                median(times[5]));
    }

    private static PathPlan plan(double width, Port port) {
        return PathPlan.of(SolidBuilder.build(box(2, width, 0.6, width, 0.025, port)));
    }

    private static double median(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        return sorted[sorted.length / 2];
    }

    /** Boxes of 6 widths, 2 liners, 5 gaps, 3 ports, 1 to 5 passes and any length. */
    private static void search(int boxes) {
        Random random = new Random(1);
        QuickTables tables = new QuickTables(new MikiLiner(20000), TestPaths.SOUND_SPEED);
        Solid[] solids = new Solid[boxes];
        for (int i = 0; i < boxes; i++) {
            solids[i] = SolidBuilder.build(searched(random));
        }
        double total = milliseconds(() -> {
            for (Solid solid : solids) {
                check += QuickWave.of(solid, tables).thirds().value(0);
            }
        });
        System.out.printf(
                Locale.ROOT,
                "search over %d boxes, tables made on the way: %.1f s, %.0f us a box",
                boxes,
                total / 1000,
                1000 * total / boxes);
        double again = milliseconds(() -> {
            for (Solid solid : solids) {
                check += QuickWave.of(solid, tables).thirds().value(0);
            }
        });
        Arrays.fill(solids, null);
        System.gc();
        Runtime runtime = Runtime.getRuntime();
        double megabytes = (runtime.totalMemory() - runtime.freeMemory()) / 1e6;
        System.out.printf(
                Locale.ROOT,
                "; once more %.0f us a box; memory then in use %.0f MB%n",
                1000 * again / boxes,
                megabytes);
        check += tables.soundSpeed();
    }

    private static Box searched(Random random) {
        double width = 0.08 + 0.02 * random.nextInt(6);
        double length = 0.5 + 0.7 * random.nextDouble();
        int passes = 1 + random.nextInt(5);
        double gap = passes > 1 ? width * (0.8 + 0.1 * random.nextInt(5)) : 0;
        Port port = List.of(
                        new Port(PortFace.END, width, 0.3, 0),
                        new Port(PortFace.SIDE, 0.12, 0.3, 0),
                        new Port(PortFace.END, 0.08, 0.25, 0))
                .get(random.nextInt(3));
        return box(passes, width, length, gap, random.nextBoolean() ? 0.025 : 0.05, port);
    }

    private static Box box(int passes, double width, double length, double gap, double liner, Port port) {
        return new Box(
                Box.Form.MAZE,
                passes,
                width,
                0.3,
                length,
                gap,
                List.of(SampleBoxes.board()),
                SampleBoxes.board(),
                1,
                SampleBoxes.liner(liner),
                LinedFaces.FOLD_PLANE,
                port,
                port);
    }

    private static double[] times(Runnable work) {
        for (int i = 0; i < WARM_UP; i++) {
            work.run();
        }
        double[] times = new double[RUNS];
        for (int i = 0; i < RUNS; i++) {
            times[i] = 1000 * milliseconds(work);
        }
        Arrays.sort(times);
        return times;
    }

    private static double milliseconds(Runnable work) {
        long start = CLOCK.getCurrentThreadCpuTime();
        work.run();
        return (CLOCK.getCurrentThreadCpuTime() - start) / 1e6;
    }
}
