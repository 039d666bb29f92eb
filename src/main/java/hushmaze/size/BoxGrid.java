package hushmaze.size;

import hushmaze.assess.BoxFit;
import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The boxes the rule set looks at: both ways round in the space, 1 to 6 passes, and a ladder of clear widths that starts
 * where the air keeps its velocity limits and the opening goes into the pass.
 *
 * <p>Rules: the path is as long and as high as the space lets it be, or a stated share of that; clear sizes are whole
 * multiples of 5 mm, or of 1/8 in; the turn gap is 1.1 clear widths, where the computed table of U-turns has its least loss;
 * every outer wall has the layers asked for.
 */
final class BoxGrid {
    /** Clear sizes in a metric project are multiples of this, m. */
    private static final double METRIC_STEP = 0.005;
    /** Clear sizes in a project in inches are multiples of this: 1/8 in, m. */
    private static final double INCH_STEP = 0.0254 / 8;
    /** Narrowest pass worth building and cleaning, m; common practice, no source. */
    private static final double MIN_CLEAR = 0.04;
    /** Highest clear height: a wider slot sags and rattles, m; our own judgement. */
    private static final double MAX_CLEAR_HEIGHT = 0.6;
    /** Gap at a baffle's tip in clear widths. */
    private static final double GAP_RATIO = 1.1;
    /** Clear widths tried, in multiples of the least that will do. */
    private static final double[] WIDTH_LADDER = {1, 1.15, 1.3, 1.5, 1.75, 2, 2.5, 3};
    /** Clear heights and lengths tried, in shares of the most there is room for. */
    private static final double[] SIZE_LADDER = {1, 0.85, 0.7, 0.55};
    /** Room for rounding when sizes are compared, m. */
    private static final double SLACK = 1e-9;

    private final Brief brief;
    private final Construction construction;
    private final double shell;
    private final double liner;
    private final UnitSystem units;

    BoxGrid(Brief brief, UnitSystem units) {
        this.brief = brief;
        this.units = units;
        this.construction = brief.construction();
        this.shell = 2 * construction.shellLayers() * construction.board().thickness();
        this.liner = construction.liner().thickness();
    }

    /** Every box of the grid that goes into the space; air, mass and sound are not looked at. */
    List<Box> boxes() {
        List<Box> boxes = new ArrayList<>();
        Axis away = BoxFit.away(construction.openingFace());
        for (boolean turned : new boolean[] {false, true}) {
            double u = turned ? brief.space().height() : brief.space().width();
            double v = turned ? brief.space().width() : brief.space().height();
            double[] room = new double[3];
            room[away.ordinal()] = brief.space().depth() - brief.standOff() - shell;
            room[away.u().ordinal()] = u - shell;
            room[away.v().ordinal()] = v - shell;
            // The opening's width lies along the space's width, so it turns with the box.
            double openingU =
                    turned ? brief.opening().height() : brief.opening().width();
            double openingV = turned ? brief.opening().width() : brief.opening().height();
            addBoxes(boxes, room, openingU, openingV);
        }
        return boxes;
    }

    private void addBoxes(List<Box> boxes, double[] room, double openingU, double openingV) {
        double longest = room[0] - 2 * liner;
        double broad = construction.linedBroadFaces() ? 2 * liner : 0;
        double highest = Math.min(room[2] - broad, MAX_CLEAR_HEIGHT);
        for (double height : SIZE_LADDER) {
            for (double length : SIZE_LADDER) {
                addBoxes(boxes, room[1], down(highest * height), down(longest * length), openingU, openingV);
            }
        }
    }

    private void addBoxes(
            List<Box> boxes, double room, double clearHeight, double clearLength, double openingU, double openingV) {
        if (clearLength < Box.MIN_BAFFLE || clearHeight < MIN_CLEAR) {
            return;
        }
        double least = leastWidth(clearHeight, openingU, openingV);
        for (double factor : WIDTH_LADDER) {
            double clearWidth = up(least * factor);
            for (int passes = 1; passes <= Box.MAX_PASSES; passes++) {
                double across = passes * (clearWidth + 2 * liner)
                        + (passes - 1)
                                * construction.baffleLayers()
                                * construction.board().thickness();
                if (across <= room + SLACK) {
                    addBox(boxes, passes, clearWidth, clearHeight, clearLength, openingU, openingV);
                }
            }
        }
    }

    private double leastWidth(double clearHeight, double openingU, double openingV) {
        double least = Math.max(MIN_CLEAR, brief.flow() / brief.maxPathVelocity() / clearHeight);
        least = Math.max(least, liner);
        if (construction.openingFace() == PortFace.END) {
            least = Math.max(least, openingU);
        } else if (construction.openingFace().isBroad()) {
            least = Math.max(least, openingV);
        }
        if (construction.roomFace() == PortFace.END) {
            least = Math.max(least, brief.flow() / brief.maxOpeningVelocity() / clearHeight);
        }
        return least;
    }

    private void addBox(
            List<Box> boxes, int passes, double width, double height, double length, double openingU, double openingV) {
        double gap = passes > 1 ? up(GAP_RATIO * width) : 0;
        try {
            Port openingPort = openingPort(openingU, openingV);
            Port roomPort = roomPort(width, height, length);
            List<Board> layers = Collections.nCopies(construction.shellLayers(), construction.board());
            LinedFaces faces = construction.linedBroadFaces() ? LinedFaces.ALL : LinedFaces.FOLD_PLANE;
            boxes.add(new Box(
                    Box.Form.MAZE,
                    passes,
                    width,
                    height,
                    length,
                    gap,
                    layers,
                    construction.board(),
                    construction.baffleLayers(),
                    construction.liner(),
                    faces,
                    openingPort,
                    roomPort,
                    construction.joineryOrPlain(),
                    List.of()));
        } catch (InvalidValue impossible) {
            // A port larger than its pass, or a gap longer than the pass: not a box, so not in the grid.
            return;
        }
    }

    /** This port lies over the opening and is just as large. */
    private Port openingPort(double openingU, double openingV) {
        return new Port(construction.openingFace(), openingU, openingV, 0);
    }

    /** This port keeps the velocity limit for openings. */
    private Port roomPort(double clearWidth, double clearHeight, double clearLength) {
        double area = brief.flow() / brief.maxOpeningVelocity();
        PortFace face = construction.roomFace();
        double across = face.isBroad() ? clearWidth : clearHeight;
        double along = face == PortFace.END ? clearWidth : Math.max(up(area / across), MIN_CLEAR);
        if (face != PortFace.END && along > clearLength) {
            throw new InvalidValue("roomPort.width", "longer than the pass", "within the pass", "");
        }
        return new Port(face, along, across, 0);
    }

    private double up(double metres) {
        return steps(Math.ceil(metres / step() - 1e-6));
    }

    private double down(double metres) {
        return steps(Math.floor(metres / step() + 1e-6));
    }

    private double step() {
        return units == UnitSystem.INCH ? INCH_STEP : METRIC_STEP;
    }

    /** A number of steps as a length; whole millimetres come out as the nearest double to their decimal form. */
    private double steps(double count) {
        return units == UnitSystem.INCH ? count * INCH_STEP : Math.rint(count) * 5 / 1000;
    }
}
