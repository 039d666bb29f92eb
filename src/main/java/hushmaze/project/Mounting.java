package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * How a box is fixed to the building: screws in two rows, each through a cleat of timber. Only studs and joists are
 * computed; into anything else the screws are refused, and the other values say nothing.
 *
 * @param into what the screws go into; left out it is studs, as in files that do not know anything else
 * @param timber of the studs
 * @param screw the kind of screw
 * @param thread length of thread in each stud, its tapered tip not counted, m
 * @param screwsPerRow in each of the two rows
 * @param rowDistance between the rows, m; on a wall from the upper to the lower, of a box on bevelled battens from the screws to the spacer
 * @param cleat thickness of the timber the screws go through first, m
 * @param studSpacing of studs or joists from centre to centre, m; absent when it is not known
 * @param cleatLength of each row's cleat, m; absent when it is as long as the box
 * @param abovePeople whether people sit or pass below it; left out they do not, and under a ceiling they always do
 * @param source who chose this, or where it is from
 */
public record Mounting(
        @MayBeAbsent Into into,
        Timber timber,
        StudScrew screw,
        @Measured(Unit.MILLIMETRE) double thread,
        int screwsPerRow,
        @Measured(Unit.MILLIMETRE) double rowDistance,
        @Measured(Unit.MILLIMETRE) double cleat,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double studSpacing,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double cleatLength,
        @MayBeAbsent Boolean abovePeople,
        String source) {
    /** Most screws in a row. */
    public static final int MOST_SCREWS = 12;

    /** Least distance between the rows, m. */
    public static final double LEAST_ROWS = 0.05;

    /** What the screws of a box go into. */
    public enum Into {
        /** Studs of a wall or joists of a ceiling: the only ones that are computed. */
        STUDS,
        /** Brick, block, stone or concrete. */
        MASONRY,
        /** Board on resilient channels or clips, which nothing heavy may be hung on. */
        RESILIENT,
        /** Not known, or board and plaster with nothing behind. */
        UNKNOWN
    }

    /** Timber by the group its grade stamp names. */
    public enum Timber {
        SPRUCE_PINE_FIR,
        SPRUCE_PINE_FIR_SOUTH,
        HEM_FIR,
        DOUGLAS_FIR_LARCH,
        SOUTHERN_PINE
    }

    /** Screws of published strength; of metric ones take the next smaller. */
    public enum StudScrew {
        /** Lag screw, 1/4 in (6.4 mm). */
        LAG_QUARTER,
        /** Lag screw, 5/16 in (7.9 mm). */
        LAG_FIVE_SIXTEENTHS,
        /** Lag screw, 3/8 in (9.5 mm). */
        LAG_THREE_EIGHTHS,
        /** Wood screw no. 10 (4.8 mm). */
        WOOD_10,
        /** Wood screw no. 12 (5.5 mm). */
        WOOD_12
    }

    public Mounting {
        InvalidValue.present("timber", timber);
        InvalidValue.present("screw", screw);
        InvalidValue.within("thread", thread, 0.01, 0.15, Unit.MILLIMETRE);
        InvalidValue.within("screwsPerRow", screwsPerRow, 1, MOST_SCREWS);
        InvalidValue.within("rowDistance", rowDistance, LEAST_ROWS, 3, Unit.MILLIMETRE);
        InvalidValue.within("cleat", cleat, 0.009, 0.1, Unit.MILLIMETRE);
        if (studSpacing != null) {
            InvalidValue.within("studSpacing", studSpacing, 0.1, 2, Unit.MILLIMETRE);
        }
        if (cleatLength != null) {
            InvalidValue.within("cleatLength", cleatLength, 0.05, 6, Unit.MILLIMETRE);
        }
        InvalidValue.text("source", source, 400);
    }

    /** What the screws go into; studs if nothing is said. */
    public Into intoOrStuds() {
        return into == null ? Into.STUDS : into;
    }

    /** Whether the box hangs on a wall above people. */
    public boolean isAbovePeople() {
        return Boolean.TRUE.equals(abovePeople);
    }

    /** The same with its rows another distance apart, m. */
    public Mounting withRowDistance(double other) {
        return new Mounting(
                into, timber, screw, thread, screwsPerRow, other, cleat, studSpacing, cleatLength, abovePeople, source);
    }

    /** The same with cleats of another length, m. */
    public Mounting withCleatLength(double other) {
        return new Mounting(
                into, timber, screw, thread, screwsPerRow, rowDistance, cleat, studSpacing, other, abovePeople, source);
    }

    /** The same with its screws deeper or less deep in the timber, m. */
    public Mounting withThread(double other) {
        return new Mounting(
                into,
                timber,
                screw,
                other,
                screwsPerRow,
                rowDistance,
                cleat,
                studSpacing,
                cleatLength,
                abovePeople,
                source);
    }

    /** The same with another number of screws in each row. */
    public Mounting withScrews(int perRow) {
        return new Mounting(
                into, timber, screw, thread, perRow, rowDistance, cleat, studSpacing, cleatLength, abovePeople, source);
    }
}
