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

    /**
     * Width of the strip along the whole region that is free beside everything its crosscuts set free; 0 if there is none, or if
     * the first cut runs along anyway.
     */
    long stripLeft() {
        if (row == null || ripped) {
            return 0;
        }
        long strip = width;
        for (int i = 0; i < row.size() && strip > 0; i++) {
            Region child = row.get(i);
            Region rest = child.rest();
            strip = Math.min(strip, rest == null ? 0 : rest.width);
        }
        return strip;
    }

    /** What is free of a region across its width: itself, or the rest of its rips; null if there is none. */
    private Region rest() {
        if (free()) {
            return this;
        }
        for (int i = 0; ripped && row != null && i < row.size(); i++) {
            if (row.get(i).free()) {
                return row.get(i);
            }
        }
        return null;
    }

    /** Cuts the strip that {@link #stripLeft()} found off first, and only then across. */
    void cutAlongFirst() {
        long strip = stripLeft();
        if (strip == 0) {
            return;
        }
        Region across = new Region(length, width - strip);
        for (Region child : row) {
            Region rest = child.rest();
            rest.width -= strip;
            child.width -= rest == child ? 0 : strip;
            across.add(child);
        }
        row = null;
        ripped = true;
        add(across);
        add(new Region(length, strip));
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
