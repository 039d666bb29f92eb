package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * How a box is fixed to studs or joists: screws in two rows through a cleat of timber.
 *
 * @param timber of the studs
 * @param screw the kind of screw
 * @param thread length of thread in each stud, its tapered tip not counted, m
 * @param screwsPerRow in each of the two rows
 * @param rowDistance between the rows, m; on a wall from the upper to the lower
 * @param cleat thickness of the timber the screws go through first, m
 * @param source who chose this, or where it is from
 */
public record Mounting(
        Timber timber,
        StudScrew screw,
        @Measured(Unit.MILLIMETRE) double thread,
        int screwsPerRow,
        @Measured(Unit.MILLIMETRE) double rowDistance,
        @Measured(Unit.MILLIMETRE) double cleat,
        String source) {
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
        InvalidValue.within("screwsPerRow", screwsPerRow, 1, 12);
        InvalidValue.within("rowDistance", rowDistance, 0.05, 3, Unit.MILLIMETRE);
        InvalidValue.within("cleat", cleat, 0.009, 0.1, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }
}
