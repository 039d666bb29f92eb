package hushmaze.build;

import java.util.ArrayList;
import java.util.List;

/**
 * A rectangle of a sheet being laid out: free, holding one piece, or cut up into a row of smaller ones. The order within a
 * row does not matter for what fits, so a row keeps all its free space in one region.
 */
final class Region {
    long length;
    long width;
    Region parent;
    /** Index of the piece it holds, or -1. */
    int piece = -1;
    /** Whether the piece lies with its length across the sheet. */
    boolean turned;
    /** Whether the row is made by rips, so that its regions follow each other across the width. */
    boolean ripped;
    /** The row, or null if it is not cut up. */
    List<Region> row;
    /** What {@link #copy} made of it last. */
    Region latestCopy;

    Region(long length, long width) {
        this.length = length;
        this.width = width;
    }

    boolean free() {
        return piece < 0 && row == null;
    }

    double area() {
        return (double) length * width;
    }

    void add(Region child) {
        if (row == null) {
            row = new ArrayList<>(4);
        }
        child.parent = this;
        row.add(child);
    }

    /** Puts everything in its row into the list, and so on downwards. */
    void collect(List<Region> into) {
        if (row != null) {
            for (Region child : row) {
                into.add(child);
                child.collect(into);
            }
        }
    }

    /** A copy with all below it; every region remembers its latest copy. */
    Region copy() {
        Region copy = new Region(length, width);
        latestCopy = copy;
        copy.piece = piece;
        copy.turned = turned;
        copy.ripped = ripped;
        if (row != null) {
            copy.row = new ArrayList<>(row.size() + 2);
            for (Region child : row) {
                copy.add(child.copy());
            }
        }
        return copy;
    }
}
