package hushmaze.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Stream;

/**
 * How much is needed at the very least: the largest of several bounds. All count pieces and sheets with one kerf added,
 * which is exact for a row of cuts. None looks at how cuts must run, so the true least number may be higher.
 *
 * <p>Area: the pieces' area over the cheapest or largest sheets there are. Big pieces: pieces of which no two can lie on one
 * sheet beside each other, in whatever direction, need a sheet each. Weights: every pair of {@link DualFeasible} functions
 * gives each piece a weight, in the direction in which it is least if the piece may be turned, of which no sheet holds more
 * than one.
 */
final class SheetBound {
    /** Pieces of more than this number are not compared with each other. */
    private static final int MAX_COMPARED = 2_000;
    /** Most sizes that are tried as the parameter of a function. */
    private static final int MAX_SIZES = 40;
    /** With many pieces fewer sizes are tried, so that the bound takes no longer than a blink. */
    private static final int MAX_WORK = 4_000;

    private static final int MIN_SIZES = 6;
    /** Most parameters of the rounding function. */
    private static final int MAX_ROUNDED = 6;
    /** Relative allowance for sums of areas and weights. */
    private static final double SLACK = 1e-9;

    private final NestTask task;
    private final long roomLength;
    private final long roomWidth;
    /** A piece of every size, and how many there are of it. */
    private final List<Piece> sizes = new ArrayList<>();

    private final List<Integer> counts = new ArrayList<>();

    private SheetBound(NestTask task) {
        this.task = task;
        roomLength = task.kinds().stream().mapToLong(SheetKind::length).max().orElse(1);
        roomWidth = task.kinds().stream().mapToLong(SheetKind::width).max().orElse(1);
        Piece last = null;
        for (Piece piece : task.pieces()) {
            if (piece.equals(last)) {
                counts.set(counts.size() - 1, counts.get(counts.size() - 1) + 1);
            } else {
                sizes.add(piece);
                counts.add(1);
            }
            last = piece;
        }
    }

    /** Least number of sheets. */
    static int sheets(NestTask task) {
        if (task.pieces().isEmpty()) {
            return 0;
        }
        SheetBound bound = new SheetBound(task);
        return Math.max(Math.max(bound.byArea(), bound.bigOnes()), bound.byWeights());
    }

    /**
     * Least cost, in the unit of {@link SheetKind#cost}.
     *
     * @param sheets least number of sheets
     */
    static double cost(NestTask task, int sheets) {
        List<SheetKind> kinds = new ArrayList<>(task.kinds());
        kinds.sort(Comparator.comparingDouble(kind -> kind.cost() / kind.area()));
        double byArea = 0;
        double rest = area(task) * (1 - SLACK);
        for (SheetKind kind : kinds) {
            double taken = Math.min(rest / kind.area(), kind.stock());
            byArea += taken * kind.cost();
            rest -= taken * kind.area();
        }
        kinds.sort(Comparator.comparingDouble(SheetKind::cost));
        double byNumber = 0;
        int left = sheets;
        for (SheetKind kind : kinds) {
            int taken = Math.min(left, kind.stock());
            byNumber += taken * kind.cost();
            left -= taken;
        }
        return Math.max(byArea, byNumber);
    }

    private static double area(NestTask task) {
        return task.pieces().stream().mapToDouble(Piece::area).sum();
    }

    private int byArea() {
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

    private int bigOnes() {
        List<Piece> sorted = new ArrayList<>(task.pieces());
        sorted.sort(Comparator.comparingLong(Piece::shortSide)
                .thenComparingLong(Piece::longSide)
                .reversed());
        List<Piece> apart = new ArrayList<>();
        for (Piece piece : sorted.subList(0, Math.min(MAX_COMPARED, sorted.size()))) {
            if (apart.stream().noneMatch(other -> together(piece, other))) {
                apart.add(piece);
            }
        }
        return apart.size();
    }

    private boolean together(Piece p, Piece q) {
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

    /** All pairs of functions. Where there are several kinds, a sheet as long and as wide as any of them stands for all. */
    private int byWeights() {
        List<double[]> along = new ArrayList<>();
        List<double[]> alongTurned = new ArrayList<>();
        List<double[]> across = new ArrayList<>();
        List<double[]> acrossTurned = new ArrayList<>();
        functions(roomLength).forEach(f -> {
            along.add(values(f, roomLength, false));
            alongTurned.add(values(f, roomLength, true));
        });
        functions(roomWidth).forEach(f -> {
            acrossTurned.add(values(f, roomWidth, false));
            across.add(values(f, roomWidth, true));
        });
        double most = 0;
        for (int i = 0; i < along.size(); i++) {
            for (int j = 0; j < across.size(); j++) {
                most = Math.max(most, weight(along.get(i), across.get(j), alongTurned.get(i), acrossTurned.get(j)));
            }
        }
        return (int) Math.ceil(most * (1 - SLACK));
    }

    private double weight(double[] along, double[] across, double[] alongTurned, double[] acrossTurned) {
        double sum = 0;
        for (int i = 0; i < along.length; i++) {
            Piece piece = sizes.get(i);
            double least = fits(piece.length(), piece.width()) ? along[i] * across[i] : 1;
            if (piece.mayTurn() && fits(piece.width(), piece.length())) {
                least = Math.min(least, alongTurned[i] * acrossTurned[i]);
            }
            sum += counts.get(i) * least;
        }
        return sum;
    }

    private boolean fits(long length, long width) {
        return length <= roomLength && width <= roomWidth;
    }

    /** Values of one side of every size; zero, and never used, where the side does not fit. */
    private double[] values(DualFeasible f, long room, boolean width) {
        double[] values = new double[sizes.size()];
        for (int i = 0; i < values.length; i++) {
            Piece piece = sizes.get(i);
            long size = width ? piece.width() : piece.length();
            values[i] = size <= room ? f.of(size, room) : 0;
        }
        return values;
    }

    private List<DualFeasible> functions(long room) {
        List<DualFeasible> functions = new ArrayList<>(List.of(DualFeasible.SHARE));
        for (int k = 1; k <= MAX_ROUNDED; k++) {
            functions.add(DualFeasible.rounded(k));
        }
        long[] steps = sizes.stream()
                .flatMap(piece -> Stream.of(piece.length(), piece.width()))
                .flatMap(size -> Stream.of(size, room - size + 1))
                .filter(size -> size > 0 && 2 * size <= room)
                .mapToLong(Long::longValue)
                .distinct()
                .sorted()
                .toArray();
        int most = Math.max(MIN_SIZES, Math.min(MAX_SIZES, MAX_WORK / sizes.size()));
        int every = Math.max(1, (steps.length + most - 1) / most);
        for (int i = steps.length - 1; i >= 0; i -= every) {
            functions.add(DualFeasible.bigOrNothing(steps[i]));
            if (2 * steps[i] < room) {
                functions.add(DualFeasible.counted(steps[i]));
            }
        }
        return functions;
    }
}
