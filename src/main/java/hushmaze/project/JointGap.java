package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Unit;

/**
 * A gap all along a joint that lets through as much sound as was measured.
 *
 * @param least narrowest that explains the readings, m; 0 for a tight joint
 * @param likely that explains them best, m
 * @param most widest that explains them, m (up to 10 mm)
 * @param source which readings, and when
 */
public record JointGap(
        @Measured(Unit.MILLIMETRE) double least,
        @Measured(Unit.MILLIMETRE) double likely,
        @Measured(Unit.MILLIMETRE) double most,
        String source) {
    /** Widest gap there may be, m. */
    public static final double WIDEST = 0.01;

    public JointGap {
        InvalidValue.within("likely", likely, 0, WIDEST, Unit.MILLIMETRE);
        InvalidValue.within("least", least, 0, likely, Unit.MILLIMETRE);
        InvalidValue.within("most", most, likely, WIDEST, Unit.MILLIMETRE);
        InvalidValue.text("source", source, 400);
    }
}
