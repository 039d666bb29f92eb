package hushmaze.build;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.ToDoubleFunction;

/** Puts the pieces of the pool onto sheets, one after the other, each where it spoils least. */
final class Recreate {
    /** Orders in which pieces are taken, largest first. */
    enum Order {
        AREA(Piece::area),
        LONG_SIDE(Piece::longSide),
        SHORT_SIDE(Piece::shortSide),
        AROUND(piece -> piece.longSide() + piece.shortSide());

        private final ToDoubleFunction<Piece> key;

        Order(ToDoubleFunction<Piece> key) {
            this.key = key;
        }
    }

    /** Sheets that are looked at for one piece; with more of them the last ones are. */
    private static final int WINDOW = 60;

    /** Pieces that are placed between two looks at whether to go on. */
    private static final int PER_PULSE = 256;

    private final NestTask task;
    private final List<Piece> pieces;
    private final SpotFinder finder;
    private final double[] keys;
    private final double cheapest;
    private final double leastArea;
    private final Runnable pulse;
    private int placed;

    Recreate(NestTask task, Runnable pulse) {
        this.pulse = pulse;
        this.task = task;
        pieces = task.pieces();
        finder = new SpotFinder(task);
        keys = new double[pieces.size()];
        leastArea = pieces.stream().mapToDouble(Piece::area).min().orElse(0);
        cheapest = task.kinds().stream().mapToDouble(SheetKind::cost).min().orElse(0);
    }

    SpotFinder finder() {
        return finder;
    }

    /**
     * Sorts the pool.
     *
     * @param spread each key is multiplied by a random number between one minus this and one
     */
    void sort(List<Integer> pool, Order order, double spread, SplittableRandom random) {
        for (int index : pool) {
            double factor = spread == 0 ? 1 : 1 - spread * random.nextDouble();
            keys[index] = order.key.applyAsDouble(pieces.get(index)) * factor;
        }
        Comparator<Integer> largest = (p, q) -> Double.compare(keys[q], keys[p]);
        pool.sort(largest.thenComparing(Comparator.naturalOrder()));
    }

    /**
     * Places what it can, in the order of the pool.
     *
     * @param budget no sheet is opened that would bring the cost above it
     * @param random picks among the sheet sizes; null for the cheapest in proportion to its area
     */
    void fill(Packing packing, double budget, int round, SplittableRandom random) {
        List<Integer> left = new ArrayList<>();
        Piece failed = null;
        for (int index : packing.pool()) {
            Piece piece = pieces.get(index);
            boolean hopeless = failed != null && failed.alike(piece);
            if (hopeless || !place(packing, index, budget, round, random)) {
                failed = piece;
                left.add(index);
            }
        }
        packing.pool().clear();
        packing.pool().addAll(left);
    }

    /** Fills one sheet after the other, each with whatever still fits in the order of the pool. */
    void fillSheetBySheet(Packing packing, int round) {
        List<Integer> left = new ArrayList<>(packing.pool());
        List<Integer> impossible = new ArrayList<>();
        while (!left.isEmpty()) {
            int first = left.get(0);
            finder.start();
            if (!open(packing, pieces.get(first), Double.POSITIVE_INFINITY, round, null)) {
                impossible.add(first);
                left.remove(0);
                continue;
            }
            left = fillLast(packing, left, round);
        }
        packing.pool().clear();
        packing.pool().addAll(impossible);
    }

    private List<Integer> fillLast(Packing packing, List<Integer> pool, int round) {
        int last = packing.bins().size() - 1;
        List<Integer> left = new ArrayList<>();
        Piece failed = null;
        for (int index : pool) {
            Piece piece = pieces.get(index);
            tick();
            finder.start();
            boolean full = packing.bins().get(last).roomiest() < leastArea;
            if (!full && (failed == null || !failed.alike(piece))) {
                finder.lookAt(packing.bins().get(last), last, piece);
            }
            if (finder.found()) {
                finder.insert(packing, round, index, piece);
            } else {
                failed = piece;
                left.add(index);
            }
        }
        return left;
    }

    private void tick() {
        placed++;
        if (placed % PER_PULSE == 0) {
            pulse.run();
        }
    }

    private boolean place(Packing packing, int index, double budget, int round, SplittableRandom random) {
        Piece piece = pieces.get(index);
        tick();
        finder.start();
        List<Bin> bins = packing.bins();
        for (int i = Math.max(0, bins.size() - WINDOW); i < bins.size(); i++) {
            finder.lookAt(bins.get(i), i, piece);
        }
        if (!finder.found() && !open(packing, piece, budget, round, random)) {
            return false;
        }
        finder.insert(packing, round, index, piece);
        return true;
    }

    private boolean open(Packing packing, Piece piece, double budget, int round, SplittableRandom random) {
        double room = budget - packing.cost();
        if (room < cheapest) {
            return false;
        }
        List<SheetKind> possible = new ArrayList<>();
        for (SheetKind kind : task.kinds()) {
            if (kind.cost() <= room && piece.fits(kind) && packing.count(kind) < kind.stock()) {
                possible.add(kind);
            }
        }
        if (possible.isEmpty()) {
            return false;
        }
        SheetKind kind = random == null
                ? Collections.min(possible, Comparator.comparingDouble(k -> k.cost() / k.area()))
                : possible.get(random.nextInt(possible.size()));
        packing.open(kind, round);
        while (!finder.found()) {
            finder.lookAt(
                    packing.bins().get(packing.bins().size() - 1),
                    packing.bins().size() - 1,
                    piece);
        }
        return true;
    }
}
