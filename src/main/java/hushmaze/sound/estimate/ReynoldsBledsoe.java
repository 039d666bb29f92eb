package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Insertion loss of the lining of a straight rectangular duct, per octave 63 Hz to 8 kHz.
 *
 * <p>Formula: IL = B (P/A)^C t^D L.
 *
 * <p>Symbols: IL in dB; P lined perimeter and A clear area, P/A in 1/ft; t liner thickness in inches; L length in ft; B, C,
 * D per octave. Arguments are in SI and converted here.
 *
 * <p>Source: the regression of Reynolds and Bledsoe in the ASHRAE Handbook, HVAC Applications (1991 and later).
 * Coefficients from memory; B and C of all bands reproduce the table printed in <i>Minimizing Excessive Sound in Ventilation
 * System Design</i> (2009) to 0.01 dB; B, C and D at 63 to 250 Hz also as read in <i>HVAC Systems Duct Design</i>, chapter
 * 11. D at 500 Hz is confirmed by no source. D = 0 from 1 kHz up agrees at 2 and 4 kHz with a duct liner's data sheet that
 * quotes the handbook; at 1 kHz that sheet gives 50 mm up to a quarter more than 25 mm.
 *
 * <p>Range: fibrous liner of 25 mm to 50 mm; P/A of the printed table, 1 to 12 per ft, that is A/P of 25 mm to 305 mm;
 * samples 10 ft (3.05 m) long, a tenth more is taken for the same; 40 dB at most in one run (from memory). Outside it,
 * always with a notice: a thicker liner counts as 50 mm; a thinner one as 25 mm with the loss reduced in proportion to its
 * thickness (our own judgement); A/P below 25 mm counts as 25 mm, above 305 mm the formula is carried on; so it is in
 * shorter and longer runs; a loss above 40 dB is held there.
 *
 * <p>Accuracy: about 3 dB in a 3 m run within the range; unknown in runs below 1 m. The loss per metre is not the same in
 * short and long runs (as read in the abstract of an ASHRAE paper on duct breakout); it is higher at the beginning (from
 * memory).
 *
 * <p>Differs from the source: the part for the bare duct is left out, because it is the loss into thin sheet metal and
 * boards are stiff. P is the lined part of the perimeter only. Thirds are interpolated between octaves over log frequency.
 */
public final class ReynoldsBledsoe {
    /** Thinnest liner of the fit, m. */
    public static final double THINNEST = 0.025;
    /** Thickest liner of the fit, m. */
    public static final double THICKEST = 0.050;
    /** Length of the samples of the fit, 10 ft, m. */
    public static final double SAMPLE_LENGTH = 3.048;
    /** Least clear area over lined perimeter of the printed table, an inch rounded as the liner's is, m. */
    public static final double NARROWEST = 0.025;
    /** Greatest clear area over lined perimeter of the printed table, a foot rounded, m. */
    public static final double WIDEST = 0.305;
    /** Most one straight run is credited with, dB. */
    public static final double CAP = 40;

    /** From so many times the samples' length a run is longer than they were. */
    private static final double LONGER = 1.1;

    private static final double TOLERANCE = 1e-9;

    // 63, 125, 250, 500, 1000, 2000, 4000, 8000 Hz; inch and foot units.
    private static final double[] B = {0.0133, 0.0574, 0.2710, 1.0147, 1.7700, 1.3920, 1.5180, 1.5810};
    private static final double[] C = {1.959, 1.410, 0.824, 0.500, 0.695, 0.802, 0.451, 0.219};
    private static final double[] D = {0.917, 0.941, 1.079, 1.087, 0, 0, 0, 0};

    private ReynoldsBledsoe() {}

    /**
     * Loss of a straight lined run.
     *
     * @param linedPerimeter m; zero gives no loss
     * @param area clear, m²
     * @param thickness of the liner, m
     * @param length m
     * @param part what the notices call the run
     */
    public static BandLoss loss(double linedPerimeter, double area, double thickness, double length, String part) {
        return capped(uncapped(linedPerimeter, area, thickness, length, part), part);
    }

    /** The same without the cap per run. */
    static BandLoss uncapped(double linedPerimeter, double area, double thickness, double length, String part) {
        InvalidValue.within("area", area, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("linedPerimeter", linedPerimeter, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        InvalidValue.within("length", length, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        if (linedPerimeter == 0 || thickness <= 0 || length == 0) {
            return BandLoss.none();
        }
        double section = area / linedPerimeter;
        Spectrum octaves = octaves(section, thickness, length);
        return new BandLoss(octaves, octaves.interpolatedInThirds(), notices(section, thickness, length, part));
    }

    /** A loss held to the cap per run, with a notice if it was above it. */
    static BandLoss capped(BandLoss loss, String part) {
        double most = 0;
        for (double octave : loss.octaves().values()) {
            most = Math.max(most, octave);
        }
        BandLoss held = loss.heldTo(Spectrum.flat(BandSet.THIRD_OCTAVE, CAP));
        return most > CAP
                ? held.with(Notice.of(NoticeKind.TERM_CAPPED, Severity.NOTE, part, most, CAP, Unit.DECIBEL))
                : held;
    }

    private static Spectrum octaves(double section, double thickness, double length) {
        double perFoot = 1 / Unit.FOOT.fromSi(Math.max(NARROWEST, section));
        double inches = Unit.INCH.fromSi(Math.max(THINNEST, Math.min(THICKEST, thickness)));
        double feet = Unit.FOOT.fromSi(length);
        double thin = Math.min(1, thickness / THINNEST);
        return Spectrum.of(BandSet.OCTAVE, i -> thin * B[i] * Math.pow(perFoot, C[i]) * Math.pow(inches, D[i]) * feet);
    }

    private static List<Notice> notices(double section, double thickness, double length, String part) {
        List<Notice> notices = new ArrayList<>();
        outside(notices, NoticeKind.LINER_OUTSIDE_RANGE, part, thickness, THINNEST, THICKEST);
        outside(notices, NoticeKind.LINED_SECTION_OUTSIDE_RANGE, part, section, NARROWEST, WIDEST);
        boolean longer = length > LONGER * SAMPLE_LENGTH;
        if (longer || length < SAMPLE_LENGTH - TOLERANCE) {
            NoticeKind kind = longer ? NoticeKind.RUN_LONGER_THAN_RANGE : NoticeKind.RUN_SHORTER_THAN_RANGE;
            notices.add(Notice.of(kind, Severity.NOTE, part, length, SAMPLE_LENGTH, Unit.MILLIMETRE));
        }
        return notices;
    }

    private static void outside(
            List<Notice> notices, NoticeKind kind, String part, double value, double least, double most) {
        if (value < least - TOLERANCE || value > most + TOLERANCE) {
            double limit = value < least ? least : most;
            notices.add(Notice.of(kind, Severity.WARNING, part, value, limit, Unit.MILLIMETRE));
        }
    }
}
