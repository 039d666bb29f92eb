package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import hushmaze.material.Sheet;
import hushmaze.quantity.InvalidValue;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

/**
 * Property: every layout of random jobs passes the independent {@link LayoutCheck}. Validation: cases whose least number of
 * sheets follows from arithmetic written beside them, and sheets that were cut up at random and must fit together again.
 */
class GuillotineNesterTest {
    private static final Effort SHORT = Effort.rounds(400);

    private static Sheet sheet(double lengthMm, double widthMm, Double price, Integer stock) {
        return new Sheet(lengthMm + "x" + widthMm, lengthMm / 1000, widthMm / 1000, price, stock, "test");
    }

    private static Sheet sheet(double lengthMm, double widthMm) {
        return sheet(lengthMm, widthMm, null, null);
    }

    private static NestPart part(String mark, int quantity, double lengthMm, double widthMm) {
        return new NestPart(mark, quantity, lengthMm / 1000, widthMm / 1000, false);
    }

    private static SheetLayout nest(List<NestPart> parts, List<Sheet> sheets, double kerfMm, double trimMm) {
        NestJob job = new NestJob("board", 0.018, parts, sheets, kerfMm / 1000, trimMm / 1000);
        SheetLayout layout = GuillotineNester.nest(job, SHORT, Progress.NONE);
        assertThat(LayoutCheck.faults(layout, job)).isEmpty();
        return layout;
    }

    @Test
    void noKerfAfterAPieceThatFillsTheRestExactly() {
        // 3 x 400 + 2 cuts x 3 = 1206 and 2 x 300 + 1 cut x 3 = 603: six pieces fill 1206 x 603 exactly.
        SheetLayout layout = nest(List.of(part("A", 6, 400, 300)), List.of(sheet(1206, 603)), 3, 0);
        assertThat(layout.sheets()).hasSize(1);
        assertThat(layout.waste())
                .isCloseTo(1 - 6 * 0.4 * 0.3 / (1.206 * 0.603), org.assertj.core.data.Offset.offset(1e-9));
        // one millimetre less and only four or five go on
        assertThat(nest(List.of(part("A", 6, 400, 300)), List.of(sheet(1205, 603)), 3, 0)
                        .sheets())
                .hasSize(2);
    }

    @Test
    void aSliverNarrowerThanTheKerfIsOneCut() {
        // 2 x 400 + 3 = 803; of 805 the second cut takes the last 2 mm and leaves nothing.
        SheetLayout layout = nest(List.of(part("A", 2, 400, 300)), List.of(sheet(805, 300)), 3, 0);
        assertThat(layout.sheets()).hasSize(1);
        assertThat(CutSequence.of(layout.sheets().get(0)).steps()).hasSize(2);
        assertThat(CutSequence.of(layout.sheets().get(0))
                        .steps()
                        .get(1)
                        .second()
                        .kind())
                .isEqualTo(CutSequence.Kind.DUST);
    }

    @Test
    void trimIsTakenOffAllFourEdges() {
        // 2440 - 2 x 5 = 2430 by 1220 - 2 x 5 = 1210: a piece of just that size fits, 0.1 mm more does not.
        assertThat(nest(List.of(part("A", 1, 2430, 1210)), List.of(sheet(2440, 1220)), 3.2, 5)
                        .unplaced())
                .isEmpty();
        assertThat(nest(List.of(part("A", 1, 2430.1, 1210)), List.of(sheet(2440, 1220)), 3.2, 5)
                        .unplaced())
                .containsExactly("A");
    }

    @Test
    void grainKeepsTheLengthAlongTheSheet() {
        // Along the sheet two pieces of 1000 fit in 2440 and one of 700 across 1220: 2 a sheet, 3 sheets for 6.
        NestPart locked = new NestPart("A", 6, 1, 0.7, true);
        assertThat(nest(List.of(locked), List.of(sheet(2440, 1220)), 0, 0).sheets())
                .hasSize(3);
        // Turned, three of 700 fit in 2440 and one of 1000 in 1220: 3 a sheet, 2 sheets.
        assertThat(nest(List.of(part("A", 6, 1000, 700)), List.of(sheet(2440, 1220)), 0, 0)
                        .sheets())
                .hasSize(2);
        // A piece that only fits turned is not placed when grain forbids it.
        NestPart across = new NestPart("B", 1, 1.2, 2.4, true);
        assertThat(nest(List.of(across), List.of(sheet(2440, 1220)), 0, 0).unplaced())
                .containsExactly("B");
    }

    @Test
    void fourPiecesThatOnlyFitAsAPinwheelNeedTwoSheets() {
        // 3x2 twice upright and twice lying close round a hole of 1x1 in 5x5: no cut runs from edge to edge.
        SheetLayout layout = nest(List.of(part("A", 4, 300, 200)), List.of(sheet(500, 500)), 0, 0);
        assertThat(layout.sheets()).hasSize(2);
        assertThat(layout.lowerBound()).isEqualTo(1);
        List<SheetPlan.Placed> pinwheel = List.of(
                new SheetPlan.Placed("A", 0, 0, 0.3, 0.2, false),
                new SheetPlan.Placed("A", 0.3, 0, 0.2, 0.3, true),
                new SheetPlan.Placed("A", 0.2, 0.3, 0.3, 0.2, false),
                new SheetPlan.Placed("A", 0, 0.2, 0.2, 0.3, true));
        assertThat(LayoutCheck.separable(pinwheel, 0)).isFalse();
    }

    @Test
    void cheapestSheetsAreTaken() {
        // One piece of 1000 x 500: the small sheet at 20 beats the large one at 50.
        Sheet small = sheet(1250, 610, 20.0, null);
        Sheet large = sheet(2500, 1220, 50.0, null);
        assertThat(nest(List.of(part("A", 1, 1000, 500)), List.of(large, small), 3, 5)
                        .sheets())
                .extracting(SheetPlan::sheet)
                .containsExactly(small);
        // Four of them: large holds 2 x 2 for 50, four small ones cost 80.
        assertThat(nest(List.of(part("A", 4, 1000, 500)), List.of(large, small), 3, 5)
                        .sheets())
                .extracting(SheetPlan::sheet)
                .containsExactly(large);
        // Five: one of each for 70 is least.
        assertThat(nest(List.of(part("A", 5, 1000, 500)), List.of(large, small), 3, 5)
                        .sheets())
                .extracting(SheetPlan::sheet)
                .containsExactly(large, small);
    }

    @Test
    void withoutPricesTheLeastAreaIsTaken() {
        Sheet small = sheet(1250, 610);
        Sheet large = sheet(2500, 1220);
        assertThat(nest(List.of(part("A", 5, 1000, 500)), List.of(large, small), 3, 5)
                        .sheets())
                .extracting(SheetPlan::sheet)
                .containsExactly(large, small);
    }

    @Test
    void stockIsNotExceededAndTheRestIsReported() {
        // Each sheet holds one piece; there are two free offcuts and one sheet to buy, so one of four pieces is left.
        Sheet offcut = sheet(700, 500, 0.0, 2);
        Sheet bought = sheet(800, 600, 10.0, 1);
        SheetLayout layout = nest(List.of(part("A", 4, 600, 400)), List.of(bought, offcut), 3, 5);
        assertThat(layout.sheets()).hasSize(3);
        assertThat(layout.unplaced()).containsExactly("A");
        // For two pieces the offcuts are enough and cost nothing.
        assertThat(nest(List.of(part("A", 2, 600, 400)), List.of(bought, offcut), 3, 5)
                        .sheets())
                .extracting(SheetPlan::sheet)
                .containsExactly(offcut, offcut);
    }

    @Test
    void bigPiecesNeedASheetEach() {
        // 600 + 600 > 1000 both ways: no two share a sheet, though their area of 3 x 0.36 fits on 2 sheets of 1 m2.
        SheetLayout layout = nest(List.of(part("A", 3, 600, 600)), List.of(sheet(1000, 1000)), 0, 0);
        assertThat(layout.lowerBound()).isEqualTo(3);
        assertThat(layout.sheets()).hasSize(3);
    }

    @Test
    void theOffcutIsKeptInOnePiece() {
        // Four pieces of 300 x 200 on 1220 x 800: in one row of 1200 they leave at least 1220 x 600 less nothing.
        SheetLayout layout = nest(List.of(part("A", 4, 300, 200)), List.of(sheet(1220, 800)), 0, 0);
        double largest = CutReplay.of(layout.sheets().get(0)).stream()
                .filter(CutReplay.Spot::offcut)
                .mapToDouble(spot -> spot.length() * spot.width())
                .max()
                .orElse(0);
        assertThat(largest).isGreaterThanOrEqualTo(1.22 * 0.6 - 1e-9);
    }

    @Test
    void sheetsCutAtRandomFitTogetherAgain() {
        SplittableRandom random = new SplittableRandom(11);
        for (int i = 0; i < 40; i++) {
            int sheets = 1 + random.nextInt(3);
            List<NestPart> parts = new ArrayList<>();
            for (int s = 0; s < sheets; s++) {
                cutUp(2430, 1210, 3.2, i < 20 ? 2 : 3, random, parts);
            }
            SheetLayout layout = nest(parts, List.of(sheet(2440, 1220)), 3.2, 5);
            // small ones must be put together perfectly; of larger ones no more than one sheet may be lost
            assertThat(layout.sheets().size()).isBetween(layout.lowerBound(), sheets + (i < 20 ? 0 : 1));
        }
    }

    private static void cutUp(
            double length, double width, double kerf, int depth, SplittableRandom random, List<NestPart> parts) {
        boolean rip = width > 400 && (length < 400 || random.nextBoolean());
        double size = rip ? width : length;
        if (depth == 0 || size < 400) {
            parts.add(part("P" + parts.size(), 1, length, width));
            return;
        }
        double at = Math.round(100 + random.nextDouble() * (size - 200 - kerf));
        double rest = Math.round((size - at - kerf) * 1e6) / 1e6;
        cutUp(rip ? length : at, rip ? at : width, kerf, depth - 1, random, parts);
        cutUp(rip ? length : rest, rip ? rest : width, kerf, depth - 1, random, parts);
    }

    @Test
    void layoutsOfRandomJobsPassTheCheck() {
        SplittableRandom random = new SplittableRandom(5);
        for (int i = 0; i < 120; i++) {
            List<NestPart> parts = new ArrayList<>();
            int kinds = 1 + random.nextInt(12);
            for (int k = 0; k < kinds; k++) {
                double length = 0.02 + 1.6 * random.nextDouble();
                double width = 0.02 + 1.0 * random.nextDouble();
                parts.add(new NestPart("P" + k, 1 + random.nextInt(5), length, width, random.nextInt(4) == 0));
            }
            List<Sheet> sheets = new ArrayList<>();
            for (int k = random.nextInt(3); k >= 0; k--) {
                Double price = random.nextBoolean() ? Double.valueOf(random.nextInt(60)) : null;
                Integer stock = random.nextInt(3) == 0 ? Integer.valueOf(random.nextInt(4)) : null;
                sheets.add(sheet(1000 + random.nextInt(2000), 600 + random.nextInt(1200), price, stock));
            }
            nest(parts, sheets, random.nextInt(3) * 2.4, random.nextInt(3) * 7.5);
        }
    }

    @Test
    void theSameJobGivesTheSameLayout() {
        List<NestPart> parts = List.of(part("A", 7, 612, 344), part("B", 9, 433, 287), part("C", 5, 911, 188));
        List<Sheet> sheets = List.of(sheet(2440, 1220), sheet(1220, 610));
        assertThat(nest(parts, sheets, 3.2, 5)).isEqualTo(nest(parts, sheets, 3.2, 5));
    }

    /** By hand: an offcut on hand costs nothing, even where what is bought has no price; so it is cut first, as far as it goes. */
    @Test
    void offcutsOnHandComeFirst() {
        Sheet onHand = sheet(700, 500, 0.0, 1);
        Sheet bought = sheet(2440, 1220);
        SheetLayout one = nest(List.of(part("A", 1, 600, 400)), List.of(bought, onHand), 3, 5);
        assertThat(one.sheets()).extracting(SheetPlan::sheet).containsExactly(onHand);
        assertThat(one.cost()).hasValue(0);
        assertThat(one.provedBest()).isTrue();
        SheetLayout two = nest(List.of(part("A", 2, 600, 400)), List.of(bought, onHand), 3, 5);
        assertThat(two.sheets()).extracting(SheetPlan::sheet).contains(bought);
        assertThat(two.unplaced()).isEmpty();
        assertThat(two.cost()).isEmpty();
    }

    /**
     * By hand: a sheet of 1000 x 600 without trim and kerf, one piece of 1000 x 400: 1000 x 200 is left and worth keeping; of
     * a piece of 1000 x 500 only 1000 x 100, and both sides must be 150.
     */
    @Test
    void offcutsWorthKeepingAreListed() {
        SheetLayout layout = nest(List.of(part("A", 1, 1000, 400)), List.of(sheet(1000, 600, 12.0, null)), 0, 0);
        assertThat(layout.offcuts()).singleElement().satisfies(o -> {
            assertThat(o.sheet()).isEqualTo(1);
            assertThat(o.length()).isCloseTo(1, org.assertj.core.data.Offset.offset(1e-9));
            assertThat(o.width()).isCloseTo(0.2, org.assertj.core.data.Offset.offset(1e-9));
        });
        assertThat(layout.cost()).hasValue(12);
        assertThat(nest(List.of(part("A", 1, 1000, 500)), List.of(sheet(1000, 600)), 0, 0)
                        .offcuts())
                .isEmpty();
    }

    /** By hand: two rows of pieces 300 and 200 wide; each width is set once if equal ones follow each other: 2 rips, 1 crosscut. */
    @Test
    void equalCutsFollowEachOther() {
        SheetLayout layout =
                nest(List.of(part("A", 2, 500, 300), part("B", 2, 500, 200)), List.of(sheet(1000, 500)), 0, 0);
        assertThat(layout.sheets()).hasSize(1);
        // One rip at 300 or one crosscut at 500 first, then one setting for both halves.
        assertThat(layout.fenceSettings()).isEqualTo(2);
    }

    /** Twenty thousand pieces: the search stops at once when told to, while it still lays out its first layout. */
    @Test
    void aLargeSearchCanBeStoppedBeforeItsFirstLayout() {
        NestJob job = new NestJob("board", 0, List.of(part("A", 20_000, 300, 200)), List.of(sheet(2440, 1220)), 0, 0);
        int[] told = {0};
        Progress stopped = (fraction, doing) -> {
            if (++told[0] == 3) {
                throw new Progress.Cancelled();
            }
        };
        assertThatThrownBy(() -> GuillotineNester.nest(job, SHORT, stopped)).isInstanceOf(Progress.Cancelled.class);
        assertThat(told[0]).isEqualTo(3);
    }

    @Test
    void theSearchCanBeStopped() {
        NestJob job = new NestJob("board", 0, List.of(part("A", 50, 300, 200)), List.of(sheet(2440, 1220)), 0, 0);
        Progress stopped = (fraction, doing) -> {
            throw new Progress.Cancelled();
        };
        assertThatThrownBy(() -> GuillotineNester.nest(job, SHORT, stopped)).isInstanceOf(Progress.Cancelled.class);
    }

    @Test
    void badJobsAreRefusedWithValueLimitAndUnit() {
        assertThatThrownBy(() -> part("A", 0, 100, 100))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("quantity: 0")
                .hasMessageContaining("from 1 to 20000");
        assertThatThrownBy(() -> part("A", 1, -5, 100))
                .hasMessageContaining("length: -5 mm")
                .hasMessageContaining("from 1 to 10000 mm");
        assertThatThrownBy(() -> nest(List.of(part("A", 1, 10, 10)), List.of(sheet(100, 60)), 3, 30))
                .hasMessageContaining("100 x 60 mm")
                .hasMessageContaining("63 mm");
        assertThatThrownBy(() ->
                        nest(List.of(part("A", 15000, 10, 10), part("B", 5001, 10, 10)), List.of(sheet(100, 60)), 3, 0))
                .hasMessageContaining("20001 pieces")
                .hasMessageContaining("at most 20000");
        assertThatThrownBy(
                        () -> nest(List.of(part("A", 1, 10, 10), part("A", 1, 20, 10)), List.of(sheet(100, 60)), 3, 0))
                .hasMessageContaining("mark: \"A\" a second time");
    }
}
