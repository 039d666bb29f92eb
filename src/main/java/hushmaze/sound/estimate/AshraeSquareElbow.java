package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Insertion loss of a square 90-degree turn without vanes, lined or unlined.
 *
 * <p>Formula: a table by frequency times width, one row per octave of fw.
 *
 * <p>Symbols: f octave centre, w clear width in the plane of the turn; the rows are printed in kHz·in.
 *
 * <p>Source: ASHRAE Handbook, HVAC Applications, insertion loss of square elbows without turning vanes; from memory. The
 * unlined column lies within the exact transmission of a rigid mitre bend, computed by mode matching, in every row up to
 * 15 kHz·in; a public handbook on power plant acoustics, as read, agrees that lining must run one to two widths past
 * the turn.
 *
 * <p>Range: fw up to 30 kHz·in; above it the table has one open row, which is used with a notice. Lined means: liner of at
 * least a tenth of the clear width that goes on for two widths beyond the turn; short of it the unlined column is to be used.
 *
 * <p>Accuracy: about 3 dB at the steps. Two turns close together, or without lining between them, interfere and are not
 * twice one turn: see {@link TurnSeries}.
 *
 * <p>Differs from the source: thirds are interpolated between octaves over log frequency.
 */
final class AshraeSquareElbow {
    /** Thinnest liner, as a share of the clear width, that makes a turn a lined one. */
    static final double LINED_SHARE = 0.1;
    /** Widths for which the lining goes on beyond a lined turn. */
    static final double LINED_WIDTHS = 2;

    /** 1 kHz·in in Hz·m. */
    private static final double KILOHERTZ_INCH = 25.4;

    private static final double[] UP_TO = {1.9, 3.8, 7.5, 15, 30};
    private static final double[] UNLINED = {0, 1, 5, 8, 4, 3};
    private static final double[] LINED = {0, 1, 6, 11, 10, 10};

    private AshraeSquareElbow() {}

    /**
     * Loss at one frequency, dB.
     *
     * @param frequency Hz
     * @param width clear, in the plane of the turn, m
     * @param lined whether the turn counts as lined
     */
    static double loss(double frequency, double width, boolean lined) {
        double fw = frequency * width / KILOHERTZ_INCH;
        int row = 0;
        while (row < UP_TO.length && fw >= UP_TO[row]) {
            row++;
        }
        return lined ? LINED[row] : UNLINED[row];
    }

    /** Loss of a turn in all bands; the part is what a notice calls it. */
    static BandLoss loss(double width, boolean lined, String part) {
        InvalidValue.within("width", width, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        Spectrum octaves = Spectrum.ofFrequency(BandSet.OCTAVE, f -> loss(f, width, lined));
        return new BandLoss(octaves, octaves.interpolatedInThirds(), notices(width, part));
    }

    private static List<Notice> notices(double width, String part) {
        double highest = BandSet.OCTAVE.centreHz(BandSet.OCTAVE.size() - 1);
        double widest = UP_TO[UP_TO.length - 1] * KILOHERTZ_INCH / highest;
        if (width < widest) {
            return List.of();
        }
        return List.of(Notice.of(NoticeKind.TURN_ABOVE_TABLE, Severity.NOTE, part, width, widest, Unit.MILLIMETRE));
    }

    /** Whether a liner is thick enough for the lined column. */
    static boolean lines(double linerThickness, double width) {
        double tolerance = 1e-9;
        return linerThickness > 0 && linerThickness >= LINED_SHARE * width - tolerance;
    }
}
