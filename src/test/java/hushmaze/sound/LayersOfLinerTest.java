package hushmaze.sound;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.air.AirState;
import hushmaze.air.PathLosses;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Purpose;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.porous.MikiLiner;
import hushmaze.sound.quick.QuickWave;
import hushmaze.sound.section.PathWave;
import hushmaze.work.Progress;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Property: two layers of a liner are one of twice its thickness, in outer sizes, mass, air and sound by every method; a second
 * layer on some faces adds to the loss at low frequency, whatever the method.
 */
class LayersOfLinerTest {
    private static final double SOUND_SPEED = 343.2;
    private static final Opening OPENING =
            new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.1, 0.1);

    private static Box box(Box.Form form, int passes, double thickness, LinedFaces faces, PortFace room) {
        boolean chamber = form == Box.Form.OFFSET_CHAMBER;
        return new Box(
                form,
                passes,
                chamber ? 0.4 : 0.11,
                0.2,
                0.5,
                passes > 1 ? 0.12 : 0,
                List.of(SampleBoxes.board(0.018)),
                SampleBoxes.board(0.018),
                1,
                liner(thickness),
                faces,
                new Port(PortFace.END, 0.11, 0.2, 0),
                room == PortFace.END ? new Port(room, 0.11, 0.2, 0) : new Port(room, 0.15, 0.1, 0));
    }

    private static Liner liner(double thickness) {
        return SampleBoxes.liner(thickness);
    }

    static Stream<Box[]> pairs() {
        LinedFaces two = new LinedFaces(2, 2, 2, 2);
        LinedFaces flat = new LinedFaces(2, 2, 2, 0);
        return Stream.of(
                pair(Box.Form.MAZE, 1, flat, PortFace.END),
                pair(Box.Form.MAZE, 2, flat, PortFace.SIDE),
                pair(Box.Form.MAZE, 3, two, PortFace.FRONT),
                pair(Box.Form.OFFSET_CHAMBER, 1, two, PortFace.END));
    }

    private static Box[] pair(Box.Form form, int passes, LinedFaces two, PortFace room) {
        LinedFaces one = new LinedFaces(two.walls() / 2, two.baffles() / 2, two.ends() / 2, two.broad() / 2);
        return new Box[] {box(form, passes, 0.025, two, room), box(form, passes, 0.05, one, room)};
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void twoLayersAreOneOfTwiceTheThickness(Box two, Box thick) {
        Solid a = SolidBuilder.build(two);
        Solid b = SolidBuilder.build(thick);
        assertThat(a.outer()).isEqualTo(b.outer());
        assertThat(a.mass()).isCloseTo(b.mass(), within(1e-9));
        assertThat(a.liners()).hasSize(2 * b.liners().size());
        AirState air = AirState.of(0, 20);
        assertThat(PathLosses.of(a, OPENING, 0.015, air, Purpose.SUPPLY))
                .isEqualTo(PathLosses.of(b, OPENING, 0.015, air, Purpose.SUPPLY));
        same(estimate(a), estimate(b), 1e-9);
        same(quick(a), quick(b), 1e-6);
    }

    /** The mesh has one line more: both are within its error. */
    @Test
    void theWaveSolutionSeesOneThickLayerToo() {
        Box[] boxes = pair(Box.Form.MAZE, 2, new LinedFaces(2, 2, 2, 0), PortFace.SIDE);
        same(wave(boxes[0]), wave(boxes[1]), 0.05);
    }

    @Test
    void aSecondLayerAddsAtLowFrequency() {
        Solid one = SolidBuilder.build(box(Box.Form.MAZE, 2, 0.025, LinedFaces.FOLD_PLANE, PortFace.SIDE));
        for (LinedFaces more : List.of(new LinedFaces(2, 2, 1, 0), new LinedFaces(1, 1, 1, 1))) {
            Solid other = SolidBuilder.build(box(Box.Form.MAZE, 2, 0.025, more, PortFace.SIDE));
            assertThat(octave250(estimate(other))).isGreaterThan(octave250(estimate(one)) + 0.5);
            assertThat(octave250(quick(other))).isGreaterThan(octave250(quick(one)) + 1);
        }
    }

    /** Sides with two layers, baffles with one: no method may count on more than two everywhere, or on less than one. */
    @Test
    void unevenLayersAreBetweenEvenOnes() {
        Solid one = SolidBuilder.build(box(Box.Form.MAZE, 2, 0.025, LinedFaces.FOLD_PLANE, PortFace.SIDE));
        Solid uneven = SolidBuilder.build(box(Box.Form.MAZE, 2, 0.025, new LinedFaces(2, 1, 1, 0), PortFace.SIDE));
        Solid two = SolidBuilder.build(box(Box.Form.MAZE, 2, 0.025, new LinedFaces(2, 2, 1, 0), PortFace.SIDE));
        assertThat(octave250(quick(uneven))).isBetween(octave250(quick(one)), octave250(quick(two)));
        assertThat(octave250(estimate(uneven))).isBetween(octave250(estimate(one)), octave250(estimate(two)));
    }

    private static double octave250(Spectrum thirds) {
        return (thirds.value(6) + thirds.value(7) + thirds.value(8)) / 3;
    }

    private static Spectrum estimate(Solid solid) {
        return PathEstimate.of(solid, OPENING, SOUND_SPEED).thirds();
    }

    private static Spectrum quick(Solid solid) {
        return QuickWave.of(solid, new MikiLiner(20000), SOUND_SPEED).thirds();
    }

    private static Spectrum wave(Box box) {
        return PathWave.of(SolidBuilder.build(box), box.liner(), SOUND_SPEED, Progress.NONE)
                .completedBy(Spectrum.flat(BandSet.THIRD_OCTAVE, 0));
    }

    private static void same(Spectrum a, Spectrum b, double slack) {
        for (int i = 0; i < a.size(); i++) {
            assertThat(a.value(i)).as("third octave %d", i).isCloseTo(b.value(i), within(slack));
        }
    }
}
