package hushmaze.build.split;

import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.List;
import java.util.function.DoublePredicate;

/** How large a piece may be that is cut from one sheet, inside the trim. */
public final class SheetRoom {
    /** Rounding of pieces that just fit, m. */
    private static final double SLACK = 1e-9;

    /** Inside the trim, along the sheet and across it, m. */
    private record Room(double length, double width) {}

    /**
     * What is too large of a piece, and how large it may be.
     *
     * @param value m
     * @param limit m
     */
    public record Excess(double value, double limit) {}

    private final List<Room> rooms;

    private SheetRoom(List<Sheet> sheets, double trim) {
        rooms = sheets.stream()
                .map(s -> new Room(s.length() - 2 * trim, s.width() - 2 * trim))
                .toList();
    }

    /** Of a board: the saw takes a trim off every edge. @param name of the board */
    public static SheetRoom ofBoard(Stock stock, String name) {
        return new SheetRoom(of(stock.boardSheets(), name), stock.saw().trim());
    }

    /** Of a liner, cut with a knife: no trim. @param name of the liner */
    public static SheetRoom ofLiner(Stock stock, String name) {
        return new SheetRoom(of(stock.linerSheets(), name), 0);
    }

    /** Those a material can be had in; where there are none, sizes are not what is missing. */
    private static List<Sheet> of(List<Sheet> sheets, String name) {
        List<Sheet> of = sheets.stream().filter(sheet -> sheet.isOf(name)).toList();
        return of.isEmpty() ? sheets : of;
    }

    /**
     * The longest piece of a given size across, m; 0 if there is none.
     *
     * @param across m
     * @param grain whether the longer side must run along the sheet
     */
    double longest(double across, boolean grain) {
        double longest = 0;
        for (Room room : rooms) {
            if (across <= room.width() + SLACK && (!grain || room.length() >= across)) {
                longest = Math.max(longest, room.length());
            }
            if (across <= room.length() + SLACK) {
                longest = Math.max(longest, grain ? Math.min(room.width(), across) : room.width());
            }
        }
        return longest;
    }

    /** The widest piece that still may be so long, m; 0 if there is none. */
    double widest(double length) {
        double widest = 0;
        for (Room room : rooms) {
            widest = Math.max(widest, room.length() >= length ? room.width() : 0);
            widest = Math.max(widest, room.width() >= length ? room.length() : 0);
        }
        return widest;
    }

    boolean holds(double a, double b, boolean grain) {
        return longest(Math.min(a, b), grain) + SLACK >= Math.max(a, b);
    }

    /** What is in the way of a piece that no sheet holds: its width on the sheets that are long enough, else its length. */
    public Excess excess(double a, double b, boolean grain) {
        double length = Math.max(a, b);
        double width = Math.min(a, b);
        double widest = widest(length, grain);
        return widest > 0 && width > widest
                ? new Excess(width, widest)
                : new Excess(length, most(room -> true, grain, true));
    }

    private double widest(double length, boolean grain) {
        return most(l -> l + SLACK >= length, grain, false);
    }

    private double most(DoublePredicate longEnough, boolean grain, boolean ofLength) {
        double most = 0;
        for (Room room : rooms) {
            double length = grain ? room.length() : Math.max(room.length(), room.width());
            double width = grain ? room.width() : Math.min(room.length(), room.width());
            if (longEnough.test(length)) {
                most = Math.max(most, ofLength ? length : width);
            }
        }
        return most;
    }
}
