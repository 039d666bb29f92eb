package hushmaze.build.fixing;

import hushmaze.project.Mounting;

/**
 * Whether the screws of a row find studs or joists wherever these may lie.
 *
 * <p>Formulas. Between its end screws a cleat is L - 2 · 4 D long; it crosses floor(that / spacing) centre lines for certain and
 * one more at best. In one stud there are at most two screws of a row, one above the other 4 D apart, in a cleat 9.5 D wide or
 * more (4 D to its lower edge, 1.5 D to its upper); for one screw 5.5 D will do. Timber of 38 mm (1 1/2 in) has room for the 1.5 D
 * a screw keeps from each edge.
 *
 * <p>Source: geometry; distances by the National Design Specification for Wood Construction, 12.5, from memory; they are
 * taken for wood screws too, for which it has none of its own. Two in a stud at most is our judgement. Range: studs at an even
 * spacing, cleat set without regard to them. Accuracy: exact; that a screw may stand off the middle of its stud is not used.
 *
 * @param cleat length of the row's cleat, m
 * @param spacing of the studs from centre to centre, m
 * @param diameter of the screws, m
 * @param sure number of studs the row crosses for certain
 * @param possible number it crosses at best
 * @param asked number of screws in the row
 */
public record StudRow(double cleat, double spacing, double diameter, int sure, int possible, int asked) {
    /** Screws of a row in one stud. */
    public static final int PER_STUD = 2;

    /** Least distance of a screw from the end of its cleat, in diameters. */
    static final double END = 4;

    /** Least distance from an edge the load does not go to, in diameters. */
    static final double EDGE = 1.5;

    /** The same for the edge the load goes to. */
    static final double LOADED_EDGE = 4;

    /** Least distance of two screws one above the other, in diameters. */
    static final double APART = 4;

    /** Steps of a length of cleat, and what rounding it to a sixteenth of an inch may take off, m. */
    private static final double STEP = 0.01;

    private static final double SHOWN = 0.001;

    /** So that a cleat of exactly the length asked for is long enough, m. */
    private static final double SLACK = 1e-6;

    /**
     * A row as long as the cleat, or as the box if none is named.
     *
     * @param side of the box along the row, m
     * @param mounting with the spacing of the studs
     */
    static StudRow of(double side, Mounting mounting) {
        double cleat = mounting.cleatLength() == null ? side : mounting.cleatLength();
        double spacing = mounting.studSpacing();
        double diameter = StudFixing.diameter(mounting.screw());
        double clear = cleat - 2 * END * diameter + SLACK;
        int sure = clear < 0 ? 0 : (int) Math.floor(clear / spacing);
        int possible = clear < 0 ? 0 : sure + 1;
        return new StudRow(cleat, spacing, diameter, sure, possible, mounting.screwsPerRow());
    }

    /** Screws of a row that find a stud for certain. */
    public int sureScrews() {
        return PER_STUD * sure;
    }

    /** Screws of a row that find a stud if these lie as well as they can. */
    public int possibleScrews() {
        return PER_STUD * possible;
    }

    /** Studs that a number of screws needs. */
    public static int studsFor(int screws) {
        return (screws + PER_STUD - 1) / PER_STUD;
    }

    /** Length of cleat in which all screws asked for find a stud for certain, m; rounded up so that it may be shown rounded. */
    public double cleatNeeded() {
        double least = studsFor(asked) * spacing + 2 * END * diameter;
        return Math.ceil((least + SHOWN) / STEP) * STEP;
    }

    /** Least width of the cleat, m. */
    public double cleatWidth() {
        return width(paired(), diameter);
    }

    /** Whether two screws may have to stand one above the other in a stud. */
    boolean paired() {
        return asked > sure && asked > 1;
    }

    /**
     * Least width of a cleat, m.
     *
     * @param above whether two screws may stand one above the other
     */
    static double width(boolean above, double diameter) {
        return ((above ? APART : 0) + LOADED_EDGE + EDGE) * diameter;
    }

    /** Distance from the first stud to the last, m. */
    double span() {
        return Math.max(0, sure - 1) * spacing;
    }
}
