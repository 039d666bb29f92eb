package hushmaze.sound.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Routes into the room and the level outside, worked by hand. */
class RoomRoutesTest {
    /** By hand: envelope 30 dB, boxes 20 and 27 dB: rest of the first 10 lg(1000 + 501) = 31.76 dB, margin 11.76 dB. */
    @Test
    void aBoxFarBelowTheRestNoLongerLimits() {
        RoomRoutes routes = new RoomRoutes(flat(30), List.of(flat(20), flat(27)));
        assertThat(routes.total().value(5)).isCloseTo(10 * Math.log10(1000 + 100 + 501.187), within(1e-4));
        assertThat(routes.margin(0).value(5)).isCloseTo(11.76, within(0.01));
        assertThat(routes.limits(0, 5)).isFalse();
        // The second: rest 10 lg(1000 + 100) = 30.41 dB, margin 3.41 dB.
        assertThat(routes.margin(1).value(5)).isCloseTo(3.41, within(0.01));
        assertThat(routes.limits(1, 5)).isTrue();
        assertThat(routes.governing(5)).isEqualTo(RoomRoutes.ENVELOPE);
        assertThat(routes.marginDbA(0)).isCloseTo(11.76, within(0.01));
        assertThat(routes.limits(0)).isFalse();
        assertThat(routes.limits(1)).isTrue();
        // What the second costs: total 10 lg 1601.2 = 32.04 dB less 30.41 dB.
        assertThat(routes.costOf(1).value(5)).isCloseTo(1.63, within(0.01));
    }

    @Test
    void theLoudestGoverns() {
        Spectrum rising = Spectrum.of(BandSet.THIRD_OCTAVE, i -> i);
        RoomRoutes routes = new RoomRoutes(flat(10), List.of(rising, flat(15)));
        assertThat(routes.governing(0)).isEqualTo(1);
        assertThat(routes.governing(20)).isZero();
    }

    @Test
    void silenceIsNoNumberTrouble() {
        Spectrum silent = flat(Double.NEGATIVE_INFINITY);
        RoomRoutes routes = new RoomRoutes(silent, List.of(silent, flat(20)));
        assertThat(routes.margin(0).value(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(routes.margin(1).value(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(routes.costOf(1).value(0)).isEqualTo(Double.POSITIVE_INFINITY);
        assertThat(routes.costOf(0).value(0)).isZero();
        assertThat(new RoomRoutes(silent, List.of(silent)).marginDbA(0)).isEqualTo(Double.POSITIVE_INFINITY);
    }

    @Test
    void bandsMustAgree() {
        Spectrum octaves = Spectrum.flat(BandSet.OCTAVE, 20);
        assertThatThrownBy(() -> new RoomRoutes(flat(20), List.of(octaves)))
                .isInstanceOf(IllegalArgumentException.class);
    }

    /**
     * By hand: 40 dB in a room of A = 10 m², far from a hole of 0.03 m². G = 10 lg(4/10) = -3.98 dB, so L1 = 40 + 3.98 + 15.23 +
     * 6.02 = 65.23 dB, which is L2 + 10 lg(A/S).
     */
    @Test
    void theLevelBehindABareOpening() {
        Spectrum gain = flat(10 * Math.log10(0.4));
        Spectrum outside = LevelOutside.behindOpening(flat(40), gain, 0.03);
        assertThat(outside.value(3)).isCloseTo(65.23, within(0.005));
        assertThat(LevelOutside.throughOpening(outside, gain, 0.03).value(3)).isCloseTo(40, within(1e-9));
    }

    private static Spectrum flat(double value) {
        return Spectrum.flat(BandSet.THIRD_OCTAVE, value);
    }
}
