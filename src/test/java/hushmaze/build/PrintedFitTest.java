package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Groove;
import hushmaze.solid.Panel;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The box put together from its printed sizes. */
class PrintedFitTest {
    private static Box box(double thickness, int layers, Joinery joinery) {
        Board board = new Board("board", thickness, 700, 3e9, 0.02, false, "test");
        Port end = new Port(PortFace.END, 0.08, 0.15, 0);
        List<Board> shell = java.util.Collections.nCopies(layers, board);
        return new Box(Box.Form.MAZE, 1, 0.1, 0.2, 0.6, 0, shell, board, 1, null, LinedFaces.NONE, end, end)
                .joined(joinery, List.of());
    }

    private static PrintedFit fit(Box box, UnitSystem units) {
        Solid solid = SolidBuilder.build(box);
        return PrintedFit.of(solid, CutListMaker.of(solid), units);
    }

    /** Two passes 100 wide and 200 high of one layer, the baffle of the same board. */
    private static Box grooved(double thickness, Joinery joinery) {
        Board board = new Board("board", thickness, 700, 3e9, 0.02, false, "test");
        Port end = new Port(PortFace.END, 0.08, 0.15, 0);
        return new Box(Box.Form.MAZE, 2, 0.1, 0.2, 0.6, 0.12, List.of(board), board, 1, null, LinedFaces.NONE, end, end)
                .joined(joinery, List.of());
    }

    /**
     * Validation, by hand, in 1/32 in = 0.79375 mm. Boards of 18, play 0.5, grooves 6 deep. In the back, from its edge, the
     * groove is 18 + 100 - 0.25 = 117.75 = 148.3/32 to 136.25 = 171.7/32: printed 148/32 to 172/32. In the end it is 99.75 =
     * 125.7/32 to 118.25; but the end's 218 are printed 275/32, 0.28 more, and it may be measured from either edge: 125/32 to
     * 118.53 = 149.3/32, printed 150/32. Seen from the first side's inner face the back's is from 99.475 to 118.525, the
     * end's from 99.219 to 119.062; the baffle is 18. Gasket 0: walls 200 = 252/32, baffle 200 + 5.5 = 205.5, printed 259/32: the
     * groove must be 7/32 deep at least; 6 = 7.6/32 is printed 8/32.
     */
    @Test
    void aGrooveTakesItsBaffleInInches() {
        Solid solid = SolidBuilder.build(grooved(0.018, new Joinery(0.0005, 0, 0.006)));
        CutList list = CutListMaker.of(solid);
        PrintedSizes sizes = PrintedSizes.of(solid, list, UnitSystem.INCH);
        double step = 0.00079375;
        Groove back = grooveOf(sizes, solid, Role.BACK);
        assertThat(back.v0()).isCloseTo(148 * step, within(1e-9));
        assertThat(back.v1()).isCloseTo(172 * step, within(1e-9));
        assertThat(back.depth()).isCloseTo(8 * step, within(1e-9));
        Groove end = grooveOf(sizes, solid, Role.NEAR_END);
        assertThat(end.u0()).isCloseTo(125 * step, within(1e-9));
        assertThat(end.u1()).isCloseTo(150 * step, within(1e-9));
        assertThat(PrintedFit.of(solid, list, UnitSystem.INCH).closes()).isTrue();
    }

    private static Groove grooveOf(PrintedSizes sizes, Solid solid, Role role) {
        Panel panel = solid.panels().stream()
                .filter(p -> p.role() == role)
                .findFirst()
                .orElseThrow();
        return sizes.of(panel).grooves().get(0);
    }

    /**
     * Validation, by hand: a baffle of 18.4 in the same box, cut for boards of 18.0 and a play of 0.2. The back is flush with
     * the outside of the first side, so that its groove, 117.9 to 136.1 from there, is 99.5 to 117.7 from the inner face; the
     * end's is 99.9 to 118.1. Through both go 17.8: 0.6 too little.
     */
    @Test
    void aThickerBaffleDoesNotGoIn() {
        Solid solid = SolidBuilder.build(grooved(0.018, new Joinery(0.0002, 0, 0.006)));
        BoardCheck check = BoardCheck.of(solid, CutListMaker.of(solid)).get(0);
        assertThat(check.ignored(solid, 0.0004).tight()).isCloseTo(0.0006, within(1e-9));
        assertThat(check.ignored(solid, 0).tight()).isZero();
    }

    /** Property: grooves, and only they, close without any play, and whatever the units: they are rounded apart. */
    @Test
    void groovesOfRandomBoxesTakeTheirBafflesWithoutPlay() {
        RandomBoxes boxes = new RandomBoxes(63);
        int compared = 0;
        for (int i = 0; i < 1_500; i++) {
            Box box = boxes.next();
            if (box.passes() == 1 || box.shell().size() > 1) {
                continue;
            }
            double depth = Math.min(0.006, box.shell().get(0).thickness() / 2);
            Box tight;
            try {
                tight = box.joined(new Joinery(0, 0, depth), List.of());
                SolidBuilder.build(tight);
            } catch (InvalidValue aPortBesideTheGroove) {
                continue;
            }
            for (UnitSystem units : UnitSystem.values()) {
                assertThat(fit(tight, units).tight()).as("box %d %s", i, tight).isZero();
            }
            compared++;
        }
        assertThat(compared).isGreaterThan(200);
    }

    /**
     * Validation, by hand. One layer of 18: ends 100, sides 636, back 636 x 136: all whole tenths, nothing off. With boards of
     * 18.04: back 136.08, printed 136.1; what it covers is 100 + 2 x 18.04 = 136.08: 0.02 off. Sides and back are both
     * printed 636.1, so nothing is off along the length.
     */
    @Test
    void millimetresByHand() {
        assertThat(fit(box(0.018, 1, Joinery.PLAIN), UnitSystem.METRIC)).isEqualTo(new PrintedFit(0, 0));
        PrintedFit odd = fit(box(0.01804, 1, Joinery.PLAIN), UnitSystem.METRIC);
        assertThat(odd.step()).isCloseTo(0.00002, within(1e-9));
        assertThat(odd.closes()).isTrue();
    }

    /**
     * Validation, by hand, in 1/32 in = 0.79375 mm. Two layers of 18, plain: ends 100 print 126/32 = 100.0125; the frame is
     * 136.0125 wide. The cover's 136 print 171/32 = 135.73, which goes in; its 636 and the side's are one number.
     */
    @Test
    void inchesByHand() {
        PrintedFit fit = fit(box(0.018, 2, Joinery.PLAIN), UnitSystem.INCH);
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
            Box usual = usual(box);
            PrintedFit metric = fit(usual, UnitSystem.METRIC);
            PrintedFit inch = fit(usual, UnitSystem.INCH);
            assertThat(metric.tight()).as("box %d %s", i, usual).isZero();
            assertThat(inch.tight()).as("box %d %s", i, usual).isZero();
            worstMetric = Math.max(worstMetric, metric.step());
            worstInch = Math.max(worstInch, inch.step());
        }
        // Each printed size is at most half a step off, so that a difference of two is at most one step.
        assertThat(worstMetric).isBetween(0.00005, 0.0001 + 1e-9);
        assertThat(worstInch).isBetween(0.0005, 0.00079375 + 1e-9);
    }

    /** With the usual play and gasket, every other box with its baffles in grooves where ports leave room for them. */
    private static Box usual(Box box) {
        Joinery usual = Joinery.usual();
        if (box.passes() % 2 == 0 && box.shell().get(0).thickness() >= 0.012) {
            Box grooved = box.joined(new Joinery(usual.fitClearance(), usual.gasket(), 0.006), List.of());
            try {
                SolidBuilder.build(grooved);
                return grooved;
            } catch (InvalidValue aPortBesideTheGroove) {
                return box.joined(usual, List.of());
            }
        }
        return box.joined(usual, List.of());
    }

    /** A plain box in inches may come out tight, and is said to: somewhere among random boxes there is one. */
    @Test
    void withoutPlaySomeBoxesAreTight() {
        RandomBoxes boxes = new RandomBoxes(62);
        boolean found = false;
        for (int i = 0; i < 300 && !found; i++) {
            Box plain = boxes.next().joined(Joinery.PLAIN, List.of());
            PrintedFit fit = fit(plain, UnitSystem.INCH);
            found = !fit.closes();
            assertThat(fit.tight()).isLessThanOrEqualTo(0.00079375 + 1e-9);
        }
        assertThat(found).isTrue();
    }
}
