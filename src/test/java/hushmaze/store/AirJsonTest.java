package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.FirstLayout;
import hushmaze.wording.Wording;
import hushmaze.work.Progress;
import org.junit.jupiter.api.Test;

/** Property: the JSON of an assessment says of the air what the assessment says. */
class AirJsonTest {
    private static JsonNode json(Assessment assessment) throws Exception {
        return new ObjectMapper().readTree(AssessmentJson.of(assessment, new Wording(UnitSystem.METRIC)));
    }

    private static Assessment sample(String name) {
        return Assessor.assess(
                FirstLayout.complete(TestProjects.read(name), Progress.NONE), Methods.ESTIMATE, Progress.NONE);
    }

    @Test
    void fansAndTheirCurves() throws Exception {
        Assessment cabin = sample("lesson-cabin");
        JsonNode room = json(cabin).get("room");
        assertThat(room.get("pressurePa").doubleValue()).isEqualTo(cabin.room().pressure());
        assertThat(room.get("pressureState").textValue()).isEqualTo("SOLVED");
        assertThat(room.get("flowLps").doubleValue()).isCloseTo(cabin.room().flow() * 1000, within(1e-9));
        assertThat(room.get("need").isNull()).isTrue();
        for (JsonNode path : json(cabin).get("paths")) {
            JsonNode air = path.get("air");
            JsonNode drive = air.get("drive");
            assertThat(drive.get("kind").textValue()).isEqualTo("FAN_CURVE");
            assertThat(drive.get("fanState").textValue()).isEqualTo("STEADY");
            assertThat(drive.get("flowLeastLps").doubleValue())
                    .isLessThan(drive.get("flowMostLps").doubleValue());
            assertThat(drive.get("curve")).hasSize(17);
            double sum = 0;
            for (JsonNode loss : air.get("losses")) {
                sum += loss.get("pressurePa").doubleValue();
            }
            assertThat(air.get("pressureDropPa").doubleValue()).isEqualTo(sum);
            assertThat(air.get("losses"))
                    .extracting(l -> l.get("name").textValue())
                    .contains("louvre");
        }
    }

    @Test
    void needAndTimetable() throws Exception {
        Assessment cellar = sample("trio-cellar");
        JsonNode room = json(cellar).get("room");
        JsonNode need = room.get("need");
        assertThat(need.get("grounds")).hasSize(3);
        assertThat(need.get("governing").textValue())
                .isEqualTo(cellar.room().need().governing().key());
        double most = 0;
        for (JsonNode ground : need.get("grounds")) {
            most = Math.max(most, ground.get("flowLps").doubleValue());
        }
        assertThat(need.get("flowLps").doubleValue()).isEqualTo(most);
        JsonNode course = room.get("co2Course");
        JsonNode last = course.get("points").get(course.get("points").size() - 1);
        assertThat(last.get("minutes").doubleValue()).isCloseTo(130, within(1e-9));
        assertThat(course.get("highestPpm").doubleValue())
                .isGreaterThanOrEqualTo(last.get("ppm").doubleValue());
        assertThat(room.get("draughts")).hasSize(1);
        assertThat(room.get("draughts").get(0).get("distanceM").doubleValue()).isEqualTo(2.2);
    }
}
