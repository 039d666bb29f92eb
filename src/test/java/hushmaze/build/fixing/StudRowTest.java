package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Mounting.StudScrew;
import hushmaze.quantity.InvalidValue;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** <em>Validation</em> by hand, and <em>property</em>: studs laid at random are counted. */
class StudRowTest {
    /** By hand, lag screws of 1/4 in: 8 D = 50.8 mm off the cleat, the rest over the spacing, rounded down. */
    @ParameterizedTest(name = "{0} m, studs {1} m")
    @CsvSource({
        "0.400, 0.4064, 0",
        "0.457, 0.4064, 0",
        "0.458, 0.4064, 1",
        "0.814, 0.4064, 1",
        "0.900, 0.4064, 2",
        "1.300, 0.6, 2",
        "0.040, 0.4, 0",
    })
    void studsCrossedForCertain(double length, double spacing, int studs) {
        StudRow row = StudRow.of(length, Blocks.spaced(StudScrew.LAG_QUARTER, 3, 0.4, spacing, null));
        assertThat(row.sure()).isEqualTo(studs);
        assertThat(row.sureScrews()).isEqualTo(2 * studs);
        assertThat(row.possible()).isEqualTo(length < 0.0508 ? 0 : studs + 1);
    }

    /** Studs at a random place: never fewer than are certain, never more than possible, and both happen. */
    @Test
    void studsLaidAtRandom() {
        Random random = new Random(41);
        for (int i = 0; i < 100; i++) {
            double length = 0.2 + 2 * random.nextDouble();
            double spacing = 0.3 + 0.4 * random.nextDouble();
            StudRow row = StudRow.of(length, Blocks.spaced(StudScrew.LAG_THREE_EIGHTHS, 2, 0.4, spacing, null));
            double end = 4 * 0.375 * 0.0254;
            int least = Integer.MAX_VALUE;
            int most = 0;
            for (int k = 0; k < 1000; k++) {
                int found = 0;
                for (double stud = spacing * (k + 0.5) / 1000; stud <= length - end; stud += spacing) {
                    found += stud >= end ? 1 : 0;
                }
                least = Math.min(least, found);
                most = Math.max(most, found);
            }
            assertThat(row.sure()).isEqualTo(least);
            assertThat(row.possible()).isEqualTo(most);
        }
    }

    /** A cleat as long as is asked for is certain of timber for all screws; a little shorter one is not. */
    @Test
    void cleatNeeded() {
        // By hand: five screws need three studs; 3 · 400 + 8 · 6.35 = 1250.8 mm, in whole centimetres 1260 mm.
        StudRow row = StudRow.of(0.6, Blocks.spaced(StudScrew.LAG_QUARTER, 5, 0.4, 0.4, null));
        assertThat(row.cleatNeeded()).isCloseTo(1.26, within(1e-9));
        assertThat(StudRow.of(0.6, Blocks.spaced(StudScrew.LAG_QUARTER, 5, 0.4, 0.4, 1.2508))
                        .sureScrews())
                .isEqualTo(6);
        assertThat(StudRow.of(0.6, Blocks.spaced(StudScrew.LAG_QUARTER, 5, 0.4, 0.4, 1.2507))
                        .sureScrews())
                .isEqualTo(4);
    }

    /** By hand: one screw in a stud 5.5 D, two 9.5 D; 1/4 in is 6.35 mm. */
    @Test
    void cleatWidth() {
        assertThat(StudRow.of(0.9, Blocks.spaced(StudScrew.LAG_QUARTER, 2, 0.4, 0.4, null))
                        .cleatWidth())
                .isCloseTo(5.5 * 0.00635, within(1e-12));
        assertThat(StudRow.of(0.9, Blocks.spaced(StudScrew.LAG_QUARTER, 3, 0.4, 0.4, null))
                        .cleatWidth())
                .isCloseTo(9.5 * 0.00635, within(1e-12));
    }

    @Test
    void refuses() {
        assertThatThrownBy(() -> Blocks.spaced(StudScrew.WOOD_10, 2, 0.4, 0.05, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("studSpacing: 50 mm");
        assertThatThrownBy(() -> Blocks.spaced(StudScrew.WOOD_10, 2, 0.4, 0.4, 7.0))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("cleatLength: 7000 mm");
        assertThatThrownBy(() -> Blocks.spaced(StudScrew.WOOD_10, 2, 0.4, Double.NaN, null))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("studSpacing");
    }
}
