package hushmaze.build;

import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.DoubleStream;

/**
 * The sizes a cut list and its drawings print, as lengths: what a builder makes who keeps to the figures.
 *
 * <p>Sides, and places of cut-outs, are the nearest step. Places are rounded, not stretches between them, so that every row of
 * figures adds up to the figure of the whole. A groove must take what goes into it: its sides are rounded apart, wherever the
 * board is measured from, and its bottom down, far enough for the baffle as printed to stand no higher than the walls as
 * printed.
 */
public final class PrintedSizes {
    private final UnitSystem units;
    private final double deepest;
    private final Map<Panel, Laid> laid = new IdentityHashMap<>();

    private record Laid(CutItem item, Turning turning) {}

    private PrintedSizes(Solid solid, CutList list, UnitSystem units) {
        this.units = units;
        for (CutItem item : list.boards()) {
            for (int i = 0; i < item.quantity(); i++) {
                laid.put(
                        (Panel) item.parts().get(i),
                        new Laid(item, item.turnings().get(i)));
            }
        }
        double wall = heights(solid, Role.FIRST_SIDE).min().orElse(0);
        deepest = heights(solid, Role.BAFFLE).max().orElse(wall) - wall;
    }

    /** The printed sizes of a box's cut list. */
    public static PrintedSizes of(Solid solid, CutList list, UnitSystem units) {
        return new PrintedSizes(solid, list, units);
    }

    private DoubleStream heights(Solid solid, Role role) {
        return solid.panels().stream()
                .filter(p -> p.role() == role && p.layer() == 0)
                .mapToDouble(p -> nearest(p.vSize()));
    }

    /** What is printed for an item; its holes stay where they are. */
    public Plate of(CutItem item) {
        double length = nearest(item.length());
        double width = nearest(item.width());
        List<Cutout> cutouts = item.cutouts().stream().map(this::nearest).toList();
        List<Groove> grooves = item.grooves().stream()
                .map(g -> new Groove(
                        low(g.u0(), item.length(), length),
                        low(g.v0(), item.width(), width),
                        high(g.u1(), item.length(), length),
                        high(g.v1(), item.width(), width),
                        LengthFormat.roundedUp(Math.max(g.depth(), deepest), units),
                        g.inLowFace()))
                .toList();
        return new Plate(length, width, cutouts, grooves, item.holes());
    }

    /** The plate of a panel as it comes out, lying as the panel does in the box: its own u to the right, v upwards. */
    Plate of(Panel panel) {
        Laid found = laid.get(panel);
        return of(found.item()).turned(found.turning().back());
    }

    /** The near side of a groove, not beyond its place from either end of the board. */
    private double low(double at, double side, double printed) {
        return Math.max(0, LengthFormat.roundedDown(at + Math.min(0, printed - side), units));
    }

    private double high(double at, double side, double printed) {
        return Math.min(printed, LengthFormat.roundedUp(at + Math.max(0, printed - side), units));
    }

    /** A cut-out of less than a step is one step wide. */
    private Cutout nearest(Cutout c) {
        double u0 = nearest(c.u0());
        double v0 = nearest(c.v0());
        return new Cutout(u0, v0, beyond(u0, c.u1()), beyond(v0, c.v1()));
    }

    private double beyond(double low, double high) {
        double printed = nearest(high);
        return printed > low ? printed : LengthFormat.roundedUp(high, units);
    }

    private double nearest(double metres) {
        return LengthFormat.rounded(metres, units);
    }
}
