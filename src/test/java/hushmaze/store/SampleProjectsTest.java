package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.SolidBuilder;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Property: the sample projects load, are saved without loss, and are sound as briefs. Validation: the outer size of the
 * box by hand.
 */
class SampleProjectsTest {
    @TempDir
    Path folder;

    static List<String> names() {
        return SampleProjects.names();
    }

    @ParameterizedTest
    @MethodSource("names")
    void sampleIsSavedWithoutLoss(String name) {
        Project project = SampleProjects.read(name);
        Path file = folder.resolve(name + ".json");
        ProjectFile.write(project, file);
        assertThat(ProjectFile.read(file)).isEqualTo(project);
    }

    @ParameterizedTest
    @MethodSource("names")
    void airGoesInAndOutInEqualParts(String name) {
        double balance = 0;
        for (VentPath path : SampleProjects.read(name).paths()) {
            double flow = path.brief().flow();
            balance += path.purpose() == Purpose.SUPPLY ? flow : -flow;
        }
        assertThat(Math.abs(balance)).isLessThan(1e-9);
    }

    @ParameterizedTest
    @MethodSource("names")
    void openingsKeepTheirVelocityLimit(String name) {
        assertThat(SampleProjects.read(name).paths()).allSatisfy(path -> {
            Brief brief = path.brief();
            assertThat(brief.flow() / brief.opening().area()).isLessThan(brief.maxOpeningVelocity());
        });
    }

    @ParameterizedTest
    @MethodSource("names")
    void noisesAreMarkedAsInvented(String name) {
        assertThat(SampleProjects.read(name).paths())
                .allSatisfy(path -> assertThat(path.brief().noise().source()).startsWith("Invented"));
    }

    @ParameterizedTest
    @MethodSource("names")
    void materialsAreCopiesOfThePresets(String name) {
        Presets presets = Presets.load();
        Project project = SampleProjects.read(name);
        assertThat(presets.saws()).contains(project.stock().saw());
        assertThat(presets.screws()).contains(project.stock().screw());
        assertThat(project.paths()).allSatisfy(path -> {
            assertThat(presets.boards()).contains(path.brief().construction().board());
            assertThat(presets.liners()).contains(path.brief().construction().liner());
        });
    }

    @Test
    void defaultIsTheFirst() {
        assertThat(SampleProjects.names()).first().isEqualTo(SampleProjects.DEFAULT);
    }

    @ParameterizedTest
    @MethodSource("names")
    void everyPathHasABox(String name) {
        assertThat(SampleProjects.read(name).paths())
                .allSatisfy(path -> assertThat(path.box()).isNotNull());
    }

    /**
     * Worked by hand: 3 passes of 140 mm, 2 baffles of 16 + 2 · 25 mm, walls of 25 + 2 · 16 mm; 700 mm between ends of
     * 25 + 32 mm; 290 mm between bare broad faces of 32 mm.
     */
    @Test
    void boxByHandFitsItsSpace() {
        VentPath path = TestProjects.read("trio-cellar").paths().get(1);
        Cuboid outer = SolidBuilder.build(path.box()).outer();
        assertThat(outer.size(Axis.X))
                .isCloseTo(0.814, within(1e-9))
                .isLessThan(path.brief().space().width());
        assertThat(outer.size(Axis.Y))
                .isCloseTo(0.666, within(1e-9))
                .isLessThan(path.brief().space().height());
        assertThat(outer.size(Axis.Z))
                .isCloseTo(0.354, within(1e-9))
                .isLessThan(path.brief().space().depth());
    }

    @Test
    void inchSampleReadsItsTypedUnits() {
        Project project = SampleProjects.read("drama-corner");
        Brief brief = project.paths().get(2).brief();
        assertThat(project.units()).isEqualTo(UnitSystem.INCH);
        // 6 cfm = 6 · 0.028316846592 m³ / 60 s; 6 in = 0.1524 m
        assertThat(brief.flow()).isEqualTo(0.0028316846592);
        assertThat(brief.opening().width()).isEqualTo(0.1524);
    }

    @Test
    void unknownNameIsRefusedWithTheNamesThereAre() {
        assertThatThrownBy(() -> SampleProjects.read("attic"))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("\"attic\"")
                .hasMessageContaining("trio-cellar, lesson-cabin, drama-corner, story-booth");
    }
}
