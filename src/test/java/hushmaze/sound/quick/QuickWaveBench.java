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
 * Benchmark of the quick wave, in processor time of the one thread that computes: a box whose tables are known, the tables, a new
 * gap at a known section, and a search over many boxes that share sections.
 */
public final class QuickWaveBench {
    private static final int WARM_UP = 3000;
    private static final int RUNS = 1000;
    /** Frequencies up to the 5 kHz band. */
    private static final int UP_TO_5_KHZ = 105;

    private static final ThreadMXBean CLOCK = ManagementFactory.getThreadMXBean();
    private static double check;

    private QuickWaveBench() {}

    public static void main(String[] args) {
        // twice, the first time for the compiler
        for (int round = 0; round < 2; round++) {
            for (int passes : new int[] {1, 2, 4, 6}) {
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
                QuickGrid.size(),
                all[RUNS / 2],
                all[RUNS * 9 / 10],
                cold);
    }

    /** What each table costs, 100 mm passes with 25 mm liner. */
    private static void tables() {
        QuickTables tables = new QuickTables(new MikiLiner(20000), TestPaths.SOUND_SPEED);
        PathPlan plan = PathPlan.of(SolidBuilder.build(SampleBoxes.maze(4)));
        TurnMouth.Shape mouth = plan.turns().get(0).mouth();
        double pass = milliseconds(() -> tables.section(plan.sections().get(0), plan.fluids()));
        double wide = milliseconds(() -> tables.section(mouth.wide(), plan.fluids()));
        double open = milliseconds(() -> tables.mouth(mouth));
        double gaps = milliseconds(() -> {
            for (int i = 0; i < 40; i++) {
                tables.turn(new TurnPlace(mouth, 0.08 + 0.001 * i));
            }
        });
        double port = milliseconds(() -> tables.port(plan.inlet()));
        System.out.printf(
                Locale.ROOT,
                "tables: modes of the pass %.1f ms, of the section beyond a tip %.1f ms, mouth of a turn %.1f ms, a new gap"
                        + " %.2f ms, an end port with its sections %.1f ms%n",
                pass,
                wide,
                open,
                gaps / 40,
                port);
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
                SampleBoxes.liner(random.nextBoolean() ? 0.025 : 0.05),
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
