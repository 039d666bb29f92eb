package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.material.Board;
import hushmaze.material.Facing;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Envelope;
import hushmaze.project.EnvelopeElement;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.criterion.SoundTransmissionClass;
import hushmaze.sound.wall.EnvelopeLoss;
import java.util.HashSet;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Property: all presets load, their names differ, every value has a source that says what kind it is. Validation:
 * numbers computed again from the publications their sources name.
 */
class PresetsTest {
    private static final Presets PRESETS = Presets.load();

    @Test
    void everyListHasEntriesOfDifferentNames() {
        for (List<String> names : List.of(
                PRESETS.boards().stream().map(Board::name).toList(),
                PRESETS.liners().stream().map(Liner::name).toList(),
                PRESETS.boardSheets().stream().map(Sheet::name).toList(),
                PRESETS.linerSheets().stream().map(Sheet::name).toList(),
                PRESETS.saws().stream().map(Saw::name).toList(),
                PRESETS.screws().stream().map(Screw::name).toList(),
                PRESETS.targets().stream().map(TargetPreset::name).toList(),
                PRESETS.noises().stream().map(NoisePreset::name).toList(),
                PRESETS.facings().stream().map(Facing::name).toList(),
                PRESETS.elements().stream().map(EnvelopeElement::name).toList())) {
            assertThat(names).hasSizeGreaterThanOrEqualTo(5);
            assertThat(new HashSet<>(names)).hasSameSizeAs(names);
        }
    }

    @Test
    void everySourceSaysWhereItIsFrom() {
        assertThat(sources())
                .hasSizeGreaterThan(60)
                .allSatisfy(source -> assertThat(source)
                        .containsAnyOf("from memory", "as read", "As read", "no source", "nvented", "exact"));
    }

    @Test
    void everyNoiseIsMarkedAsInventedOrSourced() {
        assertThat(PRESETS.noises())
                .allSatisfy(preset -> assertThat(preset.noise().source()).containsAnyOf("Invented", "as read"));
    }

    @Test
    void everyNameFindsItsEntry() {
        PRESETS.boards().forEach(b -> assertThat(PRESETS.board(b.name())).isEqualTo(b));
        PRESETS.liners().forEach(l -> assertThat(PRESETS.liner(l.name())).isEqualTo(l));
        PRESETS.boardSheets()
                .forEach(s -> assertThat(PRESETS.boardSheet(s.name())).isEqualTo(s));
        PRESETS.linerSheets()
                .forEach(s -> assertThat(PRESETS.linerSheet(s.name())).isEqualTo(s));
        PRESETS.saws().forEach(s -> assertThat(PRESETS.saw(s.name())).isEqualTo(s));
        PRESETS.screws().forEach(s -> assertThat(PRESETS.screw(s.name())).isEqualTo(s));
        PRESETS.targets().forEach(t -> assertThat(PRESETS.target(t.name())).isEqualTo(t));
        PRESETS.noises().forEach(n -> assertThat(PRESETS.noise(n.name())).isEqualTo(n));
        PRESETS.facings().forEach(f -> assertThat(PRESETS.facing(f.name())).isEqualTo(f));
        PRESETS.elements().forEach(e -> assertThat(PRESETS.element(e.name())).isEqualTo(e));
    }

    @Test
    void unknownNameIsRefusedWithTheNamesThereAre() {
        assertThatThrownBy(() -> PRESETS.saw("Axe"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("\"Axe\"")
                .hasMessageContaining("Track saw");
    }

    /** Critical frequency times thickness, m/s, as read in Long, Architectural Acoustics, Table 9.1 (10 % either way). */
    @ParameterizedTest
    @CsvSource({"Softwood plywood 18 mm,20", "Birch plywood 18 mm,20", "Chipboard 16 mm,23", "Chipboard 19 mm,23"})
    void stiffnessGivesThePublishedCriticalFrequency(String name, double published) {
        Board board = PRESETS.board(name);
        // f_c h = c²/(2 pi) · sqrt(12 rho (1 - nu²) / E), nu = 0.3, c = 343.2 m/s at 20 °C
        double product = 343.2 * 343.2 / (2 * Math.PI) * Math.sqrt(12 * board.density() * 0.91 / board.youngModulus());
        assertThat(product).isCloseTo(published, within(0.01 * published));
    }

    /** Inch sizes by the exact inch of 25.4 mm; the pilots of the number sizes as read in advice on fastening MDF. */
    @ParameterizedTest
    @CsvSource({"No. 6 x 1 1/4 in,2.38125,31.75", "No. 8 x 1 1/2 in,2.778125,38.1", "No. 10 x 2 in,3.175,50.8"})
    void inchScrews(String name, double pilotMm, double lengthMm) {
        assertThat(PRESETS.screw(name).pilot() * 1000).isCloseTo(pilotMm, within(1e-9));
        assertThat(PRESETS.screw(name).length() * 1000).isCloseTo(lengthMm, within(1e-9));
    }

    @Test
    void linersHaveTheStatedDefaultRoughness() {
        assertThat(PRESETS.liners()).extracting(Liner::roughness).containsOnly(0.0009);
    }

    @Test
    void noisesFallTowardsTheHighestBandWhateverTheirHump() {
        assertThat(PRESETS.noises()).allSatisfy(preset -> {
            Spectrum levels = preset.noise().levels();
            assertThat(levels.value(levels.size() - 1)).isLessThan(levels.total() - 5);
        });
    }

    /** Classes printed beside the octaves of these elements; octaves give them within 1. */
    @ParameterizedTest
    @CsvSource({
        "'Stud wall, 13 mm plasterboard each side',37",
        "'Stud wall, two 16 mm plasterboards each side',44",
        "'Staggered stud wall, 16 mm plasterboard each side',41",
        "'Hollow door 44 mm, without its edges',19",
        "'Solid wood door 44 mm, without its edges',34"
    })
    void elementsHaveTheirPrintedClass(String name, int printed) {
        assertThat(SoundTransmissionClass.of(PRESETS.element(name).loss()).number())
                .isCloseTo(printed, within(1));
    }

    /** A room of a stud wall and a door: better with a solid door than a hollow one, and with sealed than with open edges. */
    @Test
    void betterDoorsAreBetter() {
        double hollowOpen = composite("Hollow door 44 mm, without its edges", "Door edges, no seal, 2 mm open");
        double solidOpen = composite("Solid wood door 44 mm, without its edges", "Door edges, no seal, 2 mm open");
        double solidSealed =
                composite("Solid wood door 44 mm, without its edges", "Door edges, seal pressed on, 0.1 mm left");
        assertThat(solidOpen).isGreaterThan(hollowOpen);
        assertThat(solidSealed).isGreaterThan(solidOpen + 2);
    }

    /** Loss at 1 kHz of the common wall with a door and its edges, dB. */
    private static double composite(String door, String edges) {
        EnvelopeElement wall = PRESETS.element("Stud wall, 13 mm plasterboard each side");
        Envelope envelope = new Envelope(List.of(wall, PRESETS.element(door), PRESETS.element(edges)), null, null);
        return EnvelopeLoss.of(envelope, 343.2).loss().value(13);
    }

    private static List<String> sources() {
        return Stream.of(
                        PRESETS.boards().stream().map(Board::source),
                        PRESETS.liners().stream().map(Liner::source),
                        PRESETS.boardSheets().stream().map(Sheet::source),
                        PRESETS.linerSheets().stream().map(Sheet::source),
                        PRESETS.saws().stream().map(Saw::source),
                        PRESETS.screws().stream().map(Screw::source),
                        PRESETS.targets().stream().map(t -> t.target().source()),
                        PRESETS.noises().stream().map(n -> n.noise().source()),
                        PRESETS.facings().stream().map(Facing::source),
                        PRESETS.elements().stream().map(EnvelopeElement::source))
                .flatMap(stream -> stream)
                .toList();
    }
}
