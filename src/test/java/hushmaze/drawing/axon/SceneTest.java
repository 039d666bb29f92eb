package hushmaze.drawing.axon;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.axon.Scene.SeenLine;
import hushmaze.drawing.axon.Scene.Thing;
import hushmaze.material.Board;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation: what is seen of small scenes, worked out by hand from the line of sight (-1, -1, 1). */
class SceneTest {
    private static final Board BOARD = new Board("board", 0.02, 700, 3.5e9, 0.02, false, "invented for a test");

    private static double seen(List<SeenLine> lines, int thing) {
        return lines.stream()
                .filter(l -> l.thing() == thing)
                .mapToDouble(l -> l.line().length())
                .sum();
    }

    private static Scene scene(Cuboid... blocks) {
        return new Scene(
                Arrays.stream(blocks).map(b -> new Thing(Form.of(b), 0)).toList());
    }

    @Test
    void ofABlockThreeOfTwelveEdgesAreHidden() {
        List<SeenLine> lines = scene(new Cuboid(0, 0, 0, 1, 2, 3)).lines();
        assertThat(lines).hasSize(9);
        // The three at the corner (1, 2, 0), which lies behind all, are hidden: 12 edges are 24 m long.
        assertThat(seen(lines, 0)).isEqualTo(24 - 6, within(1e-9));
        // The outline is a hexagon: two edges in each direction.
        assertThat(lines.stream().filter(SeenLine::outline)).hasSize(6);
    }

    @Test
    void aBlockInFrontCutsWhatIsBehindIt() {
        // From the edge x in 0..4 at y = 1, z = 1 one looks at (x - s, 1 - s, 1 + s). The small block is met where
        // 1 - s is in -1..0, so s in 1..2, and 1 + s in 2..2.5, so s in 1..1.5; x - s in 1..2 gives x in 2..3.5.
        Edge edge = new Edge(Axis.X, 0, 4, 1, 1);
        List<Edge> seen = scene(new Cuboid(1, -1, 2, 2, 0, 2.5)).seen(edge);
        assertThat(seen).hasSize(2);
        assertThat(seen.get(0).to()).isEqualTo(2, within(1e-12));
        assertThat(seen.get(1).from()).isEqualTo(3.5, within(1e-12));
    }

    @Test
    void anUprightEdgeIsHiddenFromBelow() {
        // (2 - s, 2 - s, z + s) with 2 - s in 0..1 gives s in 1..2; z + s in 0..1 gives z in -2..0, open at the ends.
        List<Edge> seen = scene(new Cuboid(0, 0, 0, 1, 1, 1)).seen(new Edge(Axis.Z, -3, 3, 2, 2));
        assertThat(seen).hasSize(2);
        assertThat(seen.get(0).to()).isEqualTo(-2, within(1e-12));
        assertThat(seen.get(1).from()).isEqualTo(0, within(1e-12));
    }

    @Test
    void aCutOutShowsTheDepthOfItsHole() {
        // Lying board 1 x 1 x 0.02, hole 0.4 x 0.4: of its foot the two far edges are seen but for 0.02 at the near
        // end.
        Cuboid whole = new Cuboid(0, 0, 0, 1, 1, 0.02);
        Panel panel = new Panel(Role.BACK, 0, 0, BOARD, whole, List.of(new Cutout(0.3, 0.3, 0.7, 0.7)));
        Form form = Form.of(panel);
        assertThat(form.edges()).hasSize(24);
        List<SeenLine> lines = new Scene(List.of(new Thing(form, 0))).lines();
        double outside = 6 + 3 * 0.02;
        double rim = 4 * 0.4;
        double foot = 2 * (0.4 - 0.02);
        double upright = 0.02;
        assertThat(seen(lines, 0)).isEqualTo(outside + rim + foot + upright, within(1e-9));
    }

    @Test
    void aHexagonLosesWhatLiesInFront() {
        // Seen from above: a plate of 2 x 2 with a cube of 1 on its middle. On paper, in the plane of b and c, the
        // plate is
        // 4, the cube covers three faces of 1; of those all lies on the plate but what rises beyond its far corner.
        Scene scene = scene(new Cuboid(0, 0, -1, 4, 4, 0), new Cuboid(0, 0, 0, 1, 1, 1));
        Isometric view = new Isometric(1);
        double top = scene.areas(0).stream()
                .filter(a -> a.facing() == Axis.Z)
                .mapToDouble(a -> a.region().area(view))
                .sum();
        // 16 less the cube's foot and the shadow of its two far sides: (1, 1) moved by (1, 1) sweeps 1 + 2 over the
        // plate.
        assertThat(top).isEqualTo((16 - 3) * Math.sqrt(3) / 2, within(1e-9));
        double cube =
                scene.areas(1).stream().mapToDouble(a -> a.region().area(view)).sum();
        assertThat(cube).isEqualTo(3 * Math.sqrt(3) / 2, within(1e-9));
    }

    @Test
    void touchingBlocksOfOnePartHaveNoLineBetween() {
        Cuboid whole = new Cuboid(0, 0, 0, 1, 1, 0.02);
        Panel notched = new Panel(Role.BACK, 0, 0, BOARD, whole, List.of(new Cutout(0, 0, 0.5, 0.5)));
        Form form = Form.of(notched);
        assertThat(form.blocks()).hasSize(2);
        // An L has six corners: six edges above, six below, six upright.
        assertThat(form.edges()).hasSize(18);
    }
}
