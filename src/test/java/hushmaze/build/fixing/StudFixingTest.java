package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Mounting.Timber;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** <em>Validation</em> of screws against a worked example, <em>property</em> of the centre of mass. */
class StudFixingTest {
    private static final double POUND = 4.4482216152605;
    private static final double INCH = 0.0254;

    private static Mounting mounting(StudScrew screw, double threadInches, int screws, double rows) {
        return new Mounting(
                null,
                Timber.SPRUCE_PINE_FIR,
                screw,
                threadInches * INCH,
                screws,
                rows,
                0.75 * INCH,
                null,
                null,
                null,
                "test");
    }

    /**
     * Worked example, computed independently: box of 150 lb, centre 9 in from the wall, rows 16 in apart, four lag screws of 1/4
     * in with 1.5 in of thread in spruce-pine-fir, cleat of 3/4 in: pull 42.2 lb, shear 37.5 lb, W' 233.8 lb, Z' 72 lb, allowed
     * together 117.4 lb, used 0.48.
     */
    @Test
    void workedExample() {
        StudFixing screw = StudFixing.of(mounting(StudScrew.LAG_QUARTER, 1.5, 2, 16 * INCH));
        assertThat(screw.withdrawal() / POUND).isCloseTo(233.8, within(0.5));
        assertThat(screw.shear() / POUND).isCloseTo(72, within(0.03 * 72));
        assertThat(screw.deepEnough()).isTrue();
        double pull = 150.0 * 9 / 16 / 2 * POUND;
        double shear = 150.0 / 4 * POUND;
        assertThat(screw.used(pull, shear)).isCloseTo(0.48, within(0.01));
    }

    /** Wood screws through 3/4 in, computed independently: no. 10 84 lb, no. 12 100 lb at ten diameters deep; times 0.9. */
    @Test
    void woodScrews() {
        double ten = StudFixing.of(mounting(StudScrew.WOOD_10, 1.9, 1, 0.4)).shear() / POUND;
        double twelve = StudFixing.of(mounting(StudScrew.WOOD_12, 2.16, 1, 0.4)).shear() / POUND;
        assertThat(ten).isCloseTo(0.9 * 84, within(0.03 * 84));
        assertThat(twelve).isCloseTo(0.9 * 100, within(0.03 * 100));
        StudFixing shallow = StudFixing.of(mounting(StudScrew.WOOD_12, 1.08, 1, 0.4));
        assertThat(shallow.shear() / POUND).isLessThan(0.52 * twelve);
        assertThat(shallow.deepEnough()).isFalse();
    }

    /** Pull alone and shear alone use what their own allowables say; nothing uses nothing. */
    @Test
    void limitsOfTheCombination() {
        StudFixing screw = StudFixing.of(mounting(StudScrew.LAG_THREE_EIGHTHS, 2, 2, 0.4));
        assertThat(screw.used(screw.withdrawal(), 0)).isCloseTo(1, within(1e-12));
        assertThat(screw.used(0, screw.shear())).isCloseTo(1, within(1e-12));
        assertThat(screw.used(0, 0)).isZero();
    }

    /** The centre of mass by weighing random points of the box, for boxes of every form; exact for an even box. */
    @Test
    void centreOfMass() {
        RandomBoxes boxes = new RandomBoxes(21);
        Random random = new Random(22);
        for (int i = 0; i < 6; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            double mass = 0;
            double[] moment = new double[3];
            double[] at = new double[3];
            for (int n = 0; n < 40_000; n++) {
                for (Axis axis : Axis.values()) {
                    at[axis.ordinal()] = solid.outer().low(axis) + solid.outer().size(axis) * random.nextDouble();
                }
                double density = solid.parts()
                        .filter(p -> contains(p, at))
                        .mapToDouble(Part::density)
                        .sum();
                mass += density;
                for (int k = 0; k < 3; k++) {
                    moment[k] += density * at[k];
                }
            }
            for (Axis axis : Axis.values()) {
                assertThat(CentreOfMass.along(solid, axis))
                        .isCloseTo(
                                moment[axis.ordinal()] / mass,
                                within(0.03 * solid.outer().size(axis)));
            }
        }
        Box even = SampleBoxes.maze(
                1,
                0.6,
                null,
                LinedFaces.NONE,
                1,
                new Port(PortFace.END, 0.1, 0.3, 0),
                new Port(PortFace.END, 0.1, 0.3, 0));
        Solid solid = SolidBuilder.build(even);
        for (Axis axis : Axis.values()) {
            assertThat(CentreOfMass.along(solid, axis)).isCloseTo(solid.outer().centre(axis), within(1e-12));
        }
    }

    private static boolean contains(Part part, double[] at) {
        for (Axis axis : Axis.values()) {
            double here = at[axis.ordinal()];
            if (here < part.bounds().low(axis) || here > part.bounds().high(axis)) {
                return false;
            }
        }
        Axis u = part.normal().u();
        Axis v = part.normal().v();
        double pu = at[u.ordinal()] - part.bounds().low(u);
        double pv = at[v.ordinal()] - part.bounds().low(v);
        return part.cutouts().stream().noneMatch(c -> pu >= c.u0() && pu <= c.u1() && pv >= c.v0() && pv <= c.v1());
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> mounting(StudScrew.WOOD_10, 0.1, 2, 0.4))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("thread: 2.54 mm");
        assertThatThrownBy(() -> mounting(StudScrew.WOOD_10, 1, 0, 0.4))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("screwsPerRow: 0");
    }
}
