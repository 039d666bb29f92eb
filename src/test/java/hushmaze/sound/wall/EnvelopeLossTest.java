package hushmaze.sound.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.project.Room;
import hushmaze.project.SlitMouth;
import hushmaze.project.Target;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Validation of the composite envelope against a worked example and by hand; properties over random envelopes. */
class EnvelopeLossTest {
    private static final double SOUND_SPEED = 343.2;
    private static final String TEST = "invented for a test";
    /** Index of the 1 kHz third octave. */
    private static final int KHZ = 13;

    /** Engineering Acoustics, example 12.13: brick 59 dB, window 35 dB, printed 44.8 dB. */
    @Test
    void brickWallWithAWindow() {
        EnvelopeElement wall = surface("brick", 2.3 * 4.6 - 0.9 * 1.2, 59);
        EnvelopeElement window = surface("window", 0.9 * 1.2, 35);
        EnvelopeLoss loss = of(wall, window);
        assertThat(loss.area()).isCloseTo(2.3 * 4.6, within(1e-9));
        assertThat(loss.loss().value(KHZ)).isCloseTo(44.8, within(0.051));
        assertThat(loss.governing(KHZ).name()).isEqualTo("window");
    }

    /** By hand: 10 m² of 50 dB and two vents of D_n,e 40 dB: T = 1e-4 + 2e-3 m², R' = 10 lg(10 / 0.0021) = 36.78 dB. */
    @Test
    void smallElementsCountByTenSquareMetres() {
        EnvelopeElement vents = EnvelopeElement.small("vent", 2, flat(40), TEST);
        EnvelopeLoss loss = of(surface("wall", 10, 50), vents);
        assertThat(loss.loss().value(KHZ)).isCloseTo(36.78, within(0.005));
        assertThat(loss.area()).isEqualTo(10);
    }

    /** By hand: an open hole of 0.03 m² has D_n,e 25.23 dB; a box of 30 dB over it 55.23 dB, 37.24 dB referred to 0.159 m². */
    @Test
    void aVentBoxAsAnElement() {
        assertThat(ElementDifference.ofOpening(0.03)).isCloseTo(25.23, within(0.005));
        Spectrum difference = ElementDifference.ofBox(flat(30), 0.03);
        assertThat(difference.value(0)).isCloseTo(55.23, within(0.005));
        assertThat(ElementDifference.reduction(difference, 0.159).value(0)).isCloseTo(37.24, within(0.005));
        // The box lets through 0.03 m² · 10^-3, so a wall of 10 m² and 40 dB gets T = 1.03e-3 m²: 39.87 dB.
        EnvelopeLoss loss = of(surface("wall", 10, 40)).with("box", difference);
        assertThat(loss.loss().value(KHZ)).isCloseTo(39.87, within(0.005));
    }

    /** By hand: L1 70 dB, T = 0.0021 m², A = 12 m²: 70 + 10 lg(0.0021 / 12) = 32.43 dB. */
    @Test
    void levelInTheRoom() {
        EnvelopeElement vents = EnvelopeElement.small("vent", 2, flat(40), TEST);
        EnvelopeLoss loss = of(surface("wall", 10, 50), vents);
        Spectrum level = loss.levelIn(room(12), flat(70));
        assertThat(level.value(KHZ)).isCloseTo(32.43, within(0.005));
        double sum = 0;
        for (EnvelopeLoss.Share share : loss.shares()) {
            sum += Math.pow(10, EnvelopeLoss.levelIn(room(12), flat(70), share).value(KHZ) / 10);
        }
        assertThat(10 * Math.log10(sum)).isCloseTo(32.43, within(0.005));
    }

    /** An octave level of 70 dB is 65.23 dB in each third: by hand 10 lg 3 less. */
    @Test
    void octaveLevelsAreSplit() {
        Spectrum level = of(surface("wall", 10, 50)).levelIn(room(10), Spectrum.flat(BandSet.OCTAVE, 70));
        assertThat(level.value(KHZ)).isCloseTo(70 - 50 - 4.771, within(0.001));
    }

    @Test
    void whatIsAssumedIsSaid() {
        assertThat(of(surface("wall", 10, 50)).assumed()).isFalse();
        EnvelopeElement octaves = EnvelopeElement.surface("wall", 10, Spectrum.flat(BandSet.OCTAVE, 50), TEST);
        assertThat(of(octaves).assumed()).isTrue();
        EnvelopeElement weighted = new EnvelopeElement(
                "door", EnvelopeElement.Kind.SURFACE, 1, 2.0, null, 32.0, null, null, null, null, TEST);
        assertThat(of(weighted).assumed()).isTrue();
        // By hand: the reference curve for 32 dB stands at 30 dB at 500 Hz.
        assertThat(of(weighted).loss().value(10)).isCloseTo(30, within(1e-9));
    }

    @Test
    void orderDoesNotMatter() {
        Random random = new Random(21);
        for (int n = 0; n < 100; n++) {
            List<EnvelopeElement> elements = randomElements(random);
            Spectrum loss = EnvelopeLoss.of(new Envelope(elements, null, null), SOUND_SPEED)
                    .loss();
            Collections.shuffle(elements, random);
            Spectrum again = EnvelopeLoss.of(new Envelope(elements, null, null), SOUND_SPEED)
                    .loss();
            for (int i = 0; i < loss.size(); i++) {
                assertThat(again.value(i)).isCloseTo(loss.value(i), within(1e-9));
            }
        }
    }

    @Test
    void moreLeakNeverHelps() {
        Random random = new Random(22);
        for (int n = 0; n < 100; n++) {
            List<EnvelopeElement> elements = randomElements(random);
            EnvelopeLoss loss = EnvelopeLoss.of(new Envelope(elements, null, null), SOUND_SPEED);
            EnvelopeLoss more = loss.with("vent", flat(random.nextInt(80)));
            for (int i = 0; i < 24; i++) {
                assertThat(loss.loss().value(i)).isFinite();
                assertThat(more.loss().value(i)).isLessThanOrEqualTo(loss.loss().value(i));
                assertThat(more.openArea().value(i))
                        .isGreaterThanOrEqualTo(loss.openArea().value(i));
            }
        }
    }

    /**
     * A solid wood door printed sealed and printed as usually hung (table 11.4 of Introduction to Acoustics; table 7.6 of
     * Engineering Noise Control): from the first, sides and head open by 2 mm make the second within 5 dB from 125 Hz to 2
     * kHz. The doors are not the same one and the real cracks are not known. At 4 kHz the even slit resonates, the real one
     * does not: too pessimistic there.
     */
    @Test
    void aDoorWithOpenEdges() {
        EnvelopeElement leaf = EnvelopeElement.surface(
                "door", 1.6, new Spectrum(BandSet.OCTAVE, 23, 29, 31, 31, 31, 39, 43, 43), TEST);
        EnvelopeElement edges = EnvelopeElement.gap("edges", 0.002, 4.8, 0.044, SlitMouth.IN_SURFACE, TEST);
        Spectrum hung = of(leaf, edges).loss().lossesInOctaves();
        double[] printed = {13, 17, 21, 26, 29, 31, 34, 32};
        for (int octave = 1; octave < 6; octave++) {
            assertThat(hung.value(octave)).isCloseTo(printed[octave], within(5.0));
        }
        assertThat(hung.value(6)).isLessThan(printed[6]);
    }

    private static List<EnvelopeElement> randomElements(Random random) {
        List<EnvelopeElement> elements = new ArrayList<>();
        elements.add(surface("wall", 1 + 20 * random.nextDouble(), 60 * random.nextDouble()));
        for (int i = 0; i < random.nextInt(5); i++) {
            elements.add(
                    switch (random.nextInt(3)) {
                        case 0 -> surface("s" + i, 0.1 + random.nextDouble(), 120 * random.nextDouble());
                        case 1 -> EnvelopeElement.small("v" + i, 3, flat(120 * random.nextDouble()), TEST);
                        default ->
                            EnvelopeElement.gap(
                                    "g" + i,
                                    Math.pow(10, -6 + 4 * random.nextDouble()),
                                    0.1 + random.nextDouble(),
                                    0.001 + 0.2 * random.nextDouble(),
                                    SlitMouth.values()[random.nextInt(2)],
                                    TEST);
                    });
        }
        return elements;
    }

    private static EnvelopeLoss of(EnvelopeElement... elements) {
        return EnvelopeLoss.of(new Envelope(List.of(elements), null, null), SOUND_SPEED);
    }

    private static EnvelopeElement surface(String name, double area, double loss) {
        return EnvelopeElement.surface(name, area, flat(loss), TEST);
    }

    private static Spectrum flat(double value) {
        return Spectrum.flat(BandSet.THIRD_OCTAVE, value);
    }

    private static Room room(double absorption) {
        return new Room(
                "room",
                40,
                2,
                5e-6,
                4e-4,
                200,
                Collections.nCopies(8, absorption),
                2,
                20,
                0,
                null,
                new Target(Target.Kind.NC, 20.0, null, TEST));
    }
}
