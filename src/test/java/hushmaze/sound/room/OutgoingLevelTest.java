package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.MouthPosition;
import hushmaze.project.Outgoing;
import hushmaze.project.Outgoing.Receiver;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.Collections;
import org.junit.jupiter.api.Test;

/** Validation of the outgoing level against the textbook relation of two rooms and values by hand; properties. */
class OutgoingLevelTest {
    private static final Target NC_20 = new Target(Target.Kind.NC, 20.0, null, "test");

    @Test
    void outdoorsByHand() {
        // 80 dB, 0.02 m²: -23.01; box 30 dB; half a sphere of 3 m: 10 lg(1 / 56.55) = -17.52.
        Received received = OutgoingLevel.of(outdoors(3), "window", 0.02, loss(30));
        assertThat(received.chain().octaves().value(4)).isCloseTo(80 - 23.01 - 30 - 17.52, within(0.01));
        assertThat(received.chain().steps())
                .extracting(LevelStep::key)
                .containsExactly("levelInRoom", "powerIn", "box", "open");
        assertThat(received.chain().change(1).value(0)).isCloseTo(-23.01, within(0.005));
        assertThat(received.chain().change(2).value(7)).isCloseTo(-30, within(1e-9));
    }

    /** Textbook relation of the level difference of two rooms: L1 - L2 = R - 10 lg(S / A), far from the wall. */
    @Test
    void throughAWallIntoARoom() {
        double wall = 12;
        double absorption = 8;
        Received received = OutgoingLevel.of(room(1000, absorption), "wall", wall, loss(45));
        double expected = 80 - 45 + 10 * Math.log10(wall / absorption);
        assertThat(received.chain().octaves().value(2)).isCloseTo(expected, within(0.001));
    }

    @Test
    void marginAndGoverningBandByHand() {
        // NC 20 is 51, 40, 33, 26, 22, 19, 17, 16 dB; the level is the same in all octaves, so 8 kHz decides.
        Received received = OutgoingLevel.of(outdoors(3), "window", 0.02, loss(30));
        assertThat(received.margin().margin()).isCloseTo(16 - 9.47, within(0.01));
        assertThat(received.margin().governing().nominalHz()).isEqualTo(8000);
        assertThat(received.ok()).isTrue();
        assertThat(OutgoingLevel.of(outdoors(3), "window", 0.02, loss(23)).ok()).isFalse();
    }

    @Test
    void aLouderRoomALargerHoleANearerListenerHearMore() {
        for (double r = 0.5; r < 50; r *= 2) {
            double here = level(OutgoingLevel.of(outdoors(r), "", 0.02, loss(20)));
            assertThat(level(OutgoingLevel.of(outdoors(2 * r), "", 0.02, loss(20))))
                    .isCloseTo(here - 6.02, within(0.01));
            assertThat(level(OutgoingLevel.of(outdoors(r), "", 0.04, loss(20)))).isCloseTo(here + 3.01, within(0.01));
            assertThat(level(OutgoingLevel.of(outdoors(r), "", 0.02, loss(25)))).isCloseTo(here - 5, within(1e-9));
            assertThat(level(OutgoingLevel.of(room(r, 10), "", 0.02, loss(20)))).isGreaterThan(here);
        }
    }

    @Test
    void aTightBoxLetsNothingOutAndTheChainHasNoUndefinedSteps() {
        Received received = OutgoingLevel.of(outdoors(3), "", 0.02, loss(Double.POSITIVE_INFINITY));
        assertThat(received.chain().level().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(received.ok()).isTrue();
        assertThat(received.chain().change(2).value(0)).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(received.chain().change(3).value(0)).isZero();
    }

    private static double level(Received received) {
        return received.chain().octaves().value(3);
    }

    private static Outgoing outdoors(double distance) {
        return new Outgoing(
                Spectrum.flat(BandSet.OCTAVE, 80),
                Receiver.OUTDOORS,
                MouthPosition.MIDDLE_OF_SURFACE,
                null,
                distance,
                NC_20,
                "test");
    }

    private static Outgoing room(double distance, double absorption) {
        return new Outgoing(
                Spectrum.flat(BandSet.OCTAVE, 80),
                Receiver.ROOM,
                MouthPosition.MIDDLE_OF_SURFACE,
                Collections.nCopies(8, absorption),
                distance,
                NC_20,
                "test");
    }

    private static Spectrum loss(double value) {
        return Spectrum.flat(BandSet.THIRD_OCTAVE, value);
    }
}
