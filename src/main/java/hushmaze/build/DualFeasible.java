package hushmaze.build;

/**
 * A dual feasible function: a function f of sizes such that f of all pieces in any row that fits a sheet together is at most
 * one. For two of them, f along the length and g along the width, the sum of f(length) g(width) over the pieces of one sheet is
 * at most one too, wherever they lie.
 *
 * <p>Source, from memory: S. P. Fekete, J. Schepers, "New classes of fast lower bounds for bin packing problems",
 * Mathematical Programming 91 (2001), and the same authors' "A general framework for bounds for higher-dimensional orthogonal
 * packing problems" (2004): the functions u(k), U(eps) and phi(eps). The sizes are whole numbers here, so that every
 * comparison is exact.
 */
@FunctionalInterface
interface DualFeasible {
    /** A size counts as its share of the room. */
    DualFeasible SHARE = (size, room) -> size / (double) room;

    /**
     * The value, 0 to 1.
     *
     * @param size of a piece, at most {@code room}, nm
     * @param room of the sheet, nm
     */
    double of(long size, long room);

    /** u(k): the share rounded down to a whole multiple of 1/k, but for multiples of 1/(k + 1). */
    static DualFeasible rounded(int k) {
        return (size, room) -> {
            long product = (k + 1) * size;
            return product % room == 0 ? size / (double) room : product / room / (double) k;
        };
    }

    /** U(eps): pieces smaller than eps count nothing and those that leave less than eps count as the whole. */
    static DualFeasible bigOrNothing(long eps) {
        return (size, room) -> {
            if (size > room - eps) {
                return 1;
            }
            return size < eps ? 0 : size / (double) room;
        };
    }

    /** phi(eps): everything is measured in pieces of size eps; eps is less than half the room. */
    static DualFeasible counted(long eps) {
        return (size, room) -> {
            double most = room / eps;
            if (2 * size > room) {
                return 1 - (room - size) / eps / most;
            }
            return size < eps ? 0 : 1 / most;
        };
    }
}
