package hushmaze.sound;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/**
 * Properties that every method for the path of a box has to keep, whatever it computes inside. A test class of a method
 * extends this one, names the method, and may set how many boxes are drawn, up to which band the method goes and how exact
 * it is.
 *
 * <p>Not asked: that a longer unlined maze is quieter, or that one more unlined turn is. They resonate, and may be louder.
 */
public abstract class PathMethodContract {
    private static final BandSet THIRDS = BandSet.THIRD_OCTAVE;
    private static final String INVENTED = "invented for a test";
    /** A method that is tried on fewer boxes is a slow one, and tried on fewer liners too. */
    private static final int FEW = 20;

    /** The method under test. */
    protected abstract PathMethod method();

    /** How many random boxes each property is tried on; a slow method takes fewer, and below 20 fewer limits too. */
    protected int cases() {
        return 60;
    }

    /** Highest band that the method computes, Hz; what it says above is not looked at, but must be a number. */
    protected double highestHz() {
        return 10_000;
    }

    /** How far two computations of the same thing may lie apart, dB. */
    protected double exactness() {
        return 1e-6;
    }

    /** How far the shortest bare straight pass may be from no loss at all, dB. */
    protected double nothing() {
        return 0.1;
    }

    /** Longest pass of the largest box, m; three fifths of it wide. A method that meshes the air may not get far. */
    protected double longest() {
        return 5;
    }

    /** Whether the method takes offset chambers too. */
    protected boolean takesChambers() {
        return true;
    }

    /** The shortest pass there can be, bare, with ports as large as its section, is as good as no box. */
    @Test
    void nothingLosesNothing() {
        for (double width : new double[] {0.03, 0.1, 0.25}) {
            Spectrum loss = of(straight(width, 0.2, 0.05, null));
            for (int i = 0; i < bands(); i++) {
                assertThat(loss.value(i)).as(at(width + " m wide", i)).isCloseTo(0, within(nothing()));
            }
        }
    }

    /** Sound that runs the other way meets the same parts in the other order: the ports change places. */
    @Test
    void reversedItIsTheSame() {
        for (Box box : drawn(11)) {
            Spectrum there = of(box);
            Spectrum back = of(SampleBoxes.exchanged(box));
            for (int i = 0; i < bands(); i++) {
                assertThat(back.value(i)).as(at(box, i)).isCloseTo(there.value(i), within(exactness()));
            }
        }
    }

    /**
     * A straight lined pass half as long again loses more in every band. Up to 0.7 m only: in longer ones the reflection
     * at the ends of the liner, a quarter of a wave apart, costs up to 0.15 dB at 63 to 100 Hz (computed by mode matching).
     */
    @Test
    void aLongerLinedStraightLosesMore() {
        Random random = new Random(12);
        for (int n = 0; n < cases(); n++) {
            double width = between(random, 0.06, 0.12);
            double height = between(random, 0.15, 0.35);
            double length = between(random, 0.3, 0.45);
            Liner liner = liner(between(random, 0.025, 0.05), between(random, 10_000, 40_000));
            Box box = straight(width, height, length, liner);
            Spectrum one = of(box);
            Spectrum longer = of(straight(width, height, 1.5 * length, liner));
            for (int i = 0; i < bands(); i++) {
                assertThat(longer.value(i)).as(at(box, i)).isGreaterThan(one.value(i));
            }
        }
    }

    /** Of two mazes that differ in nothing but their liner, the lined one is quieter over the octaves 500 Hz to 2 kHz. */
    @Test
    void anyLinerBeatsNone() {
        Random random = new Random(13);
        for (int n = 0; n < cases(); n++) {
            int passes = 1 + n % 4;
            double width = between(random, 0.08, 0.15);
            double length = between(random, 0.4, 0.8);
            Liner liner = liner(between(random, 0.01, 0.05), between(random, 5_000, 50_000));
            Box box = maze(passes, width, length, liner, LinedFaces.FOLD_PLANE);
            double lined = middle(of(box));
            double bare = middle(of(maze(passes, width, length, null, LinedFaces.NONE)));
            assertThat(lined).as(box.toString()).isGreaterThan(bare);
        }
    }

    /** Random boxes of every form give numbers in every band. */
    @Test
    void anyBoxGivesNumbers() {
        for (Box box : drawn(14)) {
            assertNumbers(box);
        }
    }

    /** Thinnest board there may be, m. */
    private static final double THINNEST = 0.003;

    /** At the limits of what a box may be there are numbers, or a refusal that names the field. */
    @Test
    void theLimitsGiveNumbersOrARefusal() {
        double[] all = {500, 1_000, 20_000, 200_000, 500_000};
        double[] few = {1_000, 200_000};
        for (double flowResistivity : cases() < FEW ? few : all) {
            // Thin, and as thick as the pass is wide: the most there may be.
            assertNumbers(straight(0.1, 0.2, 0.6, liner(0.003, flowResistivity)));
            assertNumbers(straight(0.1, 0.2, 0.6, liner(0.1, flowResistivity)));
            assertNumbers(maze(2, 0.05, 0.3, liner(0.05, flowResistivity), LinedFaces.ALL));
            assertNumbers(maze(1, 0.003, 0.3, liner(0.003, flowResistivity), LinedFaces.FOLD_PLANE));
        }
        Port side = new Port(PortFace.SIDE, 0.02, 0.02, 0);
        for (int passes : new int[] {1, 2, Box.MAX_PASSES}) {
            // The narrowest pass, one millimetre, or as wide as the thinnest baffle; only ports along it reach it.
            double narrow = passes == 1 ? 0.001 : THINNEST;
            assertNumbers(maze(passes, narrow, 0.3, 0.001, null, LinedFaces.NONE, side));
            double wide = 0.6 * longest();
            Port port = new Port(PortFace.END, wide, 0.2, 0);
            assertNumbers(maze(passes, wide, longest(), wide, liner(0.2, 20_000), LinedFaces.ALL, port));
        }
    }

    private void assertNumbers(Box box) {
        try {
            Spectrum loss = of(box);
            for (int i = 0; i < THIRDS.size(); i++) {
                assertThat(loss.value(i)).as(at(box, i)).isFinite();
            }
        } catch (InvalidValue refused) {
            assertThat(refused.field()).as(box.toString()).isNotBlank();
        }
    }

    private Spectrum of(Box box) {
        return method().thirds(SolidBuilder.build(box), SOUND_SPEED);
    }

    private int bands() {
        int count = 0;
        while (count < THIRDS.size() && THIRDS.centreHz(count) <= highestHz() * (1 + 1e-9)) {
            count++;
        }
        return count;
    }

    private List<Box> drawn(long seed) {
        RandomBoxes boxes = new RandomBoxes(seed);
        List<Box> drawn = new ArrayList<>();
        while (drawn.size() < cases()) {
            Box box = boxes.next();
            if (takesChambers() || box.form() == Box.Form.MAZE) {
                drawn.add(box);
            }
        }
        return drawn;
    }

    private static String at(Object what, int band) {
        return THIRDS.bands().get(band).label() + " Hz, " + what;
    }

    /** Loss for equal energy in all thirds of the octaves 500 Hz, 1 kHz and 2 kHz, dB. */
    private static double middle(Spectrum loss) {
        Spectrum octaves = loss.lossesInOctaves();
        return Energy.meanLoss(octaves.value(3), octaves.value(4), octaves.value(5));
    }

    private static double between(Random random, double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static Liner liner(double thickness, double flowResistivity) {
        return new Liner("liner", thickness, 48, flowResistivity, flowResistivity, flowResistivity, 0.0009, INVENTED);
    }

    /** One pass between ports of its own section. */
    private static Box straight(double width, double height, double length, Liner liner) {
        Port port = new Port(PortFace.END, width, height, 0);
        LinedFaces faces = liner == null ? LinedFaces.NONE : LinedFaces.FOLD_PLANE;
        return box(1, width, height, length, 0, liner, faces, port);
    }

    /** Passes of 200 mm height between ports of their own section, with turns as wide as they are. */
    private static Box maze(int passes, double width, double length, Liner liner, LinedFaces faces) {
        Port port = new Port(PortFace.END, Math.max(0.02, width), 0.2, 0);
        if (width < 0.02) {
            port = new Port(PortFace.SIDE, 0.1, 0.2, 0);
        }
        return maze(passes, width, length, width, liner, faces, port);
    }

    private static Box maze(
            int passes, double width, double length, double gap, Liner liner, LinedFaces faces, Port port) {
        return box(passes, width, 0.2, length, passes > 1 ? gap : 0, liner, faces, port);
    }

    private static Box box(
            int passes,
            double width,
            double height,
            double length,
            double gap,
            Liner liner,
            LinedFaces faces,
            Port port) {
        return new Box(
                Box.Form.MAZE,
                passes,
                width,
                height,
                length,
                gap,
                Collections.nCopies(1, SampleBoxes.board()),
                SampleBoxes.board(
                        Math.max(THINNEST, Math.min(width, SampleBoxes.board().thickness()))),
                1,
                liner,
                faces,
                port,
                port);
    }
}
