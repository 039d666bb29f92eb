package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * A run of duct between two openings.
 *
 * @param kind of duct
 * @param length from opening to opening, m
 * @param width clear, m; the diameter of a round duct
 * @param height clear, m; absent for a round duct
 * @param linerThickness on all four sides, m; absent for a bare duct; only in rectangular ducts and ducts with stiff walls
 * @param branchShares for every branching on the way, clear area of the duct that leads to the listener over the areas of
 *     all ducts that lead on; empty for none
 */
public record DuctRun(
        Kind kind,
        @Measured(Unit.METRE) double length,
        @Measured(Unit.MILLIMETRE) double width,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double height,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double linerThickness,
        List<Double> branchShares) {
    /** Most branchings on the way. */
    public static final int MAX_BRANCHES = 20;

    /** What a duct is made of; it decides how much sound its bare walls take. */
    public enum Kind {
        /** Rectangular, of sheet metal. */
        RECTANGULAR_SHEET,
        /** Round, of sheet metal. */
        ROUND_SHEET,
        /** Rectangular, of board or masonry, whose walls do not give way. */
        STIFF_WALLS
    }

    public DuctRun {
        InvalidValue.present("kind", kind);
        InvalidValue.within("length", length, 0, 200, Unit.METRE);
        InvalidValue.within("width", width, 0.03, 3, Unit.MILLIMETRE);
        if (kind != Kind.ROUND_SHEET) {
            InvalidValue.present("height", height);
        }
        if (height != null) {
            InvalidValue.within("height", height, 0.03, 3, Unit.MILLIMETRE);
        }
        if (linerThickness != null) {
            if (kind == Kind.ROUND_SHEET) {
                throw new InvalidValue("linerThickness", "a liner in a round duct", "absent for a round duct", "");
            }
            InvalidValue.within("linerThickness", linerThickness, 0.003, 0.2, Unit.MILLIMETRE);
        }
        branchShares = List.copyOf(InvalidValue.present("branchShares", branchShares));
        if (branchShares.size() > MAX_BRANCHES) {
            throw new InvalidValue(
                    "branchShares", branchShares.size() + " branchings", "at most " + MAX_BRANCHES + " branchings", "");
        }
        for (double share : branchShares) {
            InvalidValue.within("branchShares", share, 0.001, 1, Unit.NUMBER);
        }
    }

    /** Clear area across the duct, m². */
    public double area() {
        return kind == Kind.ROUND_SHEET ? Math.PI * width * width / 4 : width * height;
    }
}
