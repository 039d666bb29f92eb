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
 * Coefficients from memory; B and C reproduce the table printed in <i>Minimizing Excessive Sound in Ventilation System
 * Design</i> (2009) to 0.01 dB; B, C and D at 63 to 250 Hz also as read in <i>HVAC Systems Duct Design</i>, chapter 11; D at
 * 500 Hz is not confirmed.
 *
 * <p>Range: fibrous liner 25 mm to 50 mm, samples 10 ft (3.05 m) long, 40 dB at most in one run. A thicker liner counts as
 * 50 mm; a thinner one as 25 mm with the loss reduced in proportion to its thickness; both with a notice. A shorter run
 * gets a notice; a loss above 40 dB is held there with a notice.
 *
 * <p>Accuracy: about 3 dB in a 3 m run within the range; unknown in runs below 1 m, where the loss per metre is higher at
 * the beginning.
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
    /** Most one straight run is credited with, dB. */
    public static final double CAP = 40;

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
        InvalidValue.within("area", area, 1e-9, Double.POSITIVE_INFINITY, Unit.SQUARE_METRE);
        InvalidValue.within("linedPerimeter", linedPerimeter, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        InvalidValue.within("length", length, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        if (linedPerimeter == 0 || thickness <= 0 || length == 0) {
            return new BandLoss(Spectrum.flat(BandSet.OCTAVE, 0), Spectrum.flat(BandSet.THIRD_OCTAVE, 0), List.of());
        }
        Spectrum octaves = uncapped(linedPerimeter / area, thickness, length);
        Spectrum thirds = octaves.interpolatedInThirds();
        return new BandLoss(capped(octaves), capped(thirds), notices(octaves, thickness, length, part));
    }

    /** Loss without the cap per run, dB per octave; for the attenuation within a chamber. */
    static Spectrum uncapped(double perimeterOverArea, double thickness, double length) {
        double perFoot = Unit.FOOT.toSi(perimeterOverArea);
        double inches = Unit.INCH.fromSi(Math.max(THINNEST, Math.min(THICKEST, thickness)));
        double feet = Unit.FOOT.fromSi(length);
        double thin = Math.min(1, thickness / THINNEST);
        return Spectrum.of(BandSet.OCTAVE, i -> thin * B[i] * Math.pow(perFoot, C[i]) * Math.pow(inches, D[i]) * feet);
    }

    private static Spectrum capped(Spectrum loss) {
        return Spectrum.of(loss.bands(), i -> Math.min(CAP, loss.value(i)));
    }

    private static List<Notice> notices(Spectrum octaves, double thickness, double length, String part) {
        List<Notice> notices = new ArrayList<>();
        double tolerance = 1e-9;
        if (thickness < THINNEST - tolerance || thickness > THICKEST + tolerance) {
            double limit = thickness < THINNEST ? THINNEST : THICKEST;
            notices.add(Notice.of(
                    NoticeKind.LINER_OUTSIDE_RANGE, Severity.WARNING, part, thickness, limit, Unit.MILLIMETRE));
        }
        if (length < SAMPLE_LENGTH - tolerance) {
            notices.add(Notice.of(
                    NoticeKind.RUN_SHORTER_THAN_RANGE, Severity.NOTE, part, length, SAMPLE_LENGTH, Unit.MILLIMETRE));
        }
        double most = 0;
        for (int i = 0; i < octaves.size(); i++) {
            most = Math.max(most, octaves.value(i));
        }
        if (most > CAP) {
            notices.add(Notice.of(NoticeKind.TERM_CAPPED, Severity.NOTE, part, most, CAP, Unit.DECIBEL));
        }
        return notices;
    }
}
