package hushmaze.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** Liner edges in the air, worked by hand. */
class AirEdgesTest {
    /**
     * Validation, by hand. Two passes, clear 140 x 200 x 600, all faces lined. The baffle's two liners (450 x 200) end at its tip:
     * 200 each. The near end's first piece has the inlet of 100 x 150: 500 around. The outlet of 200 x 100 in the back: 600
     * around. Broad liner butts on the baffle's board at its foot: none.
     */
    @Test
    void tipsAndPorts() {
        Board mdf = new Board("MDF", 0.018, 750, 3.5e9, 0.02, false, "test");
        Liner liner = new Liner("liner", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");
        Solid solid = SolidBuilder.build(new Box(
                Box.Form.MAZE,
                2,
                0.14,
                0.2,
                0.6,
                0.15,
                List.of(mdf),
                mdf,
                1,
                liner,
                LinedFaces.ALL,
                new Port(PortFace.END, 0.1, 0.15, 0),
                new Port(PortFace.BACK, 0.2, 0.1, 0)));
        Map<LinerPiece, List<AirEdge>> edges = AirEdges.of(solid);
        assertThat(edges.keySet()).containsExactlyInAnyOrderElementsOf(solid.liners());
        double tips = sum(edges, Role.BAFFLE);
        assertThat(tips).isCloseTo(2 * 0.2, within(1e-9));
        assertThat(sum(edges, Role.NEAR_END)).isCloseTo(2 * (0.1 + 0.15), within(1e-9));
        assertThat(sum(edges, Role.BACK)).isCloseTo(2 * (0.2 + 0.1), within(1e-9));
        assertThat(sum(edges, Role.FRONT)).isZero();
        assertThat(sum(edges, Role.FAR_END)).isZero();
        assertThat(sum(edges, Role.FIRST_SIDE)).isZero();
        assertThat(sum(edges, Role.LAST_SIDE)).isZero();
    }

    /** Property: with liner on the long sides alone their four edges at the ends and broad faces touch boards: none in the air. */
    @Test
    void linerBetweenBoardsHasNone() {
        Board mdf = new Board("MDF", 0.018, 750, 3.5e9, 0.02, false, "test");
        Liner liner = new Liner("liner", 0.025, 48, 20000, 10000, 30000, 0.0009, "test");
        LinedFaces sides = new LinedFaces(1, 0, 0, 0);
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        Solid solid = SolidBuilder.build(
                new Box(Box.Form.MAZE, 1, 0.1, 0.2, 0.6, 0, List.of(mdf), mdf, 1, liner, sides, end, end));
        // The ports are as wide as the pass and as high: the liner's ends butt on what is left of the end boards.
        assertThat(AirEdges.of(solid).values()).allMatch(List::isEmpty);
    }

    private static double sum(Map<LinerPiece, List<AirEdge>> edges, Role role) {
        return edges.entrySet().stream()
                .filter(e -> e.getKey().role() == role)
                .flatMap(e -> e.getValue().stream())
                .mapToDouble(AirEdge::length)
                .sum();
    }
}
