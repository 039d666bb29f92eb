package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Pass;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;
import hushmaze.sound.TermInput;
import hushmaze.sound.estimate.TwoRegionPlenum.Shape;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import java.util.ArrayList;
import java.util.List;

/** The one term of an offset chamber, read from its solid. */
final class ChamberTerms {
    /** Absorption of bare board; our own judgement, as of painted hard surfaces. */
    private static final double BARE_ABSORPTION = 0.03;
    /** Highest f/σ the liner's model was fitted to, m³/kg. */
    private static final double MODEL_TO = 1;

    private static final String PART = "chamber";
    private static final String SOURCE =
            "two-region plenum method, HVAC Systems Duct Design, chapter 11: Wells above the ports' first cut-on, lossy"
                    + " expansion chamber below the chamber's own";

    private final TermList list;
    private final Solid solid;
    private final Pass chamber;
    private final Shape shape;

    private ChamberTerms(TermList list, Solid solid) {
        this.list = list;
        this.solid = solid;
        this.chamber = solid.passes().get(0);
        this.shape = shape();
    }

    static void add(TermList list, Solid solid, Opening opening) {
        new ChamberTerms(list, solid).addAll(opening);
    }

    private void addAll(Opening opening) {
        if (shape.linedArea() == 0) {
            list.add(Notice.of(NoticeKind.NO_LINER, Severity.WARNING, ""));
        }
        double[] absorption = meanAbsorption();
        TwoRegionPlenum plenum = new TwoRegionPlenum(shape, list.soundSpeed());
        BandLoss along = along();
        BandLoss loss = plenum.loss(along.thirds(), absorption);
        list.add(PART, "", SOURCE, loss, inputs(plenum));
        along.notices().forEach(list::add);
        sayWhatIsOutside();
        list.add(new PathEstimate.Leg(
                chamber, fieldBelowOpening(absorption, opening), Spectrum.flat(BandSet.THIRD_OCTAVE, 0)));
    }

    private List<TermInput> inputs(TwoRegionPlenum plenum) {
        return List.of(
                new TermInput("clearLength", shape.length(), Unit.MILLIMETRE),
                new TermInput("clearWidth", shape.width(), Unit.MILLIMETRE),
                new TermInput("clearHeight", shape.height(), Unit.MILLIMETRE),
                new TermInput("innerArea", shape.innerArea(), Unit.SQUARE_METRE),
                new TermInput("linedArea", shape.linedArea(), Unit.SQUARE_METRE),
                new TermInput("openingPortArea", shape.oneArea(), Unit.SQUARE_METRE),
                new TermInput("roomPortArea", shape.otherArea(), Unit.SQUARE_METRE),
                new TermInput("slant", shape.slant(), Unit.MILLIMETRE),
                new TermInput("cosine", shape.cosine(), Unit.NUMBER),
                new TermInput("cutOn", plenum.cutOn(), Unit.HERTZ));
    }

    /** What the lining takes along the chamber below its cut-on. */
    private BandLoss along() {
        return chamber.linedPerimeter() == 0
                ? BandLoss.none()
                : new LinedRun(solid.box().liner(), list.tables()).loss(chamber, chamber.length(), PART);
    }

    private void sayWhatIsOutside() {
        List<String> turned = new ArrayList<>();
        if (solid.openingPort().port().face() != PortFace.END) {
            turned.add(PortPlace.AT_OPENING);
        }
        if (solid.roomPort().port().face() != PortFace.END) {
            turned.add(PortPlace.IN_ROOM);
        }
        if (!shape.opposite()) {
            list.add(Notice.of(NoticeKind.CHAMBER_PORTS_NOT_OPPOSITE, Severity.WARNING, String.join(", ", turned)));
        }
        double highest = BandSet.THIRD_OCTAVE.centreHz(BandSet.THIRD_OCTAVE.size() - 1);
        if (shape.linedArea() > 0 && highest > MODEL_TO * solid.box().liner().flowResistivity()) {
            list.add(Notice.of(
                    NoticeKind.LINER_MODEL_ABOVE_RANGE,
                    Severity.NOTE,
                    PART,
                    highest,
                    MODEL_TO * solid.box().liner().flowResistivity(),
                    Unit.HERTZ));
        }
    }

    /**
     * How far the sound on the chamber's walls is below that in the opening, dB: all power that enters is taken by the
     * walls and the outlet, W = I (α A + So).
     */
    private Spectrum fieldBelowOpening(double[] absorption, Opening opening) {
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double taken = absorption[i] * shape.innerArea() + solid.roomPort().area();
            return Math.max(0, 10 * Math.log10(taken / opening.area()));
        });
    }

    private Shape shape() {
        PortPlace one = solid.openingPort();
        PortPlace other = solid.roomPort();
        double squares = 0;
        for (Axis axis : Axis.values()) {
            squares += between(axis) * between(axis);
        }
        double slant = Math.sqrt(squares);
        double ahead = Math.max(
                Math.abs(between(one.role().normal())),
                Math.abs(between(other.role().normal())));
        return new Shape(
                chamber.length(),
                chamber.width(),
                chamber.height(),
                linedArea(),
                one.area(),
                other.area(),
                Math.max(longerSide(one), longerSide(other)),
                slant,
                Math.min(1, ahead / slant),
                !one.turns() && !other.turns());
    }

    private static double longerSide(PortPlace port) {
        return Math.max(port.port().width(), port.port().height());
    }

    /** How far apart along an axis the middles of the ports are where they meet the clear space, m. */
    private double between(Axis axis) {
        return mouth(solid.roomPort(), axis) - mouth(solid.openingPort(), axis);
    }

    private double mouth(PortPlace port, Axis axis) {
        Cuboid clear = chamber.clear();
        double centre = port.hole().centre(axis);
        return axis == port.role().normal() ? Math.max(clear.low(axis), Math.min(clear.high(axis), centre)) : centre;
    }

    private double[] meanAbsorption() {
        double[] mean = new double[BandSet.THIRD_OCTAVE.size()];
        Liner liner = solid.box().liner();
        LinerModel model = shape.linedArea() > 0 ? FacedLiner.miki(liner) : null;
        for (int i = 0; i < mean.length; i++) {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            double taken = BARE_ABSORPTION * (shape.innerArea() - shape.linedArea());
            for (Lined face : linedFaces()) {
                // Bare board under the liner absorbs no less than bare board alone.
                double lined = model.normalAbsorption(f, face.depth(), list.soundSpeed());
                taken += face.area() * Math.max(BARE_ABSORPTION, lined);
            }
            mean[i] = taken / shape.innerArea();
        }
        return mean;
    }

    private double linedArea() {
        return linedFaces().stream().mapToDouble(Lined::area).sum();
    }

    /** Faces of the chamber with lining of one depth, m² and m. */
    private record Lined(double area, double depth) {}

    private List<Lined> linedFaces() {
        double side = chamber.height() * chamber.length();
        List<Lined> faces = List.of(
                new Lined(side, chamber.lowLiner()),
                new Lined(side, chamber.highLiner()),
                new Lined(2 * chamber.width() * chamber.length(), chamber.broadLiner()),
                new Lined(2 * chamber.area(), solid.box().endLiner()));
        return faces.stream().filter(face -> face.depth() > 0).toList();
    }
}
