package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.build.joint.CollarPlan;
import hushmaze.build.joint.Fastener;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Fitting;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation, by hand: the collars of ducts on a box of one layer. */
class CollarsTest {
    /** One bare pass, clear 100 x 300 x 600, an end port of 100 x 300 at each end. */
    private static Solid solid() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Box box = SampleBoxes.maze(1, 0.6, null, LinedFaces.NONE, 1, end, end);
        return SolidBuilder.build(box);
    }

    private static Brief brief(Opening.Kind kind, List<Fitting> fittings) {
        Brief plain = TestRooms.brief(60, null, new Space(1, 1, 1), Opening.Beyond.INDOORS);
        Opening opening = new Opening(kind, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.1, 0.3);
        return new Brief(
                opening,
                plain.flow(),
                plain.maxPressureDrop(),
                plain.maxPathVelocity(),
                plain.maxOpeningVelocity(),
                plain.noise(),
                plain.noiseShare(),
                plain.space(),
                plain.construction(),
                null,
                null,
                null,
                null,
                null,
                fittings,
                null);
    }

    @Test
    void aHoleInAWallHasNone() {
        assertThat(CollarPlan.of(brief(Opening.Kind.WALL_OPENING, List.of()), solid(), UnitSystem.METRIC))
                .isEmpty();
    }

    /**
     * In a duct of 100 x 300: screws along 2 (100 + 300 + 50) = 900 in 9 stretches of 100. The wall is 18 thick: 15 may go in,
     * and the shortest screw sold is 16: none. The flange needs 100 + 50 = 150; outside there are 100 + 36 = 136: 7 over at
     * each side; along the height 350 against 336: 7 as well.
     */
    @Test
    void rectangularInADuct() {
        Solid solid = solid();
        double t = solid.box().shellThickness();
        List<CollarPlan> plans = CollarPlan.of(brief(Opening.Kind.IN_DUCT, List.of()), solid, UnitSystem.METRIC);
        assertThat(plans).hasSize(1);
        CollarPlan plan = plans.get(0);
        assertThat(plan.diameter()).isNull();
        assertThat(plan.screws()).isEqualTo(9);
        assertThat(plan.overhang()).isCloseTo(0.025 - t, within(1e-9));
        assertThat(t).isLessThan(0.019);
        assertThat(plan.screwLength()).isZero();
    }

    /** Round, 160 across on a port of 100 x 300: π (160 + 25) = 581, 6 screws; 160 / 2 + 25 - 136 / 2 = 37 over. */
    @Test
    void roundInsteadOfTheDucts() {
        Fitting collar = new Fitting(
                Fitting.Kind.ROUND_COLLAR,
                Fitting.End.AT_OPENING,
                null,
                null,
                null,
                0.16,
                null,
                null,
                null,
                null,
                null,
                "test");
        Solid solid = solid();
        List<CollarPlan> plans = CollarPlan.of(brief(Opening.Kind.IN_DUCT, List.of(collar)), solid, UnitSystem.METRIC);
        assertThat(plans).hasSize(1);
        assertThat(plans.get(0).diameter()).isEqualTo(0.16);
        assertThat(plans.get(0).screws()).isEqualTo(6);
        double side = 0.1 + 2 * solid.box().shellThickness();
        assertThat(plans.get(0).overhang()).isCloseTo(0.08 + 0.025 - side / 2, within(1e-9));
    }

    /** By hand: the same lined box has pins where its air is faster than the joints allow, and none where it is not. */
    @Test
    void pinsAboveTheVelocityThatIsGiven() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Box box = SampleBoxes.maze(1, 0.6, SampleBoxes.liner(0.025), LinedFaces.FOLD_PLANE, 1, end, end);
        // 60 L/s through 0.1 x 0.3 m: 2 m/s.
        assertThat(pins(box.joined(new Joinery(0, 0, 0, 1.9), List.of()))).isTrue();
        assertThat(pins(box.joined(new Joinery(0, 0, 0, 2.1), List.of()))).isFalse();
        assertThat(pins(box)).isFalse();
        assertThat(Joinery.PLAIN.pinVelocity()).isEqualTo(5);
    }

    private static boolean pins(Box box) {
        Brief brief = TestRooms.brief(60, null, new Space(1, 1, 1), Opening.Beyond.INDOORS)
                .withFlow(0.06);
        Project project = TestRooms.project(TestRooms.nc(20), null, new VentPath("in", Purpose.SUPPLY, brief, box));
        return Assessor.assess(project, Methods.ESTIMATE, Progress.NONE).paths().get(0).fasteners(project).stream()
                .anyMatch(c -> c.fastener().kind() == Fastener.Kind.PIN);
    }
}
