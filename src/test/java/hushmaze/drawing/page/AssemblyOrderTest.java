package hushmaze.drawing.page;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.page.AssemblyOrder.Kind;
import hushmaze.drawing.page.AssemblyOrder.Step;
import hushmaze.drawing.page.AssemblyOrder.Way;
import hushmaze.project.Box;
import hushmaze.project.Seam;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Panel;
import hushmaze.solid.Part;
import hushmaze.solid.PartCells;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Property: over seeded random boxes every part is put on once, touches what is there already, and comes straight into its
 * place from where its step says, past everything that is there. Liner lies on the board it is named after. The cover comes
 * last.
 */
class AssemblyOrderTest {
    /** Farther than any box reaches, m. */
    private static final double FAR = 10;

    private static final double SLACK = 1e-7;

    @Test
    void everyStepFindsItsPlaceFreeAndSomethingToHoldIt() {
        RandomBoxes boxes = new RandomBoxes(2611);
        Set<Kind> seen = new HashSet<>();
        for (int i = 0; i < 1_500; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            List<Step> steps = AssemblyOrder.of(solid, true);
            new Building(i, solid).follow(steps);
            steps.forEach(step -> seen.add(step.kind()));
        }
        assertThat(seen).containsExactlyInAnyOrder(Kind.values());
    }

    /** What stands so far; the cover with its liner is put together beside the box. */
    private static final class Building {
        private final int number;
        private final Solid solid;
        private final Map<Part, List<Cuboid>> blocks = new HashMap<>();
        private final List<Part> placed = new ArrayList<>();
        private final List<Part> onCover = new ArrayList<>();

        Building(int number, Solid solid) {
            this.number = number;
            this.solid = solid;
            solid.parts().forEach(p -> blocks.put(p, PartCells.of(p).blocks()));
        }

        void follow(List<Step> steps) {
            boolean covered = false;
            for (Step step : steps) {
                if (step.places()) {
                    assertThat(covered)
                            .as("box %d: %s after the cover", number, step.kind())
                            .isFalse();
                    step.parts().forEach(part -> put(part, step));
                    covered = step.kind() == Kind.COVER;
                }
            }
            assertThat(covered).isTrue();
            List<Part> all = new ArrayList<>(placed);
            all.addAll(onCover);
            assertThat(all).containsExactlyInAnyOrderElementsOf(solid.parts().toList());
        }

        private void put(Part part, Step step) {
            String what = "box " + number + " " + solid.box() + "\n" + step.kind() + " " + part;
            if (step.way() == Way.COVER) {
                // On the bench there is nothing but the inner board of the cover.
                List<Part> boards = solid.parts()
                        .filter(p -> p instanceof Panel && p.role() == Role.FRONT && p.layer() == 0)
                        .toList();
                assertThat(boards.stream().anyMatch(board -> touch(part, board))
                                || onCover.stream().anyMatch(under -> isUnder(under, part)))
                        .as(what)
                        .isTrue();
                assertThat(boards).as(what).noneMatch(board -> meet(part, board, 0, 0, -1));
                onCover.add(part);
                return;
            }
            assertThat(placed.isEmpty() || placed.stream().anyMatch(there -> holds(there, part)))
                    .as("touches nothing: %s", what)
                    .isTrue();
            List<Part> moving = new ArrayList<>(List.of(part));
            if (part.role() == Role.FRONT && part.layer() == 0) {
                onCover.stream().filter(liner -> isOn(part, liner)).forEach(moving::add);
            }
            int[] from = from(part, step.way());
            for (Part there : placed) {
                for (Part moved : moving) {
                    assertThat(meet(moved, there, from[0], from[1], from[2]))
                            .as("in the way: %s\nof %s", there, what)
                            .isFalse();
                }
            }
            placed.add(part);
        }

        /** Liner holds on its own board or on the layer under it, every board on any other part. */
        private boolean holds(Part there, Part part) {
            boolean own = there instanceof Panel && there.role() == part.role();
            return (own || part instanceof Panel) && touch(there, part) || isUnder(there, part);
        }

        private boolean isOn(Part board, Part liner) {
            return touch(liner, board)
                    || onCover.stream().anyMatch(first -> touch(first, board) && isUnder(first, liner));
        }

        private boolean isUnder(Part there, Part part) {
            return there instanceof LinerPiece first
                    && part instanceof LinerPiece second
                    && first.role() == second.role()
                    && first.ply() == second.ply() - 1
                    && touch(there, part);
        }

        private static int[] from(Part part, Way way) {
            if (way == Way.ABOVE) {
                return new int[] {0, 0, 1};
            }
            int out = part.role().isLow() ? -1 : 1;
            return switch (part.normal()) {
                case X -> new int[] {out, 0, 0};
                case Y -> new int[] {0, out, 0};
                case Z -> new int[] {0, 0, out};
            };
        }

        /** Whether a part on its way from far off goes through another. */
        private boolean meet(Part moved, Part there, int x, int y, int z) {
            for (Cuboid p : blocks.get(moved)) {
                Cuboid way = new Cuboid(
                        p.x0() + Math.min(0, x) * FAR,
                        p.y0() + Math.min(0, y) * FAR,
                        p.z0() + Math.min(0, z) * FAR,
                        p.x1() + Math.max(0, x) * FAR,
                        p.y1() + Math.max(0, y) * FAR,
                        p.z1() + Math.max(0, z) * FAR);
                if (blocks.get(there).stream().anyMatch(q -> common(way, q) == 3)) {
                    return true;
                }
            }
            return false;
        }

        private static int common(Cuboid p, Cuboid q) {
            int common = 0;
            for (Axis axis : Axis.values()) {
                common += overlap(p, q, axis) > SLACK ? 1 : 0;
            }
            return common;
        }

        private static double overlap(Cuboid p, Cuboid q, Axis axis) {
            return Math.min(p.high(axis), q.high(axis)) - Math.max(p.low(axis), q.low(axis));
        }

        /** Whether faces lie on each other, with no more than a gasket or the play of joints between. */
        private boolean touch(Part one, Part other) {
            double apart =
                    solid.box().joinery().gasket() + solid.box().joinery().fitClearance() + SLACK;
            for (Cuboid p : blocks.get(one)) {
                for (Cuboid q : blocks.get(other)) {
                    boolean near = true;
                    for (Axis axis : Axis.values()) {
                        near &= overlap(p, q, axis) > -apart;
                    }
                    if (near && common(p, q) == 2) {
                        return true;
                    }
                }
            }
            return false;
        }
    }

    /** A box with both kinds of seams: what is glued beforehand are the two halves at the glued seam, not the third stretch. */
    @Test
    void onlyHalvesAtGluedSeamsAreGluedBeforehand() {
        Box box = null;
        RandomBoxes boxes = new RandomBoxes(7);
        while (box == null) {
            Box next = boxes.next();
            boolean long3 = next.clearLength() > 1.2
                    && next.passes() == 1
                    && next.shell().size() == 1;
            box = long3 ? seamed(next) : null;
        }
        Solid solid = SolidBuilder.build(box);
        Step join = AssemblyOrder.of(solid, false).stream()
                .filter(step -> step.kind() == Kind.JOIN)
                .findFirst()
                .orElseThrow();
        assertThat(join.parts()).isNotEmpty().allMatch(p -> p instanceof Panel && p.stretch() <= 1);
        assertThat(join.parts()).anyMatch(p -> p.stretch() == 0).anyMatch(p -> p.stretch() == 1);
        assertThat(join.parts()).noneMatch(LinerPiece.class::isInstance);
    }

    private static Box seamed(Box box) {
        try {
            Box made = box.joined(
                    box.joinery(), List.of(new Seam(Seam.Kind.GLUED, 0.4), new Seam(Seam.Kind.PARTING, 0.9)));
            SolidBuilder.build(made);
            return made;
        } catch (InvalidValue inTheWay) {
            return null;
        }
    }
}
