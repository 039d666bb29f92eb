package hushmaze.solid;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property: over seeded random boxes the surface of every part is closed (every edge is walked once each way) and encloses,
 * by the divergence theorem, the volume of its part. Validation: areas of a grooved board worked by hand.
 */
class PartSurfaceTest {
    private static final Board BOARD = new Board("board", 0.02, 700, 3e9, 0.02, false, "invented for a test");

    @Test
    void surfacesCloseAndEncloseTheVolume() {
        RandomBoxes boxes = new RandomBoxes(404);
        int grooved = 0;
        int cut = 0;
        for (int i = 0; i < 200; i++) {
            for (Part part : SolidBuilder.build(boxes.next()).parts().toList()) {
                List<PartSurface.Face> faces = PartSurface.of(part);
                closed(faces);
                assertThat(volume(faces)).isCloseTo(part.volume(), within(1e-9));
                grooved += part.grooves().isEmpty() ? 0 : 1;
                cut += part.cutouts().isEmpty() ? 0 : 1;
            }
        }
        assertThat(grooved).isGreaterThan(100);
        assertThat(cut).isGreaterThan(100);
    }

    @ParameterizedTest
    @EnumSource(Role.class)
    void aGrooveAndACutOutHaveTheirWalls(Role role) {
        Cuboid bounds = switch (role.normal()) {
            case X -> new Cuboid(0.1, 0.2, 0.3, 0.12, 0.6, 0.8);
            case Y -> new Cuboid(0.1, 0.2, 0.3, 0.5, 0.22, 0.8);
            case Z -> new Cuboid(0.1, 0.2, 0.3, 0.5, 0.7, 0.32);
        };
        // 0.4 m x 0.5 m; a window of 0.1 x 0.05, a notch of 0.05 x 0.05 in a side, a groove right across, 0.02 wide,
        // 0.006 deep
        Panel panel = new Panel(
                role,
                0,
                0,
                BOARD,
                bounds,
                List.of(new Cutout(0.1, 0.1, 0.2, 0.15), new Cutout(0, 0.3, 0.05, 0.35)),
                List.of(new Groove(0.3, 0, 0.32, 0.5, 0.006, true)),
                0);
        List<PartSurface.Face> faces = PartSurface.of(panel);
        closed(faces);
        double faceArea = 0.4 * 0.5 - 0.005 - 0.0025;
        double low = area(faces, role.normal(), false);
        assertThat(low).as("groove's ground and the rest of the face").isCloseTo(faceArea, within(1e-12));
        assertThat(area(faces, role.normal(), true)).isCloseTo(faceArea, within(1e-12));
        // across u: two ends 0.5 m, less the notch's 0.05 m put back by its own wall; the window's 0.05 m; the groove's
        // 0.5 m
        double acrossU = 0.02 * 0.5 + 0.02 * 0.05 + 0.006 * 0.5;
        assertThat(area(faces, role.normal().u(), true)).isCloseTo(acrossU, within(1e-12));
        assertThat(area(faces, role.normal().u(), false)).isCloseTo(acrossU, within(1e-12));
        // across v: two sides 0.4 m, less the groove's mouth; the window's 0.1 m; the notch's 0.05 m
        double acrossV = 0.02 * 0.4 - 0.02 * 0.006 + 0.02 * 0.1 + 0.02 * 0.05;
        assertThat(area(faces, role.normal().v(), true)).isCloseTo(acrossV, within(1e-12));
        assertThat(volume(faces)).isCloseTo(faceArea * 0.02 - 0.02 * 0.5 * 0.006, within(1e-12));
    }

    private static double area(List<PartSurface.Face> faces, Axis across, boolean high) {
        return faces.stream()
                .filter(f -> f.across() == across && f.high() == high)
                .mapToDouble(f -> (f.u1() - f.u0()) * (f.v1() - f.v0()))
                .sum();
    }

    private static void closed(List<PartSurface.Face> faces) {
        Map<List<Double>, Integer> walked = new HashMap<>();
        for (PartSurface.Face face : faces) {
            List<double[]> corners = face.corners();
            for (int i = 0; i < 4; i++) {
                walked.merge(edge(corners.get(i), corners.get((i + 1) % 4)), 1, Integer::sum);
            }
        }
        walked.forEach((edge, times) -> {
            assertThat(times).as("walked this way: %s", edge).isEqualTo(1);
            List<Double> back = List.of(edge.get(3), edge.get(4), edge.get(5), edge.get(0), edge.get(1), edge.get(2));
            assertThat(walked).as("walked the other way").containsKey(back);
        });
    }

    private static List<Double> edge(double[] a, double[] b) {
        return Arrays.asList(a[0], a[1], a[2], b[0], b[1], b[2]);
    }

    /** A third of the sum of place times outward area, m³. */
    private static double volume(List<PartSurface.Face> faces) {
        double three = 0;
        for (PartSurface.Face face : faces) {
            double[] a = face.corners().get(0);
            double[] b = face.corners().get(1);
            double[] d = face.corners().get(3);
            double[] ab = {b[0] - a[0], b[1] - a[1], b[2] - a[2]};
            double[] ad = {d[0] - a[0], d[1] - a[1], d[2] - a[2]};
            three += a[0] * (ab[1] * ad[2] - ab[2] * ad[1])
                    + a[1] * (ab[2] * ad[0] - ab[0] * ad[2])
                    + a[2] * (ab[0] * ad[1] - ab[1] * ad[0]);
        }
        return three / 3;
    }
}
