package hushmaze.sound.estimate;

import static hushmaze.sound.SampleBoxes.SOUND_SPEED;
import static hushmaze.sound.SampleBoxes.board;
import static hushmaze.sound.SampleBoxes.chamber;
import static hushmaze.sound.SampleBoxes.liner;
import static hushmaze.sound.SampleBoxes.opening;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.SolidBuilder;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Validation of the offset chamber below its cut-on against values computed apart from the program; how its two regions
 * join, worked from the two formulas; its notices worked by hand. The sample chamber is 500 by 400 by 900 mm with
 * ports of 100 by 300 mm.
 */
class TwoRegionPlenumTest {
    private static final Port PORT = new Port(PortFace.END, 0.1, 0.3, 0);

    /**
     * All faces lined 50 mm, 20,000 Pa·s/m²: decay of the two slits of 500 and 400 mm together from modes found by finite
     * elements, 0.223, 0.876 and 3.527 dB in 0.9 m (the regression has 0.528, 1.330 and 3.817), then the closed form.
     */
    @ParameterizedTest
    @CsvSource({"0, 9.579", "1, 9.985", "2, 11.390"})
    void lowSoundIsHeldToTheLinedSlit(int octave, double expected) {
        assertThat(loss(chamber(liner(0.05)), octave)).isCloseTo(expected, within(0.002));
    }

    /** Bare it is the textbook chamber up to its own first cut-on of 343 Hz, m = 0.2 / 0.03. */
    @Test
    void aBareChamberIsTheSimpleOne() {
        Spectrum loss = of(chamber(null)).thirds();
        double m = 0.2 / 0.03;
        for (int i = 0; BandSet.THIRD_OCTAVE.centreHz(i) < 343; i++) {
            double sine = Math.sin(2 * Math.PI * BandSet.THIRD_OCTAVE.centreHz(i) / SOUND_SPEED * 0.9);
            double byHand = 10 * Math.log10(1 + (m - 1 / m) * (m - 1 / m) / 4 * sine * sine);
            assertThat(loss.value(i)).isCloseTo(byHand, within(1e-9));
        }
    }

    /**
     * From 343 Hz, the chamber's cut-on, to 572 Hz, that of the ports, the figure goes over from one formula to the other: at
     * 501 Hz lg(501.2/343.2) / lg(572/343.2) = 0.741 of the way. Bare: α = 0.03 in 2.02 m², s² = 0.97, cos 0.914, Wells 3.14
     * dB; plane waves 9.99 dB (kl = 8.258).
     */
    @Test
    void betweenTheRegionsByHand() {
        double wells = -10 * Math.log10(0.03 * (0.9 / Math.sqrt(0.97) / (2 * Math.PI * 0.97) + 0.97 / (0.03 * 2.02)));
        assertThat(wells).isCloseTo(3.14, within(0.01));
        double m = 0.2 / 0.03;
        double sine = Math.sin(2 * Math.PI * 501.187 / 343.2 * 0.9);
        double plane = 10 * Math.log10(1 + (m - 1 / m) * (m - 1 / m) / 4 * sine * sine);
        double share = Math.log(501.187 / 343.2) / Math.log(572 / 343.2);
        assertThat(plane).isCloseTo(9.99, within(0.01));
        assertThat(share).isCloseTo(0.741, within(0.001));
        assertThat(loss(chamber(null), 3)).isCloseTo(share * wells + (1 - share) * plane, within(1e-4));
    }

    /** Property: from 315 Hz, below the join, to 1 kHz no step from third to third is above 4 dB; the two formulas differ more. */
    @Test
    void theRegionsJoinWithoutAJump() {
        Spectrum loss = of(chamber(liner(0.05))).thirds();
        for (int i = 8; i < 13; i++) {
            assertThat(Math.abs(loss.value(i + 1) - loss.value(i)))
                    .as(BandSet.THIRD_OCTAVE.bands().get(i).label())
                    .isLessThan(4);
        }
    }

    /** Property: what was tested, lined and large enough has only the notices that always hold. */
    @Test
    void withinItsRangeLittleIsSaid() {
        Box large = sized(1.0, 1.0, 1.0, PORT, PORT);
        assertThat(kinds(large))
                .containsExactlyInAnyOrder(
                        NoticeKind.CHAMBER_REGIONS_JOINED,
                        NoticeKind.RUN_SHORTER_THAN_RANGE,
                        NoticeKind.LINER_MODEL_BELOW_RANGE);
    }

    @Test
    void eachRangeHasItsNotice() {
        Notice small = notice(chamber(liner(0.05)), NoticeKind.CHAMBER_OUTSIDE_RANGE);
        assertThat(small.value()).isCloseTo(0.18, within(1e-9));
        assertThat(small.limit()).isEqualTo(0.5);
        Notice big = notice(sized(3, 3, 4, PORT, PORT), NoticeKind.CHAMBER_OUTSIDE_RANGE);
        assertThat(big.value()).isCloseTo(36, within(1e-9));
        assertThat(big.limit()).isEqualTo(30);

        // Waves of 600 mm, twice the ports' longer side, are longer than the chamber is high.
        Notice waves = notice(chamber(liner(0.05)), NoticeKind.CHAMBER_SMALL_TO_WAVELENGTH);
        assertThat(waves.value()).isCloseTo(0.6, within(1e-9));
        assertThat(waves.limit()).isEqualTo(0.4);

        // 0.45 by 0.38 m of port ask for 1.71 m² of liner; the sides have 2 · 0.4 · 0.9 = 0.72 m².
        Port wide = new Port(PortFace.END, 0.45, 0.38, 0);
        Notice lining =
                notice(sized(0.5, 0.4, 0.9, wide, wide, new LinedFaces(1, 1, 0, 0)), NoticeKind.CHAMBER_LINING_SMALL);
        assertThat(lining.value()).isCloseTo(0.72, within(1e-9));
        assertThat(lining.limit()).isCloseTo(1.71, within(1e-9));

        Notice joined = notice(chamber(liner(0.05)), NoticeKind.CHAMBER_REGIONS_JOINED);
        assertThat(joined.value()).isCloseTo(343.2, within(1e-9));
        assertThat(joined.limit()).isCloseTo(572, within(1e-9));

        Port side = new Port(PortFace.SIDE, 0.1, 0.3, 0);
        Notice turned = notice(sized(0.5, 0.4, 0.9, side, PORT), NoticeKind.CHAMBER_PORTS_NOT_OPPOSITE);
        assertThat(turned.part()).isEqualTo("opening port");
    }

    /** Of unequal ports the larger one counts, either way round: by hand as in the sample, with 0.06 m² for 0.03 m². */
    @Test
    void theLargerPortCounts() {
        Port larger = new Port(PortFace.END, 0.2, 0.3, 0);
        double[] there = of(sized(0.5, 0.4, 0.9, PORT, larger)).octaves().values();
        double[] back = of(sized(0.5, 0.4, 0.9, larger, PORT)).octaves().values();
        for (int i = 0; i < there.length; i++) {
            assertThat(there[i]).isCloseTo(back[i], within(1e-9));
        }
        // Ports' middles 0.35 m out of line: s² = 0.9325, cos 0.932; α 0.948 at 2 kHz.
        double byHand = -10 * Math.log10(0.06 * (0.932 / (2 * Math.PI * 0.9325) + 0.052 / (0.948 * 2.02)));
        assertThat(there[5]).isCloseTo(byHand, within(0.05));
    }

    private static Box sized(double width, double height, double length, Port one, Port other) {
        return sized(width, height, length, one, other, LinedFaces.ALL);
    }

    private static Box sized(double width, double height, double length, Port one, Port other, LinedFaces faces) {
        return new Box(
                Box.Form.OFFSET_CHAMBER,
                1,
                width,
                height,
                length,
                0,
                List.of(board()),
                board(),
                1,
                liner(0.05),
                faces,
                one,
                other);
    }

    private static PathEstimate of(Box box) {
        return PathEstimate.of(SolidBuilder.build(box), opening(Opening.Kind.IN_DUCT), SOUND_SPEED);
    }

    private static double loss(Box box, int octave) {
        return of(box).octaves().value(octave);
    }

    private static List<NoticeKind> kinds(Box box) {
        return of(box).notices().stream().map(Notice::kind).toList();
    }

    private static Notice notice(Box box, NoticeKind kind) {
        Notice[] found =
                of(box).notices().stream().filter(n -> n.kind() == kind).toArray(Notice[]::new);
        assertThat(found).as(Arrays.toString(kinds(box).toArray())).hasSize(1);
        return found[0];
    }
}
