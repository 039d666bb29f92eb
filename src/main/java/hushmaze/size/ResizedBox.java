package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;

/** A box with other clear sizes. Holes that fill their pass go on filling it; others stay, or shrink to what there is. */
public final class ResizedBox {
    /** Sizes as close as this are the same, m. */
    private static final double SAME = 1e-6;

    /** A clear size. */
    public enum Size {
        /** Of every pass. */
        WIDTH,
        HEIGHT,
        LENGTH,
        /** At every turn. */
        GAP
    }

    private final Box box;

    public ResizedBox(Box box) {
        this.box = box;
    }

    /** @throws hushmaze.quantity.InvalidValue if there is no such box */
    public Box clear(double width, double height, double length) {
        return with(box.passes(), width, height, length, box.turnGap());
    }

    /**
     * With one other size.
     *
     * @param to m
     * @throws hushmaze.quantity.InvalidValue if there is no such box
     */
    public Box with(Size size, double to) {
        return switch (size) {
            case WIDTH -> clear(to, box.clearHeight(), box.clearLength());
            case HEIGHT -> clear(box.clearWidth(), to, box.clearLength());
            case LENGTH -> clear(box.clearWidth(), box.clearHeight(), to);
            case GAP -> turning(to);
        };
    }

    public Box turning(double gap) {
        return with(box.passes(), box.clearWidth(), box.clearHeight(), box.clearLength(), gap);
    }

    /** Turns of a box that had none are as wide as its passes. */
    public Box ofPasses(int passes) {
        double gap = box.passes() == 1 ? box.clearWidth() : box.turnGap();
        return with(passes, box.clearWidth(), box.clearHeight(), box.clearLength(), gap);
    }

    private Box with(int passes, double width, double height, double length, double gap) {
        return box.sized(
                passes,
                width,
                height,
                length,
                gap,
                box.liner(),
                hole(box.openingPort(), width, height, length),
                hole(box.roomPort(), width, height, length));
    }

    private Port hole(Port port, double width, double height, double length) {
        boolean end = port.face() == PortFace.END;
        boolean broad = port.face().isBroad();
        double edge = end && box.form() == Box.Form.MAZE ? 0 : port.edgeDistance();
        return new Port(
                port.face(),
                following(
                        port.width(),
                        (end ? box.clearWidth() : box.clearLength()) - edge,
                        (end ? width : length) - edge),
                following(port.height(), broad ? box.clearWidth() : box.clearHeight(), broad ? width : height),
                port.edgeDistance());
    }

    private static double following(double size, double room, double otherRoom) {
        return Math.abs(size - room) < SAME ? otherRoom : Math.min(size, otherRoom);
    }
}
