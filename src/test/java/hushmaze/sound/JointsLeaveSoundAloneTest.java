package hushmaze.sound;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.PathLosses;
import hushmaze.project.Box;
import hushmaze.project.Joinery;
import hushmaze.project.Opening;
import hushmaze.project.Purpose;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.quick.QuickResult;
import hushmaze.sound.quick.QuickWave;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * Property: play, gaskets, grooves and seams move cut sizes only. The path estimate, the quick wave and the air of a random
 * box are the same to the last bit with them and without.
 */
class JointsLeaveSoundAloneTest {
    private static final double SOUND_SPEED = 343.2;
    private static final Opening OPENING =
            new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.2, 0.1);

    private int joined;
    private int seamed;

    /** The next random box with its joints, and the same box without. */
    private Solid[] pair(RandomBoxes boxes) {
        Box box = boxes.next();
        joined += box.joinery().equals(Joinery.PLAIN) ? 0 : 1;
        seamed += box.seams().isEmpty() ? 0 : 1;
        return new Solid[] {SolidBuilder.build(box), SolidBuilder.build(box.joined(null, List.of()))};
    }

    @Test
    void estimateAndAirAreTheSame() {
        RandomBoxes boxes = new RandomBoxes(4711);
        AirState air = AirState.of(0, 20);
        for (int i = 0; i < 400; i++) {
            Solid[] pair = pair(boxes);
            PathEstimate with = PathEstimate.of(pair[0], OPENING, SOUND_SPEED);
            PathEstimate without = PathEstimate.of(pair[1], OPENING, SOUND_SPEED);
            assertThat(with.terms()).as("box %d", i).isEqualTo(without.terms());
            assertThat(with.octaves()).as("box %d", i).isEqualTo(without.octaves());
            assertThat(with.thirds()).as("box %d", i).isEqualTo(without.thirds());
            PathAir airWith = PathLosses.of(pair[0], OPENING, 0.015, air, Purpose.SUPPLY);
            assertThat(airWith).as("box %d", i).isEqualTo(PathLosses.of(pair[1], OPENING, 0.015, air, Purpose.SUPPLY));
        }
        assertThat(joined).isGreaterThan(200);
        assertThat(seamed).isGreaterThan(30);
    }

    @Test
    void quickWaveIsTheSame() {
        RandomBoxes boxes = new RandomBoxes(4712);
        MikiLiner liner = new MikiLiner(20000);
        for (int i = 0; i < 25; i++) {
            Solid[] pair = pair(boxes);
            QuickResult with = QuickWave.of(pair[0], liner, SOUND_SPEED);
            QuickResult without = QuickWave.of(pair[1], liner, SOUND_SPEED);
            assertThat(with.transmissionLoss()).as("box %d", i).isEqualTo(without.transmissionLoss());
            assertThat(with.passLevels()).as("box %d", i).isEqualTo(without.passLevels());
        }
        assertThat(joined).isGreaterThan(10);
    }
}
