package hushmaze.solid;

import hushmaze.material.Board;
import java.util.ArrayList;
import java.util.List;

/**
 * The outer walls, layer by layer.
 *
 * <p>In the innermost layer, and again in the third, the broad faces run through over everything, the long sides run
 * through over the ends, and the ends butt between. In the second layer the order is the other way round: the ends run
 * through, the long sides butt between them, and the broad faces butt between all four. So no joint of one layer lies
 * over a joint of the next.
 */
final class ShellBuilder {
    private ShellBuilder() {}

    static List<Panel> panels(Frame frame, List<PortPlace> ports) {
        List<Panel> panels = new ArrayList<>();
        double inside = 0;
        for (int layer = 0; layer < frame.box().shell().size(); layer++) {
            Board board = frame.box().shell().get(layer);
            Cuboid inner = inside == 0 ? frame.cavity() : frame.cavity().grown(inside);
            inside += board.thickness();
            Cuboid outer = frame.cavity().grown(inside);
            for (Role role : Role.values()) {
                if (role != Role.BAFFLE) {
                    Cuboid bounds = bounds(role, inner, outer, layer % 2 == 0);
                    panels.add(new Panel(role, 0, layer, board, bounds, Holes.in(bounds, role, ports)));
                }
            }
        }
        return panels;
    }

    private static Cuboid bounds(Role role, Cuboid inner, Cuboid outer, boolean broadRunsThrough) {
        Cuboid spread = spread(role.normal(), inner, outer, broadRunsThrough);
        Axis normal = role.normal();
        return switch (role) {
            case BACK, FIRST_SIDE, NEAR_END -> spread.with(normal, outer.low(normal), inner.low(normal));
            case FRONT, LAST_SIDE, FAR_END -> spread.with(normal, inner.high(normal), outer.high(normal));
            case BAFFLE -> throw new IllegalStateException("a baffle is not part of the shell");
        };
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
