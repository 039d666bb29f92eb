package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Mounting;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Opening.Surface;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** <em>Validation</em> of the statics against cases worked by hand; <em>property</em> tests over random boxes. */
class HangingTest {
    private static final double G = 9.80665;
    private static final double POUND = 4.4482216152605;
    private static final double INCH = 0.0254;
    private static final StudScrew LAG = StudScrew.LAG_QUARTER;

    /** Thickness of the cleats that hold the box off the wall, m. */
    private static final double CLEAT = 0.75 * INCH;

    private static Panel weight(double mass, double x, double y, double z) {
        return Blocks.weight(Role.BAFFLE, mass, x, y, z);
    }

    private static Hanging wall(Mounting mounting, Panel... weights) {
        return Hanging.of(Blocks.box(weights), Surface.WALL, Axis.X, mounting);
    }

    private static Hanging ceiling(Mounting mounting, Panel... weights) {
        return Hanging.of(Blocks.box(weights), Surface.CEILING, Axis.X, mounting);
    }

    /**
     * Worked example, computed independently, of a whole box: 150 lb (68 kg) with its centre 9 in from the wall, rows 16 in apart,
     * four lag screws of 1/4 in: pull 42.2 lb, shear 37.5 lb, used 0.48. The tenth more for screws and dust is in the 150 lb.
     */
    @Test
    void workedExampleOfAWholeBox() {
        double mass = 150 * POUND / G / 1.1;
        Hanging hanging = wall(Blocks.mounting(LAG, 2, 16 * INCH), weight(mass, 0.4, 0.3, 9 * INCH - CLEAT));
        assertThat(hanging.weight() / POUND).isCloseTo(150, within(1e-9));
        assertThat(hanging.arm()).isCloseTo(9 * INCH, within(1e-12));
        assertThat(hanging.pull() / POUND).isCloseTo(42.2, within(0.05));
        assertThat(hanging.shear() / POUND).isCloseTo(37.5, within(0.05));
        assertThat(hanging.used()).isCloseTo(0.48, within(0.01));
        assertThat(hanging.factor()).isEqualTo(1);
    }

    /**
     * By hand: 40 kg weigh with a tenth more 431.4926 N. Centre 0.15 m from the wall and 0.2 m beside the middle, rows 0.5 m apart, two
     * screws each: pull 431.4926 · 0.15 / 0.5 / 2 = 64.724 N; down 107.873 N, sideways 431.4926 · 0.2 / 0.5 / 2 = 86.299 N,
     * together 138.146 N.
     */
    @Test
    void offTheMiddleOfAWall() {
        Hanging hanging = wall(Blocks.mounting(LAG, 2, 0.5), weight(40, 0.6, 0.3, 0.15 - CLEAT));
        assertThat(hanging.offAlong()).isCloseTo(0.2, within(1e-12));
        assertThat(hanging.pull()).isCloseTo(64.724, within(0.001));
        assertThat(hanging.shear()).isCloseTo(138.146, within(0.001));
        // The other side is level: the weight is in the middle of that.
        Hanging turned = Hanging.of(
                Blocks.box(weight(40, 0.6, 0.3, 0.15 - CLEAT)), Surface.WALL, Axis.Y, Blocks.mounting(LAG, 2, 0.5));
        assertThat(turned.shear()).isCloseTo(107.873, within(0.001));
        assertThat(turned.side()).isEqualTo(0.6);
        assertThat(turned.reach()).isEqualTo(0.8);
    }

    /** Front against the wall: the arm is from the other face, 0.3 - 0.1 m, and the cleat. */
    @Test
    void armFromTheFaceAtTheWall() {
        Solid solid = Blocks.box(PortFace.FRONT, new Cuboid(0, 0, 0, 0.8, 0.6, 0.3), weight(10, 0.4, 0.3, 0.1));
        assertThat(Hanging.of(solid, Surface.WALL, Axis.X, Blocks.mounting(LAG, 1, 0.4))
                        .arm())
                .isCloseTo(0.2 + CLEAT, within(1e-12));
    }

    /**
     * By hand, rows across the longer side 0.5 m apart, spacing of studs not said: 431.4926 N, centre 0.1 m off between the rows:
     * one row takes 431.4926 (1/2 + 0.1 / 0.5) = 302.045 N. Along the row it is 0.15 m off; two screws stand 0.6 - 8 · 0.00635 = 0.5492
     * m apart: the nearer takes 1/2 + 0.15 / 0.5492 = 0.77312 of it, 233.517 N.
     */
    @Test
    void mostLoadedCornerUnderACeiling() {
        Hanging hanging = ceiling(Blocks.mounting(LAG, 2, 0.5), weight(40, 0.5, 0.45, 0.15));
        assertThat(hanging.side()).isEqualTo(0.6);
        assertThat(hanging.pull()).isCloseTo(233.517, within(0.002));
        assertThat(hanging.shear()).isZero();
        assertThat(hanging.factor()).isEqualTo(2);
        assertThat(hanging.used()).isCloseTo(2 * 233.517 / hanging.allowed().withdrawal(), within(1e-4));
        assertThat(hanging.centreBeyondRows()).isFalse();
    }

    /** By hand: in the middle of everything each of 2 · 3 screws takes a sixth. */
    @Test
    void evenUnderACeiling() {
        Hanging hanging = ceiling(Blocks.mounting(LAG, 3, 0.5), weight(40, 0.4, 0.3, 0.15));
        assertThat(hanging.pull()).isCloseTo(431.4926 / 6, within(1e-4));
    }

    /**
     * By hand: the centre 0.35 m from the middle, rows 0.4 m apart: moments about the other row, which presses: 431.4926 (0.35 + 0.2)
     * / 0.4 = 593.302 N, more than the weight. With one screw in the row and 0.1 m off along it, the box presses with its edge, 0.3 m
     * from the screw: 593.302 (0.3 + 0.1) / 0.3 = 791.069 N.
     */
    @Test
    void centreOfMassBeyondTheRows() {
        Hanging hanging = ceiling(Blocks.mounting(LAG, 1, 0.4), weight(40, 0.75, 0.3, 0.15));
        assertThat(hanging.pull()).isCloseTo(593.302, within(0.001));
        assertThat(hanging.centreBeyondRows()).isTrue();
        Hanging both = ceiling(Blocks.mounting(LAG, 1, 0.4), weight(40, 0.75, 0.4, 0.15));
        assertThat(both.pull()).isCloseTo(791.069, within(0.001));
    }

    /** By hand: springs at -0.2, 0 and 0.2 m, load 0.1 m off: 1/3 + 0.1 · 0.2 / 0.08 of it, 1.75 times the even share. */
    @Test
    void threeScrewsOffTheMiddle() {
        assertThat(new Spread(3, 0.4).most(0.1)).isCloseTo(1.75, within(1e-12));
        assertThat(new Spread(2, 0.4).most(0.1)).isCloseTo(1.5, within(1e-12));
        assertThat(new Spread(1, 0.4).most(0.1)).isCloseTo(1.5, within(1e-12));
    }

    /** Studs 0.25 m apart: the 0.6 m less 0.0508 m crosses two for certain, so the screws stand 0.25 m apart and no more. */
    @Test
    void studsSetHowFarScrewsStandApart() {
        assertThat(Spread.of(0.6, Blocks.mounting(LAG, 2, 0.5), null)).isEqualTo(new Spread(2, 0.6 - 8 * 0.25 * INCH));
        Mounting close = Blocks.spaced(LAG, 2, 0.5, 0.25, null);
        assertThat(Spread.of(0.6, close, StudRow.of(0.6, close))).isEqualTo(new Spread(2, 0.25));
        Mounting wide = Blocks.spaced(LAG, 2, 0.5, 0.4, null);
        assertThat(Spread.of(0.6, wide, StudRow.of(0.6, wide))).isEqualTo(new Spread(1, 0.6));
    }

    /** A box on a wall above people is taken to be twice as heavy, and only then. */
    @Test
    void abovePeople() {
        Panel weight = weight(40, 0.4, 0.3, 0.15);
        Mounting high = Blocks.mounting(Mounting.Into.STUDS, LAG, 2, 0.4, null, null, true);
        Mounting low = Blocks.mounting(Mounting.Into.STUDS, LAG, 2, 0.4, null, null, false);
        assertThat(wall(high, weight).used()).isCloseTo(2 * wall(low, weight).used(), within(1e-12));
        assertThat(wall(Blocks.mounting(LAG, 2, 0.4), weight).used())
                .isEqualTo(wall(low, weight).used());
        assertThat(ceiling(high, weight).used()).isEqualTo(ceiling(low, weight).used());
    }

    /** Rows further apart than the 0.6 m the box reaches on a wall when its longer side is level. */
    @Test
    void rowsBeyondTheBox() {
        assertThat(wall(Blocks.mounting(LAG, 2, 0.61), weight(1, 0.4, 0.3, 0.1)).rowsBeyondBox())
                .isTrue();
        assertThat(wall(Blocks.mounting(LAG, 2, 0.59), weight(1, 0.4, 0.3, 0.1)).rowsBeyondBox())
                .isFalse();
    }

    /** More screws are never worse, and the least number that is enough is the first that is. */
    @ParameterizedTest
    @EnumSource(
            value = Surface.class,
            names = {"WALL", "CEILING"})
    void moreScrewsAreNeverWorse(Surface surface) {
        RandomBoxes boxes = new RandomBoxes(31);
        for (int i = 0; i < 40; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Axis level = solid.openingPort().role().normal().u();
            for (Mounting mounting : List.of(
                    Blocks.mounting(StudScrew.WOOD_10, 1, 0.3), Blocks.spaced(StudScrew.WOOD_10, 1, 0.3, 0.3, null))) {
                double before = Double.POSITIVE_INFINITY;
                int first = 0;
                for (int n = 1; n <= Mounting.MOST_SCREWS; n++) {
                    Hanging hanging = Hanging.of(solid, surface, level, mounting.withScrews(n));
                    double used = hanging.used();
                    assertThat(used).isLessThanOrEqualTo(before * (1 + 1e-12));
                    before = used;
                    first = first == 0 && used <= 1 && !hanging.rowsBeyondBox() && !hanging.tipsOut() ? n : first;
                }
                assertThat(Hanging.enough(solid, surface, level, mounting).orElse(0))
                        .isEqualTo(first);
            }
        }
    }

    /** Used goes with the weight, and a box in a mirror asks the same. */
    @ParameterizedTest
    @EnumSource(
            value = Surface.class,
            names = {"WALL", "CEILING"})
    void goesWithWeightAndIsSymmetric(Surface surface) {
        Mounting mounting = Blocks.mounting(StudScrew.LAG_FIVE_SIXTEENTHS, 3, 0.35);
        double used = Hanging.of(Blocks.box(weight(20, 0.5, 0.2, 0.1)), surface, Axis.X, mounting)
                .used();
        assertThat(Hanging.of(Blocks.box(weight(60, 0.5, 0.2, 0.1)), surface, Axis.X, mounting)
                        .used())
                .isCloseTo(3 * used, within(1e-9));
        for (double[] at : new double[][] {{0.3, 0.2}, {0.5, 0.4}, {0.3, 0.4}}) {
            assertThat(Hanging.of(Blocks.box(weight(20, at[0], at[1], 0.1)), surface, Axis.X, mounting)
                            .used())
                    .isCloseTo(used, within(1e-9));
        }
    }

    @Test
    void refuses() {
        Solid solid = Blocks.box(weight(10, 0.4, 0.3, 0.1));
        Mounting mounting = Blocks.mounting(LAG, 2, 0.4);
        assertThatThrownBy(() -> Hanging.of(solid, Surface.FLOOR, Axis.X, mounting))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("stands");
        assertThatThrownBy(() -> Hanging.of(solid, Surface.WALL, Axis.Z, mounting))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("level side");
        Mounting masonry = Blocks.mounting(Mounting.Into.MASONRY, LAG, 2, 0.4, null, null, null);
        assertThatThrownBy(() -> Hanging.of(solid, Surface.WALL, Axis.X, masonry))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("into: MASONRY");
    }
}
