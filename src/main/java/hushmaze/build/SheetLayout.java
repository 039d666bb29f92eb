package hushmaze.build;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.OptionalDouble;

/**
 * All sheets of one material.
 *
 * @param material name of the board or liner
 * @param thickness m
 * @param sheets in the order they are cut
 * @param lowerBound no layout needs fewer sheets than this
 * @param unplaced marks of pieces that fit on no sheet, once per piece
 * @param provedBest whether it is certain that no layout costs less: all is placed and the cost is the lower bound of it
 * @param leastOffcut an offcut is worth keeping if both its sides are at least this, m
 */
public record SheetLayout(
        String material,
        double thickness,
        List<SheetPlan> sheets,
        int lowerBound,
        List<String> unplaced,
        boolean provedBest,
        double leastOffcut) {
    /**
     * What is left over and worth keeping.
     *
     * @param sheet number of the sheet it comes from, counted from 1
     * @param length along the sheet's length, m
     * @param width along the sheet's width, m
     */
    public record Offcut(int sheet, double length, double width) {
        /** m² */
        public double area() {
            return length * width;
        }
    }

    public SheetLayout {
        sheets = List.copyOf(sheets);
        unplaced = List.copyOf(unplaced);
    }

    /** The same layout on other sheets of the same sizes. */
    SheetLayout with(List<SheetPlan> plans) {
        return new SheetLayout(material, thickness, plans, lowerBound, unplaced, provedBest, leastOffcut);
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

    /** Prices of all sheets used together, offcuts of other boxes for nothing; empty when a sheet has no price. */
    public OptionalDouble cost() {
        List<Double> prices = sheets.stream()
                .filter(plan -> plan.from() == null)
                .map(plan -> plan.sheet().price())
                .toList();
        return prices.contains(null)
                ? OptionalDouble.empty()
                : OptionalDouble.of(
                        prices.stream().mapToDouble(Double::doubleValue).sum());
    }

    /** How many sheets of the stock are cut, offcuts of other boxes not counted. */
    public int fromStock() {
        return sheets.size() - keptOffcuts().size();
    }

    /** Offcuts of other boxes that are cut up. */
    public List<KeptOffcut> keptOffcuts() {
        return sheets.stream().map(SheetPlan::from).filter(Objects::nonNull).toList();
    }

    /** Offcuts worth keeping, the largest first. */
    public List<Offcut> offcuts() {
        List<Offcut> offcuts = new ArrayList<>();
        for (int i = 0; i < sheets.size(); i++) {
            for (CutReplay.Spot spot : CutReplay.of(sheets.get(i))) {
                double side = Math.min(spot.length(), spot.width());
                if (spot.offcut() && side > 0 && side >= leastOffcut - CutReplay.SLACK) {
                    offcuts.add(new Offcut(i + 1, spot.length(), spot.width()));
                }
            }
        }
        offcuts.sort(Comparator.comparingDouble(Offcut::area).reversed());
        return List.copyOf(offcuts);
    }

    /** How often the fence is set for all sheets. */
    public int fenceSettings() {
        return sheets.stream()
                .mapToInt(plan -> CutSequence.of(plan).fenceSettings())
                .sum();
    }
}
