package hushmaze.build;

import java.util.ArrayList;
import java.util.List;

/** Sheets being laid out and the pieces that are on none of them yet. Copies share sheets until one of them is changed. */
final class Packing {
    private final List<Bin> bins;
    private final List<Integer> pool;
    private double cost;

    /** No sheet yet. */
    Packing(List<Integer> pool) {
        this(List.of(), pool, 0);
    }

    private Packing(List<Bin> bins, List<Integer> pool, double cost) {
        this.bins = new ArrayList<>(bins);
        this.pool = new ArrayList<>(pool);
        this.cost = cost;
    }

    Packing copy() {
        return new Packing(bins, pool, cost);
    }

    /** Takes a new sheet. */
    void open(SheetKind kind, int round) {
        bins.add(new Bin(kind, round));
        cost += kind.cost();
    }

    /** Gives a sheet back and returns it. */
    Bin drop(int index) {
        Bin bin = bins.remove(index);
        cost = 0;
        for (Bin left : bins) {
            cost += left.kind().cost();
        }
        return bin;
    }

    List<Bin> bins() {
        return bins;
    }

    /** Indices of the pieces that are not placed. */
    List<Integer> pool() {
        return pool;
    }

    /** The sheet at an index, ready to be changed in this round. */
    Bin change(int index, int round) {
        Bin bin = bins.get(index).ownedBy(round);
        bins.set(index, bin);
        return bin;
    }

    double cost() {
        return cost;
    }

    /** Area of the pieces that are not placed, nm². */
    double missing(List<Piece> pieces) {
        double sum = 0;
        for (int index : pool) {
            sum += pieces.get(index).area();
        }
        return sum;
    }

    long count(SheetKind kind) {
        return bins.stream().filter(bin -> bin.kind().number() == kind.number()).count();
    }

    /** Forgets sheets on which nothing lies. */
    void dropEmpty() {
        for (int i = bins.size() - 1; i >= 0; i--) {
            if (bins.get(i).empty()) {
                drop(i);
            }
        }
    }

    /** Sheets whose first cut runs across. */
    int across() {
        int sum = 0;
        for (Bin bin : bins) {
            sum += bin.beginsAcross() ? 1 : 0;
        }
        return sum;
    }

    /** Settings of the fence for all sheets, each cut in a simple order. */
    int settings(FenceOrder order) {
        int sum = 0;
        for (Bin bin : bins) {
            sum += bin.settings(order);
        }
        return sum;
    }

    /**
     * Largest free rectangle on any sheet that is worth keeping, the kerf taken off, m²; zero if there is none.
     *
     * @param least least side of what is worth keeping, nm
     */
    double largestOffcut(long kerf, long least) {
        double best = 0;
        for (Bin bin : bins) {
            if (bin.roomiest() / NestTask.PER_METRE / NestTask.PER_METRE <= best) {
                continue;
            }
            for (Region region : bin.free()) {
                long length = Math.max(0, region.length - kerf);
                long width = Math.max(0, region.width - kerf);
                if (Math.min(length, width) >= least) {
                    best = Math.max(best, length / NestTask.PER_METRE * (width / NestTask.PER_METRE));
                }
            }
        }
        return best;
    }
}
