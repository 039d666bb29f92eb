package hushmaze.project;

import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.MayBeAbsent;
import hushmaze.quantity.Measured;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;

/**
 * One thing in the room's envelope that sound can come through, besides the vent paths.
 *
 * @param name what it is
 * @param kind how its loss is given
 * @param count how many of them there are
 * @param area of one surface, m²; for {@link Kind#SURFACE}
 * @param loss third octaves or octaves, dB: sound reduction index of a surface, element-normalized level difference of one
 *     small element; absent when only the weighted figure is known
 * @param weighted weighted sound reduction index or level difference after ISO 717-1, dB; used when {@code loss} is absent
 * @param gapWidth of a gap, m; for {@link Kind#GAP}
 * @param gapLength of a gap, m
 * @param gapDepth through the wall, m
 * @param gapMouth where a gap opens
 * @param source where the numbers are from
 */
public record EnvelopeElement(
        String name,
        Kind kind,
        int count,
        @MayBeAbsent @Measured(Unit.SQUARE_METRE) Double area,
        @MayBeAbsent Spectrum loss,
        @MayBeAbsent @Measured(Unit.DECIBEL) Double weighted,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double gapWidth,
        @MayBeAbsent @Measured(Unit.METRE) Double gapLength,
        @MayBeAbsent @Measured(Unit.MILLIMETRE) Double gapDepth,
        @MayBeAbsent SlitMouth gapMouth,
        String source) {
    /** How an element's loss is given. */
    public enum Kind {
        /** A wall, door or window: area and sound reduction index. */
        SURFACE,
        /** A thing of less than 1 m², such as a socket box or a vent: element-normalized level difference. */
        SMALL,
        /** A gap, by its width, length and depth. */
        GAP
    }

    /** Lowest loss that may be given, dB: a resonant gap lets through more than falls on it. */
    private static final double LEAST_LOSS = -10;

    private static final double MOST_LOSS = 120;

    public EnvelopeElement {
        InvalidValue.text("name", name, 80);
        InvalidValue.present("kind", kind);
        InvalidValue.within("count", count, 1, 1000);
        if (kind == Kind.SURFACE) {
            InvalidValue.present("area", area);
        }
        if (kind == Kind.GAP) {
            InvalidValue.present("gapWidth", gapWidth);
            InvalidValue.present("gapLength", gapLength);
            InvalidValue.present("gapDepth", gapDepth);
            InvalidValue.present("gapMouth", gapMouth);
        } else if (loss == null) {
            InvalidValue.present("weighted", weighted);
        }
        // What another kind needs may stay beside the chosen one, but must be a value all the same.
        within("area", area, 1e-4, 1000, Unit.SQUARE_METRE);
        within("weighted", weighted, 0, MOST_LOSS, Unit.DECIBEL);
        within("gapWidth", gapWidth, 1e-6, 0.1, Unit.MILLIMETRE);
        within("gapLength", gapLength, 0.001, 200, Unit.METRE);
        within("gapDepth", gapDepth, 0.001, 2, Unit.MILLIMETRE);
        if (loss != null) {
            for (double value : loss.values()) {
                InvalidValue.within("loss", value, LEAST_LOSS, MOST_LOSS, Unit.DECIBEL);
            }
        }
        InvalidValue.text("source", source, 400);
    }

    /** A surface with its sound reduction index. */
    public static EnvelopeElement surface(String name, double area, Spectrum loss, String source) {
        return new EnvelopeElement(name, Kind.SURFACE, 1, area, loss, null, null, null, null, null, source);
    }

    /** Small elements with their element-normalized level difference. */
    public static EnvelopeElement small(String name, int count, Spectrum difference, String source) {
        return new EnvelopeElement(name, Kind.SMALL, count, null, difference, null, null, null, null, null, source);
    }

    /** A gap; sizes in m. */
    public static EnvelopeElement gap(
            String name, double width, double length, double depth, SlitMouth mouth, String source) {
        return new EnvelopeElement(name, Kind.GAP, 1, null, null, null, width, length, depth, mouth, source);
    }

    private static void within(String field, Double value, double min, double max, Unit unit) {
        if (value != null) {
            InvalidValue.within(field, value, min, max, unit);
        }
    }
}
