package hushmaze.drawing.axon;

import hushmaze.drawing.axon.Stretches.Stretch;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * What is seen of several forms, none of which overlap, along the line of sight of {@link Isometric}.
 *
 * <p>From a point of an edge one looks along (x - s, y - s, z + s), s > 0. A block hides the point if that ray goes through its
 * inside. Since the edge runs along one axis, the two other axes bound s, and those bounds move the block's ends along the
 * edge: what is hidden is one stretch with ends in closed form. Faces are hidden by the outlines of all that is in front of
 * their plane, which are hexagons with sides in three directions, and what is left of them are such hexagons too. Nothing is
 * sampled. For one thread at a time.
 */
public final class Scene {
    /** How far beside an edge one looks for what lies there, m. */
    private static final double BESIDE = 1e-7;

    /**
     * A form in its place.
     *
     * @param form what it is
     * @param body forms with the same number are one body, whose outline is heavier than its inner edges
     */
    public record Thing(Form form, int body) {}

    /**
     * A stretch of an edge that is seen.
     *
     * @param thing number of the thing in the scene
     * @param line from end to end
     * @param outline whether its body ends here, with something else or nothing on the other side
     */
    public record SeenLine(int thing, Edge line, boolean outline) {}

    /**
     * A region of a face that is seen.
     *
     * @param facing axis across the face: X and Y faces look towards low ends, Z faces up
     * @param region on paper
     */
    public record SeenArea(Axis facing, Region region) {}

    private record Block(Cuboid cuboid, int body, Hexagon outline) {}

    private final List<Thing> things;
    private final List<Block> blocks = new ArrayList<>();
    /** Found when first asked for: whatever is drawn of a scene, at any scale, needs the same. */
    private final Map<Integer, List<SeenArea>> areas = new HashMap<>();

    private List<SeenLine> lines;

    public Scene(List<Thing> things) {
        this.things = List.copyOf(things);
        for (Thing thing : things) {
            for (Cuboid c : thing.form().blocks()) {
                blocks.add(new Block(c, thing.body(), Hexagon.of(c)));
            }
        }
    }

    public List<Thing> things() {
        return things;
    }

    /** All seen stretches of all edges. */
    public List<SeenLine> lines() {
        if (lines == null) {
            lines = List.copyOf(allLines());
        }
        return lines;
    }

    private List<SeenLine> allLines() {
        List<SeenLine> all = new ArrayList<>();
        for (int i = 0; i < things.size(); i++) {
            int body = things.get(i).body();
            for (Edge edge : things.get(i).form().edges()) {
                Stretches seen = seenOf(edge);
                if (seen.all().isEmpty()) {
                    continue;
                }
                Stretches within = covered(edge, body, BESIDE).and(covered(edge, body, -BESIDE));
                add(i, edge, seen.minus(within), true, all);
                add(i, edge, seen.and(within), false, all);
            }
        }
        return all;
    }

    private static void add(int thing, Edge edge, Stretches which, boolean outline, List<SeenLine> into) {
        which.all().forEach(s -> into.add(new SeenLine(thing, edge.stretch(s.low(), s.high()), outline)));
    }

    /** What is seen of a line that need not be an edge of anything. */
    public List<Edge> seen(Edge line) {
        return seenOf(line).all().stream()
                .map(s -> line.stretch(s.low(), s.high()))
                .toList();
    }

    private Stretches seenOf(Edge edge) {
        List<Stretch> hidden = new ArrayList<>();
        for (Block block : blocks) {
            hide(edge, block.cuboid(), hidden);
        }
        return Stretches.of(edge.from(), edge.to()).minus(Stretches.union(hidden));
    }

    private static void hide(Edge e, Cuboid q, List<Stretch> hidden) {
        double s0 = 0;
        double s1 = Double.POSITIVE_INFINITY;
        for (Axis axis : Axis.values()) {
            if (axis != e.along()) {
                double at = e.at(0, axis);
                boolean up = axis == Axis.Z;
                s0 = Math.max(s0, up ? q.z0() - at : at - q.high(axis));
                s1 = Math.min(s1, up ? q.z1() - at : at - q.low(axis));
            }
        }
        if (s1 - s0 > Stretches.LEAST) {
            boolean up = e.along() == Axis.Z;
            double low = q.low(e.along()) + (up ? -s1 : s0);
            double high = q.high(e.along()) + (up ? -s0 : s1);
            if (high > e.from() && low < e.to()) {
                hidden.add(new Stretch(low, high));
            }
        }
    }

    /** Stretches of an edge beside whose picture there is something of a body, however near or far. */
    private Stretches covered(Edge e, int body, double beside) {
        List<Stretch> covered = new ArrayList<>();
        for (Block block : blocks) {
            if (block.body() == body) {
                cover(e, block.outline(), beside, covered);
            }
        }
        return Stretches.union(covered);
    }

    /** The line of the edge's picture cut by an outline that reaches to its side; its ends as at the line itself. */
    private static void cover(Edge e, Hexagon h, double beside, List<Stretch> covered) {
        switch (e.along()) {
            case X -> {
                double c = e.u() + e.v();
                if (c + beside > h.c0() && c + beside < h.c1()) {
                    double low = Math.max(h.b0(), h.a0() + c) - e.v();
                    covered.add(new Stretch(low, Math.min(h.b1(), h.a1() + c) - e.v()));
                }
            }
            case Y -> {
                double b = e.u() + e.v();
                if (b + beside > h.b0() && b + beside < h.b1()) {
                    double low = Math.max(h.c0(), b - h.a1()) - e.v();
                    covered.add(new Stretch(low, Math.min(h.c1(), b - h.a0()) - e.v()));
                }
            }
            case Z -> {
                double a = e.u() - e.v();
                if (a + beside > h.a0() && a + beside < h.a1()) {
                    double low = Math.max(h.b0(), h.c0() + a) - e.u();
                    covered.add(new Stretch(low, Math.min(h.b1(), h.c1() + a) - e.u()));
                }
            }
        }
    }

    /** What is seen of the faces of one thing, in pieces that do not overlap. */
    public List<SeenArea> areas(int thing) {
        return areas.computeIfAbsent(thing, this::areasOf);
    }

    private List<SeenArea> areasOf(int thing) {
        List<SeenArea> seen = new ArrayList<>();
        for (Cuboid c : things.get(thing).form().blocks()) {
            for (Axis facing : Axis.values()) {
                for (Hexagon piece : seenOf(c, facing)) {
                    seen.add(new SeenArea(facing, new Region(piece)));
                }
            }
        }
        return List.copyOf(seen);
    }

    private List<Hexagon> seenOf(Cuboid c, Axis facing) {
        Hexagon face = face(c, facing);
        List<Hexagon> left = List.of(face);
        for (Block block : blocks) {
            if (block.outline().apartFrom(face)) {
                continue;
            }
            Cuboid q = block.cuboid();
            double plane = facing == Axis.Z ? c.z1() : c.low(facing);
            double low = facing == Axis.Z ? Math.max(plane, q.z0()) : q.low(facing);
            double high = facing == Axis.Z ? q.z1() : Math.min(plane, q.high(facing));
            if (high - low <= Stretches.LEAST) {
                continue;
            }
            Hexagon front = Hexagon.of(q.with(facing, low, high));
            left = left.stream().flatMap(h -> h.minus(front).stream()).toList();
        }
        return left;
    }

    private static Hexagon face(Cuboid c, Axis facing) {
        Hexagon h = switch (facing) {
            case X ->
                new Hexagon(
                        c.x0() - c.y1(),
                        c.x0() - c.y0(),
                        c.x0() + c.z0(),
                        c.x0() + c.z1(),
                        c.y0() + c.z0(),
                        c.y1() + c.z1());
            case Y ->
                new Hexagon(
                        c.x0() - c.y0(),
                        c.x1() - c.y0(),
                        c.x0() + c.z0(),
                        c.x1() + c.z1(),
                        c.y0() + c.z0(),
                        c.y0() + c.z1());
            case Z ->
                new Hexagon(
                        c.x0() - c.y1(),
                        c.x1() - c.y0(),
                        c.x0() + c.z1(),
                        c.x1() + c.z1(),
                        c.y0() + c.z1(),
                        c.y1() + c.z1());
        };
        return h.tight();
    }
}
