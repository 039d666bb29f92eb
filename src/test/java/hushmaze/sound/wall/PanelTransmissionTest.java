package hushmaze.sound.wall;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.quantity.BandSet;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation of the single wall and of composite surfaces against worked examples; properties of laminates. */
class PanelTransmissionTest {
    private static final double SOUND_SPEED = 343.2;

    /** Engineering Acoustics, example 12.13: 210 kg/m² brick and 12.5 kg/m² glass at 1 kHz, printed 59 dB and 35 dB. */
    @ParameterizedTest
    @CsvSource({"210, 59", "12.5, 35"})
    void fieldIncidenceMassLaw(double massPerArea, double printed) {
        assertThat(PanelTransmission.massLaw(massPerArea, 1000)).isCloseTo(printed, within(0.5));
    }

    /** The same example: a wall of 2.3 m by 4.6 m with a window of 0.9 m by 1.2 m, printed 44.8 dB. */
    @Test
    void brickWallWithAWindow() {
        double window = 0.9 * 1.2;
        double wall = 2.3 * 4.6 - window;
        assertThat(Composite.transmissionLoss(new double[] {wall, window}, new double[] {59, 35}))
                .isCloseTo(44.8, within(0.051));
    }

    /** A hole in a wall: share of the area, loss of the wall, loss of the whole; computed by hand. */
    @ParameterizedTest
    @CsvSource({
        "0.01, 40, 19.96",
        "0.01, 60, 20.0",
        "0.001, 40, 29.6",
        "0.001, 60, 30.0",
        "0.0001, 40, 37.0",
        "0.0001, 60, 40.0"
    })
    void anOpenHoleInAWall(double share, double wall, double whole) {
        assertThat(Composite.transmissionLoss(new double[] {1 - share, share}, new double[] {wall, 0}))
                .isCloseTo(whole, within(0.051));
    }

    @Test
    void aSlitIsItsArea() {
        // By hand: 0.1 mm along 7 m is 7 cm².
        assertThat(new SlitLeak(0.0001, 7).area()).isCloseTo(7e-4, within(1e-12));
    }

    /**
     * Critical frequency times thickness, m/s, as printed in Architectural Acoustics, table 9.1 (steel 12.4, glass 12.7);
     * moduli and densities of steel and glass from memory. Fibreboard, E 3.5 GPa and 750 kg/m³: computed by hand, 28.7.
     */
    @ParameterizedTest
    @CsvSource({"200e9, 7800, 12.4, 0.3", "62e9, 2500, 12.7, 0.3", "3.5e9, 750, 28.7, 0.05"})
    void criticalFrequencyTimesThickness(double modulus, double density, double expected, double tolerance) {
        Board board = board(0.018, density, modulus, 0.02);
        double product = PanelTransmission.of(List.of(board), SOUND_SPEED).criticalFrequency() * 0.018;
        assertThat(product).isCloseTo(expected, within(tolerance));
    }

    /** Two equal boards glued into one are one board of twice the thickness: half the critical frequency, twice the mass. */
    @Test
    void gluedLayersActAsOneBoard() {
        Board single = board(0.018, 750, 3.5e9, 0.02);
        PanelTransmission one = PanelTransmission.of(List.of(single), SOUND_SPEED);
        PanelTransmission two = PanelTransmission.of(List.of(single, single), SOUND_SPEED);
        assertThat(two.massPerArea()).isCloseTo(27, within(1e-9));
        assertThat(two.criticalFrequency()).isCloseTo(one.criticalFrequency() / 2, within(1e-6));
    }

    @Test
    void neverAboveTheMassLawAndWithoutJumps() {
        for (int layers = 1; layers <= 3; layers++) {
            for (double eta : new double[] {0.005, 0.02, 0.1, 1}) {
                PanelTransmission wall =
                        PanelTransmission.of(Collections.nCopies(layers, board(0.018, 750, 3.5e9, eta)), SOUND_SPEED);
                double before = wall.transmissionLoss(40);
                for (double f = 40; f < 12000; f *= 1.002) {
                    double loss = wall.transmissionLoss(f);
                    assertThat(loss)
                            .isLessThanOrEqualTo(Math.max(0, PanelTransmission.massLaw(wall.massPerArea(), f)) + 1e-9);
                    assertThat(Math.abs(loss - before)).isLessThan(0.3);
                    before = loss;
                }
            }
        }
    }

    /** By hand: 18 mm, 13.5 kg/m², fc 1594 Hz, η 0.02: 20 lg(13.5 · 1594) - 42.4 + 10 lg(0.04 / π) = 25.3 dB at fc. */
    @Test
    void theDipAtCoincidence() {
        PanelTransmission wall = PanelTransmission.of(List.of(board(0.018, 750, 3.5e9, 0.02)), SOUND_SPEED);
        assertThat(wall.transmissionLoss(wall.criticalFrequency())).isCloseTo(25.3, within(0.1));
        assertThat(wall.transmissionLoss(BandSet.OCTAVE.centreHz(2)))
                .isCloseTo(PanelTransmission.massLaw(13.5, BandSet.OCTAVE.centreHz(2)), within(1e-9));
    }

    private static Board board(double thickness, double density, double modulus, double eta) {
        return new Board("board", thickness, density, modulus, eta, false, "invented for a test");
    }
}
