package hushmaze.sound.quick;

import static hushmaze.sound.quick.TestPaths.SOUND_SPEED;
import static hushmaze.sound.quick.TestPaths.end;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.porous.MikiLiner;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: what must hold for the quick wave whatever the numbers are. */
class QuickWavePropertyTest {
    private static final QuickTables BARE = new QuickTables(null, SOUND_SPEED);
    private static final QuickTables LINED = new QuickTables(new MikiLiner(20000), SOUND_SPEED);

    @Test
    void aBareDuctOfOneSectionLosesNothing() {
        QuickResult result =
                QuickWave.of(TestPaths.straight(0.1, 0.7, null, LinedFaces.NONE, end(0.1), end(0.1)), BARE);
        for (double loss : result.transmissionLoss()) {
            assertThat(loss).isCloseTo(0, within(0.01));
        }
        for (int band = 0; band < result.thirds().size(); band++) {
            assertThat(result.passLevels().get(0).value(band)).isCloseTo(0, within(0.02));
        }
    }

    /** The lining of a stretch without length: what is left is the error of having few modes. */
    @Test
    void aLinedStretchWithoutLengthLosesNextToNothing() {
        PathPlan plan = PathPlan.of(
                TestPaths.straight(0.1, 0.7, TestPaths.liner(0.025, 20000), TestPaths.SIDES, end(0.1), end(0.1)));
        PathPlan short0 = new PathPlan(
                plan.inlet(),
                plan.outlet(),
                plan.turns(),
                plan.sections(),
                new double[] {0},
                new double[] {0},
                plan.fluids(),
                plan.height());
        Chain chain = new Chain(short0, LINED);
        for (int f = 0; f < QuickGrid.FINE.size(); f++) {
            assertThat(10 * Math.log10(chain.transmitted(f)))
                    .as("%s Hz", QuickGrid.FINE.hz(f))
                    .isCloseTo(0, within(0.3));
        }
    }

    /**
     * At this speed of sound the lined end behind the port reflects one field exactly as a rigid wall does at 69 Hz: its impedance
     * is infinite, the loss is not. The loss at the next frequencies is within half a decibel.
     */
    @Test
    void anEndThatReflectsLikeARigidWallLeavesAFiniteLoss() {
        Box box = new Box(
                Box.Form.MAZE,
                1,
                0.06,
                0.18,
                0.44,
                0,
                List.of(TestPaths.board(0.018), TestPaths.board(0.018)),
                TestPaths.board(0.018),
                1,
                TestPaths.liner(0.025, 20000),
                LinedFaces.FOLD_PLANE,
                new Port(PortFace.SIDE, 0.2, 0.1, 0),
                new Port(PortFace.SIDE, 0.065, 0.18, 0));
        QuickTables tables = new QuickTables(new MikiLiner(20000), 343.23377125510245);
        double[] loss = QuickWave.of(SolidBuilder.build(box), tables).transmissionLoss();
        int at = TestPaths.nearest(69.18);
        assertThat(loss[at]).isCloseTo(loss[at - 1], within(0.5)).isCloseTo(loss[at + 1], within(0.5));
    }

    @Test
    void reversingThePathChangesNothingBelowThePortsCutOn() {
        LikelyBoxes draw = new LikelyBoxes(3);
        for (int i = 0; i < 12; i++) {
            Box box = draw.next();
            Box reversed = SampleBoxes.exchanged(box);
            QuickTables tables = new QuickTables(new MikiLiner(box.liner().flowResistivity()), SOUND_SPEED);
            double[] there = QuickWave.of(SolidBuilder.build(box), tables).transmissionLoss();
            double[] back = QuickWave.of(SolidBuilder.build(reversed), tables).transmissionLoss();
            double widest = Math.max(box.openingPort().width(), box.roomPort().width());
            for (int f = 0; QuickGrid.FINE.hz(f) < 0.95 * SOUND_SPEED / 2 / widest; f++) {
                assertThat(back[f])
                        .as("box %s at %s Hz", i, QuickGrid.FINE.hz(f))
                        .isCloseTo(there[f], within(1e-3 + 1e-4 * there[f]));
            }
        }
    }

    /** Below 125 Hz the ends' reflections add to or take from a decay of less than a decibel: only much longer is more. */
    @Test
    void aLongerLinedStraightLosesMoreInEveryThird() {
        Liner liner = TestPaths.liner(0.04, 20000);
        double[] lengths = {0.4, 0.9, 1.6, 4.0};
        Spectrum[] losses = new Spectrum[lengths.length];
        for (int i = 0; i < lengths.length; i++) {
            Solid solid = TestPaths.straight(0.12, lengths[i], liner, TestPaths.SIDES, end(0.12), end(0.12));
            losses[i] = QuickWave.of(solid, LINED).thirds();
        }
        for (int band = 0; band < losses[0].size(); band++) {
            assertThat(losses[3].value(band)).as("band %s", band).isGreaterThan(losses[0].value(band));
            for (int i = 1; i < lengths.length && band >= 4; i++) {
                assertThat(losses[i].value(band))
                        .as("%s m, band %s", lengths[i], band)
                        .isGreaterThan(losses[i - 1].value(band));
            }
        }
    }

    @Test
    void anyLinerBeatsNoneInTheOctavesFrom500To2000Hz() {
        Random random = new Random(8);
        LikelyBoxes draw = new LikelyBoxes(8);
        for (int i = 0; i < 8; i++) {
            Box box = draw.next();
            if (box.linedFaces().equals(LinedFaces.NONE)) {
                continue;
            }
            double sigma = Math.exp(Math.log(3000) + random.nextDouble() * Math.log(50));
            Spectrum lined = QuickWave.of(SolidBuilder.build(box), new MikiLiner(sigma), SOUND_SPEED)
                    .thirds()
                    .lossesInOctaves();
            Box bare = new Box(
                    box.form(),
                    box.passes(),
                    box.clearWidth(),
                    box.clearHeight(),
                    box.clearLength(),
                    box.turnGap(),
                    box.shell(),
                    box.baffleBoard(),
                    1,
                    null,
                    LinedFaces.NONE,
                    box.openingPort(),
                    box.roomPort());
            Spectrum unlined =
                    QuickWave.of(SolidBuilder.build(bare), BARE).thirds().lossesInOctaves();
            double gain = 0;
            for (int octave = 3; octave <= 5; octave++) {
                gain += lined.value(octave) - unlined.value(octave);
            }
            assertThat(gain / 3).as("box %s, %s", i, box.linedFaces()).isPositive();
        }
    }

    @Test
    void theFieldFallsFromPassToPass() {
        QuickResult result = QuickWave.of(SolidBuilder.build(SampleBoxes.maze(4)), LINED);
        assertThat(result.passLevels()).hasSize(4);
        // from 400 Hz up
        for (int band = 9; band < result.thirds().size(); band++) {
            for (int pass = 1; pass < 4; pass++) {
                assertThat(result.passLevels().get(pass).value(band))
                        .isLessThan(result.passLevels().get(pass - 1).value(band));
            }
            // the last pass is a little louder than what leaves
            assertThat(result.passLevels().get(3).value(band))
                    .isGreaterThan(-result.thirds().value(band) - 3);
        }
    }

    @Test
    void everyFormAndExtremeGivesNumbers() {
        RandomBoxes draw = new RandomBoxes(21);
        Random random = new Random(21);
        for (int i = 0; i < 20; i++) {
            Box box = draw.next();
            double sigma = Math.exp(Math.log(1000) + random.nextDouble() * Math.log(200));
            requireNumbers(QuickWave.of(SolidBuilder.build(box), new MikiLiner(sigma), SOUND_SPEED));
        }
    }

    @Test
    void theNarrowestPassesAndLinerThatFillsThePassGiveNumbers() {
        Port port = new Port(PortFace.SIDE, 0.05, TestPaths.HEIGHT, 0);
        requireNumbers(
                QuickWave.of(TestPaths.maze(3, 0.003, 0.4, 0.001, 0.003, 1, null, LinedFaces.NONE, port, port), BARE));
        for (double sigma : new double[] {1000, 200_000}) {
            Liner filling = TestPaths.liner(0.003, sigma);
            Solid solid = TestPaths.maze(3, 0.003, 0.4, 0.003, 0.003, 1, filling, LinedFaces.FOLD_PLANE, port, port);
            requireNumbers(QuickWave.of(solid, new MikiLiner(sigma), SOUND_SPEED));
        }
    }

    @Test
    void aLossBeyondAllMeasureIsHeldAndSaidSo() {
        Solid solid = TestPaths.maze(
                6,
                0.06,
                1.2,
                0.06,
                0.018,
                1,
                TestPaths.liner(0.05, 20000),
                LinedFaces.FOLD_PLANE,
                end(0.06),
                end(0.06));
        QuickResult result = QuickWave.of(solid, LINED);
        double most = Arrays.stream(result.transmissionLoss()).max().orElseThrow();
        assertThat(most).isCloseTo(QuickWave.MOST_LOSS, within(1e-9));
        assertThat(result.notices()).anyMatch(notice -> notice.kind() == NoticeKind.PATH_LOSS_HELD);
    }

    @Test
    void aLinedBoxNeedsALiner() {
        assertThatThrownBy(() -> QuickWave.of(SolidBuilder.build(SampleBoxes.maze(2)), BARE))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("liner");
    }

    /** What is kept for one box serves the next, and gives the same. */
    @Test
    void tablesThatAreSharedGiveTheSame() {
        Solid solid = SolidBuilder.build(SampleBoxes.maze(3));
        QuickResult first = QuickWave.of(solid, new MikiLiner(20000), SOUND_SPEED);
        QuickWave.of(SolidBuilder.build(SampleBoxes.maze(2)), LINED);
        QuickResult second = QuickWave.of(solid, LINED);
        assertThat(second.transmissionLoss()).containsExactly(first.transmissionLoss());
        assertThat(second.thirds()).isEqualTo(first.thirds());
    }

    private static void requireNumbers(QuickResult result) {
        for (double loss : result.transmissionLoss()) {
            assertThat(loss).isBetween(0.0, QuickWave.MOST_LOSS);
        }
        for (Spectrum level : result.passLevels()) {
            for (double value : level.values()) {
                assertThat(value).isFinite().isLessThan(60);
            }
        }
    }
}
