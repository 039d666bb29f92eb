package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.DuctRun;
import hushmaze.project.DuctRun.Kind;
import hushmaze.project.MouthPosition;
import hushmaze.project.Room;
import hushmaze.project.SharedDuct;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.room.CrossTalk.End;
import hushmaze.sound.room.CrossTalk.Listener;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Talk through a duct: a chain worked by hand, a published branch, and properties. */
class CrossTalkTest {
    private static final double SOUND_SPEED = 343.2;
    private static final Target NC_20 = new Target(Target.Kind.NC, 20.0, null, "test");
    private static final DuctRun STIFF = new DuctRun(Kind.STIFF_WALLS, 5, 0.2, 0.2, null, List.of(0.5));
    private static final Spectrum TALK = Spectrum.flat(BandSet.OCTAVE, 70);

    /**
     * The third at 1 kHz by hand, mouths of 0.04 m²: 70 - 4.77 in the third; 10 lg 0.01 = -20; end reflection 0.47, one wave;
     * half the branches -3.01; end reflection -0.47; 10 lg(2 / (16 π) + 4 / 10) = -3.57.
     */
    @Test
    void aChainByHand() {
        Received received =
                CrossTalk.between(TALK, End.bare("A", 0.04), STIFF, End.bare("B", 0.04), listener(10), SOUND_SPEED);
        double byHand = 70 - 4.771 - 20 - 0.472 - 3.010 - 0.472 - 3.567;
        assertThat(received.chain().level().value(13)).isCloseTo(byHand, within(0.005));
        assertThat(received.chain().steps())
                .extracting(LevelStep::key)
                .containsExactly("levelInRoom", "powerIn", "box", "duct", "lining", "branch", "box", "mouth", "room");
    }

    /** As read in a ventilation design guide: a branch of 8 of 12 square feet takes 1.8 dB; in a row they add. */
    @Test
    void branchesShareByArea() {
        DuctRun one = new DuctRun(Kind.STIFF_WALLS, 5, 0.2, 0.2, null, List.of(8 / 12.0));
        DuctRun two = new DuctRun(Kind.STIFF_WALLS, 5, 0.2, 0.2, null, List.of(8 / 12.0, 0.1));
        assertThat(CrossTalk.branches(one)).isCloseTo(1.8, within(0.05));
        assertThat(CrossTalk.branches(two)).isCloseTo(11.76, within(0.005));
        DuctRun none = new DuctRun(Kind.STIFF_WALLS, 5, 0.2, 0.2, null, List.of());
        assertThat(CrossTalk.branches(none)).isZero();
    }

    @Test
    void equalRoomsHearEachOtherAlike() {
        SharedDuct duct = shared(TALK, 0.03, 8, STIFF);
        Spectrum box = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 2 + 0.7 * i);
        End here = new End("box", 0.03, box);
        Spectrum toUs = CrossTalk.fromOther(duct, room(8), MouthPosition.EDGE, here, SOUND_SPEED)
                .chain()
                .level();
        Spectrum toThem = CrossTalk.toOther(duct, here, SOUND_SPEED).chain().level();
        for (int i = 0; i < toUs.size(); i++) {
            assertThat(toUs.value(i)).isCloseTo(toThem.value(i), within(1e-9));
        }
    }

    @Test
    void boxesLinersLengthAndAbsorptionOnlyHelp() {
        End mouth = End.bare("A", 0.03);
        Spectrum bare = level(mouth, sheet(4, null), 8);
        Spectrum longer = level(mouth, sheet(8, null), 8);
        Spectrum lined = level(mouth, sheet(4, 0.025), 8);
        Spectrum dead = level(mouth, sheet(4, null), 16);
        Spectrum boxed = level(new End("A", 0.03, Spectrum.flat(BandSet.THIRD_OCTAVE, 12)), sheet(4, null), 8);
        for (int i = 0; i < bare.size(); i++) {
            assertThat(longer.value(i)).isLessThan(bare.value(i));
            assertThat(lined.value(i)).isLessThan(bare.value(i));
            assertThat(dead.value(i)).isLessThan(bare.value(i));
            assertThat(boxed.value(i)).isCloseTo(bare.value(i) - 12, within(1e-9));
        }
    }

    @Test
    void theVerdictIsTheMarginToTheListenersTarget() {
        Received loud = CrossTalk.fromOther(
                shared(TALK, 0.03, 8, STIFF), room(8), MouthPosition.EDGE, End.bare("A", 0.03), SOUND_SPEED);
        assertThat(loud.ok()).isFalse();
        End boxed = new End("A", 0.03, Spectrum.flat(BandSet.THIRD_OCTAVE, 60));
        Received quiet =
                CrossTalk.fromOther(shared(TALK, 0.03, 8, STIFF), room(8), MouthPosition.EDGE, boxed, SOUND_SPEED);
        assertThat(quiet.ok()).isTrue();
        assertThat(quiet.margin().margin()).isCloseTo(loud.margin().margin() + 60, within(1e-9));
    }

    @Test
    void withoutALevelHereNothingGoesTheOtherWay() {
        SharedDuct silent = shared(null, 0.03, 8, STIFF);
        assertThatThrownBy(() -> CrossTalk.toOther(silent, End.bare("A", 0.03), SOUND_SPEED))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("levelHere");
    }

    @Test
    void extremesAreNeverNotANumber() {
        DuctRun nothing = new DuctRun(Kind.RECTANGULAR_SHEET, 0, 0.03, 0.03, 0.003, List.of(0.001));
        DuctRun most = new DuctRun(Kind.RECTANGULAR_SHEET, 200, 3, 0.03, 0.2, Collections.nCopies(20, 0.001));
        for (DuctRun run : List.of(nothing, most)) {
            for (double area : new double[] {0.0009, 9}) {
                Spectrum shut = Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY);
                End end = new End("A", area, shut);
                Received received = CrossTalk.between(TALK, end, run, end, listener(0.05), SOUND_SPEED);
                assertThat(received.chain().level().total()).isEqualTo(Double.NEGATIVE_INFINITY);
                Received open = CrossTalk.between(
                        TALK, End.bare("A", area), run, End.bare("B", area), listener(5000), SOUND_SPEED);
                assertThat(open.chain().level().total()).isFinite();
            }
        }
        assertThat(CrossTalk.notices(nothing)).isEmpty();
        assertThat(CrossTalk.notices(most)).isNotEmpty();
    }

    private static Spectrum level(End from, DuctRun run, double absorption) {
        return CrossTalk.between(TALK, from, run, End.bare("B", 0.03), listener(absorption), SOUND_SPEED)
                .chain()
                .level();
    }

    private static DuctRun sheet(double length, Double liner) {
        return new DuctRun(Kind.RECTANGULAR_SHEET, length, 0.2, 0.15, liner, List.of());
    }

    private static Listener listener(double absorption) {
        return new Listener(Collections.nCopies(8, absorption), MouthPosition.MIDDLE_OF_SURFACE, 2, NC_20);
    }

    private static SharedDuct shared(Spectrum here, double area, double absorption, DuctRun run) {
        return new SharedDuct(
                "hall",
                TALK,
                here,
                area,
                MouthPosition.EDGE,
                Collections.nCopies(8, absorption),
                2,
                run,
                NC_20,
                "test");
    }

    private static Room room(double absorption) {
        return new Room("room", 20, 1, 5e-6, 400e-6, 100, Collections.nCopies(8, absorption), 2, 20, 0, null, NC_20);
    }
}
