package hushmaze.assess;

import hushmaze.build.CutList;
import hushmaze.build.CutListMaker;
import hushmaze.build.Effort;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetLayouts;
import hushmaze.build.Supply;
import hushmaze.project.Box;
import hushmaze.solid.PlacementProof;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.PathCalculator;
import hushmaze.sound.section.PathWave;
import hushmaze.sound.section.WaveResult;
import hushmaze.work.Kept;
import hushmaze.work.Progress;
import java.util.List;

/**
 * What was worked out of boxes in earlier assessments and follows from the box, the stock and the speed of sound alone: a box that
 * an edit leaves as it was is not worked out again. An assessment is the same with it and without. Safe for use by several threads.
 */
public final class KnownBoxes {
    private static final int MOST = 24;
    /** Speeds of sound whose tables of modes are kept. */
    private static final int CALCULATORS = 2;

    private final Kept<Box, Bench> benches = new Kept<>(MOST);
    private final Kept<Laid, List<SheetLayout>> layouts = new Kept<>(MOST);
    private final Kept<Heard, WaveResult> waves = new Kept<>(MOST);
    private final Kept<Double, PathCalculator> calculators = new Kept<>(CALCULATORS);

    /**
     * A box put together.
     *
     * @param solid its parts
     * @param proved whether they close
     * @param cuts its cut list
     */
    record Bench(Solid solid, boolean proved, CutList cuts) {
        private static Bench of(Box box) {
            Solid solid = SolidBuilder.build(box);
            return new Bench(solid, PlacementProof.faults(solid).isEmpty(), CutListMaker.of(solid));
        }
    }

    private record Laid(Box box, Supply supply, Effort effort) {}

    private record Heard(Box box, double soundSpeed) {}

    /** @throws hushmaze.quantity.InvalidValue if the box cannot be built */
    Bench bench(Box box) {
        return benches.get(box, Bench::of);
    }

    List<SheetLayout> layouts(Bench bench, Supply supply, Effort effort, Progress progress) {
        return layouts.get(
                new Laid(bench.solid().box(), supply, effort),
                key -> SheetLayouts.of(bench.cuts(), supply, effort, progress));
    }

    WaveResult wave(Solid solid, double soundSpeed, Progress progress) {
        return waves.get(
                new Heard(solid.box(), soundSpeed),
                key -> PathWave.of(solid, solid.box().liner(), soundSpeed, progress));
    }

    PathCalculator calculator(double soundSpeed) {
        return calculators.get(soundSpeed, PathCalculator::ofFew);
    }
}
