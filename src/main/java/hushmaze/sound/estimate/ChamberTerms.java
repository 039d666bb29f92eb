package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.sound.porous.MikiLiner;

/** The one term of an offset chamber, read from its solid. */
final class ChamberTerms {
    /** Absorption of bare board; our own judgement, as of painted hard surfaces. */
    private static final double BARE_ABSORPTION = 0.03;

    private static final String SOURCE =
            "two-region plenum method, HVAC Systems Duct Design, chapter 11: Wells above the inlet's first cut-on,"
                    + " lossy expansion chamber below";

    private ChamberTerms() {}

    static void add(TermList list, Solid solid, Opening opening) {
        Pass chamber = solid.passes().get(0);
        double[] absorption = meanAbsorption(solid, list.soundSpeed());
        TwoRegionPlenum.Shape shape = shape(solid);
        if (linedArea(solid.box(), chamber) == 0) {
            list.add(Notice.of(NoticeKind.NO_LINER, Severity.WARNING, ""));
        }
        list.add("chamber", "", SOURCE, TwoRegionPlenum.loss(shape, absorption, list.soundSpeed()));
        list.add(new PathEstimate.Leg(
                chamber, fieldBelowOpening(shape, absorption, opening), Spectrum.flat(BandSet.THIRD_OCTAVE, 0)));
    }

    /**
     * How far the sound on the chamber's walls is below that in the opening, dB: all power that enters is taken by the
     * walls and the outlet, W = I (α A + So).
     */
    private static Spectrum fieldBelowOpening(TwoRegionPlenum.Shape shape, double[] absorption, Opening opening) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double taken = absorption[i] * shape.innerArea() + shape.outletArea();
            return Math.max(0, 10 * Math.log10(taken / opening.area()));
        });
    }

    private static TwoRegionPlenum.Shape shape(Solid solid) {
        Pass chamber = solid.passes().get(0);
        Box box = solid.box();
        PortPlace inlet = solid.openingPort();
        double squares = 0;
        for (Axis axis : Axis.values()) {
            double part = between(solid, axis);
            squares += part * part;
        }
        double slant = Math.sqrt(squares);
        boolean lined = box.linedFaces().walls() || box.linedFaces().broad();
        return new TwoRegionPlenum.Shape(
                chamber.length(),
                chamber.area(),
                innerArea(chamber),
                chamber.linedPerimeter(),
                lined ? box.liner().thickness() : 0,
                inlet.area(),
                Math.max(inlet.port().width(), inlet.port().height()),
                solid.roomPort().area(),
                slant,
                Math.min(1, Math.abs(between(solid, inlet.role().normal())) / slant));
    }

    /** How far apart along an axis the middles of the ports are where they meet the clear space, m. */
    private static double between(Solid solid, Axis axis) {
        Cuboid clear = solid.passes().get(0).clear();
        return mouth(solid.roomPort(), clear, axis) - mouth(solid.openingPort(), clear, axis);
    }

    private static double mouth(PortPlace port, Cuboid clear, Axis axis) {
        double centre = port.hole().centre(axis);
        return axis == port.role().normal() ? Math.max(clear.low(axis), Math.min(clear.high(axis), centre)) : centre;
    }

    private static double[] meanAbsorption(Solid solid, double soundSpeed) {
        Pass chamber = solid.passes().get(0);
        double inner = innerArea(chamber);
        double lined = linedArea(solid.box(), chamber);
        double[] mean = new double[BandSet.THIRD_OCTAVE.size()];
        Liner liner = solid.box().liner();
        MikiLiner model = lined > 0 ? new MikiLiner(liner.flowResistivity()) : null;
        for (int i = 0; i < mean.length; i++) {
            double bare = BARE_ABSORPTION * (inner - lined) / inner;
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            // Bare board under the liner absorbs no less than bare board alone.
            mean[i] = model == null
                    ? bare
                    : bare
                            + Math.max(BARE_ABSORPTION, model.normalAbsorption(f, liner.thickness(), soundSpeed))
                                    * lined
                                    / inner;
        }
        return mean;
    }

    private static double innerArea(Pass chamber) {
        return 2 * chamber.area() + chamber.perimeter() * chamber.length();
    }

    private static double linedArea(Box box, Pass chamber) {
        return chamber.linedPerimeter() * chamber.length() + (box.linedFaces().ends() ? 2 * chamber.area() : 0);
    }
}
