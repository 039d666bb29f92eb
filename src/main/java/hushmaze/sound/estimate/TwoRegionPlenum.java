package hushmaze.sound.estimate;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.List;

/**
 * Transmission loss of a lined chamber whose inlet and outlet are out of line, over all bands.
 *
 * <p>Formula: two regions. From the first cut-on of the inlet, f = c / (2 a), upwards {@link WellsPlenum}; below it {@link
 * LossyExpansionChamber} with the area ratio of chamber to inlet and the lining's attenuation along the chamber from {@link
 * ReynoldsBledsoe}.
 *
 * <p>Symbols: a larger side of the inlet in m; c speed of sound in m/s.
 *
 * <p>Source: the two-region method as read in <i>HVAC Systems Duct Design</i>, chapter 11; the cut-off there is an image,
 * c / (2 a) is the exact first cut-on of a rectangular duct.
 *
 * <p>Range: chambers of 0.5 m³ to 30 m³ were tested in ASHRAE research project RP-1026 (as read in its abstract). A smaller
 * chamber gets a notice.
 *
 * <p>Accuracy: 5 dB, worse near the cut-on, where the regions do not join.
 *
 * <p>Differs from the source: mean absorption from the liner's normal-incidence absorption, which is below the
 * random-incidence value that the formula asks for and therefore pessimistic.
 */
final class TwoRegionPlenum {
    /** Smallest chamber that was tested, m³. */
    public static final double SMALLEST = 0.5;

    /**
     * A chamber, all lengths in m.
     *
     * @param length along x
     * @param crossArea across x, m²
     * @param innerArea of all faces, m²
     * @param linedPerimeter across x
     * @param linerThickness zero if bare
     * @param inletArea m²
     * @param inletLonger longer side of the inlet
     * @param outletArea m²
     * @param slant from inlet to outlet
     * @param cosine of the angle at the inlet, 0 to 1
     */
    public record Shape(
            double length,
            double crossArea,
            double innerArea,
            double linedPerimeter,
            double linerThickness,
            double inletArea,
            double inletLonger,
            double outletArea,
            double slant,
            double cosine) {
        double volume() {
            return crossArea * length;
        }
    }

    private TwoRegionPlenum() {}

    /**
     * Loss of a chamber in all bands.
     *
     * @param shape of the chamber
     * @param absorption mean coefficient of its faces per third octave, 0 to 1
     * @param soundSpeed m/s
     */
    public static BandLoss loss(Shape shape, double[] absorption, double soundSpeed) {
        double cutOn = AreaStep.cutOn(soundSpeed, shape.inletLonger());
        Spectrum along = along(shape);
        Spectrum thirds = Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            return f < cutOn
                    ? LossyExpansionChamber.transmissionLoss(
                            f, shape.crossArea() / shape.inletArea(), shape.length(), along.value(i), soundSpeed)
                    : WellsPlenum.transmissionLoss(
                            shape.outletArea(), shape.innerArea(), shape.slant(), shape.cosine(), absorption[i]);
        });
        // The middle third of an octave has the octave's own centre.
        Spectrum octaves = Spectrum.of(BandSet.OCTAVE, i -> thirds.value(3 * i + 1));
        return new BandLoss(octaves, thirds, notices(shape));
    }

    private static Spectrum along(Shape shape) {
        if (shape.linerThickness() == 0 || shape.linedPerimeter() == 0) {
            return Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
        }
        return ReynoldsBledsoe.uncapped(
                        shape.linedPerimeter() / shape.crossArea(), shape.linerThickness(), shape.length())
                .interpolatedInThirds();
    }

    private static List<Notice> notices(Shape shape) {
        if (shape.volume() >= SMALLEST) {
            return List.of();
        }
        return List.of(Notice.of(
                NoticeKind.CHAMBER_OUTSIDE_RANGE,
                Severity.WARNING,
                "chamber",
                shape.volume(),
                SMALLEST,
                Unit.CUBIC_METRE));
    }
}
