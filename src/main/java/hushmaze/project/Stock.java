package hushmaze.project;

import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.quantity.InvalidValue;
import java.util.List;

/**
 * What can be bought and what it is cut with.
 *
 * @param boardSheets sizes the board is sold in, at least one
 * @param linerSheets sizes the liner is sold in, at least one
 * @param saw for the boards; liner is cut with a knife
 * @param screw for the panels
 */
public record Stock(List<Sheet> boardSheets, List<Sheet> linerSheets, Saw saw, Screw screw) {
    public Stock {
        boardSheets = notEmpty("boardSheets", boardSheets);
        linerSheets = notEmpty("linerSheets", linerSheets);
        InvalidValue.present("saw", saw);
        InvalidValue.present("screw", screw);
    }

    private static List<Sheet> notEmpty(String field, List<Sheet> sheets) {
        if (InvalidValue.present(field, sheets).isEmpty()) {
            throw new InvalidValue(field, "no sheet", "at least one sheet size", "");
        }
        return List.copyOf(sheets);
    }
}
