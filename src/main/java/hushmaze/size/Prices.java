package hushmaze.size;

import hushmaze.build.SheetLayout;
import hushmaze.build.Supply;
import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * What sheets cost a search: their prices if all that must be bought have one, else their areas in m². Sheets on hand and
 * offcuts that other boxes leave are free. Safe for use by several threads.
 */
final class Prices {
    /** Most of a sheet that becomes parts, but for luck: better layouts than that are not expected; our own choice. */
    private static final double USED = 0.95;

    private final Supply supply;
    private final boolean money;
    private final Map<Material, List<Sheet>> sheets = new ConcurrentHashMap<>();

    private record Material(boolean board, String name, double thickness) {}

    /** @param supply what there is to cut from */
    Prices(Supply supply) {
        Stock stock = supply.stock();
        this.supply = supply;
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

    /**
     * What a box will cost, from the areas of its boards and of its liner alone.
     *
     * @param boards m²
     * @param liners m²
     */
    double expected(Build build, double boards, double liners) {
        return cover(sheets(build, true), sheets(boards)) + cover(sheets(build, false), sheets(liners));
    }

    /** Area of sheets that parts of an area take, m². */
    static double sheets(double parts) {
        return parts / USED;
    }

    /** Area of all sheets for a build's boards or liner, m²; infinite where some are bought as needed. */
    double there(Build build, boolean boards) {
        return sheets(build, boards).stream()
                .mapToDouble(sheet -> sheet.stock() == null ? Double.POSITIVE_INFINITY : sheet.stock() * area(sheet))
                .sum();
    }

    private List<Sheet> sheets(Build build, boolean boards) {
        Stock stock = supply.stock();
        Material material = boards
                ? new Material(true, build.board().name(), build.board().thickness())
                : new Material(false, build.liner().name(), build.liner().thickness());
        return sheets.computeIfAbsent(
                material,
                m -> supply.sheets(boards ? stock.boardSheets() : stock.linerSheets(), m.name(), m.thickness()));
    }

    private double of(Sheet sheet) {
        if (sheet.isOnHand()) {
            return 0;
        }
        return money ? sheet.price() : area(sheet);
    }

    /** Cheapest whole sheets of such an area, after all that is on hand; infinite where there is not as much. */
    private double cover(List<Sheet> all, double area) {
        double free = 0;
        List<Sheet> bought = new ArrayList<>();
        for (Sheet sheet : all) {
            if (sheet.isOnHand()) {
                free += sheet.stock() * area(sheet);
            } else {
                bought.add(sheet);
            }
        }
        return cheapest(bought, area - free);
    }

    private double cheapest(List<Sheet> bought, double area) {
        if (area <= 0) {
            return 0;
        }
        if (bought.isEmpty()) {
            return Double.POSITIVE_INFINITY;
        }
        Sheet first = bought.get(0);
        List<Sheet> others = bought.subList(1, bought.size());
        int most = (int) Math.ceil(area / area(first));
        most = first.stock() == null ? most : Math.min(most, first.stock());
        double least = Double.POSITIVE_INFINITY;
        for (int n = 0; n <= most; n++) {
            double cost = n * of(first);
            if (cost < least) {
                least = Math.min(least, cost + cheapest(others, area - n * area(first)));
            }
        }
        return least;
    }

    private static double area(Sheet sheet) {
        return sheet.length() * sheet.width();
    }
}
