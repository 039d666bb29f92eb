package hushmaze.solid;

import hushmaze.material.Board;
import hushmaze.project.Joinery;
import java.util.ArrayList;
import java.util.List;

/**
 * The outer walls, layer by layer.
 *
 * <p>In the innermost layer, and again in the third, the broad faces run through over everything, the long sides run
 * through over the ends, and the ends butt between. In the second layer the order is the other way round: the ends run
 * through, the long sides butt between them, and the broad faces butt between all four. So no joint of one layer lies
 * over a joint of the next.
 *
 * <p>Walls that the cover lies on are lower by its gasket. Boards that go into the frame of the second layer's walls, the
 * cover's first layer among them, are smaller by the fit clearance all round.
 */
final class ShellBuilder {
    private final Frame frame;
    private final List<PortPlace> ports;
    private final Joinery joinery;
    private final int layers;
    private final List<Panel> panels = new ArrayList<>();
    private final List<Seal> seals;

    private ShellBuilder(Frame frame, List<PortPlace> ports, List<Seal> seals) {
        this.frame = frame;
        this.ports = ports;
        this.seals = seals;
        joinery = frame.box().joinery();
        layers = frame.box().shell().size();
    }

    /** The boards of the shell; gaskets and play go into the list. */
    static List<Panel> panels(Frame frame, List<PortPlace> ports, List<Seal> seals) {
        ShellBuilder builder = new ShellBuilder(frame, ports, seals);
        double inside = 0;
        for (int layer = 0; layer < builder.layers; layer++) {
            double thickness = frame.box().shell().get(layer).thickness();
            builder.layer(layer, inside, inside + thickness);
            inside += thickness;
        }
        return builder.panels;
    }

    private void layer(int layer, double inside, double outside) {
        Board board = frame.box().shell().get(layer);
        Cuboid inner = inside == 0 ? frame.cavity() : frame.cavity().grown(inside);
        Cuboid outer = frame.cavity().grown(outside);
        for (Role role : Role.values()) {
            if (role != Role.BAFFLE) {
                Cuboid bounds = joined(role, layer, bounds(role, inner, outer, layer % 2 == 0));
                panels.add(new Panel(role, 0, layer, board, bounds, Holes.in(bounds, role, ports)));
            }
        }
    }

    /** The block of a board with its gasket and its play taken off. */
    private Cuboid joined(Role role, int layer, Cuboid whole) {
        boolean broad = role.normal() == Axis.Z;
        double gasket = joinery.gasket();
        boolean underCover = !broad && (layer % 2 == 0 || layer + 1 < layers);
        if (underCover && gasket > 0) {
            double top = whole.z1() - gasket;
            seals.add(new Seal(Seal.Kind.COVER_GASKET, whole.with(Axis.Z, top, whole.z1())));
            return whole.with(Axis.Z, whole.z0(), top);
        }
        double play = joinery.fitClearance();
        boolean framed = broad && (layer == 1 || layer == 0 && role == Role.FRONT && layers > 1);
        if (framed && play > 0) {
            seals.add(new Seal(Seal.Kind.PLAY, whole));
            return whole.with(Axis.X, whole.x0() + play, whole.x1() - play)
                    .with(Axis.Y, whole.y0() + play, whole.y1() - play);
        }
        return whole;
    }

    private static Cuboid bounds(Role role, Cuboid inner, Cuboid outer, boolean broadRunsThrough) {
        Cuboid spread = spread(role.normal(), inner, outer, broadRunsThrough);
        Axis normal = role.normal();
        return role.isLow()
                ? spread.with(normal, outer.low(normal), inner.low(normal))
                : spread.with(normal, inner.high(normal), outer.high(normal));
    }

    /** How far a wall across the given axis reaches in its own plane. */
    private static Cuboid spread(Axis normal, Cuboid inner, Cuboid outer, boolean broadRunsThrough) {
        return switch (normal) {
            case Z -> broadRunsThrough ? outer : inner;
            case Y ->
                broadRunsThrough
                        ? inner.with(Axis.X, outer.x0(), outer.x1())
                        : inner.with(Axis.Z, outer.z0(), outer.z1());
            case X -> broadRunsThrough ? inner : outer;
        };
    }
}
