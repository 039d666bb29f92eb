package hushmaze.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;

/** Takes a random part of what is placed off the sheets again. */
final class Ruin {
    private static final double SHARE_OF_WHOLE_SHEETS = 0.15;
    private static final double SHARE_OF_DROPPED_SHEETS = 0.3;
    private static final int MAX_SHEETS = 3;
    private static final int MAX_REGIONS = 4;

    private final NestTask task;
    private final SplittableRandom random;

    Ruin(NestTask task, SplittableRandom random) {
        this.task = task;
        this.random = random;
    }

    /** Ruins one to three sheets. */
    void apply(Packing packing, int round) {
        int sheets = 1 + random.nextInt(MAX_SHEETS);
        for (int i = 0; i < sheets && !packing.bins().isEmpty(); i++) {
            int chosen = random.nextInt(packing.bins().size());
            // to the end of the list, where pieces are put back first
            int index = Math.max(0, packing.bins().size() - 1 - i);
            Collections.swap(packing.bins(), chosen, index);
            if (task.kinds().size() > 1 && random.nextDouble() < SHARE_OF_DROPPED_SHEETS) {
                drop(packing, index);
            } else if (random.nextDouble() < SHARE_OF_WHOLE_SHEETS) {
                clear(packing, packing.change(index, round));
            } else {
                regions(packing, packing.change(index, round));
            }
        }
    }

    /** Empties one of the sheets whose first cut runs across, if there is one. */
    void oneAcross(Packing packing, int round) {
        List<Integer> across = new ArrayList<>();
        for (int i = 0; i < packing.bins().size(); i++) {
            if (packing.bins().get(i).beginsAcross()) {
                across.add(i);
            }
        }
        if (!across.isEmpty()) {
            clear(packing, packing.change(across.get(random.nextInt(across.size())), round));
        }
    }

    /** Takes one sheet away; its pieces go to the pool. */
    void drop(Packing packing, int index) {
        Bin bin = packing.drop(index);
        for (Region region : bin.taken()) {
            if (region.piece >= 0) {
                packing.pool().add(region.piece);
            }
        }
    }

    private void regions(Packing packing, Bin bin) {
        int count = 1 + random.nextInt(MAX_REGIONS);
        for (int i = 0; i < count; i++) {
            List<Region> taken = bin.taken();
            if (taken.isEmpty()) {
                return;
            }
            bin.clear(taken.get(random.nextInt(taken.size())), task.pieces(), packing.pool());
        }
    }

    private void clear(Packing packing, Bin bin) {
        List<Integer> removed = new ArrayList<>();
        if (!bin.empty()) {
            bin.clear(bin.root(), task.pieces(), removed);
        }
        packing.pool().addAll(removed);
    }
}
