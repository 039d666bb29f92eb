package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.OptionalDouble;

/**
 * How quiet the room shall be.
 *
 * @param kind which rating
 * @param number NC, NR or RC number, or dB(A); absent for an own spectrum
 * @param spectrum own limit per band, dB; absent for the ratings
 * @param source where the wish is from
 */
public record Target(
        Kind kind, @MayBeAbsent Double number, @MayBeAbsent Spectrum spectrum, String source) {
    /** By how much dB(A) stand above the NC number of a usual room noise. */
    private static final double DBA_OVER_NC = 7;

    /** Kinds of target. */
    public enum Kind {
        /** Noise criterion curve. */
        NC,
        /** Noise rating curve. */
        NR,
        /** Room criterion curve. */
        RC,
        /** A-weighted level. */
        DBA,
        /** A limit for every band. */
        SPECTRUM
    }

    public Target {
        InvalidValue.present("kind", kind);
        switch (kind) {
            case NC -> InvalidValue.within("number", InvalidValue.present("number", number), 15, 70, Unit.NUMBER);
            case NR -> InvalidValue.within("number", InvalidValue.present("number", number), 0, 70, Unit.NUMBER);
            case RC -> InvalidValue.within("number", InvalidValue.present("number", number), 10, 70, Unit.NUMBER);
            case DBA -> InvalidValue.within("number", InvalidValue.present("number", number), 10, 90, Unit.NUMBER);
            case SPECTRUM -> InvalidValue.present("spectrum", spectrum);
        }
        // What another kind needs may stay beside the chosen one, but must be a value all the same.
        if (number != null) {
            InvalidValue.within("number", number, 0, 90, Unit.NUMBER);
        }
        if (spectrum != null) {
            for (double level : spectrum.values()) {
                InvalidValue.within("spectrum", level, -30, 160, Unit.DECIBEL);
            }
        }
        InvalidValue.text("source", source, 400);
    }

    /**
     * About which NC number a rating comes to, for tables that are by NC: dB(A) less {@value #DBA_OVER_NC} (common practice, no
     * source), the numbers of the others as they are; nothing for an own spectrum.
     */
    public OptionalDouble likeNc() {
        if (kind == Kind.SPECTRUM) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(Math.max(0, kind == Kind.DBA ? number - DBA_OVER_NC : number));
    }
}
