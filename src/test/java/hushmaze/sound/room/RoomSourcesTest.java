package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.FanSound;
import hushmaze.project.FanSound.Side;
import hushmaze.project.Room;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.room.RoomSum.Part;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Fans on either side, sums at the microphone and cautions about the room: worked by hand; properties. */
class RoomSourcesTest {
    private static final Spectrum POWER = new Spectrum(BandSet.OCTAVE, 60, 58, 55, 52, 48, 44, 40, 35);
    private static final Spectrum LOSS = Spectrum.flat(BandSet.THIRD_OCTAVE, 25);

    @Test
    void aFanAtTheOpeningComesThroughTheBoxAndOneInTheRoomDoesNot() {
        FanSound outside = new FanSound("fan", Side.AT_OPENING, POWER, "test");
        FanSound inside = new FanSound("fan", Side.IN_ROOM, POWER, "test");
        for (int i = 0; i < 8; i++) {
            assertThat(FanLevel.intoRoom(outside, LOSS).levelsInOctaves().value(i))
                    .isCloseTo(POWER.value(i) - 25, within(1e-9));
            assertThat(FanLevel.intoRoom(inside, LOSS).levelsInOctaves().value(i))
                    .isCloseTo(POWER.value(i), within(1e-9));
        }
        assertThat(FanLevel.beyondOpening(inside, LOSS)).isEqualTo(FanLevel.intoRoom(outside, LOSS));
        assertThat(FanLevel.beyondOpening(outside, LOSS)).isEqualTo(FanLevel.intoRoom(inside, LOSS));
    }

    @Test
    void partsAddByEnergy() {
        Part path = new Part("path", Spectrum.flat(BandSet.THIRD_OCTAVE, 20));
        Part twin = new Part("other path", Spectrum.flat(BandSet.THIRD_OCTAVE, 20));
        Part own = new Part("own noise", Spectrum.flat(BandSet.THIRD_OCTAVE, 30));
        Part silent = new Part("flow", Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY));
        // By hand: 20 and 20 are 23.01; 10 lg(200 + 1000) = 30.79.
        assertThat(RoomSum.of(List.of(path, twin)).level().value(5)).isCloseTo(23.01, within(0.001));
        RoomSum all = RoomSum.of(List.of(path, silent, twin, own));
        assertThat(all.level().value(5)).isCloseTo(30.79, within(0.005));
        assertThat(all.loudest(3).name()).isEqualTo("own noise");
        RoomSum nothing = RoomSum.of(List.of());
        assertThat(nothing.octaves().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThatThrownBy(() -> nothing.loudest(0)).isInstanceOf(IllegalStateException.class);
    }

    /** By hand: 2000 sqrt(0.161 / 5) = 359 Hz, so octaves are statistical from 500 Hz; 5 / (6 · 30^(2/3)) = 0.086. */
    @Test
    void aSmallRoomHasFewModes() {
        List<Notice> notices = RoomField.notices(room(30, 5));
        assertThat(RoomField.limitFrequency(room(30, 5))).isEqualTo(500);
        assertThat(RoomField.meanAbsorption(room(30, 5), 0)).isCloseTo(0.0863, within(0.0001));
        assertThat(notices).extracting(Notice::kind).containsExactly(NoticeKind.ROOM_HAS_FEW_MODES);
        assertThat(notices.get(0).value()).isEqualTo(500);
    }

    /** By hand: 4 m³ have at least 15.1 m² of surface; 12 m² of absorption are 0.79 of it. */
    @Test
    void aSmallDeadBoothIsBeyondTheFormula() {
        assertThat(RoomField.notices(room(4, 12)))
                .extracting(Notice::kind)
                .containsExactly(NoticeKind.ROOM_HAS_FEW_MODES, NoticeKind.ROOM_VERY_DEAD);
    }

    /** By hand: 2000 sqrt(0.161 / 200) = 57 Hz, and 200 of at least 479 m² are 0.42. */
    @Test
    void aLargeHallNeedsNoCaution() {
        assertThat(RoomField.notices(room(714, 200))).isEmpty();
    }

    private static Room room(double volume, double absorption) {
        Target target = new Target(Target.Kind.NC, 20.0, null, "test");
        return new Room(
                "room", volume, 1, 5e-6, 400e-6, 100, Collections.nCopies(8, absorption), 2, 20, 0, null, target);
    }
}
