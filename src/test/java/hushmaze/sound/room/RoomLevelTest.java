package hushmaze.sound.room;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.MouthPosition;
import hushmaze.project.Noise;
import hushmaze.project.Room;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Validation of the room formula against a worked example; properties of the conversion to the microphone. */
class RoomLevelTest {
    /**
     * Worked example of an engineering reference on indoor sound: LW 90 dB, 12.2 m² of absorption at a mean coefficient of
     * 0.2, so R = 15.25 m², Q = 1, r = 2 m. It prints 84.8 dB; its own formula gives 84.5 dB by hand.
     */
    @Test
    void workedExample() {
        assertThat(90 + RoomLevel.gain(1, 2, 12.2 / (1 - 0.2))).isCloseTo(84.5, within(0.05));
    }

    @Test
    void farAwayOnlyTheReverberantFieldIsLeft() {
        // DIN 4109 form, as read in a collection of formulas: L = LW - 10 lg A + 6.
        assertThat(RoomLevel.gain(2, 1e4, 10)).isCloseTo(-10 + 6, within(0.03));
    }

    @Test
    void directivityDoublesAtEdgeAndCorner() {
        assertThat(RoomLevel.directivity(MouthPosition.MIDDLE_OF_SURFACE)).isEqualTo(2);
        assertThat(RoomLevel.directivity(MouthPosition.EDGE)).isEqualTo(4);
        assertThat(RoomLevel.directivity(MouthPosition.CORNER)).isEqualTo(8);
        // Outdoors in effect: 3 dB for each doubling, by hand.
        double far = 1e9;
        assertThat(RoomLevel.gain(4, 1, far) - RoomLevel.gain(2, 1, far)).isCloseTo(3.01, within(0.001));
    }

    @Test
    void noiseAtTheMicrophoneStaysAsItIs() {
        Spectrum levels = new Spectrum(BandSet.OCTAVE, 60, 55, 50, 45, 40, 35, 30, 25);
        Noise noise = new Noise(levels, Noise.Place.AT_MICROPHONE, null, "test");
        assertThat(RoomLevel.atMicrophone(noise, room(1.5), BandSet.OCTAVE)).isEqualTo(levels);
        assertThat(RoomLevel.atMicrophone(noise, room(1.5), BandSet.THIRD_OCTAVE))
                .isEqualTo(levels.levelsInThirds());
    }

    @Test
    void noiseAtADistanceIsCarriedToTheMicrophone() {
        Spectrum levels = Spectrum.flat(BandSet.OCTAVE, 50);
        Noise noise = new Noise(levels, Noise.Place.AT_DISTANCE, 0.5, "test");
        Spectrum there = RoomLevel.atMicrophone(noise, room(2), BandSet.OCTAVE);
        // By hand: Q 2, A 8 m²: at 2 m 10 lg(0.0398 + 0.5), at 0.5 m 10 lg(0.6366 + 0.5).
        double change = 10 * Math.log10(0.53979 / 1.13662);
        for (int i = 0; i < there.size(); i++) {
            assertThat(there.value(i)).isCloseTo(50 + change, within(0.001));
        }
    }

    @Test
    void theSameDistanceChangesNothingInAnyBand() {
        Spectrum levels = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 60 - i);
        Noise noise = new Noise(levels, Noise.Place.AT_DISTANCE, 1.2, "test");
        Room room = room(1.2);
        assertThat(RoomLevel.atMicrophone(noise, room, BandSet.THIRD_OCTAVE)).isEqualTo(levels);
        assertThat(RoomLevel.atMicrophone(noise, room, BandSet.OCTAVE)).isEqualTo(levels.levelsInOctaves());
    }

    /** By hand: half a sphere of 1 m radius is 6.283 m², so 10 lg(1 / 6.283) = -7.98 dB; 6.02 dB for each doubling. */
    @Test
    void outdoorsTheDirectSoundIsLeftAlone() {
        assertThat(RoomLevel.outdoors(2, 1)).isCloseTo(-7.98, within(0.005));
        assertThat(RoomLevel.outdoors(2, 4) - RoomLevel.outdoors(2, 2)).isCloseTo(-6.02, within(0.001));
    }

    @Test
    void powerAndLevelAreEachOthersInverse() {
        Spectrum level = Spectrum.of(BandSet.THIRD_OCTAVE, i -> 50 - 2 * i);
        Room room = room(1.7);
        for (MouthPosition position : MouthPosition.values()) {
            Spectrum back = RoomLevel.fromPower(RoomLevel.powerFor(level, room, position), room, position);
            for (int i = 0; i < level.size(); i++) {
                assertThat(back.value(i)).isCloseTo(level.value(i), within(1e-9));
            }
        }
    }

    @Test
    void theLevelFallsWithDistanceAndAbsorptionAndRisesTowardsTheCorner() {
        for (double r = 0.2; r < 20; r *= 1.3) {
            for (double a = 0.2; a < 2000; a *= 3) {
                assertThat(RoomLevel.gain(2, r * 1.1, a)).isLessThan(RoomLevel.gain(2, r, a));
                assertThat(RoomLevel.gain(2, r, a * 1.1)).isLessThan(RoomLevel.gain(2, r, a));
                assertThat(RoomLevel.gain(4, r, a)).isGreaterThan(RoomLevel.gain(2, r, a));
                assertThat(RoomLevel.gain(2, r, a)).isGreaterThan(RoomLevel.outdoors(2, r));
            }
        }
    }

    @Test
    void silenceStaysSilent() {
        Spectrum silence = Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY);
        assertThat(RoomLevel.fromPower(silence, room(1), MouthPosition.EDGE)).isEqualTo(silence);
        assertThat(RoomLevel.powerFor(silence, room(1), MouthPosition.EDGE)).isEqualTo(silence);
    }

    private static Room room(double distance) {
        List<Double> absorption = Collections.nCopies(8, 8.0);
        Target target = new Target(Target.Kind.NC, 20.0, null, "test");
        return new Room("room", 20, 1, 5e-6, 400e-6, 100, absorption, distance, 20, 0, null, target);
    }
}
