package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.build.fixing.Lifting.Hands;
import hushmaze.project.Opening;
import hushmaze.project.PortFace;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import org.junit.jupiter.api.Test;

/** <em>Validation</em> of standing and lifting by hand and against published guidance, <em>property</em> of the pieces. */
class StandingTest {
    private static final Opening REGISTER =
            new Opening(Opening.Kind.REGISTER, Opening.Surface.FLOOR, Opening.Beyond.DUCTWORK, 0.3, 0.1);

    private static Solid standing(double height, double mass, double x) {
        return Blocks.box(
                PortFace.BACK,
                new Cuboid(0, 0, 0, 0.8, 0.4, height),
                Blocks.weight(Role.BAFFLE, mass, x, 0.2, height / 2));
    }

    /** By hand: 20 Pa on 0.3 m × 0.1 m lift with 0.6 N; 29 kg press on 0.8 m with 355.5 N/m, 28 kg with 343.2 N/m. */
    @Test
    void weightAgainstPressure() {
        Standing standing = Standing.of(standing(0.3, 29, 0.4), REGISTER, 20);
        assertThat(standing.lift()).isCloseTo(0.6, within(1e-12));
        assertThat(standing.line()).isCloseTo(355.49, within(0.01));
        assertThat(standing.holds()).isTrue();
        assertThat(standing.seals()).isTrue();
        assertThat(Standing.of(standing(0.3, 28, 0.4), REGISTER, 20).seals()).isFalse();
        // By hand: 28 kg are 274.6 N; twice the lift is that at 4577 Pa.
        assertThat(Standing.of(standing(0.3, 28, 0.4), REGISTER, 4570).holds()).isTrue();
        assertThat(Standing.of(standing(0.3, 28, 0.4), REGISTER, 4580).holds()).isFalse();
    }

    /** By hand: 40 kg, 0.2 m from the middle of a base of 0.4 m to its edge: 392.266 · 0.2 / height. */
    @Test
    void pushThatTips() {
        Tipping low = Standing.of(standing(0.3, 40, 0.4), REGISTER, 20).tipping();
        assertThat(low.push()).isCloseTo(261.51, within(0.01));
        assertThat(low.stands()).isTrue();
        Tipping higher = Standing.of(standing(0.5, 40, 0.4), REGISTER, 20).tipping();
        assertThat(higher.push()).isCloseTo(156.91, within(0.01));
        assertThat(higher.stands()).isFalse();
        // Pushed at 1.5 m and no higher; so heavy that only its form speaks against it.
        Tipping tall = Standing.of(standing(2, 400, 0.4), REGISTER, 20).tipping();
        assertThat(tall.push()).isCloseTo(3922.66 * 0.2 / 1.5, within(0.01));
        assertThat(tall.slender()).isTrue();
        assertThat(tall.stands()).isFalse();
        // The centre of mass 0.1 m from an end is nearer to that than to the sides.
        Tipping aside = Standing.of(standing(0.3, 40, 0.1), REGISTER, 20).tipping();
        assertThat(aside.push()).isCloseTo(392.266 * 0.1 / 0.3, within(0.01));
    }

    /**
     * Revised lifting equation of NIOSH (1991), load constant 23 kg, and guidance on the Manual Handling Operations Regulations (HSE
     * L23), 10 kg at the height of the head, two people two thirds of their sum; from memory. A twentieth of the mass is added: 23 / 1.05
     * = 21.90, 30.67 / 1.05 = 29.21, 10 / 1.05 = 9.52, 13.33 / 1.05 = 12.70.
     */
    @Test
    void whoLifts() {
        Lifting low = Lifting.of(Blocks.box(Blocks.weight(Role.BAFFLE, 10, 0.4, 0.3, 0.1)), false);
        assertThat(low.hands(21.9)).isEqualTo(Hands.ONE);
        assertThat(low.hands(22)).isEqualTo(Hands.TWO);
        assertThat(low.hands(29.2)).isEqualTo(Hands.TWO);
        assertThat(low.hands(29.3)).isEqualTo(Hands.AID);
        Lifting high = Lifting.of(Blocks.box(Blocks.weight(Role.BAFFLE, 10, 0.4, 0.3, 0.1)), true);
        assertThat(high.hands(9.5)).isEqualTo(Hands.ONE);
        assertThat(high.hands(12.6)).isEqualTo(Hands.TWO);
        assertThat(high.hands(12.71)).isEqualTo(Hands.AID);
    }

    /** The cover comes off, unless it lies against the building; the heaviest piece is what there is to lift. */
    @Test
    void pieces() {
        Lifting apart = Lifting.of(
                Blocks.box(Blocks.weight(Role.BACK, 20, 0.4, 0.3, 0.1), Blocks.weight(Role.FRONT, 12, 0.4, 0.3, 0.2)),
                false);
        assertThat(apart.whole()).isCloseTo(32, within(1e-9));
        assertThat(apart.carcass()).isCloseTo(20, within(1e-9));
        assertThat(apart.cover()).isCloseTo(12, within(1e-9));
        assertThat(apart.heaviest()).isCloseTo(20, within(1e-9));
        Lifting whole = Lifting.of(
                Blocks.box(
                        PortFace.FRONT,
                        new Cuboid(0, 0, 0, 0.8, 0.6, 0.3),
                        Blocks.weight(Role.BACK, 20, 0.4, 0.3, 0.1),
                        Blocks.weight(Role.FRONT, 12, 0.4, 0.3, 0.2)),
                false);
        assertThat(whole.apart()).isFalse();
        assertThat(whole.heaviest()).isCloseTo(32, within(1e-9));
    }

    /** Carcass and cover together are the box, with all that is stuck to the cover. */
    @Test
    void piecesAddUp() {
        RandomBoxes boxes = new RandomBoxes(51);
        for (int i = 0; i < 30; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Lifting lifting = Lifting.of(solid, false);
            double rest = 0;
            for (Part part : solid.parts().toList()) {
                rest += part.role() == Role.FRONT ? 0 : part.volume() * part.density();
            }
            assertThat(lifting.carcass()).isCloseTo(rest, within(1e-9));
            assertThat(lifting.carcass() + lifting.cover()).isCloseTo(lifting.whole(), within(1e-9));
        }
    }
}
