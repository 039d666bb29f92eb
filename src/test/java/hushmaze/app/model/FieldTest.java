package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Project;
import hushmaze.quantity.Dimension;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.store.TestProjects;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Property tests of fields and of how their numbers are shown and typed. */
class FieldTest {
    private static final int MANY = 200;

    @ParameterizedTest
    @ValueSource(
            strings = {
                "name",
                "room.volume",
                "room.people",
                "room.target.number",
                "room.absorptionArea",
                "path.name",
                "path.brief.opening.width",
                "path.brief.noise.levels",
                "path.brief.flow",
                "path.brief.fittings",
                "room.door.width",
                "path.box.passes",
                "path.box.openingPort.width"
            })
    void writingWhatIsThereChangesNothing(String name) {
        Field field = Field.of(name);
        Project project = TestProjects.read("trio-cellar");
        assertThat(field.isThere(project, 1)).isTrue();
        assertThat(field.with(project, 1, field.get(project, 1))).isEqualTo(project);
    }

    @Test
    void onlyTheNamedFieldOfTheNamedPathChanges() {
        Project project = TestProjects.read("trio-cellar");
        Project other = Field.of("path.brief.space.width").with(project, 1, 0.81);
        assertThat(other.paths().get(1).brief().space().width()).isEqualTo(0.81);
        assertThat(other.paths().get(1).brief().space().height())
                .isEqualTo(project.paths().get(1).brief().space().height());
        assertThat(other.paths().get(0)).isEqualTo(project.paths().get(0));
        assertThat(other.room()).isEqualTo(project.room());
    }

    @Test
    void aFieldOfAnAbsentBoxIsNotThere() {
        Project project = TestProjects.read("trio-cellar");
        Field field = Field.of("path.box.clearWidth");
        assertThat(field.isThere(project, 0)).isFalse();
        assertThat(field.get(project, 0)).isNull();
        assertThat(field.unit()).isEqualTo(Unit.MILLIMETRE);
    }

    @Test
    void aNumberNamesOneOfAList() {
        Project project = TestProjects.read("story-booth");
        Field area = Field.of("room.envelope.elements.1.area");
        assertThat(area.get(project, 0)).isEqualTo(1.6);
        assertThat(area.unit()).isEqualTo(Unit.SQUARE_METRE);
        Project other = area.with(project, 0, 2.1);
        assertThat(other.room().envelope().elements().get(1).area()).isEqualTo(2.1);
        assertThat(other.room().envelope().elements().get(0))
                .isEqualTo(project.room().envelope().elements().get(0));
        assertThat(Field.of("room.envelope.elements.9.area").get(project, 0)).isNull();
        assertThat(Field.of("room.envelope.elements.9.area").isThere(project, 0))
                .isFalse();
    }

    @ParameterizedTest
    @EnumSource(Unit.class)
    void whatIsShownCanBeTypedBack(Unit unit) {
        Random random = new Random(20261125);
        for (UnitSystem system : UnitSystem.values()) {
            for (int i = 0; i < MANY; i++) {
                double si = Math.pow(10, random.nextDouble() * 4 - 2);
                double back = EntryText.parse("field", EntryText.show(si, unit, system), unit, system);
                // lengths in mm are shown to 0.1 mm or 1/32 in, everything else to four figures at least;
                // degrees Fahrenheit count from 32 below freezing
                boolean warm = unit.dimension() == Dimension.TEMPERATURE;
                double slack = unit == Unit.MILLIMETRE ? 0.0005 : 1e-3 * (warm ? si + 32 / 1.8 : si);
                assertThat(back).isCloseTo(si, within(slack));
            }
        }
    }
}
