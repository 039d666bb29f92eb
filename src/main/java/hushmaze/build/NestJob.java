package hushmaze.build;

import hushmaze.material.Sheet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Pieces of one material to be cut from sheets.
 *
 * @param material name of the board or liner
 * @param thickness m
 * @param parts pieces, every mark once; together at most {@link #MAX_PIECES}
 * @param sheets sizes that can be had, at least one, each larger than kerf and trim
 * @param offcuts that other boxes leave, one of each: they cost nothing but the trouble, so as few as serve are cut up
 * @param kerf width of every cut, m (0 to 12 mm), kept in whole nanometres
 * @param trim strip taken off every edge of a sheet first, the saw cut included, m (0 to 50 mm), kept in whole nanometres
 * @param leastOffcut an offcut is worth keeping if both its sides are at least this, m (0 to 10 m)
 * @param leastStrip narrowest piece that can be held between fence and blade, m (0 to 200 mm); narrower panels are still cut,
 *     but where possible as what falls off on the free side
 */
public record NestJob(
        String material,
        double thickness,
        List<NestPart> parts,
        List<Sheet> sheets,
        List<Sheet> offcuts,
        double kerf,
        double trim,
        double leastOffcut,
        double leastStrip) {
    /** Shorter offcuts are not kept, m: common practice, no source. */
    public static final double LEAST_OFFCUT = 0.15;
    /** Narrower strips are not pushed along a saw's fence, m: a shop's choice, no source. */
    public static final double LEAST_SAW_STRIP = 0.03;
    /** Most pieces one job may have. */
    public static final int MAX_PIECES = 20_000;

    public NestJob {
        InvalidValue.text("material", material, 80);
        parts = List.copyOf(InvalidValue.present("parts", parts));
        sheets = List.copyOf(InvalidValue.present("sheets", sheets));
        offcuts = List.copyOf(InvalidValue.present("offcuts", offcuts));
        InvalidValue.within("kerf", kerf, 0, 0.012, Unit.MILLIMETRE);
        InvalidValue.within("trim", trim, 0, 0.05, Unit.MILLIMETRE);
        InvalidValue.within("leastOffcut", leastOffcut, 0, 10, Unit.MILLIMETRE);
        InvalidValue.within("leastStrip", leastStrip, 0, 0.2, Unit.MILLIMETRE);
        kerf = wholeNanometres(kerf);
        trim = wholeNanometres(trim);
        if (sheets.isEmpty()) {
            throw new InvalidValue("sheets", "no sheet", "at least one sheet size", "");
        }
        for (Sheet sheet : Stream.concat(sheets.stream(), offcuts.stream()).toList()) {
            requireUsable(sheet, kerf, trim);
        }
        requireMarksOnce(parts);
        long pieces = parts.stream().mapToLong(NestPart::quantity).sum();
        if (pieces > MAX_PIECES) {
            throw new InvalidValue("quantity", pieces + " pieces together", "at most " + MAX_PIECES, "");
        }
    }

    /** With the usual limits for offcuts and strips; a cut without kerf is made with a knife, to which no strip is too narrow. */
    public NestJob(
            String material, double thickness, List<NestPart> parts, List<Sheet> sheets, double kerf, double trim) {
        this(material, thickness, parts, sheets, List.of(), kerf, trim, LEAST_OFFCUT, kerf == 0 ? 0 : LEAST_SAW_STRIP);
    }

    /** The same job from other sheets, and from offcuts. */
    NestJob from(List<Sheet> others, List<Sheet> kept) {
        return new NestJob(material, thickness, parts, others, kept, kerf, trim, leastOffcut, leastStrip);
    }

    /** Whether a piece fits on some sheet inside the trim, however many of them there are. */
    public boolean fits(NestPart part) {
        return sheets.stream().anyMatch(sheet -> {
            double length = sheet.length() - 2 * trim + CutReplay.SLACK;
            double width = sheet.width() - 2 * trim + CutReplay.SLACK;
            return part.length() <= length && part.width() <= width
                    || !part.grain() && part.width() <= length && part.length() <= width;
        });
    }

    /** Kerf and trim are whole nanometres, so that long rows of cuts add up exactly. */
    private static double wholeNanometres(double metres) {
        return NestTask.nanometres(metres) / NestTask.PER_METRE;
    }

    private static void requireUsable(Sheet sheet, double kerf, double trim) {
        double left = Math.min(sheet.length(), sheet.width()) - 2 * trim;
        if (left <= kerf) {
            throw new InvalidValue(
                    "sheet",
                    millimetres(sheet.length()) + " x " + millimetres(sheet.width()),
                    "wider than two trims and a kerf, " + millimetres(2 * trim + kerf),
                    "mm");
        }
    }

    private static void requireMarksOnce(List<NestPart> parts) {
        Set<String> seen = new HashSet<>();
        for (NestPart part : parts) {
            if (!seen.add(part.mark())) {
                throw new InvalidValue("mark", "\"" + part.mark() + "\" a second time", "used once", "");
            }
        }
    }

    private static String millimetres(double metres) {
        return LengthFormat.bare(metres, UnitSystem.METRIC);
    }
}
