package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
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
 * <p>Source: ASHRAE Handbook, HVAC Applications, insertion loss of square elbows; from memory, and in agreement with the
 * exact plane-wave transmission of a rigid mitre bend at low fw.
 *
 * <p>Range: any fw, the last row is open. Lined means: liner of at least a tenth of the clear width, and lining on for two
 * widths beyond the turn.
 *
 * <p>Accuracy: about 3 dB at the steps. Two turns close together interfere and are not twice one turn.
 *
 * <p>Differs from the source: thirds are interpolated between octaves over log frequency.
 */
final class AshraeSquareElbow {
    /** Thinnest liner, as a share of the clear width, that makes a turn a lined one. */
    public static final double LINED_SHARE = 0.1;

    /** 1 kHz·in in Hz·m. */
    private static final double KILOHERTZ_INCH = 25.4;

    private static final double[] UP_TO = {1.9, 3.8, 7.5, 15, 30};
    private static final double[] UNLINED = {0, 1, 5, 8, 4, 3};
    private static final double[] LINED = {0, 1, 6, 11, 10, 10};

    private static final List<Notice> NO_NOTICES = List.of();

    private AshraeSquareElbow() {}

    /**
     * Loss at one frequency, dB.
     *
     * @param frequency Hz
     * @param width clear, in the plane of the turn, m
     * @param lined whether the turn counts as lined
     */
    public static double loss(double frequency, double width, boolean lined) {
        double fw = frequency * width / KILOHERTZ_INCH;
        int row = 0;
        while (row < UP_TO.length && fw >= UP_TO[row]) {
            row++;
        }
        return lined ? LINED[row] : UNLINED[row];
    }

    /** Loss of a turn in all bands. */
    public static BandLoss loss(double width, boolean lined) {
        InvalidValue.within("width", width, 0, Double.POSITIVE_INFINITY, Unit.MILLIMETRE);
        Spectrum octaves = Spectrum.ofFrequency(BandSet.OCTAVE, f -> loss(f, width, lined));
        return new BandLoss(octaves, octaves.interpolatedInThirds(), NO_NOTICES);
    }

    /** Whether a liner is thick enough for the lined column. */
    public static boolean lines(double linerThickness, double width) {
        double tolerance = 1e-9;
        return linerThickness > 0 && linerThickness >= LINED_SHARE * width - tolerance;
    }
}
