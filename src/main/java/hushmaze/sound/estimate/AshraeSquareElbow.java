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
 * <p>Formula: a table by frequency times width, one row per octave of fw; between the middles of two rows a straight line over
 * lg fw, the first and the last row from half an octave beyond their border on.
 *
 * <p>Symbols: f octave centre, w clear width in the plane of the turn; the rows are printed in kHz·in.
 *
 * <p>Source: ASHRAE Handbook, HVAC Applications, insertion loss of square elbows without turning vanes; from memory. The
 * unlined column lies within the exact transmission of a rigid mitre bend, computed by mode matching, in every row up to
 * 15 kHz·in; a public handbook on power plant acoustics, as read, agrees that lining must run one to two widths past
 * the turn.
 *
 * <p>Range: fw up to 30 kHz·in; above it the table has one open row, which is used with a notice. Lined means: liner of at
 * least a tenth of the clear width that goes on for two widths beyond the turn. The unlined column is used for half that
 * thickness or half that length, what lies between is interpolated.
 *
 * <p>Accuracy: about 3 dB. Two turns close together, or without lining between them, interfere and are not
 * twice one turn: see {@link TurnSeries}.
 *
 * <p>Differs from the source: it has steps from row to row and from lined to unlined, which would make one millimetre of
 * width worth up to 5 dB a turn; and thirds are interpolated between octaves over log frequency.
 */
final class AshraeSquareElbow {
    /** Thinnest liner, as a share of the clear width, that makes a turn a lined one. */
    static final double LINED_SHARE = 0.1;
    /** Widths for which the lining goes on beyond a lined turn. */
    static final double LINED_WIDTHS = 2;

    /** 1 kHz·in in Hz·m. */
    private static final double KILOHERTZ_INCH = 25.4;

    /** Share of what is asked of a liner's thickness and length up to which a turn is an unlined one. */
    private static final double UNLINED_SHARE = 0.5;

    private static final double[] UP_TO = {1.9, 3.8, 7.5, 15, 30};
    private static final double[] MIDDLES = middles();
    private static final double[] UNLINED = {0, 1, 5, 8, 4, 3};
    private static final double[] LINED = {0, 1, 6, 11, 10, 10};

    private AshraeSquareElbow() {}

    /**
     * Loss at one frequency, dB.
     *
     * @param frequency Hz
     * @param width clear, in the plane of the turn, m
     * @param lined how far the turn counts as lined, 0 to 1: {@link #linedShare}
     */
    static double loss(double frequency, double width, double lined) {
        double fw = frequency * width / KILOHERTZ_INCH;
        int row = 0;
        while (row < MIDDLES.length && fw >= MIDDLES[row]) {
            row++;
        }
        if (row == 0 || row == MIDDLES.length) {
            return inRow(row == 0 ? 0 : row - 1, lined);
        }
        double beyond = Math.log(fw / MIDDLES[row - 1]) / Math.log(MIDDLES[row] / MIDDLES[row - 1]);
        return between(inRow(row - 1, lined), inRow(row, lined), beyond);
    }

    private static double inRow(int row, double lined) {
        return between(UNLINED[row], LINED[row], lined);
    }

    private static double between(double from, double to, double share) {
        return from + share * (to - from);
    }

    /** The middle of every row by ratio; the open ones as if they were an octave wide, too. */
    private static double[] middles() {
        double[] middles = new double[UP_TO.length + 1];
        for (int row = 0; row < UP_TO.length; row++) {
            double from = row == 0 ? UP_TO[0] / 2 : UP_TO[row - 1];
            middles[row] = Math.sqrt(from * UP_TO[row]);
        }
        middles[UP_TO.length] = UP_TO[UP_TO.length - 1] * Math.sqrt(2);
        return middles;
    }

    /** Loss of a turn in all bands; the part is what a notice calls it. */
    static BandLoss loss(double width, double lined, String part) {
        InvalidValue.within("width", width, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        InvalidValue.within("lined", lined, 0, 1, Unit.NUMBER);
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

    /**
     * How far a turn counts as lined, 0 to 1: by the scarcer of thickness and length.
     *
     * @param liner thickness, m
     * @param beyond for which the lining goes on from the turn, m
     * @param width clear, in the plane of the turn, m
     */
    static double linedShare(double liner, double beyond, double width) {
        double enough = Math.min(liner / (LINED_SHARE * width), beyond / (LINED_WIDTHS * width));
        return Ramp.share(enough, UNLINED_SHARE, 1);
    }
}
