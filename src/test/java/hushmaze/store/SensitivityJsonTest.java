package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import hushmaze.assess.Assessment;
import hushmaze.drawing.SampleAssessment;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Change;
import hushmaze.size.Sensitivity;
import hushmaze.wording.Wording;
import org.junit.jupiter.api.Test;

/** Property: each path has every change with its figures when asked for, and nothing of it otherwise. */
class SensitivityJsonTest {
    private final Assessment assessment = SampleAssessment.twoPaths(UnitSystem.METRIC);
    private final Wording wording = new Wording(UnitSystem.METRIC);

    @Test
    void everyChangeWithItsFigures() throws Exception {
        JsonNode json = new ObjectMapper().readTree(AssessmentJson.of(assessment, wording, true));
        for (int path = 0; path < 2; path++) {
            JsonNode node = json.path("paths").get(path).path("sensitivity");
            assertThat(node.path("method").asText()).isEqualTo("estimate");
            JsonNode changes = node.path("changes");
            assertThat(changes.size()).isEqualTo(Change.values().length);
            Sensitivity sensitivity = Sensitivity.of(assessment, path);
            for (int i = 0; i < changes.size(); i++) {
                Sensitivity.Row row = sensitivity.rows().get(i);
                JsonNode change = changes.get(i);
                assertThat(change.path("change").asText())
                        .isEqualToIgnoringCase(row.change().name());
                same(change.path("marginDifferenceDb"), row.margin());
                same(change.path("likelyMarginDifferenceDb"), row.likely());
                same(change.path("pressureDropHighDifferencePa"), row.pressureDrop());
                assertThat(change.path("fits").isNull()).isEqualTo(row.fits() == null);
                assertThat(change.path("unable").isNull()).isEqualTo(row.unable() == null);
            }
        }
    }

    private static void same(JsonNode node, Double value) {
        assertThat(node.isNull()).isEqualTo(value == null);
        if (value != null) {
            assertThat(node.doubleValue()).isEqualTo(value);
        }
    }

    @Test
    void nothingOfItUnlessAskedFor() throws Exception {
        JsonNode json = new ObjectMapper().readTree(AssessmentJson.of(assessment, wording));
        assertThat(json.path("paths").get(0).has("sensitivity")).isFalse();
    }
}
