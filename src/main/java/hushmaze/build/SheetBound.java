package hushmaze.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How many sheets are needed at the very least: the larger of two simple bounds. Both count pieces and sheets with one
 * kerf added, which is exact for a row of cuts.
 *
 * <p>Area: the pieces' area over the largest sheets there are. Big pieces: pieces of which no two can lie on one sheet
 * beside each other, in whatever direction, need a sheet each. Neither looks at how cuts must run, so the true least number
 * may be higher.
 */
final class SheetBound {
    /** Pieces of more than this number are not compared with each other. */
    private static final int MAX_COMPARED = 2_000;
    /** Relative allowance for the sums of areas. */
    private static final double SLACK = 1e-12;

    private SheetBound() {}

    /** Least number of sheets. */
    static int sheets(NestTask task) {
        return Math.max(byArea(task), bigOnes(task));
    }

    /** Least cost, in the unit of {@link SheetKind#cost}. */
    static double cost(NestTask task) {
        double perArea = task.kinds().stream()
                .mapToDouble(kind -> kind.cost() / kind.area())
                .min()
                .orElse(0);
        double perSheet =
                task.kinds().stream().mapToDouble(SheetKind::cost).min().orElse(0);
        return Math.max(area(task) * perArea, sheets(task) * perSheet);
    }

    private static double area(NestTask task) {
        return task.pieces().stream().mapToDouble(Piece::area).sum();
    }

    private static int byArea(NestTask task) {
        List<SheetKind> kinds = new ArrayList<>(task.kinds());
        kinds.sort(Comparator.comparingDouble(SheetKind::area).reversed());
        double rest = area(task) * (1 - SLACK);
        int count = 0;
        for (SheetKind kind : kinds) {
            double needed = Math.ceil(rest / kind.area());
            if (needed <= kind.stock()) {
                return count + (int) Math.max(0, needed);
            }
            count += kind.stock();
            rest -= kind.stock() * kind.area();
        }
        return count;
    }

    private static int bigOnes(NestTask task) {
        List<Piece> sorted = new ArrayList<>(task.pieces());
        sorted.sort(Comparator.comparingLong(Piece::shortSide)
                .thenComparingLong(Piece::longSide)
                .reversed());
        List<Piece> apart = new ArrayList<>();
        for (Piece piece : sorted.subList(0, Math.min(MAX_COMPARED, sorted.size()))) {
            if (apart.stream().noneMatch(other -> together(task, piece, other))) {
                apart.add(piece);
            }
        }
        return apart.size();
    }

    private static boolean together(NestTask task, Piece p, Piece q) {
        return task.kinds().stream().anyMatch(kind -> beside(kind, p, q));
    }

    private static boolean beside(SheetKind kind, Piece p, Piece q) {
        long sumLong = least(p, kind.width(), true) + least(q, kind.width(), true);
        long sumWide = least(p, kind.length(), false) + least(q, kind.length(), false);
        return sumLong <= kind.length() || sumWide <= kind.width();
    }

    /** Least extent of a piece in one direction when the other extent must keep within the limit; too much if it cannot. */
    private static long least(Piece piece, long limit, boolean alongLength) {
        long straight = alongLength ? piece.length() : piece.width();
        long straightAcross = alongLength ? piece.width() : piece.length();
        long least = straightAcross <= limit ? straight : Long.MAX_VALUE / 4;
        if (piece.mayTurn() && straight <= limit) {
            least = Math.min(least, straightAcross);
        }
        return least;
    }
}
