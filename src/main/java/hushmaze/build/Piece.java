package hushmaze.build;

/**
 * One piece to place, in whole nanometres with the kerf added to both sides.
 *
 * @param part number of the part it is a copy of
 * @param length nm
 * @param width nm
 * @param mayTurn whether turning it by 90 degrees is allowed and makes a difference
 */
record Piece(int part, long length, long width, boolean mayTurn) {
    /** nm² */
    double area() {
        return (double) length * width;
    }

    long longSide() {
        return Math.max(length, width);
    }

    long shortSide() {
        return Math.min(length, width);
    }

    boolean alike(Piece other) {
        return length == other.length && width == other.width && mayTurn == other.mayTurn;
    }

    boolean fits(SheetKind kind) {
        return fits(kind.length(), kind.width());
    }

    boolean fits(long roomLength, long roomWidth) {
        return length <= roomLength && width <= roomWidth || mayTurn && width <= roomLength && length <= roomWidth;
    }
}
