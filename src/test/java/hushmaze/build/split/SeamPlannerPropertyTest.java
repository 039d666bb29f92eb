package hushmaze.build.split;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.build.CutItem;
import hushmaze.build.CutList;
import hushmaze.build.CutListMaker;
import hushmaze.build.SheetLayouts;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Doorway;
import hushmaze.project.Seam;
import hushmaze.project.Stock;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Module;
import hushmaze.solid.PlacementProof;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Property: with its proposed seams every random box can be built, closes, goes on its sheets and keeps the limits of its
 * parts, unless an obstacle says which does not; and one seam fewer does not do, as a search of its own finds.
 */
class SeamPlannerPropertyTest {
    private final Random random = new Random(31);

    @Test
    void proposalsOfRandomBoxesKeepWhatTheySay() {
        RandomBoxes boxes = new RandomBoxes(77);
        int seamed = 0;
        int told = 0;
        int mixed = 0;
        for (int i = 0; i < 600; i++) {
            Box box = boxes.next();
            Solid plain = SolidBuilder.build(box.joined(box.joinery(), List.of()));
            Stock stock = SeamPlannerTest.stock(between(0.5, 2), between(0.3, 1.2));
            Construction asked = SeamPlannerTest.construction(mass(plain), door());
            SeamPlan plan = new SeamPlanner(asked, stock, UnitSystem.METRIC).plan(box);
            requireKept(i, box, plan, asked, stock);
            seamed += plan.seams().isEmpty() ? 0 : 1;
            told += plan.obstacles().isEmpty() ? 0 : 1;
            mixed += plan.seams().stream().map(Seam::kind).distinct().count() > 1 ? 1 : 0;
        }
        assertThat(seamed).isBetween(150, 590);
        assertThat(told).isBetween(50, 500);
        assertThat(mixed).isGreaterThan(5);
    }

    private Double mass(Solid plain) {
        return random.nextInt(3) == 0 ? Math.max(1, Math.min(2000, plain.mass() * between(0.15, 1.2))) : null;
    }

    private Doorway door() {
        return random.nextInt(3) == 0 ? new Doorway(between(0.2, 0.8), between(0.2, 2)) : null;
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static void requireKept(int number, Box box, SeamPlan plan, Construction asked, Stock stock) {
        Solid solid = SolidBuilder.build(box.joined(box.joinery(), plan.seams()));
        String as = number + ": " + plan;
        assertThat(PlacementProof.faults(solid)).as(as).isEmpty();
        assertThat(plan.obstacles())
                .as(as)
                .allSatisfy(o -> assertThat(o.value()).isGreaterThan(o.limit()));
        CutList cuts = CutListMaker.of(solid);
        List<CutItem> tooLarge = cuts.items()
                .filter(item -> !SheetLayouts.fitsSomeSheet(cuts, stock, item.mark()))
                .toList();
        boolean sheets = plan.obstacles().stream().noneMatch(Obstacle::ofSheets);
        assertThat(tooLarge.isEmpty()).as(as + tooLarge).isEqualTo(sheets);
        boolean door = plan.obstacles().stream().noneMatch(Obstacle::ofDoor);
        assertThat(asked.doorway() == null || solid.modules().stream().allMatch(m -> passes(m, asked.doorway())))
                .as(as)
                .isEqualTo(door);
        boolean light = plan.obstacles().stream().noneMatch(o -> o.kind() == Obstacle.Kind.PART_MASS);
        assertThat(asked.maxMass() == null
                        || solid.modules().stream().allMatch(m -> m.mass() <= asked.maxMass() + 1e-6))
                .as(as)
                .isEqualTo(light);
    }

    private static boolean passes(Module module, Doorway door) {
        return door.lets(
                module.bounds().size(Axis.X) - 1e-9,
                module.bounds().size(Axis.Y),
                module.bounds().size(Axis.Z));
    }

    @Test
    void oneSeamFewerDoesNotDo() {
        RandomBoxes boxes = new RandomBoxes(78);
        int looked = 0;
        for (int i = 0; i < 250; i++) {
            Box box = boxes.next();
            Solid plain = SolidBuilder.build(box.joined(box.joinery(), List.of()));
            Stock stock = SeamPlannerTest.stock(between(0.5, 2), between(0.5, 1.2));
            Construction asked = SeamPlannerTest.construction(mass(plain), null);
            SeamPlan plan = new SeamPlanner(asked, stock, UnitSystem.METRIC).plan(box);
            if (plan.obstacles().isEmpty()
                    && (plan.seams().size() == 1 || plan.seams().size() == 2)) {
                looked++;
                assertThat(withFewer(box, plan.seams().size() - 1, asked, stock))
                        .as(i + ": " + plan)
                        .isEmpty();
            }
        }
        assertThat(looked).isGreaterThan(40);
    }

    /** Seams at whole multiples of 20 mm that do as well, if any; tried one by one on the solid itself. */
    private static List<Seam> withFewer(Box box, int seams, Construction asked, Stock stock) {
        List<List<Seam>> tries = new ArrayList<>();
        if (seams == 0) {
            tries.add(List.of());
        } else {
            for (Seam.Kind kind : Seam.Kind.values()) {
                for (int k = 13; k < 100; k++) {
                    tries.add(List.of(new Seam(kind, k * 20 / 1000.0)));
                }
            }
        }
        for (List<Seam> each : tries) {
            try {
                Solid solid = SolidBuilder.build(box.joined(box.joinery(), each));
                CutList cuts = CutListMaker.of(solid);
                // a hair more than the limit counts as too much for both: gaskets take a little mass away
                boolean light = asked.maxMass() == null
                        || solid.modules().stream().allMatch(m -> m.mass() <= 0.97 * asked.maxMass());
                if (light && cuts.items().allMatch(item -> SheetLayouts.fitsSomeSheet(cuts, stock, item.mark()))) {
                    return each.isEmpty() ? List.of(new Seam(Seam.Kind.GLUED, 6)) : each;
                }
            } catch (hushmaze.quantity.InvalidValue noPlaceForASeam) {
                continue;
            }
        }
        return List.of();
    }
}
