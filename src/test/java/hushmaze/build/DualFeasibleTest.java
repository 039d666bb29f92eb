package hushmaze.build;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import org.assertj.core.data.Offset;
import org.junit.jupiter.api.Test;

/**
 * Property: in rows that just fill the room, cut up at random, the values of every function add up to one at most.
 * Validation: single values worked by hand from the definitions.
 */
class DualFeasibleTest {
    private static List<DualFeasible> all(long room, SplittableRandom random) {
        long eps = 1 + random.nextLong(room / 2);
        List<DualFeasible> functions = new ArrayList<>(List.of(
                DualFeasible.SHARE, DualFeasible.bigOrNothing(eps), DualFeasible.counted(Math.max(1, eps - 1))));
        for (int k = 1; k <= 6; k++) {
            functions.add(DualFeasible.rounded(k));
        }
        return functions;
    }

    @Test
    void aRowThatFitsCountsOneAtMost() {
        SplittableRandom random = new SplittableRandom(3);
        for (int i = 0; i < 20_000; i++) {
            long room = 4 + random.nextInt(60);
            List<Long> row = new ArrayList<>();
            for (long left = room; left > 0; left -= row.get(row.size() - 1)) {
                row.add(1 + random.nextLong(left));
            }
            for (DualFeasible f : all(room, random)) {
                double sum = row.stream().mapToDouble(size -> f.of(size, room)).sum();
                assertThat(sum).as("%s of %d", row, room).isLessThanOrEqualTo(1 + 1e-12);
            }
        }
    }

    @Test
    void valuesByHand() {
        // u(2) of 5 in 10: 3 x 0.5 = 1.5, rounded down to 1, over 2
        assertThat(DualFeasible.rounded(2).of(5, 10)).isEqualTo(0.5);
        // u(2) of 7 in 10: 2.1 rounds to 2, over 2
        assertThat(DualFeasible.rounded(2).of(7, 10)).isEqualTo(1);
        // u(1) of 5 in 10 is a multiple of a half, so it stays
        assertThat(DualFeasible.rounded(1).of(5, 10)).isEqualTo(0.5);
        // U(0.3): 0.8 leaves less than 0.3, 0.2 is smaller, 0.7 stays
        assertThat(DualFeasible.bigOrNothing(3).of(8, 10)).isEqualTo(1);
        assertThat(DualFeasible.bigOrNothing(3).of(2, 10)).isZero();
        assertThat(DualFeasible.bigOrNothing(3).of(7, 10)).isEqualTo(0.7);
        // phi(0.3): three of them fit; beside 0.6 one, so 1 - 1/3; 0.4 counts one of three
        assertThat(DualFeasible.counted(3).of(6, 10)).isCloseTo(2 / 3.0, Offset.offset(1e-15));
        assertThat(DualFeasible.counted(3).of(4, 10)).isCloseTo(1 / 3.0, Offset.offset(1e-15));
    }
}
