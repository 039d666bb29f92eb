package hushmaze.measure;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.Band;
import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Validation: background taken off by energy. 6 dB above it a reading loses 1.26 dB, as in the title of Ecma TR/107 (from memory);
 * others by hand from L = 10 lg(10^(L1/10) - 10^(L0/10)).
 */
class NetLevelsTest {
    private static BandLevels thirds(double level) {
        return BandLevels.of(BandSet.THIRD_OCTAVE, i -> level);
    }

    @Test
    void backgroundIsTakenOffByEnergy() {
        NetLevels net = NetLevels.of(List.of(thirds(66)), List.of(thirds(60)));
        assertThat(net.levels().level(5)).isCloseTo(66 - 1.26, within(0.005));
        assertThat(net.most()).isEmpty();
    }

    @Test
    void positionsAreAveragedByEnergyFirst() {
        // 10 lg ((10^6 + 10^7) / 2) = 67.40 dB
        NetLevels net = NetLevels.of(List.of(thirds(60), thirds(70)), List.of());
        assertThat(net.levels().level(5)).isCloseTo(67.40, within(0.005));
    }

    @Test
    void nearTheBackgroundALevelIsAMostOne() {
        NetLevels net = NetLevels.of(List.of(thirds(60)), List.of(BandLevels.of(BandSet.THIRD_OCTAVE, i -> 50 + i)));
        // 60 dB is less than 3 dB above the background from 58 dB on, which is the ninth band, 315 Hz
        assertThat(net.most()).first().extracting(Band::label).isEqualTo("315");
        assertThat(net.levels().level(8)).isEqualTo(57);
        assertThat(net.levels().level(7)).isCloseTo(56.98, within(0.005));
    }

    @Test
    void aBandWithoutBackgroundStaysAndOneWithoutReadingIsMissing() {
        boolean[] some = new boolean[24];
        some[3] = true;
        some[4] = true;
        BandLevels floor = new BandLevels(BandSet.THIRD_OCTAVE, new double[24], some);
        NetLevels net = NetLevels.of(List.of(thirds(60)), List.of(floor));
        assertThat(net.levels().level(10)).isEqualTo(60);
        NetLevels gaps = NetLevels.of(List.of(floor.plus(60)), List.of(thirds(20)));
        assertThat(gaps.levels().covered(10)).isFalse();
        assertThat(gaps.levels().covered(3)).isTrue();
    }

    @Test
    void octavesMakeTheWholeOctaves() {
        NetLevels net = NetLevels.of(List.of(thirds(60)), List.of(BandLevels.of(BandSet.OCTAVE, i -> 30)));
        assertThat(net.levels().bands()).isEqualTo(BandSet.OCTAVE);
        // three thirds of 60 dB are 64.77 dB
        assertThat(net.levels().level(2)).isCloseTo(64.77, within(0.01));
    }
}
