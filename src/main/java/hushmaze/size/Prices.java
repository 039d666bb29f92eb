package hushmaze.size;

import hushmaze.build.SheetLayout;
import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.List;
import java.util.stream.Stream;

/**
 * What sheets cost a search: their prices if all that must be bought have one, else their areas in m². Offcuts on hand are
 * free.
 */
final class Prices {
    /** Most of a sheet that becomes parts, but for luck: better layouts than that are not expected; our own choice. */
    private static final double USED = 0.95;

    private final Stock stock;
    private final boolean money;

    Prices(Stock stock) {
        this.stock = stock;
        this.money = Stream.concat(stock.boardSheets().stream(), stock.linerSheets().stream())
                .allMatch(sheet -> sheet.price() != null || sheet.isOnHand());
    }

    /** Whether costs are in the user's currency, not in m². */
    boolean inMoney() {
        return money;
    }

    /** Cost of all sheets of a box. */
    double of(List<SheetLayout> layouts) {
        return layouts.stream()
                .flatMap(layout -> layout.sheets().stream())
                .mapToDouble(plan -> of(plan.sheet()))
                .sum();
    }

    /** What a box will cost, from the areas of its boards and of its liner alone, m². */
    double expected(double boards, double liners) {
        return cover(stock.boardSheets(), boards / USED) + cover(stock.linerSheets(), liners / USED);
    }

    private double of(Sheet sheet) {
        if (sheet.isOnHand()) {
            return 0;
        }
        return money ? sheet.price() : area(sheet);
    }

    /** Cheapest whole sheets of such an area; infinite where the stock does not hold as much. */
    private double cover(List<Sheet> sheets, double area) {
        if (area <= 0) {
            return 0;
        }
        if (sheets.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Sheet first = sheets.get(0);
        List<Sheet> others = sheets.subList(1, sheets.size());
        int most = (int) Math.ceil(area / area(first));
        most = first.stock() == null ? most : Math.min(most, first.stock());
        double least = Double.POSITIVE_INFINITY;
        for (int n = 0; n <= most; n++) {
            double cost = n * of(first);
            if (cost < least) {
                least = Math.min(least, cost + cover(others, area - n * area(first)));
            }
        }
        return least;
    }

    private static double area(Sheet sheet) {
        return sheet.length() * sheet.width();
    }
}
