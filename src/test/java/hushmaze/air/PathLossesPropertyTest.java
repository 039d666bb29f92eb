package hushmaze.air;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Purpose;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** <em>Property</em> tests of the losses of whole boxes over seeded random boxes and flows. */
class PathLossesPropertyTest {
    private static final AirState AIR = AirState.of(300, 22);
    private static final Board BOARD = new Board("board", 0.018, 750, 3.5e9, 0.02, false, "invented for a test");
    private static final int CASES = 400;

    /** Every figure is a number, ranges are in order, lists add up exactly, places are named once. */
    @Test
    void figuresAreNumbersAndAddUp() {
        RandomBoxes boxes = new RandomBoxes(3);
        Random random = new Random(4);
        for (int i = 0; i < CASES; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Opening.Kind kind = Opening.Kind.values()[random.nextInt(3)];
            Purpose purpose = Purpose.values()[random.nextInt(3)];
            PathAir path = PathLosses.of(solid, opening(kind, random), flow(random), AIR, purpose);
            double total = 0;
            for (Loss loss : path.losses()) {
                assertThat(loss.zetaLow()).isFinite().isNotNegative().isLessThanOrEqualTo(loss.zeta());
                assertThat(loss.zetaHigh()).isFinite().isGreaterThanOrEqualTo(loss.zeta());
                assertThat(loss.velocity()).isFinite().isPositive();
                assertThat(loss.source()).isNotBlank();
                total += loss.pressure();
            }
            assertThat(path.pressure()).isEqualTo(total).isPositive();
            assertThat(path.velocities())
                    .hasSize(2 + solid.passes().size() + solid.turns().size())
                    .allSatisfy(place -> assertThat(place.velocity()).isFinite().isPositive())
                    .extracting(PathAir.PlaceVelocity::part)
                    .doesNotHaveDuplicates();
            assertThat(path.notices()).allSatisfy(notice -> {
                if (notice.value() != null) {
                    assertThat(notice.value()).isFinite();
                }
            });
        }
    }

    /** Faster air never costs less, at any edge. */
    @Test
    void faster() {
        RandomBoxes boxes = new RandomBoxes(5);
        Random random = new Random(6);
        for (int i = 0; i < CASES; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Opening opening = opening(Opening.Kind.values()[random.nextInt(3)], random);
            Purpose purpose = Purpose.values()[random.nextInt(3)];
            double slow = flow(random) / 3;
            PathAir before = PathLosses.of(solid, opening, slow, AIR, purpose);
            PathAir after = PathLosses.of(solid, opening, slow * (1 + 2 * random.nextDouble()), AIR, purpose);
            notLess(before, after);
        }
    }

    /** Thinner air of the same flow never costs more: sea level to 4000 m. */
    @Test
    void higherUp() {
        Random random = new Random(12);
        for (int i = 0; i < CASES / 4; i++) {
            Shape shape = Shape.random(random);
            double flow = flow(random);
            PathAir before = shape.path(flow, AirState.of(4000, 20));
            for (double altitude = 3500; altitude >= 0; altitude -= 500) {
                PathAir after = shape.path(flow, AirState.of(altitude, 20));
                notLess(before, after);
                before = after;
            }
        }
    }

    /** A rougher liner never costs less. */
    @Test
    void rougher() {
        Random random = new Random(7);
        for (int i = 0; i < CASES; i++) {
            Shape shape = Shape.random(random);
            double flow = flow(random);
            notLess(
                    shape.path(flow),
                    shape.withRoughness(shape.roughness + 0.003).path(flow));
        }
    }

    /** Narrower passes with ports as wide, at the same gap over width, never cost less. */
    @Test
    void narrower() {
        Random random = new Random(8);
        for (int i = 0; i < CASES; i++) {
            Shape shape = Shape.random(random);
            double flow = flow(random);
            notLess(
                    shape.path(flow),
                    shape.withWidth(shape.width * (0.5 + 0.5 * random.nextDouble()))
                            .path(flow));
        }
    }

    /** One more pass, and so one more turn, never costs less. */
    @Test
    void moreTurns() {
        Random random = new Random(9);
        for (int i = 0; i < CASES; i++) {
            Shape shape = Shape.random(random);
            double flow = flow(random);
            notLess(shape.path(flow), shape.withPasses(shape.passes + 1).path(flow));
        }
    }

    private static void notLess(PathAir before, PathAir after) {
        double slack = 1 - 1e-12;
        assertThat(after.pressureLow()).isGreaterThanOrEqualTo(before.pressureLow() * slack);
        assertThat(after.pressure()).isGreaterThanOrEqualTo(before.pressure() * slack);
        assertThat(after.pressureHigh()).isGreaterThanOrEqualTo(before.pressureHigh() * slack);
    }

    /** From 1e-4 to 5 m³/s, even over the logarithm. */
    private static double flow(Random random) {
        return Math.pow(10, -4 + 4.699 * random.nextDouble());
    }

    private static Opening opening(Opening.Kind kind, Random random) {
        return new Opening(
                kind,
                Opening.Surface.WALL,
                Opening.Beyond.INDOORS,
                0.03 + 0.5 * random.nextDouble(),
                0.03 + 0.5 * random.nextDouble());
    }

    /** A maze with ports in its ends, or one in its side, that can be changed one size at a time. */
    private record Shape(
            int passes, double width, double height, double length, double gapRatio, double roughness, boolean side) {
        static Shape random(Random random) {
            double width = 0.05 + 0.1 * random.nextDouble();
            return new Shape(
                    1 + random.nextInt(Box.MAX_PASSES - 1),
                    width,
                    0.08 + 0.3 * random.nextDouble(),
                    0.5 + random.nextDouble(),
                    0.4 + 1.8 * random.nextDouble(),
                    0.005 * random.nextDouble(),
                    random.nextBoolean());
        }

        Shape withRoughness(double other) {
            return new Shape(passes, width, height, length, gapRatio, other, side);
        }

        Shape withWidth(double other) {
            return new Shape(passes, other, height, length, gapRatio, roughness, side);
        }

        Shape withPasses(int other) {
            return new Shape(other, width, height, length, gapRatio, roughness, side);
        }

        PathAir path(double flow) {
            return path(flow, AIR);
        }

        PathAir path(double flow, AirState air) {
            Liner liner = new Liner("liner", 0.02, 48, 20_000, 10_000, 30_000, roughness, "invented for a test");
            Port inlet = new Port(side ? PortFace.SIDE : PortFace.END, width, height, 0);
            Box box = new Box(
                    Box.Form.MAZE,
                    passes,
                    width,
                    height,
                    length,
                    passes > 1 ? gapRatio * width : 0,
                    List.of(BOARD),
                    BOARD,
                    1,
                    liner,
                    LinedFaces.ALL,
                    inlet,
                    new Port(PortFace.END, width, height, 0));
            Opening opening =
                    new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.5, 0.5);
            return PathLosses.of(SolidBuilder.build(box), opening, flow, air, Purpose.SUPPLY);
        }
    }
}
