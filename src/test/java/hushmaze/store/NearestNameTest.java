package hushmaze.store;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Validation: edit distances counted by hand. */
class NearestNameTest {
    @ParameterizedTest
    @CsvSource({"'','',0", "'',abc,3", "abc,'',3", "flow,flow,0", "flwo,flow,2", "kitten,sitting,3", "widthIn,widthMm,2"
    })
    void distanceCountsInsertedLeftOutAndChangedLetters(String from, String to, int expected) {
        assertThat(NearestName.distance(from, to)).isEqualTo(expected);
    }

    @Test
    void caseDoesNotMatterAndTheFirstWinsATie() {
        assertThat(NearestName.of("CLEARWIDTHMM", List.of("passes", "clearWidthMm")))
                .isEqualTo("clearWidthMm");
        assertThat(NearestName.of("x", List.of("a", "b"))).isEqualTo("a");
    }
}
