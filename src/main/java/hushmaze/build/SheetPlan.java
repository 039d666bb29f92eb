package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.quantity.MayBeAbsent;
import java.util.List;

/**
 * One sheet with the panels on it.
 *
 * @param sheet size used
 * @param from the offcut of another path's box that it is; null for a sheet in stock
 * @param trim taken off every edge first, m
 * @param kerf width of every cut, m
 * @param leastStrip narrowest piece that can be held between fence and blade, m
 * @param cuts of the trimmed sheet; distances start at the trimmed corner
 * @param panels where they come to lie, from the sheet's own untrimmed corner
 */
public record SheetPlan(
        Sheet sheet,
        @MayBeAbsent KeptOffcut from,
        double trim,
        double kerf,
        double leastStrip,
        CutNode cuts,
        List<Placed> panels) {
    /**
     * A panel on a sheet.
     *
     * @param mark of the panel
     * @param x along the sheet's length, from the untrimmed corner, m
     * @param y along the sheet's width, m
     * @param length along the sheet's length, m
     * @param width along the sheet's width, m
     * @param rotated whether the panel's own length lies across the sheet
     */
    public record Placed(String mark, double x, double y, double length, double width, boolean rotated) {}

    public SheetPlan {
        panels = List.copyOf(panels);
    }

    /** A plan of a sheet in stock. */
    public SheetPlan(Sheet sheet, double trim, double kerf, double leastStrip, CutNode cuts, List<Placed> panels) {
        this(sheet, null, trim, kerf, leastStrip, cuts, panels);
    }

    /** The same plan on another sheet of the same size. */
    SheetPlan of(Sheet other) {
        return new SheetPlan(other, null, trim, kerf, leastStrip, cuts, panels);
    }

    /** The same plan on an offcut of that size. */
    SheetPlan of(KeptOffcut offcut) {
        return new SheetPlan(sheet, offcut, trim, kerf, leastStrip, cuts, panels);
    }

    /** Whether a finished piece of this sheet's cuts is a panel whose own length lies across the sheet. */
    public boolean turned(CutSequence.Piece piece) {
        return piece.kind() == CutSequence.Kind.PANEL
                && panels.stream()
                        .anyMatch(p -> p.rotated()
                                && p.mark().equals(piece.name())
                                && Math.abs(p.length() - piece.length()) <= 2 * CutReplay.SLACK);
    }

    /** Share of the sheet that does not become a panel, 0 to 1. */
    public double waste() {
        double used = panels.stream().mapToDouble(p -> p.length() * p.width()).sum();
        return 1 - used / (sheet.length() * sheet.width());
    }
}
