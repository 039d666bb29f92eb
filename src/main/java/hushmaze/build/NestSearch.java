package hushmaze.build;

import hushmaze.work.Progress;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * Searches for a cheap packing. It starts from the best of several fixed orders of pieces; then it sets itself the goal of
 * a lower cost, takes sheets away until that is reached, and again and again takes some pieces off and puts them back with
 * those that are left over, keeping what leaves less over (late acceptance: a step may be worse than the last one, but not
 * worse than the one some rounds ago). The last part of the effort goes into first cuts along the sheet, a larger offcut and
 * fewer settings of the fence at the same cost.
 */
final class NestSearch {
    private static final String STEP = "sheet layout";
    private static final long SEED = 20_240_229;
    private static final double SHARE_FOR_COST = 0.85;
    private static final double SHARE_FOR_SETTINGS = 0.6;
    private static final int MEMORY = 60;
    private static final double BLINK = 0.2;
    private static final double SPREAD = 0.35;
    /** Weight of a broken-up rest against area left over. */
    private static final double SAVING = 1e-6;
    /** With more pieces than this only the first of the fixed orders is tried. */
    private static final int MANY = 3_000;
    /** With more pieces than this the fixed orders may take longer than the effort allows. */
    private static final int SOME = 300;

    private final NestTask task;
    private final Effort effort;
    private final Progress progress;
    private final SplittableRandom random = new SplittableRandom(SEED);
    private final Recreate recreate;
    private final Ruin ruin;
    private final FenceOrder fences;
    private final long leastOffcut;
    private final double leastCost;
    private Packing best;
    private int round;

    NestSearch(NestTask task, double leastCost, Effort effort, Progress progress) {
        this.task = task;
        this.effort = effort;
        this.progress = progress;
        recreate = new Recreate(task, this::pulse);
        fences = new FenceOrder(task);
        leastOffcut = NestTask.nanometres(task.job().leastOffcut());
        ruin = new Ruin(task, random);
        this.leastCost = leastCost;
    }

    /** The best packing found. */
    Packing run() {
        best = new Packing(IntStream.range(0, task.pieces().size()).boxed().toList());
        if (task.pieces().isEmpty()) {
            return best;
        }
        first();
        while (best != null && !done() && lowerCost()) {
            pulse();
        }
        tidy();
        return best;
    }

    private void pulse() {
        progress.check(Math.min(1, effort.spent(round)), STEP);
    }

    private double offcut(Packing packing) {
        return packing.largestOffcut(task.kerf(), leastOffcut);
    }

    private boolean done() {
        return best.pool().isEmpty() && best.cost() <= within(leastCost);
    }

    /** A cost with an allowance for sums of decimal numbers. */
    static double within(double cost) {
        return cost * (1 + 1e-9) + 1e-9;
    }

    private void first() {
        List<Integer> all = best.pool();
        first(all);
        if (best.across() > 0 && all.size() <= SOME) {
            recreate.finder().alongFirst(true);
            first(all);
            recreate.finder().alongFirst(false);
        }
    }

    private void first(List<Integer> all) {
        for (SpotFinder.Rule rule : SpotFinder.Rule.values()) {
            for (Recreate.Order order : Recreate.Order.values()) {
                recreate.finder().judgeBy(rule);
                tryOrder(all, order, true);
                if (all.size() > MANY || all.size() > SOME && effort.spent(round) >= 1) {
                    return;
                }
                tryOrder(all, order, false);
            }
        }
    }

    private void tryOrder(List<Integer> all, Recreate.Order order, boolean sheetBySheet) {
        Packing packing = new Packing(all);
        recreate.sort(packing.pool(), order, 0, random);
        if (sheetBySheet) {
            recreate.fillSheetBySheet(packing, round++);
        } else {
            recreate.fill(packing, Double.POSITIVE_INFINITY, round++, null);
        }
        if (better(packing, best)) {
            best = packing;
        }
    }

    private boolean better(Packing a, Packing b) {
        int byMissing = Double.compare(a.missing(task.pieces()), b.missing(task.pieces()));
        int byCost = byMissing != 0 ? byMissing : Double.compare(a.cost(), b.cost());
        int byAcross = byCost != 0 ? byCost : Integer.compare(a.across(), b.across());
        return byAcross != 0 ? byAcross < 0 : offcut(a) > offcut(b);
    }

    /** Looks for one better packing; false if the effort ran out. */
    private boolean lowerCost() {
        double budget = best.pool().isEmpty() ? best.cost() - 1e-9 : Double.POSITIVE_INFINITY;
        Packing current = goal(budget);
        double[] memory = new double[MEMORY];
        double value = value(current);
        Arrays.fill(memory, value);
        while (effort.spent(round) < SHARE_FOR_COST) {
            round++;
            pulse();
            Packing trial = step(current, budget, false);
            double missing = trial.pool().isEmpty() ? 0 : value(trial);
            if (trial.pool().isEmpty() || !best.pool().isEmpty() && better(trial, best)) {
                trial.dropEmpty();
                best = trial;
                return true;
            }
            int slot = round % MEMORY;
            if (missing <= value || missing <= memory[slot]) {
                current = trial;
                value = missing;
            }
            memory[slot] = Math.min(memory[slot], value);
        }
        return false;
    }

    private Packing goal(double budget) {
        Packing packing = best.copy();
        while (packing.cost() > budget) {
            List<Bin> bins = packing.bins();
            int emptiest = IntStream.range(0, bins.size())
                    .filter(i -> bins.get(i).kind().cost() > 0)
                    .boxed()
                    .min(Comparator.comparingDouble(i -> bins.get(i).used()))
                    .orElseThrow();
            ruin.drop(packing, emptiest);
        }
        return packing;
    }

    private Packing step(Packing from, double budget, boolean alongFirst) {
        Packing trial = from.copy();
        recreate.finder().alongFirst(alongFirst);
        if (alongFirst && random.nextBoolean()) {
            ruin.oneAcross(trial, round);
        }
        ruin.apply(trial, round);
        Recreate.Order[] orders = Recreate.Order.values();
        SpotFinder.Rule[] rules = SpotFinder.Rule.values();
        recreate.sort(trial.pool(), orders[random.nextInt(orders.length)], SPREAD * random.nextDouble(), random);
        recreate.finder().judgeBy(rules[random.nextInt(rules.length)]);
        recreate.finder().blink(BLINK, random);
        recreate.fill(trial, budget, round, random);
        recreate.finder().blink(0, random);
        return trial;
    }

    private double value(Packing packing) {
        double unit = task.kinds().get(0).area();
        double whole = 0;
        for (Bin bin : packing.bins()) {
            whole += bin.wholeness() / unit / unit;
        }
        return packing.missing(task.pieces()) / unit - SAVING * whole;
    }

    /**
     * Looks for more first cuts along the sheet; as many of them and a larger offcut; or as large an offcut and fewer settings
     * of the fence. The cost stays.
     */
    private void tidy() {
        Packing current = best;
        int across = best.across();
        double size = offcut(best);
        int settings = best.settings(fences);
        double turn = 1 - (1 - effort.spent(round)) * SHARE_FOR_SETTINGS;
        while (effort.spent(round) < 1 && best.pool().isEmpty()) {
            round++;
            pulse();
            Packing trial = step(current, best.cost(), true);
            if (!trial.pool().isEmpty() || trial.cost() > best.cost() || trial.across() > across) {
                continue;
            }
            boolean better = trial.across() < across;
            double newSize = offcut(trial);
            if (!better && newSize < size) {
                continue;
            }
            int newSettings = trial.settings(fences);
            if (better || newSize > size || newSettings <= settings) {
                trial.dropEmpty();
                best = trial;
                across = trial.across();
                size = newSize;
                settings = newSettings;
            }
            // first anything with as large an offcut leads on, at last only what also needs no more settings
            current = effort.spent(round) < turn ? trial : best;
        }
        recreate.finder().alongFirst(false);
    }
}
