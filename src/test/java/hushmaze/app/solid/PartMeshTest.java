package hushmaze.app.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.drawing.SampleAssessment;
import hushmaze.material.Board;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Cutout;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.PartCells;
import hushmaze.solid.Role;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of meshes: a mesh whose faces close and look outwards encloses, by the sum of the signed volumes of the
 * pyramids between its triangles and the origin, exactly the volume of its part.
 */
class PartMeshTest {
    private static final Board BOARD = new Board("board", 0.02, 700, 3e9, 0.02, false, "invented for a test");
    private static final double MM3 = 1e9;

    @Test
    void everyPartOfABoxClosesAndLooksOutwards() {
        var solid = SampleAssessment.twoPaths(UnitSystem.METRIC).paths().get(0).solid();
        assertThat(solid.parts())
                .allSatisfy(part -> assertThat(volume(new PartMesh(part).faces()))
                        .isCloseTo(part.volume() * MM3, within(1.0 + 1e-4 * part.volume() * MM3)));
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void cutOutsInsideAtTheEdgeAndAtACornerAreTakenOut(Role role) {
        List<Cutout> cutouts = List.of(
                new Cutout(0.1, 0.1, 0.2, 0.15), new Cutout(0, 0.3, 0.05, 0.35), new Cutout(0.35, 0.35, 0.4, 0.5));
        Part part = panel(role, cutouts);
        // 0.4 m x 0.5 m less 0.1 x 0.05, 0.05 x 0.05 and 0.05 x 0.15, all 0.02 m thick
        double expected = (0.4 * 0.5 - 0.005 - 0.0025 - 0.0075) * 0.02 * MM3;
        assertThat(volume(new PartMesh(part).faces())).isCloseTo(expected, within(5.0));
    }

    /** What is left and what is taken away by the same cut add up to the part, and the cut faces are as large as the section. */
    @ParameterizedTest
    @EnumSource(Axis.class)
    void whatACutLeavesCloses(Axis axis) {
        var solid = SampleAssessment.twoPaths(UnitSystem.METRIC).paths().get(0).solid();
        for (double share : new double[] {0.07, 0.31, 0.5, 0.83}) {
            double at = solid.outer().low(axis) + share * solid.outer().size(axis);
            CutAway cut = new CutAway(axis, at);
            solid.parts().filter(part -> cut.crosses(part.bounds())).forEach(part -> {
                PartMesh mesh = new PartMesh(part, cut);
                double left = volume(mesh.faces()) + volume(mesh.cutFaces());
                double expected = below(part, axis, at) * MM3;
                assertThat(left).as("%s", part).isCloseTo(expected, within(1.0 + 1e-4 * expected));
                assertThat(mesh.cutFaces().points()).isNotEmpty();
                assertThat(furthest(mesh.edges(0.001), axis)).isLessThan(1000 * (at + 0.0011));
            });
        }
    }

    @Test
    void aCutBesideAPartLeavesItAloneAndOneBeforeItTakesItAway() {
        Part part = panel(Role.BACK, List.of());
        CutAway behind = new CutAway(Axis.X, 0.6);
        CutAway before = new CutAway(Axis.X, 0.05);
        assertThat(behind.crosses(part.bounds())).isFalse();
        assertThat(behind.takes(part.bounds())).isFalse();
        assertThat(before.takes(part.bounds())).isTrue();
        assertThat(new PartMesh(part, behind).faces().points())
                .isEqualTo(new PartMesh(part).faces().points());
        assertThat(new PartMesh(part, before).faces().points()).isEmpty();
    }

    /** Volume of a part on the low side of a plane, from its own blocks, m³. */
    private static double below(Part part, Axis axis, double at) {
        double sum = 0;
        for (Cuboid block : PartCells.of(part).blocks()) {
            double high = Math.min(at, block.high(axis));
            if (high > block.low(axis)) {
                sum += block.volume() / block.size(axis) * (high - block.low(axis));
            }
        }
        return sum;
    }

    /** Highest place of a mesh along an axis of the box, mm. */
    private static double furthest(MeshDraft mesh, Axis axis) {
        float[] p = mesh.points();
        double most = Double.NEGATIVE_INFINITY;
        for (int i = axis.ordinal(); i < p.length; i += 3) {
            most = Math.max(most, axis == Axis.X ? p[i] : -p[i]);
        }
        return most;
    }

    @Test
    void aPlainPanelHasTwelveEdgesAndACornerNotchAddsSix() {
        // one bar has six faces of two triangles
        assertThat(bars(panel(Role.BACK, List.of()))).isEqualTo(12);
        // the outline of each face has 6 sides instead of 4, and so many edges run through the thickness
        assertThat(bars(panel(Role.BACK, List.of(new Cutout(0.3, 0.4, 0.4, 0.5)))))
                .isEqualTo(3 * 6);
    }

    private static int bars(Part part) {
        return new PartMesh(part).edges(0.001).points().length / 9 / 12;
    }

    private static Part panel(Role role, List<Cutout> cutouts) {
        Cuboid bounds = switch (role.normal()) {
            case X -> new Cuboid(0.1, 0.2, 0.3, 0.12, 0.6, 0.8);
            case Y -> new Cuboid(0.1, 0.2, 0.3, 0.5, 0.22, 0.8);
            case Z -> new Cuboid(0.1, 0.2, 0.3, 0.5, 0.7, 0.32);
        };
        return new Panel(role, 0, 0, BOARD, bounds, cutouts);
    }

    private static double volume(MeshDraft mesh) {
        float[] p = mesh.points();
        double six = 0;
        for (int a = 0; a < p.length; a += 9) {
            int b = a + 3;
            int c = a + 6;
            six += (double) p[a] * ((double) p[b + 1] * p[c + 2] - (double) p[b + 2] * p[c + 1])
                    + (double) p[a + 1] * ((double) p[b + 2] * p[c] - (double) p[b] * p[c + 2])
                    + (double) p[a + 2] * ((double) p[b] * p[c + 1] - (double) p[b + 1] * p[c]);
        }
        return six / 6;
    }
}
