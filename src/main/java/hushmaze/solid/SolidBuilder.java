package hushmaze.solid;

import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;

/**
 * Makes the solid of a box.
 *
 * <p>The passes lie side by side along y, each between its liners, with a baffle between neighbours. Baffle i starts at
 * the near end when i is even and at the far end when it is odd, and stops short of the other end by the turn gap. The
 * shell is built by {@link ShellBuilder}, the baffles and their grooves by {@link BaffleBuilder}, the lining by {@link
 * LiningBuilder}; {@link SeamCutter} makes two of what a seam crosses, {@link Leftovers} leaves what cut-outs leave of boards and liner.
 */
public final class SolidBuilder {
    private SolidBuilder() {}

    /**
     * The solid of a box: panels, liner pieces, passes, turns and ports in their places.
     *
     * @throws InvalidValue if the two ports overlap, a port meets a groove, or a seam is too near to something
     */
    public static Solid build(Box box) {
        Frame frame = new Frame(box);
        PortPlace openingPort = place(box.openingPort(), frame, true);
        PortPlace roomPort = place(box.roomPort(), frame, false);
        requireApart(openingPort, roomPort);
        List<PortPlace> ports = List.of(openingPort, roomPort);
        List<Seal> seals = new ArrayList<>();
        BaffleBuilder baffles = new BaffleBuilder(frame, seals);
        List<Panel> panels = new ArrayList<>(baffles.grooved(ShellBuilder.panels(frame, ports, seals), ports));
        panels.addAll(baffles.panels());
        SeamCutter seams = new SeamCutter(frame, ports, seals);
        return new Solid(
                box,
                frame.cavity(),
                frame.outer(),
                Leftovers.panels(seams.panels(panels)),
                Leftovers.liners(seams.liners(LiningBuilder.pieces(frame, ports))),
                seals,
                frame.baffles(),
                passes(frame),
                turns(frame),
                openingPort,
                roomPort);
    }

    private static List<Pass> passes(Frame frame) {
        List<Pass> passes = new ArrayList<>();
        for (int i = 0; i < frame.passes(); i++) {
            passes.add(new Pass(
                    i,
                    frame.clear(i),
                    i % 2 == 0,
                    frame.lowLiner(i),
                    frame.highLiner(i),
                    frame.box().broadLiner()));
        }
        return passes;
    }

    private static List<Turn> turns(Frame frame) {
        List<Turn> turns = new ArrayList<>();
        Box box = frame.box();
        for (int i = 0; i < frame.passes() - 1; i++) {
            Cuboid first = frame.clear(i);
            double x0 = frame.turnsAtFarEnd(i) ? first.x1() - box.turnGap() : first.x0();
            Cuboid clear = new Cuboid(
                    x0,
                    first.y0(),
                    first.z0(),
                    x0 + box.turnGap(),
                    frame.clear(i + 1).y1(),
                    first.z1());
            double tip = box.baffleThickness() + 2 * box.baffleLiner();
            turns.add(new Turn(i, frame.turnsAtFarEnd(i), box.turnGap(), clear, tip, box.endLiner()));
        }
        return turns;
    }

    private static PortPlace place(Port port, Frame frame, boolean atOpening) {
        int pass = atOpening ? 0 : frame.passes() - 1;
        // The opening port is at the near end of the first pass; the room port at the end where the last pass stops.
        boolean near = atOpening || frame.passes() % 2 == 0;
        Cuboid clear = frame.clear(pass);
        Cuboid outer = frame.outer();
        double alongLow = near ? clear.x0() + port.edgeDistance() : clear.x1() - port.edgeDistance() - port.width();
        double zLow = clear.centre(Axis.Z) - port.height() / 2;
        Role role = role(port.face(), atOpening, near);
        Cuboid hole = switch (role) {
            case NEAR_END, FAR_END -> {
                double y = endPortLow(port, frame, clear, atOpening);
                yield near
                        ? new Cuboid(outer.x0(), y, zLow, clear.x0(), y + port.width(), zLow + port.height())
                        : new Cuboid(clear.x1(), y, zLow, outer.x1(), y + port.width(), zLow + port.height());
            }
            case FIRST_SIDE ->
                new Cuboid(alongLow, outer.y0(), zLow, alongLow + port.width(), clear.y0(), zLow + port.height());
            case LAST_SIDE ->
                new Cuboid(alongLow, clear.y1(), zLow, alongLow + port.width(), outer.y1(), zLow + port.height());
            case BACK, FRONT -> {
                double y = broadPortLow(port, frame, clear, atOpening);
                double z0 = role == Role.BACK ? outer.z0() : clear.z1();
                double z1 = role == Role.BACK ? clear.z0() : outer.z1();
                yield new Cuboid(alongLow, y, z0, alongLow + port.width(), y + port.height(), z1);
            }
            case BAFFLE -> throw new IllegalStateException("a port is never in a baffle");
        };
        return new PortPlace(port, role, hole);
    }

    private static Role role(PortFace face, boolean atOpening, boolean near) {
        return switch (face) {
            case END -> near ? Role.NEAR_END : Role.FAR_END;
            case SIDE -> atOpening ? Role.FIRST_SIDE : Role.LAST_SIDE;
            case BACK -> Role.BACK;
            case FRONT -> Role.FRONT;
        };
    }

    private static double endPortLow(Port port, Frame frame, Cuboid clear, boolean atOpening) {
        if (frame.box().form() == Box.Form.MAZE) {
            return clear.centre(Axis.Y) - port.width() / 2;
        }
        return atOpening ? clear.y0() + port.edgeDistance() : clear.y1() - port.edgeDistance() - port.width();
    }

    private static double broadPortLow(Port port, Frame frame, Cuboid clear, boolean atOpening) {
        if (frame.box().form() == Box.Form.MAZE) {
            return clear.centre(Axis.Y) - port.height() / 2;
        }
        return atOpening ? clear.y0() : clear.y1() - port.height();
    }

    private static void requireApart(PortPlace openingPort, PortPlace roomPort) {
        if (openingPort.role() != roomPort.role()) {
            return;
        }
        Axis u = openingPort.role().normal().u();
        Axis v = openingPort.role().normal().v();
        if (overlap(openingPort.hole(), roomPort.hole(), u) && overlap(openingPort.hole(), roomPort.hole(), v)) {
            throw new InvalidValue(
                    "roomPort", "overlapping the port at the opening on the same face", "clear of that port", "");
        }
    }

    private static boolean overlap(Cuboid a, Cuboid b, Axis axis) {
        return a.low(axis) < b.high(axis) - 1e-9 && b.low(axis) < a.high(axis) - 1e-9;
    }
}
