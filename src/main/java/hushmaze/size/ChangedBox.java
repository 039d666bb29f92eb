package hushmaze.size;

import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import java.util.List;
import java.util.Optional;

/**
 * A box with one small change, as a builder meets it. Ports keep their size and place in the board, but none is larger than
 * what is clear behind it; only a broad port of an offset chamber goes with the liner it lies against, when that is thinner. Seams are left out: neither sound nor air nor outer sizes know of them.
 */
final class ChangedBox {
    private final Box box;

    ChangedBox(Box box) {
        this.box = box;
    }

    /** Why a change cannot be asked for at all; empty when it can. */
    Optional<Unable> unable(Change change) {
        return Optional.ofNullable(
                switch (change) {
                    case WIDER, NARROWER, COVER_SLIT -> null;
                    case THICKER_LINER, THINNER_LINER ->
                        box.liner() == null ? Unable.NO_LINER : isUneven() ? Unable.UNEVEN_LINING : null;
                    case HALF_RESISTIVITY, DOUBLE_RESISTIVITY -> box.liner() == null ? Unable.NO_LINER : null;
                    case ONE_MORE_LAYER -> box.shell().size() >= Box.MAX_LAYERS ? Unable.MOST_LAYERS : null;
                    case ONE_MORE_PASS ->
                        box.form() != Box.Form.MAZE
                                ? Unable.NO_MAZE
                                : box.passes() >= Box.MAX_PASSES ? Unable.MOST_PASSES : null;
                });
    }

    /**
     * The changed box.
     *
     * @throws InvalidValue if there is no such box
     */
    Box with(Change change) {
        return switch (change) {
            case WIDER -> wider(Change.WIDTH);
            case NARROWER -> wider(-Change.WIDTH);
            case THICKER_LINER -> linedThicker(Change.LINER);
            case THINNER_LINER -> linedThicker(-Change.LINER);
            case HALF_RESISTIVITY -> lined(resistivity(0.5));
            case DOUBLE_RESISTIVITY -> lined(resistivity(2));
            case COVER_SLIT -> lined(box.liner());
            case ONE_MORE_LAYER -> oneMoreLayer();
            case ONE_MORE_PASS -> oneMorePass();
        };
    }

    private Box wider(double by) {
        double width = box.clearWidth() + by;
        return sized(
                box.passes(),
                width,
                box.clearHeight(),
                box.clearLength(),
                box.turnGap(),
                box.liner(),
                within(box.openingPort(), width, box.clearHeight(), box.clearLength()),
                within(box.roomPort(), width, box.clearHeight(), box.clearLength()));
    }

    private Box linedThicker(double by) {
        Liner liner = box.liner();
        double sides = box.linedFaces().walls() * by;
        double ends = box.linedFaces().ends() * by;
        double width = box.clearWidth() - 2 * sides;
        double height = box.clearHeight() - 2 * box.linedFaces().broad() * by;
        double length = box.clearLength() - 2 * ends;
        double gap = box.passes() > 1 ? box.turnGap() - ends : box.turnGap();
        return sized(
                box.passes(),
                width,
                height,
                length,
                gap,
                liner.thick(liner.thickness() + by),
                within(covered(box.openingPort(), sides, ends), width, height, length),
                within(covered(box.roomPort(), sides, ends), width, height, length));
    }

    private Liner resistivity(double times) {
        Liner liner = box.liner();
        return liner.resisting(
                times * liner.flowResistivity(),
                times * liner.flowResistivityLow(),
                times * liner.flowResistivityHigh(),
                liner.source());
    }

    private Box lined(Liner liner) {
        return box.joined(box.joinery(), List.of()).withLiner(liner);
    }

    private Box oneMoreLayer() {
        return box.joined(box.joinery(), List.of()).withOneMoreLayer();
    }

    private Box oneMorePass() {
        return sized(
                box.passes() + 1,
                box.clearWidth(),
                box.clearHeight(),
                box.clearLength(),
                box.passes() > 1 ? box.turnGap() : PatternGrid.GAP_RATIO * box.clearWidth(),
                box.liner(),
                box.openingPort(),
                box.roomPort());
    }

    private Box sized(
            int passes, double width, double height, double length, double gap, Liner liner, Port opening, Port room) {
        Box whole = box.joined(box.joinery(), List.of());
        return whole.sized(passes, width, height, length, gap, liner, opening, room);
    }

    /** Whether passes at the outside and passes between baffles would lose unequal widths. */
    private boolean isUneven() {
        return box.passes() > 1 && box.linedFaces().walls() != box.linedFaces().baffles();
    }

    /** A port beside whose hole in the board the lining grows; what it grows over is lost. */
    private Port covered(Port port, double sides, double ends) {
        boolean end = port.face() == PortFace.END;
        if (end && box.form() == Box.Form.MAZE) {
            return port;
        }
        double distance = port.edgeDistance() - (end ? sides : ends);
        double width = port.width() + Math.min(0, distance);
        // The broad port of a chamber lies against its lined side.
        boolean besideLiner = port.face().isBroad() && box.form() == Box.Form.OFFSET_CHAMBER;
        double height = port.height() - (besideLiner ? Math.max(0, sides) : 0);
        return new Port(port.face(), width, height, Math.max(0, distance));
    }

    /** The port, no larger than what is clear behind it. */
    private Port within(Port port, double clearWidth, double clearHeight, double clearLength) {
        boolean end = port.face() == PortFace.END;
        double along = end ? clearWidth : clearLength;
        double distance = end && box.form() == Box.Form.MAZE ? 0 : port.edgeDistance();
        return new Port(
                port.face(),
                Math.min(port.width(), along - distance),
                Math.min(port.height(), port.face().isBroad() ? clearWidth : clearHeight),
                port.edgeDistance());
    }
}
