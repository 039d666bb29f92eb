package hushmaze.sound.quick;

import hushmaze.material.Facing;
import hushmaze.project.Box;
import hushmaze.quantity.BandSet;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.section.PathWave;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;

/**
 * Benchmark: the quick wave against the wave solution of the flat section, on seeded random boxes, third octave by third octave
 * from 50 Hz to 5 kHz. Arguments: how many boxes (200), seed (1), and for a liner with a facing its mass in kg/m² and, if it lets air
 * through, its resistance in Pa·s/m.
 *
 * <p>Losses beyond {@value #DEEPEST} dB are left out: there the wave solution's own arithmetic ends.
 */
public final class QuickWaveCompare {
    private static final double SOUND_SPEED = 343.2;
    private static final double DEEPEST = 150;

    /** Differences in dB of one kind of box, quick less wave, per band. */
    private final List<List<Double>> all = lists();

    private final List<List<Double>> belowCutOn = lists();
    private final Facing facing;
    private int boxes;

    private QuickWaveCompare(Facing facing) {
        this.facing = facing;
    }

    public static void main(String[] args) {
        int count = args.length > 0 ? Integer.parseInt(args[0]) : 200;
        LikelyBoxes draw = new LikelyBoxes(args.length > 1 ? Long.parseLong(args[1]) : 1);
        Facing facing = args.length > 2
                ? new Facing(
                        "facing",
                        Double.parseDouble(args[2]),
                        args.length > 3 ? Double.valueOf(args[3]) : null,
                        "argument")
                : null;
        QuickWaveCompare apart = new QuickWaveCompare(facing);
        QuickWaveCompare overlapping = new QuickWaveCompare(facing);
        for (int i = 0; i < count; i++) {
            Box box = draw.next();
            Solid solid = SolidBuilder.build(box);
            double shortest = Arrays.stream(PathPlan.of(solid).lengths()).min().orElseThrow();
            String line = (shortest < 0 ? overlapping : apart).add(box, solid);
            System.out.printf(Locale.ROOT, "box %d, shortest stretch %.0f mm:%s%n", i, shortest * 1000, line);
        }
        apart.print("junctions apart");
        overlapping.print("turns or ports overlap in a pass");
    }

    private String add(Box box, Solid solid) {
        boxes++;
        LinerModel liner = FacedLiner.miki(box.liner().faced(facing));
        QuickResult quick = QuickWave.of(solid, liner, SOUND_SPEED);
        List<Double> wave =
                PathWave.of(solid, liner, SOUND_SPEED, 0, Progress.NONE).thirds();
        double cutOn = SOUND_SPEED / 2 / box.clearWidth();
        StringBuilder line = new StringBuilder();
        for (int band = 0; band < wave.size(); band++) {
            if (wave.get(band) > DEEPEST) {
                continue;
            }
            double difference = quick.thirds().value(band) - wave.get(band);
            all.get(band).add(difference);
            if (BandSet.THIRD_OCTAVE.bands().get(band).upperHz() < cutOn) {
                belowCutOn.get(band).add(difference);
            }
            line.append(String.format(Locale.ROOT, " %.2f", difference));
        }
        return line.toString();
    }

    private void print(String title) {
        System.out.printf(Locale.ROOT, "%n%s: %d boxes; quick less wave, dB%n", title, boxes);
        System.out.println("                 all                        pass below its first cut-on");
        System.out.println("band Hz    n  median  90 %  worst        n  median  90 %  worst");
        for (int band = 0; band < PathWave.BANDS; band++) {
            System.out.printf(
                    Locale.ROOT,
                    "%7s %s   %s%n",
                    BandSet.THIRD_OCTAVE.bands().get(band).label(),
                    statistics(all.get(band)),
                    statistics(belowCutOn.get(band)));
        }
    }

    /** Number, median, and of the sizes the 90th percentile and the largest. */
    private static String statistics(List<Double> differences) {
        if (differences.isEmpty()) {
            return "   -                        ";
        }
        double[] signed = differences.stream().mapToDouble(d -> d).sorted().toArray();
        double[] sizes = differences.stream().mapToDouble(Math::abs).sorted().toArray();
        int tail = (int) Math.ceil(0.9 * sizes.length) - 1;
        return String.format(
                Locale.ROOT,
                "%4d %7.2f %5.2f %6.2f   ",
                sizes.length,
                signed[signed.length / 2],
                sizes[tail],
                sizes[sizes.length - 1]);
    }

    private static List<List<Double>> lists() {
        List<List<Double>> lists = new ArrayList<>();
        for (int i = 0; i < PathWave.BANDS; i++) {
            lists.add(new ArrayList<>());
        }
        return lists;
    }
}
