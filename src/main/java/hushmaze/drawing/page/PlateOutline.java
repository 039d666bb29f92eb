package hushmaze.drawing.page;

import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.solid.Cutout;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The outline of a rectangular part with rectangles taken out of it, as closed lines: those around the part, into which
 * cut-outs at the edge make notches, and those around holes within it. Drawn with its lower left corner at the origin and its
 * second direction upwards.
 */
public final class PlateOutline {
    private static final double SAME = 1e-7;

    private final List<Cutout> cutouts;
    private final double[] us;
    private final double[] vs;
    private final List<List<Point>> outer = new ArrayList<>();
    private final List<List<Point>> inner = new ArrayList<>();

    /** A side of a cell with the part on its left, from one crossing of the lines of the part and its cut-outs to the next. */
    private record Side(int i0, int j0, int i1, int j1) {
        boolean turnsLeftInto(Side next) {
            return (i1 - i0) * (next.j1 - next.j0) - (j1 - j0) * (next.i1 - next.i0) > 0;
        }

        boolean goesOnIn(Side next) {
            return i1 - i0 == next.i1 - next.i0 && j1 - j0 == next.j1 - next.j0;
        }
    }

    /** All in metres. */
    public PlateOutline(double length, double width, List<Cutout> cutouts) {
        this.cutouts = List.copyOf(cutouts);
        us = places(
                length, cutouts.stream().flatMap(c -> Stream.of(c.u0(), c.u1())).toList());
        vs = places(
                width, cutouts.stream().flatMap(c -> Stream.of(c.v0(), c.v1())).toList());
        List<Side> sides = sides();
        while (!sides.isEmpty()) {
            List<Point> loop = loop(sides);
            (area(loop) > 0 ? outer : inner).add(loop);
        }
    }

    /** Lines around the part, counterclockwise, m. */
    List<List<Point>> outer() {
        return List.copyOf(outer);
    }

    /** Lines around holes in it, clockwise, m. */
    List<List<Point>> inner() {
        return List.copyOf(inner);
    }

    /**
     * Draws it.
     *
     * @param perMetre millimetres on paper for one metre
     */
    public void draw(Sketch sketch, double perMetre, Stroke stroke) {
        draw(sketch, perMetre, stroke, outer);
        draw(sketch, perMetre, stroke, inner);
    }

    /** Draws some of its lines. */
    static void draw(Sketch sketch, double perMetre, Stroke stroke, List<List<Point>> loops) {
        for (List<Point> loop : loops) {
            sketch.polygon(
                    loop.stream()
                            .map(p -> new Point(perMetre * p.x(), -perMetre * p.y()))
                            .toList(),
                    stroke,
                    null);
        }
    }

    private static double[] places(double size, List<Double> ends) {
        TreeSet<Double> places = new TreeSet<>(List.of(0.0, size));
        for (double end : ends) {
            if (end > 0 && end < size && places.subSet(end - SAME, end + SAME).isEmpty()) {
                places.add(end);
            }
        }
        return places.stream().mapToDouble(Double::doubleValue).toArray();
    }

    private boolean there(int i, int j) {
        if (i < 0 || j < 0 || i >= us.length - 1 || j >= vs.length - 1) {
            return false;
        }
        double u = (us[i] + us[i + 1]) / 2;
        double v = (vs[j] + vs[j + 1]) / 2;
        return cutouts.stream().noneMatch(c -> u > c.u0() && u < c.u1() && v > c.v0() && v < c.v1());
    }

    private List<Side> sides() {
        List<Side> sides = new ArrayList<>();
        for (int i = 0; i < us.length - 1; i++) {
            for (int j = 0; j < vs.length - 1; j++) {
                if (there(i, j)) {
                    add(sides, !there(i, j - 1), new Side(i, j, i + 1, j));
                    add(sides, !there(i + 1, j), new Side(i + 1, j, i + 1, j + 1));
                    add(sides, !there(i, j + 1), new Side(i + 1, j + 1, i, j + 1));
                    add(sides, !there(i - 1, j), new Side(i, j + 1, i, j));
                }
            }
        }
        return sides;
    }

    private static void add(List<Side> sides, boolean free, Side side) {
        if (free) {
            sides.add(side);
        }
    }

    /** Takes the sides of one closed line away and gives its corners; where two lines touch, it stays with its own cell. */
    private List<Point> loop(List<Side> sides) {
        Side start = sides.get(0);
        List<Side> walked = new ArrayList<>();
        for (Side side = start; sides.remove(side); ) {
            walked.add(side);
            side = next(side, start, sides);
        }
        List<Point> corners = new ArrayList<>();
        for (int i = 0; i < walked.size(); i++) {
            Side side = walked.get(i);
            if (!walked.get((i + walked.size() - 1) % walked.size()).goesOnIn(side)) {
                corners.add(new Point(us[side.i0()], vs[side.j0()]));
            }
        }
        return corners;
    }

    /** The side that goes on from the end of another: to the left if there is a choice; the start when the line closes. */
    private static Side next(Side last, Side start, List<Side> sides) {
        List<Side> choice = Stream.concat(Stream.of(start), sides.stream())
                .filter(s -> s.i0() == last.i1() && s.j0() == last.j1())
                .toList();
        return choice.stream().filter(last::turnsLeftInto).findFirst().orElse(choice.get(0));
    }

    private static double area(List<Point> loop) {
        double twice = 0;
        for (int i = 0; i < loop.size(); i++) {
            Point a = loop.get(i);
            Point b = loop.get((i + 1) % loop.size());
            twice += a.x() * b.y() - b.x() * a.y();
        }
        return twice / 2;
    }
}
