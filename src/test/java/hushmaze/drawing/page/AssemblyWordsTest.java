package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.build.joint.Fastening;
import hushmaze.document.FontMeasure;
import hushmaze.drawing.Paper;
import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Shape;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.wording.Wording;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Property: over seeded random boxes the steps speak of baffles, grooves, cleats, layers and edges to seal where the box has
 * them and nowhere else, and the sizes to measure are those of the solid, in the words and in the pictures.
 */
class AssemblyWordsTest {
    private static final FontMeasure MEASURE = new FontMeasure();

    @Test
    void stepsSpeakOfWhatTheBoxHas() {
        RandomBoxes boxes = new RandomBoxes(2811);
        Random random = new Random(2812);
        int withoutBaffles = 0;
        int hung = 0;
        int standingAbove = 0;
        for (int i = 0; i < 60; i++) {
            UnitSystem units = UnitSystem.values()[i % 2];
            Mounting mounting = random.nextBoolean() ? mounting() : null;
            Assessment assessment = SampleAssessment.of(units, boxes.next(), Opening.Surface.WALL, mounting);
            PathResult result = assessment.paths().get(0);
            Solid solid = result.solid();
            List<String> texts = texts(assessment, units);
            String all = String.join(" ", texts).replace('\u00a0', ' ');
            String box = "box " + i;
            boolean baffles = solid.panels().stream().anyMatch(p -> p.role() == Role.BAFFLE);
            boolean hanging = result.fixing().hanging().isPresent();
            boolean edges = result.cutList().liners().stream()
                    .anyMatch(item -> !item.airEdges().isEmpty());
            boolean grooves = result.cutList()
                    .items()
                    .anyMatch((CutItem item) -> !item.grooves().isEmpty());
            assertThat(all.contains("baffle")).as(box).isEqualTo(baffles);
            boolean hooked = hanging && solid.openingPort().role().normal() != Axis.Z;
            assertThat(all.contains("cleats")).as(box).isEqualTo(hanging && !hooked);
            assertThat(all.contains("bevelled batten")).as(box).isEqualTo(hooked);
            assertThat(all.contains("that is done from inside")).as(box).isEqualTo(hanging && !hooked);
            assertThat(all.contains("gasket on the frame")).as(box).isEqualTo(hanging);
            assertThat(all.contains("grooves")).as(box).isEqualTo(grooves);
            assertThat(all.contains("Seal the edges")).as(box).isEqualTo(edges);
            boolean screws = Fastening.of(solid).held().stream()
                    .anyMatch(h -> !h.joint().cover() && h.hold() == Fastening.Hold.SCREWS);
            assertThat(all.contains("Drill into the edges")).as(box).isEqualTo(screws);
            boolean linedCover = solid.liners().stream().anyMatch(l -> l.role() == Role.FRONT);
            assertThat(all.contains("From the cover’s edge")).as(box).isEqualTo(linedCover);
            boolean proud = standsAboveTheWalls(solid);
            assertThat(all.contains("above the walls")).as(box).isEqualTo(proud);
            standingAbove += proud ? 1 : 0;
            assertThat(all.contains("layers onto each other"))
                    .as(box)
                    .isEqualTo(solid.box().shell().size() > 1);
            for (Axis axis : Axis.values()) {
                String size = LengthFormat.withUnit(solid.outer().size(axis), units);
                assertThat(texts.stream().map(t -> t.replace('\u00a0', ' ')))
                        .as("%s: on the picture", box)
                        .contains(size);
                assertThat(all).as("%s: in words", box).contains(size);
            }
            withoutBaffles += baffles ? 0 : 1;
            hung += hanging ? 1 : 0;
        }
        assertThat(withoutBaffles).isBetween(3, 57);
        assertThat(hung).isBetween(3, 57);
        assertThat(standingAbove).isBetween(3, 57);
    }

    /** Whether liner of a long side or a baffle is higher than the innermost boards around it. */
    private static boolean standsAboveTheWalls(Solid solid) {
        List<Role> walls = List.of(Role.FIRST_SIDE, Role.LAST_SIDE);
        double edges = solid.panels().stream()
                .filter(p -> walls.contains(p.role()) && p.layer() == 0)
                .mapToDouble(p -> p.bounds().z1())
                .min()
                .orElseThrow();
        return solid.liners().stream()
                .filter(l -> walls.contains(l.role()) || l.role() == Role.BAFFLE)
                .anyMatch(l -> l.bounds().z1() > edges + 1e-6);
    }

    private static Mounting mounting() {
        return new Mounting(
                Mounting.Into.STUDS,
                Mounting.Timber.SPRUCE_PINE_FIR,
                Mounting.StudScrew.LAG_QUARTER,
                0.04,
                2,
                0.3,
                0.019,
                0.4064,
                null,
                false,
                "invented for a test");
    }

    private static List<String> texts(Assessment assessment, UnitSystem units) {
        Job job = new Job(assessment, assessment.paths().get(0), Paper.A4, units, new Wording(units), MEASURE);
        return new AssemblyPages(job)
                .pages().stream()
                        .flatMap(page -> page.content().shapes().stream())
                        .filter(Shape.Text.class::isInstance)
                        .map(shape -> ((Shape.Text) shape).text())
                        .collect(Collectors.toList());
    }
}
