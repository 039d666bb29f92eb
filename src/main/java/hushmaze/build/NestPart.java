package hushmaze.build;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;

/**
 * A piece to be cut, one or more times.
 *
 * @param mark what it is called; not blank, and not {@value #OFFCUT}
 * @param quantity how many, 1 to {@link NestJob#MAX_PIECES}
 * @param length m (1 mm to 10 m)
 * @param width m (1 mm to 10 m)
 * @param grain whether its length must run with the sheet's length
 */
public record NestPart(String mark, int quantity, double length, double width, boolean grain) {
    /** Names what is left over, so no piece can be called this. */
    public static final String OFFCUT = "offcut";

    private static final double MIN_SIZE = 0.001;
    private static final double MAX_SIZE = 10;

    public NestPart {
        InvalidValue.text("mark", mark, 40);
        if (mark.equals(OFFCUT)) {
            throw new InvalidValue("mark", OFFCUT, "another word, because this names what is left over", "");
        }
        InvalidValue.within("quantity", quantity, 1, NestJob.MAX_PIECES);
        InvalidValue.within("length", length, MIN_SIZE, MAX_SIZE, Unit.MILLIMETRE);
        InvalidValue.within("width", width, MIN_SIZE, MAX_SIZE, Unit.MILLIMETRE);
    }
}
