package hushmaze.drawing.page;

import hushmaze.build.fixing.PortFrame;
import hushmaze.build.fixing.Rows;
import hushmaze.drawing.axon.Edge;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** The timber that is glued on a hanging box, as blocks for pictures: cleats or battens, and the frame around its port. */
final class HungTimber {
    private final Solid solid;
    private final Rows rows;
    private final double thickness;

    private HungTimber(Solid solid, Rows rows) {
        this.solid = solid;
        this.rows = rows;
        this.thickness = rows.cleats().get(0).thickness();
    }

    /** Blocks on the outside of the box, bevels left out; none if it hangs by nothing that is known. */
    static List<Cuboid> of(Solid solid, Rows rows) {
        return rows.cleats().isEmpty() ? List.of() : new HungTimber(solid, rows).all();
    }

    /** Lines on the port's edges, moved out by the frame. */
    static List<Edge> onFrame(Solid solid, Rows rows, List<Edge> lines) {
        double out = PortFrame.of(solid, rows).map(PortFrame::thickness).orElse(0.0);
        double by = solid.openingPort().role().isLow() ? -out : out;
        Axis away = rows.away();
        return lines.stream()
                .map(line -> line.moved(away == Axis.X ? by : 0, away == Axis.Y ? by : 0, away == Axis.Z ? by : 0))
                .toList();
    }

    private List<Cuboid> all() {
        List<Cuboid> all = new ArrayList<>();
        rows.cleats().stream()
                .filter(cleat -> cleat.kind() != Rows.Kind.WALL_HOOK)
                .forEach(cleat -> all.add(block(cleat.from(), cleat.to(), cleat.low(), cleat.high(), thickness)));
        PortFrame.of(solid, rows).ifPresent(frame -> frame(frame).forEach(all::add));
        return all;
    }

    private Stream<Cuboid> frame(PortFrame frame) {
        Cuboid hole = solid.openingPort().hole();
        double x0 = hole.low(rows.along());
        double x1 = hole.high(rows.along());
        double y0 = hole.low(rows.between());
        double y1 = hole.high(rows.between());
        double left = x0 - frame.ends().low();
        double right = x1 + frame.ends().high();
        double thick = frame.thickness();
        double[][] strips = {
            {left, right, y0 - frame.along().low(), y0},
            {left, right, y1, y1 + frame.along().high()},
            {left, x0, y0, y1},
            {x1, right, y0, y1}
        };
        return Stream.of(strips)
                .filter(s -> s[1] > s[0] && s[3] > s[2] && thick > 0)
                .map(s -> block(s[0], s[1], s[2], s[3], thick));
    }

    private Cuboid block(double from, double to, double low, double high, double thick) {
        Cuboid outer = solid.outer();
        boolean atLow = solid.openingPort().role().isLow();
        double surface = atLow ? outer.low(rows.away()) : outer.high(rows.away());
        return outer.with(rows.along(), from, to)
                .with(rows.between(), low, high)
                .with(rows.away(), atLow ? surface - thick : surface, atLow ? surface : surface + thick);
    }
}
