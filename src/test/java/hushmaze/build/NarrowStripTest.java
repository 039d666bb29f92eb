package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

/**
 * Validation: strips worked by hand on a board of 600 × 400 × 18 mm. Property: for boards of seeded random boxes the strip found
 * is the one that straight lines drawn over the bare rectangles find, without cells.
 */
class NarrowStripTest {
    private static final double SAME = 1e-7;

    private static Optional<NarrowStrip> of(List<Cutout> cutouts, Groove... grooves) {
        Board board = new Board("board", 0.018, 700, 3e9, 0.02, false, "invented for a test");
        Cuboid bounds = new Cuboid(0, 0, 0, 0.6, 0.4, 0.018);
        return NarrowStrip.of(new Panel(Role.BACK, 0, 0, board, bounds, cutouts, List.of(grooves), 0));
    }

    private static void isStrip(Optional<NarrowStrip> found, double width, double limit) {
        assertThat(found).isPresent();
        assertThat(found.get().width()).isCloseTo(width, within(1e-9));
        assertThat(found.get().limit()).isCloseTo(limit, within(1e-9));
    }

    @Test
    void besideTheEdge() {
        isStrip(of(List.of(new Cutout(0.005, 0.1, 0.3, 0.3))), 0.005, 0.018);
        isStrip(of(List.of(new Cutout(0.1, 0.1, 0.3, 0.392))), 0.008, 0.018);
        assertThat(of(List.of(new Cutout(0.018, 0.1, 0.3, 0.3))))
                .as("as wide as thick")
                .isEmpty();
        assertThat(of(List.of(new Cutout(0.0175, 0.1, 0.3, 0.3))))
                .as("half a millimetre of play")
                .isEmpty();
        assertThat(of(List.of(new Cutout(0, 0.1, 0.3, 0.3)))).as("a notch").isEmpty();
        assertThat(of(List.of())).as("a whole board").isEmpty();
    }

    @Test
    void betweenTwo() {
        isStrip(of(List.of(new Cutout(0.1, 0.1, 0.2, 0.3), new Cutout(0.21, 0.2, 0.4, 0.35))), 0.01, 0.018);
        assertThat(of(List.of(new Cutout(0.1, 0.1, 0.2, 0.2), new Cutout(0.21, 0.2, 0.4, 0.35))))
                .as("past each other")
                .isEmpty();
    }

    /** 8 mm beside a groove of 6 mm stand well; 4 mm do not. */
    @Test
    void besideAGroove() {
        Cutout port = new Cutout(0.1, 0.1, 0.2, 0.3);
        assertThat(of(List.of(port), new Groove(0.208, 0, 0.22, 0.4, 0.006, true)))
                .isEmpty();
        isStrip(of(List.of(port), new Groove(0.204, 0, 0.22, 0.4, 0.006, true)), 0.004, 0.006);
        isStrip(of(List.of(), new Groove(0.003, 0, 0.015, 0.4, 0.006, false)), 0.003, 0.006);
        // In opposite faces two grooves of 6 mm do not see each other.
        assertThat(of(
                        List.of(),
                        new Groove(0.2, 0, 0.212, 0.4, 0.006, true),
                        new Groove(0.213, 0, 0.225, 0.4, 0.006, false)))
                .isEmpty();
    }

    @Test
    void linesFindTheSameStrip() {
        RandomBoxes boxes = new RandomBoxes(20);
        int told = 0;
        int quiet = 0;
        for (int i = 0; i < 300; i++) {
            for (Panel panel : SolidBuilder.build(boxes.next()).panels()) {
                Optional<NarrowStrip> expected = byLines(panel);
                Optional<NarrowStrip> found = NarrowStrip.of(panel);
                assertThat(found.isPresent()).as("box %s: %s", i, panel).isEqualTo(expected.isPresent());
                if (found.isPresent()) {
                    double share = expected.get().width() / expected.get().limit();
                    assertThat(found.get().width() / found.get().limit()).isCloseTo(share, within(1e-4));
                    told++;
                } else if (!panel.taken().isEmpty()) {
                    quiet++;
                }
            }
        }
        assertThat(told).isGreaterThan(20);
        assertThat(quiet).isGreaterThan(100);
    }

    /** A stretch of board on a line: from, to. */
    private record Stretch(double from, double to) {
        boolean near(Stretch other) {
            return Math.abs(from - other.from) < SAME && Math.abs(to - other.to) < SAME;
        }
    }

    private static Optional<NarrowStrip> byLines(Part part) {
        List<NarrowStrip> all = new ArrayList<>();
        for (boolean u : new boolean[] {true, false}) {
            for (double at : between(part, u)) {
                lines(part, u, at, all);
            }
        }
        return all.stream()
                .min(Comparator.comparingDouble(s -> s.width() / s.limit()))
                .filter(s -> s.width() < s.limit() - 0.001 - SAME);
    }

    /** Middles between all sides of rectangles the other way. */
    private static List<Double> between(Part part, boolean u) {
        TreeSet<Double> sides = new TreeSet<>(List.of(0.0, u ? part.vSize() : part.uSize()));
        part.cutouts().forEach(c -> sides.addAll(u ? List.of(c.v0(), c.v1()) : List.of(c.u0(), c.u1())));
        part.grooves().forEach(g -> sides.addAll(u ? List.of(g.v0(), g.v1()) : List.of(g.u0(), g.u1())));
        return middles(sides);
    }

    private static List<Double> middles(TreeSet<Double> sides) {
        List<Double> middles = new ArrayList<>();
        Double last = null;
        for (double side : sides) {
            if (last != null && side - last > SAME) {
                middles.add((side + last) / 2);
            }
            last = side;
        }
        return middles;
    }

    /** The stretches of one line in every depth; those that are alike in depths that follow each other stand together. */
    private static void lines(Part part, boolean u, double at, List<NarrowStrip> into) {
        TreeSet<Double> depths = new TreeSet<>(List.of(0.0, part.thickness()));
        part.grooves().forEach(g -> depths.add(g.inLowFace() ? g.depth() : part.thickness() - g.depth()));
        List<Double> layers = middles(depths);
        List<List<Stretch>> found =
                layers.stream().map(depth -> stretches(part, u, at, depth)).toList();
        double side = u ? part.uSize() : part.vSize();
        for (int i = 0; i < layers.size(); i++) {
            for (Stretch s : found.get(i)) {
                if (s.near(new Stretch(0, side))) {
                    continue;
                }
                double high = 0;
                int layer = i;
                while (layer < layers.size() && found.get(layer).stream().anyMatch(s::near)) {
                    high += thickness(depths, layers.get(layer++));
                }
                layer = i - 1;
                while (layer >= 0 && found.get(layer).stream().anyMatch(s::near)) {
                    high += thickness(depths, layers.get(layer--));
                }
                into.add(new NarrowStrip(s.to() - s.from(), high));
            }
        }
    }

    private static double thickness(TreeSet<Double> depths, double middle) {
        return depths.higher(middle) - depths.lower(middle);
    }

    private static List<Stretch> stretches(Part part, boolean u, double at, double depth) {
        List<Stretch> gone = new ArrayList<>();
        for (Cutout c : part.cutouts()) {
            if (u ? c.v0() < at && at < c.v1() : c.u0() < at && at < c.u1()) {
                gone.add(u ? new Stretch(c.u0(), c.u1()) : new Stretch(c.v0(), c.v1()));
            }
        }
        for (Groove g : part.grooves()) {
            boolean deep = g.inLowFace() ? depth < g.depth() : depth > part.thickness() - g.depth();
            if (deep && (u ? g.v0() < at && at < g.v1() : g.u0() < at && at < g.u1())) {
                gone.add(u ? new Stretch(g.u0(), g.u1()) : new Stretch(g.v0(), g.v1()));
            }
        }
        gone.sort(Comparator.comparingDouble(Stretch::from));
        List<Stretch> left = new ArrayList<>();
        double from = 0;
        for (Stretch s : gone) {
            if (s.from() - from > SAME) {
                left.add(new Stretch(from, s.from()));
            }
            from = Math.max(from, s.to());
        }
        double side = u ? part.uSize() : part.vSize();
        if (side - from > SAME) {
            left.add(new Stretch(from, side));
        }
        return left;
    }
}
