package hushmaze.project;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property: sources and receivers that cannot be are refused with field, value and limit. */
class SoundRecordsTest {
    private static final Spectrum LEVEL = Spectrum.flat(BandSet.OCTAVE, 80);
    private static final Spectrum SILENT = Spectrum.flat(BandSet.OCTAVE, Double.NEGATIVE_INFINITY);
    private static final Target NC_20 = new Target(Target.Kind.NC, 20.0, null, "test");

    @Test
    void aFanMustHaveAFinitePower() {
        assertThatThrownBy(() -> new FanSound("fan", FanSound.Side.IN_ROOM, SILENT, "test"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("power")
                .hasMessageContaining("-30 to 160 dB");
    }

    @Test
    void aReceivingRoomNeedsItsAbsorption() {
        assertThatThrownBy(() -> outgoing(Outgoing.Receiver.ROOM, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("absorptionArea");
        assertThatThrownBy(() -> outgoing(Outgoing.Receiver.ROOM, List.of(1.0, 2.0)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("8 values");
        assertThatThrownBy(() -> outgoing(Outgoing.Receiver.OUTDOORS, Collections.nCopies(8, 0.0)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("absorptionArea");
        assertThat(outgoing(Outgoing.Receiver.OUTDOORS, null).absorptionArea()).isNull();
    }

    @Test
    void aDuctThatCannotBeIsRefused() {
        assertThatThrownBy(() -> new DuctRun(DuctRun.Kind.RECTANGULAR_SHEET, 5, 0.2, null, null, List.of()))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("height");
        assertThatThrownBy(() -> new DuctRun(DuctRun.Kind.STIFF_WALLS, 5, 0.2, 0.2, null, List.of(1.5)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("branchShares");
        assertThatThrownBy(() -> new DuctRun(DuctRun.Kind.STIFF_WALLS, 5, 0.2, 0.2, null, Collections.nCopies(21, 0.5)))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("at most 20");
    }

    /** By hand: 200 mm round is 0.0314 m², 200 by 150 mm is 0.03 m². */
    @Test
    void areaOfADuct() {
        assertThat(new DuctRun(DuctRun.Kind.ROUND_SHEET, 5, 0.2, null, null, List.of()).area())
                .isCloseTo(0.0314, within(0.0001));
        assertThat(new DuctRun(DuctRun.Kind.STIFF_WALLS, 5, 0.2, 0.15, null, List.of()).area())
                .isCloseTo(0.03, within(1e-12));
    }

    private static Outgoing outgoing(Outgoing.Receiver receiver, List<Double> areas) {
        return new Outgoing(LEVEL, receiver, MouthPosition.EDGE, areas, 3, NC_20, "test");
    }
}
