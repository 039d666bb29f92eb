package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The box put together from its printed sizes. */
class PrintedFitTest {
    private static Box box(double thickness, int layers, Joinery joinery) {
        Board board = new Board("board", thickness, 700, 3e9, 0.02, false, "test");
        Port end = new Port(PortFace.END, 0.1, 0.2, 0);
        List<Board> shell = java.util.Collections.nCopies(layers, board);
        return new Box(Box.Form.MAZE, 1, 0.1, 0.2, 0.6, 0, shell, board, 1, null, LinedFaces.NONE, end, end)
                .joined(joinery, List.of());
    }

    /**
     * Validation, by hand. One layer of 18: ends 100, sides 636, back 636 x 136: all whole tenths, nothing off. With boards of
     * 18.04: back 136.08, printed 136.1; what it covers is 100 + 2 x 18.04 = 136.08: 0.02 off. Sides and back are both
     * printed 636.1, so nothing is off along the length.
     */
    @Test
    void millimetresByHand() {
        assertThat(PrintedFit.of(SolidBuilder.build(box(0.018, 1, Joinery.PLAIN)), UnitSystem.METRIC))
                .isEqualTo(new PrintedFit(0, 0));
        PrintedFit odd = PrintedFit.of(SolidBuilder.build(box(0.01804, 1, Joinery.PLAIN)), UnitSystem.METRIC);
        assertThat(odd.step()).isCloseTo(0.00002, within(1e-9));
        assertThat(odd.closes()).isTrue();
    }

    /**
     * Validation, by hand, in 1/32 in = 0.79375 mm. Two layers of 18, plain: ends 100 print 126/32 = 100.0125; the frame is
     * 136.0125 wide. The cover's 136 print 171/32 = 135.73, which goes in; its 636 and the side's are one number.
     */
    @Test
    void inchesByHand() {
        PrintedFit fit = PrintedFit.of(SolidBuilder.build(box(0.018, 2, Joinery.PLAIN)), UnitSystem.INCH);
        assertThat(fit.closes()).isTrue();
        // Back, first layer: 135.73 printed over 136.0125: 0.281 short. Ends, second layer: 172 → 217/32 = 172.244 over
        // 172.0125: 0.231. Heights: sides 200 → 252/32 = 200.025; ends, second layer 272 → 343/32 = 272.256 over
        // 272.025.
        assertThat(fit.step()).isCloseTo(0.00028125, within(1e-9));
    }

    /** Property: with the usual joints every random box closes in both unit systems, and no step is wider than it says. */
    @Test
    void tenThousandRandomBoxesCloseFromTheirPrintedSizes() {
        RandomBoxes boxes = new RandomBoxes(61);
        double worstMetric = 0;
        double worstInch = 0;
        for (int i = 0; i < 10_000; i++) {
            Box box = boxes.next();
            Box usual = box.joined(Joinery.usual(), List.of());
            PrintedFit metric = PrintedFit.of(SolidBuilder.build(usual), UnitSystem.METRIC);
            PrintedFit inch = PrintedFit.of(SolidBuilder.build(usual), UnitSystem.INCH);
            assertThat(metric.tight()).as("box %d %s", i, usual).isZero();
            assertThat(inch.tight()).as("box %d %s", i, usual).isZero();
            worstMetric = Math.max(worstMetric, metric.step());
            worstInch = Math.max(worstInch, inch.step());
        }
        // Each printed size is at most half a step off, so that a difference of two is at most one step.
        assertThat(worstMetric).isBetween(0.00005, 0.0001 + 1e-9);
        assertThat(worstInch).isBetween(0.0005, 0.00079375 + 1e-9);
    }

    /** A plain box in inches may come out tight, and is said to: somewhere among random boxes there is one. */
    @Test
    void withoutPlaySomeBoxesAreTight() {
        RandomBoxes boxes = new RandomBoxes(62);
        boolean found = false;
        for (int i = 0; i < 300 && !found; i++) {
            Box plain = boxes.next().joined(Joinery.PLAIN, List.of());
            PrintedFit fit = PrintedFit.of(SolidBuilder.build(plain), UnitSystem.INCH);
            found = !fit.closes();
            assertThat(fit.tight()).isLessThanOrEqualTo(0.00079375 + 1e-9);
        }
        assertThat(found).isTrue();
    }
}
