package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Mounting;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Opening.Surface;
import hushmaze.project.PortFace;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** <em>Validation</em> of boxes on bevelled battens against statics worked by hand; <em>property</em> tests. */
class HookTest {
    private static final StudScrew LAG = StudScrew.LAG_QUARTER;

    /** The box of 800 x 600 x 300 mm with a long side against the wall: y points away from it. */
    private static Solid sideways(double mass, double x, double y, double z) {
        return Blocks.box(PortFace.SIDE, new Cuboid(0, 0, 0, 0.8, 0.6, 0.3), Blocks.weight(Role.BACK, mass, x, y, z));
    }

    /**
     * By hand, 1/4 in (6.35 mm) and battens of 19.05 mm: the bevel begins 1.5 · 6.35 = 9.525 mm over the screws and ends at 28.575;
     * below them is as much, more than 4 · 6.35 = 25.4. So a batten is 57.15 mm wide, that of the box ends 66.675 mm over the
     * screws, and a pull at the tip, 57.15 mm over the lower edge, gives the screw at half of that twice as much.
     */
    @Test
    void battensByHand() {
        Hook hook = Hook.of(Blocks.mounting(LAG, 2, 0.4), false);
        assertThat(hook.foot()).isCloseTo(0.009525, within(1e-9));
        assertThat(hook.tip()).isCloseTo(0.028575, within(1e-9));
        assertThat(hook.below()).isCloseTo(0.028575, within(1e-9));
        assertThat(hook.width()).isCloseTo(0.05715, within(1e-9));
        assertThat(hook.reach()).isCloseTo(0.066675, within(1e-9));
        assertThat(hook.lever()).isCloseTo(2, within(1e-9));
    }

    /**
     * By hand, two in a stud 25.4 mm apart: screws 28.575 and 53.975 mm over the lower edge, the tip 82.55 mm over it: the upper takes
     * 82.55 · 53.975 / (28.575² + 53.975²) = 1.194595 of the pull, 2.389189 times an even share of a half.
     */
    @Test
    void twoInAStud() {
        Hook hook = Hook.of(Blocks.mounting(LAG, 2, 0.4), true);
        assertThat(hook.width()).isCloseTo(0.08255, within(1e-9));
        assertThat(hook.lever()).isCloseTo(2.389189, within(1e-5));
    }

    /**
     * By hand: 20 kg weigh with a tenth more 215.7463 N, centre 0.15 m from the wall, two screws with the weight in their middle: across
     * each 107.873 N. The bevel draws with 215.7463 N, more than 215.7463 · 0.15 / 0.4: half of it, doubled by the lever, is 215.746 N. Heads
     * of 6.35 mm are let in, so the shear is that through 12.7 mm.
     */
    @Test
    void hooksOnAWall() {
        Mounting mounting = Blocks.mounting(LAG, 2, 0.4);
        Hanging hanging = Hanging.of(sideways(20, 0.4, 0.15 - mounting.cleat(), 0.15), Surface.WALL, Axis.X, mounting);
        assertThat(hanging.way()).isEqualTo(Way.HOOKED);
        assertThat(hanging.arm()).isCloseTo(0.15, within(1e-12));
        assertThat(hanging.shear()).isCloseTo(107.873, within(0.001));
        assertThat(hanging.pull()).isCloseTo(215.746, within(0.001));
        Mounting thinner = new Mounting(
                mounting.into(),
                mounting.timber(),
                LAG,
                mounting.thread(),
                2,
                0.4,
                mounting.cleat() - 0.00635,
                null,
                null,
                null,
                "test");
        assertThat(hanging.allowed()).isEqualTo(StudFixing.of(thinner));
        assertThat(hanging.tipsOut()).isFalse();
    }

    /** By hand: centre 0.3 m from the wall, spacer 0.2 m below the hook: 1.5 times the weight, and it tips out. */
    @Test
    void tipsOut() {
        Mounting mounting = Blocks.mounting(LAG, 2, 0.2);
        Hanging hanging = Hanging.of(sideways(20, 0.4, 0.3 - mounting.cleat(), 0.15), Surface.WALL, Axis.X, mounting);
        assertThat(hanging.pull()).isCloseTo(1.5 * 215.7463, within(0.001));
        assertThat(hanging.tipsOut()).isTrue();
        assertThat(Hanging.enough(sideways(20, 0.4, 0.3, 0.15), Surface.WALL, Axis.X, mounting))
                .isEmpty();
    }

    /** By hand: springs at the ends of 0.8 - 8 · 0.00635 = 0.7492 m, weight 0.1 m off: 1 + 2 · 0.1 / 0.7492 of an even share. */
    @Test
    void offTheMiddle() {
        Hanging hanging = Hanging.of(sideways(20, 0.5, 0.15, 0.15), Surface.WALL, Axis.X, Blocks.mounting(LAG, 2, 0.4));
        assertThat(hanging.shear()).isCloseTo(107.873 * (1 + 0.2 / 0.7492), within(0.001));
    }

    /** From inside only where the cover is towards the room. */
    @Test
    void theWayFollowsTheFaceAtTheSurface() {
        assertThat(Way.of(PortFace.BACK, Surface.WALL)).isEqualTo(Way.THROUGH);
        assertThat(Way.of(PortFace.BACK, Surface.CEILING)).isEqualTo(Way.THROUGH);
        assertThat(Way.of(PortFace.SIDE, Surface.WALL)).isEqualTo(Way.HOOKED);
        assertThat(Way.of(PortFace.END, Surface.WALL)).isEqualTo(Way.HOOKED);
        assertThat(Way.of(PortFace.END, Surface.CEILING)).isEqualTo(Way.OUT_OF_REACH);
        assertThat(Way.of(PortFace.FRONT, Surface.WALL)).isEqualTo(Way.BY_ITS_COVER);
    }

    /** Battens never take less room than their screws need, and the most loaded screw never less than an even share. */
    @ParameterizedTest
    @EnumSource(StudScrew.class)
    void edgesAreKept(StudScrew screw) {
        for (double cleat : List.of(0.012, 0.019, 0.038)) {
            for (boolean above : List.of(false, true)) {
                Hook hook = new Hook(cleat, StudFixing.diameter(screw), above);
                double pair = above ? 4 * hook.diameter() : 0;
                assertThat(hook.below() - pair / 2).isGreaterThanOrEqualTo(4 * hook.diameter() - 1e-12);
                assertThat(hook.foot() - pair / 2).isGreaterThanOrEqualTo(1.5 * hook.diameter() - 1e-12);
                assertThat(hook.lever()).isGreaterThan(1);
            }
        }
    }

    /** By hand: 38.1 of thread, 6.35 of tip, 19.05 of cleat; 36 of boards from inside, or 6.35 less where the head is let in. */
    @Test
    void lengthOfScrews() {
        Mounting mounting = Blocks.mounting(LAG, 2, 0.4);
        Solid solid = sideways(20, 0.4, 0.15, 0.15);
        double boards = solid.box().shellThickness();
        assertThat(ScrewLength.of(solid, mounting, Way.THROUGH)).isCloseTo(0.0635 + boards, within(1e-9));
        assertThat(ScrewLength.of(solid, mounting, Way.HOOKED)).isCloseTo(0.0635 - 0.00635, within(1e-9));
    }
}
