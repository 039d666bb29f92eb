package hushmaze.build;

import java.util.List;

/**
 * All sheets of one material.
 *
 * @param material name of the board or liner
 * @param thickness m
 * @param sheets in the order they are cut
 * @param lowerBound no layout needs fewer sheets than this
 * @param unplaced marks of pieces that fit on no sheet, once per piece
 */
public record SheetLayout(
        String material, double thickness, List<SheetPlan> sheets, int lowerBound, List<String> unplaced) {
    public SheetLayout {
        sheets = List.copyOf(sheets);
        unplaced = List.copyOf(unplaced);
    }

    /** Share of all sheets that does not become a panel, 0 to 1; zero when no sheet is used. */
    public double waste() {
        double total = sheets.stream()
                .mapToDouble(s -> s.sheet().length() * s.sheet().width())
                .sum();
        double used = sheets.stream()
                .flatMap(s -> s.panels().stream())
                .mapToDouble(p -> p.length() * p.width())
                .sum();
        return total == 0 ? 0 : 1 - used / total;
    }
}
