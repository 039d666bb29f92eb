package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.project.Stock;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/**
 * A stock some of whose sheets are taken: those there are only so many of serve the material and the path that come first.
 *
 * @param stock as it was
 * @param taken how many of each of its sheets are gone; those bought as needed are not counted
 */
public record Supply(Stock stock, Map<Sheet, Integer> taken) {
    public Supply {
        taken = Map.copyOf(taken);
    }

    /** A stock of which nothing is taken. */
    public static Supply of(Stock stock) {
        return new Supply(stock, Map.of());
    }

    /** Whether there are only so many of some of its sheets. */
    public boolean isLimited() {
        return Stream.concat(stock.boardSheets().stream(), stock.linerSheets().stream())
                .anyMatch(sheet -> sheet.stock() != null);
    }

    /** What is left when the sheets of some layouts are taken too. */
    public Supply after(List<SheetLayout> layouts) {
        Map<Sheet, Integer> more = new HashMap<>(taken);
        for (SheetLayout layout : layouts) {
            for (SheetPlan plan : layout.sheets()) {
                if (plan.sheet().stock() != null) {
                    more.merge(plan.sheet(), 1, Integer::sum);
                }
            }
        }
        return new Supply(stock, more);
    }

    /** The same sheets, of each as many as are left. */
    List<Sheet> left(List<Sheet> sheets) {
        Map<Sheet, Integer> gone = new HashMap<>(taken);
        List<Sheet> left = new ArrayList<>();
        for (Sheet sheet : sheets) {
            int from = sheet.stock() == null ? 0 : Math.min(sheet.stock(), gone.getOrDefault(sheet, 0));
            if (from > 0) {
                // the rest is taken from another line of the same sheets
                gone.merge(sheet, -from, Integer::sum);
                left.add(sheet.having(sheet.stock() - from));
            } else {
                left.add(sheet);
            }
        }
        return left;
    }
}
