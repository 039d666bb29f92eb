package hushmaze.build.fixing;

import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * The frame of timber or board around the port of a box that cleats hold off its surface, with the gasket that closes it. A side
 * on which a cleat leaves no room for a strip is closed by the cleat.
 *
 * <p>Source: geometry; widths are our choice.
 *
 * @param thickness of its strips, m: the gap less the gasket once it is pressed
 * @param along low and high strip along the rows: their widths, m; 0 where a cleat closes that side
 * @param ends the same for the strips across the rows, which lie between the others
 * @param width of the port along the rows, m
 * @param height of the port across the rows, m
 */
public record PortFrame(double thickness, Pair along, Pair ends, double width, double height) {
    /** Least width of a strip, m. */
    public static final double LEAST = 0.01;

    /** Width of a strip where there is room, m. */
    private static final double WIDE = 0.04;

    /** Thickness of the gasket once it is pressed where the box has none under its cover, m. */
    private static final double GASKET = 0.003;

    /** Widths of the strips at the low and the high side, m. */
    public record Pair(double low, double high) {
        double sum() {
            return low + high;
        }
    }

    /** A strip, m. */
    public record Strip(double length, double width) {}

    /** Of a box on cleats; empty where it has none. */
    public static Optional<PortFrame> of(Solid solid, Rows rows) {
        if (rows.cleats().isEmpty()) {
            return Optional.empty();
        }
        Cuboid hole = solid.openingPort().hole();
        Cuboid outer = solid.outer();
        Axis up = rows.between();
        Axis right = rows.along();
        List<Rows.Cleat> beside = rows.cleats().stream()
                .filter(c -> c.to() > hole.low(right) - WIDE && c.from() < hole.high(right) + WIDE)
                .toList();
        double below =
                beside(beside.stream().filter(c -> c.low() < hole.low(up)).map(c -> hole.low(up) - c.high()));
        double above = beside(beside.stream()
                .filter(c -> c.high() > hole.high(up))
                .map(c -> c.low() - hole.high(up) - (c.kind() == Rows.Kind.WALL_HOOK ? c.lift() : 0)));
        double gasket = solid.box().joinery().gasket();
        double gap = rows.cleats().get(0).thickness();
        return Optional.of(new PortFrame(
                Math.max(0, gap - (gasket > 0 ? gasket : GASKET)),
                new Pair(
                        strip(Math.min(below, hole.low(up) - outer.low(up))),
                        strip(Math.min(above, outer.high(up) - hole.high(up)))),
                new Pair(strip(hole.low(right) - outer.low(right)), strip(outer.high(right) - hole.high(right))),
                hole.size(right),
                hole.size(up)));
    }

    private static double beside(Stream<Double> gaps) {
        return gaps.mapToDouble(Double::doubleValue).min().orElse(WIDE);
    }

    private static double strip(double room) {
        return room < LEAST ? 0 : Math.min(room, WIDE);
    }

    /** The strips to cut, those along the rows first. */
    public List<Strip> strips() {
        List<Strip> strips = new ArrayList<>();
        Stream.of(along.low(), along.high())
                .filter(w -> w > 0)
                .forEach(w -> strips.add(new Strip(width + ends.sum(), w)));
        Stream.of(ends.low(), ends.high()).filter(w -> w > 0).forEach(w -> strips.add(new Strip(height, w)));
        return strips;
    }
}
