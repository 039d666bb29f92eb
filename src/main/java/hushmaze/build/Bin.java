package hushmaze.build;

import java.util.ArrayList;
import java.util.List;

/** One sheet being laid out by cuts from edge to edge. */
final class Bin {
    private final SheetKind kind;
    /** Round of the search that may change it; others must copy it first. */
    private final int owner;

    private final Region root;
    private final ArrayList<Region> free = new ArrayList<>();
    private double used;
    /** Area of the largest free region, nm²; negative when not known. */
    private double roomiest = -1;
    /** Sum of the squares of the free areas, nm⁴; negative when not known. */
    private double wholeness = -1;

    /** Settings of the fence; negative when not known. */
    private int settings = -1;

    Bin(SheetKind kind, int owner) {
        this.kind = kind;
        this.owner = owner;
        root = new Region(kind.length(), kind.width());
        free.add(root);
    }

    private Bin(Bin other, int owner) {
        kind = other.kind;
        this.owner = owner;
        used = other.used;
        roomiest = other.roomiest;
        wholeness = other.wholeness;
        settings = other.settings;
        root = other.root.copy();
        other.free.forEach(region -> free.add(region.latestCopy));
    }

    SheetKind kind() {
        return kind;
    }

    Region root() {
        return root;
    }

    List<Region> free() {
        return free;
    }

    boolean empty() {
        return root.free();
    }

    /** Whether its first cut must run across the sheet. */
    boolean beginsAcross() {
        return root.row != null && !root.ripped && root.stripLeft() == 0;
    }

    /** Area of the pieces on it, kerf added, nm². */
    double used() {
        return used;
    }

    /** Area of the largest free region, nm²; no larger piece fits. */
    double roomiest() {
        if (roomiest < 0) {
            measure();
        }
        return roomiest;
    }

    /** Sum of the squares of the free areas, nm⁴: the larger, the less broken up is what is free. */
    double wholeness() {
        if (wholeness < 0) {
            measure();
        }
        return wholeness;
    }

    private void measure() {
        roomiest = 0;
        wholeness = 0;
        for (int i = 0; i < free.size(); i++) {
            double area = free.get(i).area();
            roomiest = Math.max(roomiest, area);
            wholeness += area * area;
        }
    }

    private void changed() {
        roomiest = -1;
        wholeness = -1;
        settings = -1;
    }

    /** Settings of the fence when its rows are cut in a simple order. */
    int settings(FenceOrder order) {
        if (settings < 0) {
            order.sort(root);
            settings = order.settings(root);
        }
        return settings;
    }

    /** This sheet if it belongs to the round, else a copy that does. */
    Bin ownedBy(int round) {
        return owner == round ? this : new Bin(this, round);
    }

    /** All regions with a piece or a row, without the sheet itself. */
    List<Region> taken() {
        List<Region> all = new ArrayList<>();
        root.collect(all);
        all.removeIf(Region::free);
        return all;
    }

    /**
     * Lays a piece into the low corner of a free region.
     *
     * @param ripFirst whether the first cut that sets it free runs along the length
     */
    void insert(Region place, int index, Piece piece, boolean turned, boolean ripFirst) {
        long a = turned ? piece.width() : piece.length();
        long b = turned ? piece.length() : piece.width();
        used += piece.area();
        changed();
        if (a == place.length && b == place.width) {
            place.piece = index;
            place.turned = turned;
            free.remove(place);
            return;
        }
        boolean rip = b == place.width ? false : ripFirst || a == place.length;
        Region item = new Region(a, b);
        item.piece = index;
        item.turned = turned;
        Region strip = rip ? strip(place.length, b, item, false) : strip(a, place.width, item, true);
        if (place.parent != null && place.parent.ripped == rip) {
            shrink(place, a, b, rip);
            place.parent.add(strip);
        } else {
            Region rest = new Region(place.length, place.width);
            shrink(rest, a, b, rip);
            free.remove(place);
            free.add(rest);
            place.ripped = rip;
            place.add(strip);
            place.add(rest);
        }
    }

    private static void shrink(Region rest, long a, long b, boolean rip) {
        if (rip) {
            rest.width -= b;
        } else {
            rest.length -= a;
        }
    }

    private Region strip(long length, long width, Region item, boolean rip) {
        if (item.length == length && item.width == width) {
            return item;
        }
        Region strip = new Region(length, width);
        Region rest = new Region(rip ? length : length - item.length, rip ? width - item.width : width);
        strip.ripped = rip;
        strip.add(item);
        strip.add(rest);
        free.add(rest);
        return strip;
    }

    /** Takes every piece out of a region and joins the space with the free space beside it. */
    void clear(Region region, List<Piece> pieces, List<Integer> removed) {
        changed();
        takeOut(region, pieces, removed);
        join(region);
    }

    private void takeOut(Region region, List<Piece> pieces, List<Integer> removed) {
        if (region.piece >= 0) {
            removed.add(region.piece);
            used -= pieces.get(region.piece).area();
            region.piece = -1;
        } else if (region.row == null) {
            free.remove(region);
        } else {
            region.row.forEach(child -> takeOut(child, pieces, removed));
            region.row = null;
        }
    }

    private void join(Region freed) {
        Region region = freed;
        while (region.parent != null) {
            Region parent = region.parent;
            Region other = otherFree(parent, region);
            if (other != null) {
                region.length += parent.ripped ? 0 : other.length;
                region.width += parent.ripped ? other.width : 0;
                parent.row.remove(other);
                free.remove(other);
            }
            if (parent.row.size() > 1) {
                break;
            }
            parent.row = null;
            region = parent;
        }
        free.add(region);
    }

    private static Region otherFree(Region parent, Region region) {
        for (Region child : parent.row) {
            if (child != region && child.free()) {
                return child;
            }
        }
        return null;
    }
}
