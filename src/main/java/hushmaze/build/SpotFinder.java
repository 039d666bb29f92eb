package hushmaze.build;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Finds the best free region for a piece. A free region is worth a power of its area, so that one large rest is worth more
 * than two small ones, and nothing if no piece of the job can ever fit into it; the best place is where least worth is
 * lost.
 */
final class SpotFinder {
    /** Ways to judge a place. */
    enum Rule {
        /** Worth is area to the power 1.25. */
        FLAT,
        /** Worth is area to the power 1.5. */
        MIDDLE,
        /** Worth is area squared. */
        STEEP,
        /** Smallest gap beside the piece, then least worth lost. */
        TIGHT
    }

    private final double areaUnit;
    private final long shortest;
    private final long shortestLong;
    private Rule rule = Rule.MIDDLE;
    private boolean alongFirst;
    private double blink;
    private SplittableRandom random;

    private double bestLoss;
    private Region bestPlace;
    private int bestBin;
    private boolean bestTurned;
    private boolean bestRip;

    SpotFinder(NestTask task) {
        areaUnit = task.kinds().stream().mapToDouble(SheetKind::area).max().orElse(1);
        shortest = task.pieces().stream().mapToLong(Piece::shortSide).min().orElse(1);
        shortestLong = task.pieces().stream().mapToLong(Piece::longSide).min().orElse(1);
    }

    void judgeBy(Rule newRule) {
        rule = newRule;
    }

    /** Makes the first cut of every sheet run along it, if it needs such a cut at all. */
    void alongFirst(boolean wanted) {
        alongFirst = wanted;
    }

    /** Lets it overlook the best way now and then. */
    void blink(double share, SplittableRandom source) {
        blink = share;
        random = source;
    }

    void start() {
        bestLoss = Double.POSITIVE_INFINITY;
        bestPlace = null;
    }

    boolean found() {
        return bestPlace != null;
    }

    void lookAt(Bin bin, int index, Piece piece) {
        if (piece.area() > bin.roomiest()) {
            return;
        }
        List<Region> free = bin.free();
        for (int i = 0; i < free.size(); i++) {
            Region place = free.get(i);
            if (!piece.fits(place.length, place.width)) {
                continue;
            }
            double worth = worth(place.length, place.width);
            tryWay(place, index, piece.length(), piece.width(), false, worth);
            if (piece.mayTurn()) {
                tryWay(place, index, piece.width(), piece.length(), true, worth);
            }
        }
    }

    /** Puts the piece where it was found to fit best; the sheet is changed for this round. */
    void insert(Packing packing, int round, int piece, Piece shape) {
        Bin before = packing.bins().get(bestBin);
        Bin bin = packing.change(bestBin, round);
        Region place = bin == before ? bestPlace : bestPlace.latestCopy;
        bin.insert(place, piece, shape, bestTurned, bestRip);
    }

    private void tryWay(Region place, int index, long a, long b, boolean turned, double worth) {
        long besideLength = place.length - a;
        long besideWidth = place.width - b;
        if (besideLength < 0 || besideWidth < 0) {
            return;
        }
        double gap = rule == Rule.TIGHT ? Math.min(besideLength, besideWidth) : 0;
        double ripped = gap + worth - worth(place.length, besideWidth) - worth(besideLength, b);
        double crossed = gap + worth - worth(besideLength, place.width) - worth(a, besideWidth);
        keep(ripped, place, index, turned, true);
        if (!alongFirst || place.parent != null || besideWidth == 0) {
            keep(crossed, place, index, turned, false);
        }
    }

    private void keep(double loss, Region place, int index, boolean turned, boolean rip) {
        if (loss < bestLoss && (blink == 0 || random.nextDouble() >= blink)) {
            bestLoss = loss;
            bestPlace = place;
            bestBin = index;
            bestTurned = turned;
            bestRip = rip;
        }
    }

    private double worth(long length, long width) {
        if (Math.min(length, width) < shortest || Math.max(length, width) < shortestLong) {
            return 0;
        }
        double area = (double) length * width / areaUnit;
        return switch (rule) {
            case FLAT -> area * Math.sqrt(Math.sqrt(area));
            case MIDDLE, TIGHT -> area * Math.sqrt(area);
            case STEEP -> area * area;
        };
    }
}
