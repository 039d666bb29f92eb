package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.build.CutListMaker;
import hushmaze.drawing.SampleAssessment;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Validation, by hand: a panel drawn with u to the right and v upwards shows the face towards u × v; x × y = z, so the back
 * shows its inner face and the front its outer one. The sample's walls are longer along u, so nothing is swapped.
 */
class SeenFaceTest {
    @Test
    void backShowsItsInsideAndTheLastSideToo() {
        Solid solid = SolidBuilder.build(SampleAssessment.fourPasses());
        assertThat(faces(solid, Role.BACK)).containsOnly(SeenFace.INSIDE);
        assertThat(faces(solid, Role.LAST_SIDE)).containsOnly(SeenFace.INSIDE);
    }

    @Test
    void frontAndFirstSideShowTheirOutside() {
        Solid solid = SolidBuilder.build(SampleBoxes.withPorts(
                SampleAssessment.fourPasses(),
                new Port(PortFace.SIDE, 0.2, 0.15, 0.03),
                new Port(PortFace.FRONT, 0.2, 0.1, 0.02)));
        assertThat(faces(solid, Role.FRONT)).containsOnly(SeenFace.OUTSIDE);
        assertThat(faces(solid, Role.FIRST_SIDE)).containsOnly(SeenFace.OUTSIDE);
    }

    private static List<SeenFace> faces(Solid solid, Role role) {
        CutList list = CutListMaker.of(solid);
        List<SeenFace> faces = new java.util.ArrayList<>();
        for (CutItem item : list.boards()) {
            item.parts().stream()
                    .filter(p -> p.role() == role && !item.cutouts().isEmpty())
                    .forEach(p -> faces.add(SeenFace.of(item, p)));
        }
        return faces;
    }
}
