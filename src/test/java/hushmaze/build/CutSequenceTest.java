package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.build.CutNode.Along;
import hushmaze.build.CutNode.Cut;
import hushmaze.build.CutNode.Leaf;
import hushmaze.material.Sheet;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Validation: the steps of a sheet cut by hand. Property: following the steps of random sheets with nothing but a saw of
 * the given kerf gives every panel in its size.
 */
class CutSequenceTest {
    private static final double MILLIONTH_OF_A_MILLIMETRE = 1.0001e-9;

    @Test
    void shortEdgesAlongTheFenceAreTold() {
        // 800 x 250 is crosscut at 300: the edge along the fence is 250, less than 300 (common practice, no
        // source).
        // 500 x 400 is crosscut at 450: its 400 along the fence are less than the 450 that it holds.
        Leaf offcut = new Leaf(null, 0, 0);
        assertThat(unsteady(new Cut(Along.WIDTH, 0.3, new Leaf("A", 0.3, 0.25), offcut), 0.8, 0.25))
                .isTrue();
        assertThat(unsteady(new Cut(Along.WIDTH, 0.45, new Leaf("A", 0.45, 0.4), offcut), 0.5, 0.4))
                .isTrue();
        assertThat(unsteady(new Cut(Along.WIDTH, 0.4, new Leaf("A", 0.4, 0.4), offcut), 0.5, 0.4))
                .isFalse();
        assertThat(unsteady(new Cut(Along.LENGTH, 0.1, new Leaf("A", 0.5, 0.1), offcut), 0.5, 0.4))
                .isFalse();
        // A strip of 18 31/32 in by 96 19/32 in is crosscut at 10 in: its 482 along the fence are less than half of
        // 2454.
        assertThat(unsteady(new Cut(Along.WIDTH, 0.254, new Leaf("A", 0.254, 0.482), offcut), 2.454, 0.482))
                .isTrue();
    }

    private static boolean unsteady(CutNode cuts, double length, double width) {
        Sheet sheet = new Sheet("sheet", length, width, null, null, "test");
        SheetPlan plan = new SheetPlan(sheet, 0, 0.004, 0.03, cuts, List.of());
        return CutSequence.of(plan).steps().get(0).unsteady();
    }

    @Test
    void stepsOfASheetCutByHand() {
        // 1000 x 600, no trim, kerf 4. Rip at 400: 1000 x 400, and 600 - 400 - 4 = 196 is left as an offcut 1000 x 196.
        // The strip is crosscut at 300 twice: A 300 x 400, A 300 x 400, and 1000 - 2 x 304 = 392 x 400 is B.
        CutNode strip = new Cut(
                Along.WIDTH,
                0.3,
                new Leaf("A", 0.3, 0.4),
                new Cut(Along.WIDTH, 0.3, new Leaf("A", 0.3, 0.4), new Leaf("B", 0.392, 0.4)));
        CutNode cuts = new Cut(Along.LENGTH, 0.4, strip, new Leaf(null, 1.0, 0.196));
        Sheet sheet = new Sheet("sheet", 1, 0.6, null, null, "test");
        // A is 400 long by itself, so that it lies across; B lies as it is.
        List<SheetPlan.Placed> placed = List.of(
                new SheetPlan.Placed("A", 0, 0, 0.3, 0.4, true),
                new SheetPlan.Placed("A", 0.304, 0, 0.3, 0.4, true),
                new SheetPlan.Placed("B", 0.608, 0, 0.392, 0.4, false));
        SheetPlan plan = new SheetPlan(sheet, 0, 0.004, 0.03, cuts, placed);
        CutSequence sequence = CutSequence.of(plan);

        assertThat(sequence.steps()).hasSize(3);
        assertThat(plan.turned(sequence.steps().get(2).first())).isTrue();
        assertThat(plan.turned(sequence.steps().get(2).second())).isFalse();
        assertThat(plan.turned(sequence.steps().get(0).first())).isFalse();
        CutSequence.Step rip = sequence.steps().get(0);
        assertThat(rip.number()).isEqualTo(1);
        assertThat(rip.along()).isEqualTo(Along.LENGTH);
        assertThat(rip.fence()).isEqualTo(0.4);
        assertThat(rip.from().kind()).isEqualTo(CutSequence.Kind.SHEET);
        assertThat(rip.first()).isEqualTo(new CutSequence.Piece(CutSequence.Kind.PART_SHEET, "P1", 1, 0.4));
        assertThat(rip.second().kind()).isEqualTo(CutSequence.Kind.OFFCUT);
        CutSequence.Step last = sequence.steps().get(2);
        assertThat(last.first().name()).isEqualTo("A");
        assertThat(last.second().name()).isEqualTo("B");
        // B is what the last cut leaves, so that its 392 hangs on the sheet and the blade; the strip before it is cut
        // on
        assertThat(sequence.steps()).extracting(CutSequence.Step::left).containsExactly(false, false, true);
        assertThat(last.beyond()).isEqualTo(0.392, within(MILLIONTH_OF_A_MILLIMETRE));
        // the strip's edge along the fence is 400 long: longer than the 300 that are cut off, but less than half of the
        // 1000 across the first crosscut; across the second there are 696, no more than twice 400
        assertThat(sequence.steps()).extracting(CutSequence.Step::unsteady).containsExactly(false, true, false);
        // two settings: 400 for the rip, 300 for both crosscuts
        assertThat(sequence.fenceSettings()).isEqualTo(2);
        assertThat(CutReplay.of(cuts, 1, 0.6, 0.004, 0)).hasSize(4).anySatisfy(spot -> {
            assertThat(spot.mark()).isEqualTo("B");
            // two cuts of 300 and two kerfs of 4
            assertThat(spot.x()).isCloseTo(0.608, org.assertj.core.data.Offset.offset(1e-12));
        });
    }

    @Test
    void anotherBladeChangesOnlyWhatIsToldToBeLeft() {
        SplittableRandom random = new SplittableRandom(20);
        int sheets = 0;
        int withoutRests = 0;
        for (int i = 0; i < 40; i++) {
            List<NestPart> parts = new ArrayList<>();
            for (int k = 0; k < 8; k++) {
                double length = Math.round(100 + 800 * random.nextDouble()) / 1000.0;
                double width = Math.round(50 + 500 * random.nextDouble()) / 1000.0;
                parts.add(new NestPart("P" + k, 1 + random.nextInt(4), length, width, false));
            }
            Sheet sheet = new Sheet("s", 2.44, 1.22, null, null, "test");
            NestJob job = new NestJob("board", 0.018, parts, List.of(sheet), 0.002, 0.005);
            for (SheetPlan plan : GuillotineNester.nest(job, Effort.rounds(100), Progress.NONE)
                    .sheets()) {
                sheets++;
                if (CutSequence.of(plan).steps().stream().noneMatch(CutSequence.Step::left)) {
                    withoutRests++;
                    List<CutSequence.Piece> made = new ArrayList<>();
                    saw(plan.cuts(), 2.43, 1.21, 0.0032, made);
                    made.forEach(piece -> requirePart(piece, part(parts, piece.name())));
                }
            }
        }
        // the others (8 of 64 when this was written) have a row that panels fill wholly, so that one of them must be
        // left
        assertThat(withoutRests).isGreaterThan(sheets * 4 / 5);
    }

    /** Saws with the fence set as told and another blade. */
    private static void saw(CutNode node, double length, double width, double kerf, List<CutSequence.Piece> made) {
        if (node instanceof Cut cut) {
            boolean rip = cut.along() == Along.LENGTH;
            double rest = (rip ? width : length) - cut.at() - kerf;
            saw(cut.first(), rip ? length : cut.at(), rip ? cut.at() : width, kerf, made);
            saw(cut.second(), rip ? length : rest, rip ? rest : width, kerf, made);
        } else if (node instanceof Leaf leaf && !leaf.offcut()) {
            made.add(new CutSequence.Piece(CutSequence.Kind.PANEL, leaf.mark(), length, width));
        }
    }

    private static NestPart part(List<NestPart> parts, String mark) {
        return parts.stream()
                .filter(part -> part.mark().equals(mark))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void followingTheStepsGivesEveryPanel() {
        SplittableRandom random = new SplittableRandom(8);
        for (int i = 0; i < 60; i++) {
            Map<String, NestPart> parts = new HashMap<>();
            for (int k = 0; k < 8; k++) {
                // sizes in 32nds of an inch and in tenths of a millimetre
                double step = i % 2 == 0 ? 0.0254 / 32 : 0.0001;
                double length = step * Math.ceil((0.1 + 0.8 * random.nextDouble()) / step);
                double width = step * Math.ceil((0.05 + 0.5 * random.nextDouble()) / step);
                parts.put("P" + k, new NestPart("P" + k, 1 + random.nextInt(4), length, width, false));
            }
            NestJob job = new NestJob(
                    "board",
                    0.018,
                    List.copyOf(parts.values()),
                    List.of(new Sheet("s", 2.44, 1.22, null, null, "test")),
                    0.003175,
                    0.005);
            for (SheetPlan plan : GuillotineNester.nest(job, Effort.rounds(100), Progress.NONE)
                    .sheets()) {
                List<String> made = follow(plan, parts);
                List<String> wanted = new ArrayList<>(
                        plan.panels().stream().map(SheetPlan.Placed::mark).toList());
                assertThat(made).containsExactlyInAnyOrderElementsOf(wanted);
            }
        }
    }

    /** Saws as told; the marks of the panels made. */
    private static List<String> follow(SheetPlan plan, Map<String, NestPart> parts) {
        Map<CutSequence.Piece, Integer> bench = new HashMap<>();
        List<String> made = new ArrayList<>();
        List<CutSequence.Step> steps = CutSequence.of(plan).steps();
        for (int i = 0; i < steps.size(); i++) {
            CutSequence.Step step = steps.get(i);
            assertThat(step.number()).isEqualTo(i + 1);
            if (i > 0) {
                assertThat(bench.merge(step.from(), -1, Integer::sum)).isNotNegative();
            }
            boolean rip = step.along() == Along.LENGTH;
            double size = rip ? step.from().width() : step.from().length();
            double rest = Math.max(0, size - step.fence() - plan.kerf());
            requireSize(step.first(), step.from(), rip, step.fence());
            requireSize(step.second(), step.from(), rip, rest);
            for (CutSequence.Piece piece : List.of(step.first(), step.second())) {
                bench.merge(piece, 1, Integer::sum);
                if (piece.kind() == CutSequence.Kind.PANEL) {
                    made.add(piece.name());
                    requirePart(piece, parts.get(piece.name()));
                }
            }
        }
        bench.forEach((piece, count) -> {
            if (piece.kind() == CutSequence.Kind.PART_SHEET) {
                assertThat(count).as("left on the bench: %s", piece).isZero();
            }
        });
        return made;
    }

    private static void requireSize(CutSequence.Piece piece, CutSequence.Piece from, boolean rip, double across) {
        assertThat(rip ? piece.width() : piece.length())
                .isCloseTo(across, org.assertj.core.data.Offset.offset(MILLIONTH_OF_A_MILLIMETRE));
        assertThat(rip ? piece.length() : piece.width()).isEqualTo(rip ? from.length() : from.width());
    }

    private static void requirePart(CutSequence.Piece piece, NestPart part) {
        boolean straight = near(piece.length(), part.length()) && near(piece.width(), part.width());
        boolean turned = near(piece.length(), part.width()) && near(piece.width(), part.length());
        assertThat(straight || turned).as("%s as %s", piece, part).isTrue();
    }

    private static boolean near(double a, double b) {
        return Math.abs(a - b) <= MILLIONTH_OF_A_MILLIMETRE;
    }
}
