package hushmaze.sound;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.chamber;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.maze;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import org.junit.jupiter.api.Test;

/** Properties of the whole box's loss over sample and random boxes; its combination worked by hand. */
class BoxLossTest {
    @Test
    void thePathRangeByHand() {
        BoxLoss loss = of(maze(2), Opening.Kind.WALL_OPENING);
        // Mouths and steps are nothing here: 0.7 lining + 0.5 turns; 1.15 times the whole.
        int band = 13;
        double lining = loss.estimate().thirdsOf("lining").value(band);
        double turns = loss.estimate().thirdsOf("turn").value(band);
        assertThat(loss.pathLow().value(band)).isCloseTo(0.7 * lining + 0.5 * turns, within(1e-9));
        assertThat(loss.path().likely().value(band)).isCloseTo(lining + turns, within(1e-9));
        assertThat(loss.path().high().value(band)).isCloseTo(1.15 * (lining + turns), within(1e-9));
    }

    /** For losses well above 10 dB the combination is the plain sum by energy. */
    @Test
    void routesAddByEnergy() {
        BoxLoss loss = of(maze(4), Opening.Kind.WALL_OPENING);
        for (int band = 10; band < 20; band++) {
            double sum = Energy.parallelLoss(
                    loss.path().likely().value(band), loss.walls().likely().value(band));
            assertThat(loss.thirds().likely().value(band)).isCloseTo(sum, within(0.2));
        }
    }

    /**
     * A short staggered treated ventilation path was measured at STC 22 to 32 (abstract of a laboratory study, Journal of
     * Acoustics, 2019). Other sizes, so 5 points more either way; contour of ASTM E413 from memory.
     */
    @Test
    void aSingleLayerBoxStaysNearPublishedPractice() {
        BoxLoss loss = of(maze(3), Opening.Kind.WALL_OPENING);
        assertThat(soundTransmissionClass(loss.thirds().likely())).isBetween(17, 37);
        // At 1.25 kHz the boards decide.
        assertThat(loss.path().likely().value(14))
                .isGreaterThan(loss.walls().likely().value(14));
    }

    private static int soundTransmissionClass(Spectrum loss) {
        int[] contour = {-16, -13, -10, -7, -4, -1, 0, 1, 2, 3, 4, 4, 4, 4, 4, 4};
        int rating = 80;
        while (true) {
            double sum = 0;
            double most = 0;
            for (int i = 0; i < contour.length; i++) {
                double deficiency = Math.max(0, rating + contour[i] - loss.value(i + 4));
                sum += deficiency;
                most = Math.max(most, deficiency);
            }
            if (sum <= 32 && most <= 8) {
                return rating;
            }
            rating--;
        }
    }

    @Test
    void octavesAreTheMeanEnergyOfTheirThirds() {
        BoxLoss loss = of(maze(3), Opening.Kind.REGISTER);
        for (int i = 0; i < BandSet.OCTAVE.size(); i++) {
            double through = 0;
            for (int t = 0; t < 3; t++) {
                through += Math.pow(10, -loss.thirds().low().value(3 * i + t) / 10) / 3;
            }
            assertThat(loss.octaves().low().value(i)).isCloseTo(-10 * Math.log10(through), within(1e-9));
        }
    }

    @Test
    void morePassesAreNeverLouder() {
        Spectrum before = of(maze(1), Opening.Kind.WALL_OPENING).pathLow();
        for (int passes = 2; passes <= 6; passes++) {
            Spectrum now = of(maze(passes), Opening.Kind.WALL_OPENING).pathLow();
            for (int i = 3; i < now.size(); i++) {
                assertThat(now.value(i)).isGreaterThan(before.value(i));
            }
            before = now;
        }
    }

    @Test
    void linerBeatsNoLinerWithWallsToo() {
        Spectrum bare = of(maze(3, 0.6, null, LinedFaces.NONE, 1), Opening.Kind.REGISTER)
                .octaves()
                .low();
        Spectrum lined = of(maze(3), Opening.Kind.REGISTER).octaves().low();
        Spectrum chamberBare =
                of(chamber(null), Opening.Kind.REGISTER).octaves().low();
        Spectrum chamberLined =
                of(chamber(liner(0.05)), Opening.Kind.REGISTER).octaves().low();
        for (int octave = 3; octave <= 5; octave++) {
            assertThat(lined.value(octave)).isGreaterThan(bare.value(octave));
            assertThat(chamberLined.value(octave)).isGreaterThan(chamberBare.value(octave));
        }
    }

    @Test
    void randomBoxesGiveFiniteRisingRangesBelowTheirRoutes() {
        RandomBoxes boxes = new RandomBoxes(2024);
        for (int n = 0; n < 400; n++) {
            BoxLoss loss = of(boxes.next(), Opening.Kind.values()[n % 3]);
            for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
                double low = loss.thirds().low().value(i);
                double likely = loss.thirds().likely().value(i);
                double high = loss.thirds().high().value(i);
                assertThat(low).isFinite().isLessThanOrEqualTo(likely + 1e-9);
                assertThat(high).isFinite().isGreaterThanOrEqualTo(likely - 1e-9);
                assertThat(likely).isLessThanOrEqualTo(loss.path().likely().value(i) + 1e-9);
                if (loss.path().likely().value(i) >= 0) {
                    assertThat(likely).isLessThanOrEqualTo(loss.walls().likely().value(i) + 1e-9);
                    assertThat(likely).isGreaterThanOrEqualTo(-1e-9);
                }
            }
        }
    }

    @Test
    void aRangeMustRise() {
        Spectrum one = Spectrum.flat(BandSet.OCTAVE, 1);
        Spectrum two = Spectrum.flat(BandSet.OCTAVE, 2);
        assertThatThrownBy(() -> new LossRange(two, one, two)).isInstanceOf(IllegalArgumentException.class);
    }

    private static BoxLoss of(Box box, Opening.Kind kind) {
        return BoxLoss.of(SolidBuilder.build(box), opening(kind), SOUND_SPEED);
    }
}
