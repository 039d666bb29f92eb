package hushmaze.sound.flow;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Opening;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.flow.FlowNoise.Placed;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Properties of the sum over a path, worked by hand for simple sources; properties of the sources found in boxes. */
class FlowNoiseTest {
    private static final Spectrum NOTHING = Spectrum.flat(BandSet.THIRD_OCTAVE, 0);
    private static final double MOUTH = GrilleNoise.OPEN_MOUTH;

    @Test
    void equalSourcesAddByEnergyAfterTheirLosses() {
        FlowSource source = new StraightNoise("pass 1", 5, 0.05);
        FlowSource twin = new StraightNoise("pass 2", 5, 0.05);
        Spectrum alone = FlowNoise.of(List.of(new Placed(source, NOTHING))).octaves();
        FlowNoise both = FlowNoise.of(List.of(new Placed(source, NOTHING), new Placed(twin, NOTHING)));
        FlowNoise far = FlowNoise.of(
                List.of(new Placed(source, Spectrum.flat(BandSet.THIRD_OCTAVE, 10)), new Placed(twin, NOTHING)));
        for (int i = 0; i < alone.size(); i++) {
            assertThat(alone.value(i)).isCloseTo(source.power().value(i), within(1e-9));
            // 10 lg 2 and 10 lg 1.1 by hand.
            assertThat(both.octaves().value(i) - alone.value(i)).isCloseTo(3.0103, within(1e-4));
            assertThat(far.octaves().value(i) - alone.value(i)).isCloseTo(0.4139, within(1e-4));
        }
        assertThat(far.terms().get(0).octaves().value(2))
                .isCloseTo(source.power().value(2) - 10, within(1e-9));
        assertThat(far.terms().get(0).made()).isEqualTo(source.power());
    }

    @Test
    void nothingAtAllIsSilence() {
        assertThat(FlowNoise.of(List.of()).power().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        Placed still = new Placed(new StraightNoise("pass 1", 0, 0.05), NOTHING);
        Placed shutOff = new Placed(
                new StraightNoise("pass 2", 5, 0.05), Spectrum.flat(BandSet.THIRD_OCTAVE, Double.POSITIVE_INFINITY));
        FlowNoise silent = FlowNoise.of(List.of(still, shutOff));
        assertThat(silent.power().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        assertThat(silent.notices()).isEmpty();
    }

    @Test
    void remainingLossesAreSumsToTheRoom() {
        List<Spectrum> losses = List.of(flat(1), flat(10), flat(100));
        assertThat(FlowNoise.remaining(losses)).containsExactly(flat(111), flat(110), flat(100), flat(0));
        assertThat(FlowNoise.remaining(List.of())).containsExactly(flat(0));
    }

    @Test
    void theNoticeFurthestOffSpeaksForTheOthers() {
        Placed one = new Placed(new StraightNoise("pass 1", 1.9, 0.5), NOTHING);
        Placed other = new Placed(new StraightNoise("pass 2", 1.5, 0.5), NOTHING);
        FlowNoise noise = FlowNoise.of(List.of(one, other));
        assertThat(noise.notices()).hasSize(1);
        assertThat(noise.notices().get(0).part()).isEqualTo("pass 2");
    }

    @Test
    void aBoxHasASourceForEveryPassTurnAndMouth() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(3));
        FlowNoise noise = BoxFlow.of(solid, 0.03, losses(3, 20), List.of(), MOUTH);
        assertThat(noise.terms())
                .extracting(FlowTerm::part)
                .containsExactly("turn 1", "turn 2", "pass 1", "pass 2", "pass 3", "room port");
        // 20 dB a pass by hand: turn 1 has passes 2 and 3 before it, pass 1 the same, pass 3 and the port nothing.
        double[] expected = {40, 20, 40, 20, 0, 0};
        for (int i = 0; i < expected.length; i++) {
            FlowTerm term = noise.terms().get(i);
            assertThat(term.made().value(3) - term.octaves().value(3)).isCloseTo(expected[i], within(1e-9));
        }
    }

    /** Velocity by hand: 30 L/s through the gap of 100 mm by 300 mm is 1 m/s. */
    @Test
    void aTurnIsAtTheVelocityOfItsGap() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(2));
        FlowNoise noise = BoxFlow.of(solid, 0.03, losses(2, 0), List.of(), MOUTH);
        Spectrum byHand = new ElbowNoise("turn 1", 1, 0.03, 0.1, ElbowNoise.Corner.SHARP, 2).power();
        Spectrum made = noise.terms().get(0).made();
        for (int i = 0; i < made.size(); i++) {
            assertThat(made.value(i)).isCloseTo(byHand.value(i), within(1e-6));
        }
    }

    @Test
    void lossesOfPressureMakeATurnLouderAndAddSteps() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(2));
        List<FlowLoss> pressures = List.of(
                new FlowLoss("entry", "opening port", 0.5, 3),
                new FlowLoss("friction", "pass 1", 0.4, 3),
                new FlowLoss("turn180", "turn 1", 3, 3),
                new FlowLoss("areaChange", "room port", 0.2, 3),
                new FlowLoss("exit", "room port", 1, 3));
        FlowNoise bare = BoxFlow.of(solid, 0.09, losses(2, 20), List.of(), MOUTH);
        FlowNoise with = BoxFlow.of(solid, 0.09, losses(2, 20), pressures, MOUTH);
        assertThat(with.terms())
                .extracting(FlowTerm::part)
                .containsExactly("turn 1", "pass 1", "pass 2", "opening port", "room port", "room port");
        for (int i = 0; i < 8; i++) {
            assertThat(with.terms().get(0).made().value(i))
                    .isGreaterThanOrEqualTo(bare.terms().get(0).made().value(i));
        }
        assertThat(with.power().total()).isGreaterThan(bare.power().total());
        // The entry at the opening has both passes before it: 40 dB.
        FlowTerm entry = with.terms().get(3);
        assertThat(entry.made().value(2) - entry.octaves().value(2)).isCloseTo(40, within(1e-9));
    }

    @Test
    void aLossOfAPartThatIsNotThereIsRefused() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(2));
        for (FlowLoss wrong : List.of(
                new FlowLoss("turn180", "turn 2", 3, 1),
                new FlowLoss("turn90", "room port", 1, 1),
                new FlowLoss("areaChange", "pass 3", 1, 1),
                new FlowLoss("areaChange", "elsewhere", 1, 1))) {
            assertThatThrownBy(() -> BoxFlow.of(solid, 0.03, losses(2, 0), List.of(wrong), MOUTH))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessageContaining(wrong.part());
        }
        assertThatThrownBy(() -> BoxFlow.of(solid, 0.03, losses(3, 0), List.of(), MOUTH))
                .isInstanceOf(IllegalArgumentException.class);
    }

    @Test
    void lossesOfAnEstimateGoFromPassToPass() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(3));
        PathEstimate estimate =
                PathEstimate.of(solid, SampleBoxes.opening(Opening.Kind.WALL_OPENING), SampleBoxes.SOUND_SPEED);
        List<Spectrum> losses = BoxFlow.passLosses(estimate.legs());
        Spectrum sum = losses.get(0).plus(losses.get(1)).plus(losses.get(2));
        Spectrum expected = estimate.thirdsOf("lining").plus(estimate.thirdsOf("turn"));
        for (int i = 0; i < sum.size(); i++) {
            // Ports in the ends: every turn is between two passes.
            assertThat(sum.value(i)).isCloseTo(expected.value(i), within(1e-9));
        }
    }

    @Test
    void inEveryBoxMoreAirIsLouderAndLossesOnlyHelp() {
        RandomBoxes boxes = new RandomBoxes(41);
        for (int i = 0; i < 60; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            int passes = solid.passes().size();
            Spectrum slow = BoxFlow.of(solid, 0.002, losses(passes, 6), List.of(), MOUTH)
                    .power();
            Spectrum fast = BoxFlow.of(solid, 0.004, losses(passes, 6), List.of(), MOUTH)
                    .power();
            Spectrum bare = BoxFlow.of(solid, 0.004, losses(passes, 0), List.of(), MOUTH)
                    .power();
            for (int band = 0; band < slow.size(); band++) {
                assertThat(fast.value(band)).isGreaterThan(slow.value(band));
                assertThat(fast.value(band)).isLessThanOrEqualTo(bare.value(band) + 1e-9);
            }
            FlowNoise still = BoxFlow.of(solid, 0, losses(passes, 6), List.of(), MOUTH);
            assertThat(still.power().total()).isEqualTo(Double.NEGATIVE_INFINITY);
        }
    }

    @Test
    void theTermsAddUpToTheWhole() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(4));
        FlowNoise noise = BoxFlow.of(solid, 0.06, losses(4, 3), List.of(), 4);
        List<Double> totals = new ArrayList<>();
        noise.terms().forEach(term -> totals.add(term.power().total()));
        double sum = Energy.sum(totals.stream().mapToDouble(Double::doubleValue).toArray());
        assertThat(noise.power().total()).isCloseTo(sum, within(1e-9));
    }

    private static List<Spectrum> losses(int passes, double each) {
        return Collections.nCopies(passes, flat(each));
    }

    private static Spectrum flat(double value) {
        return Spectrum.flat(BandSet.THIRD_OCTAVE, value);
    }
}
