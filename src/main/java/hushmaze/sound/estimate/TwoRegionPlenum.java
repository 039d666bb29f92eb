package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;

/**
 * Transmission loss of a lined chamber whose inlet and outlet are out of line, over all bands.
 *
 * <p>Formula: two regions. From the first cut-on of the ports, f2 = c / (2 a), upwards {@link WellsPlenum}; up to f1, the first
 * cut-on of the chamber itself, c / (2 b), {@link LossyExpansionChamber}; between them both, weighted in a straight line over
 * lg f. f1 is at least half an octave below f2.
 *
 * <p>Symbols: a largest side of the ports and b larger side of the chamber's section in m; c speed of sound in m/s.
 *
 * <p>Source: the two-region method as read in <i>HVAC Systems Duct Design</i>, chapter 11; the cut-off there is an image, c /
 * (2 a) is the exact first cut-on of a rectangular duct.
 *
 * <p>Range: chambers of 0.5 m³ to 30 m³ were tested, 50 Hz to 5 kHz, in ASHRAE research project RP-1026 (as read in its
 * abstract); lined area at least ten times that of the port (as read in a text on architectural acoustics); from f2 on
 * waves short to the chamber; ports in opposite ends. Each has its notice.
 *
 * <p>Accuracy: 5 dB, worse between f1 and f2, where the chamber carries cross waves and its field is not diffuse yet.
 *
 * <p>Differs from the source: the source changes from one formula to the other at f2, with a jump. Of unequal ports the
 * larger counts in Wells' formula, and the lesser of the two angles, so that the loss is the same both ways; with the
 * smaller port as large as the bare opening that is also what reciprocity asks of an insertion loss. Mean absorption is
 * from the liner's normal-incidence absorption, which is below the random-incidence value that the formula asks for
 * and therefore pessimistic. The lining along the chamber is that of {@link LinedRun}.
 */
final class TwoRegionPlenum {
    /** Smallest chamber that was tested, m³. */
    static final double SMALLEST = 0.5;
    /** Largest chamber that was tested, m³. */
    static final double LARGEST = 30;
    /** Lined area over port area that a chamber should have. */
    static final double LINED_PORTS = 10;

    private static final String PART = "chamber";

    /**
     * A chamber, all lengths in m.
     *
     * @param length along x
     * @param width across y
     * @param height across z
     * @param linedArea of its faces, m²
     * @param oneArea of one port, m²
     * @param otherArea of the other port, m²
     * @param longestSide of the ports
     * @param slant from port to port
     * @param cosine of the lesser angle between a port's axis and the slant, 0 to 1
     * @param opposite whether the ports are in its two ends
     */
    record Shape(
            double length,
            double width,
            double height,
            double linedArea,
            double oneArea,
            double otherArea,
            double longestSide,
            double slant,
            double cosine,
            boolean opposite) {
        double volume() {
            return length * width * height;
        }

        double innerArea() {
            return 2 * (length * width + length * height + width * height);
        }

        double largerPort() {
            return Math.max(oneArea, otherArea);
        }
    }

    private final Shape shape;
    private final double soundSpeed;
    private final double lowerCutOn;
    private final double upperCutOn;

    TwoRegionPlenum(Shape shape, double soundSpeed) {
        this.shape = shape;
        this.soundSpeed = soundSpeed;
        this.upperCutOn = AreaStep.cutOn(soundSpeed, shape.longestSide());
        this.lowerCutOn = Math.min(
                upperCutOn / Math.sqrt(2), AreaStep.cutOn(soundSpeed, Math.max(shape.width(), shape.height())));
    }

    /** First cut-on of the ports, Hz. */
    double cutOn() {
        return upperCutOn;
    }

    /**
     * Loss of the chamber in all bands.
     *
     * @param along what the lining takes along the chamber per third octave, dB
     * @param absorption mean coefficient of its faces per third octave, 0 to 1
     */
    BandLoss loss(Spectrum along, double[] absorption) {
        LossyExpansionChamber plane = new LossyExpansionChamber(
                shape.width() * shape.height(), shape.oneArea(), shape.otherArea(), shape.length());
        Spectrum thirds = Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            double diffuse = WellsPlenum.transmissionLoss(
                    shape.largerPort(), shape.innerArea(), shape.slant(), shape.cosine(), absorption[i]);
            double share = diffuseShare(f);
            return share * diffuse + (1 - share) * plane.transmissionLoss(f, along.value(i), soundSpeed);
        });
        return BandLoss.atCentres(thirds, notices());
    }

    /** Share of the formula for a diffuse field at a frequency in Hz, 0 to 1. */
    private double diffuseShare(double f) {
        return Ramp.share(Math.log(f / lowerCutOn), 0, Math.log(upperCutOn / lowerCutOn));
    }

    private List<Notice> notices() {
        List<Notice> notices = new ArrayList<>();
        double volume = shape.volume();
        if (volume < SMALLEST || volume > LARGEST) {
            double limit = volume < SMALLEST ? SMALLEST : LARGEST;
            notices.add(Notice.of(
                    NoticeKind.CHAMBER_OUTSIDE_RANGE, Severity.WARNING, PART, volume, limit, Unit.CUBIC_METRE));
        }
        double asked = LINED_PORTS * shape.largerPort();
        if (shape.linedArea() > 0 && shape.linedArea() < asked) {
            notices.add(Notice.of(
                    NoticeKind.CHAMBER_LINING_SMALL,
                    Severity.WARNING,
                    PART,
                    shape.linedArea(),
                    asked,
                    Unit.SQUARE_METRE));
        }
        double wavelength = soundSpeed / upperCutOn;
        double across = Math.min(shape.length(), Math.min(shape.width(), shape.height()));
        if (wavelength > across) {
            notices.add(Notice.of(
                    NoticeKind.CHAMBER_SMALL_TO_WAVELENGTH,
                    Severity.WARNING,
                    PART,
                    wavelength,
                    across,
                    Unit.MILLIMETRE));
        }
        notices.add(
                Notice.of(NoticeKind.CHAMBER_REGIONS_JOINED, Severity.NOTE, PART, lowerCutOn, upperCutOn, Unit.HERTZ));
        return notices;
    }
}
