package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.BoxFitting;
import hushmaze.quantity.UnitSystem;
import org.junit.jupiter.api.Test;

/** Property: what is said of a gap claims no more than the values that are possible for it. */
class FittingWordingTest {
    private static String gap(Double least, double likely, Double most) {
        BoxFitting fitting = new BoxFitting(new BoxFitting.Value(least, likely, most), null, true, 2, 1, 8);
        return new CompareWording(new Wording(UnitSystem.METRIC))
                .fitting(fitting)
                .get(0);
    }

    @Test
    void aGapHeldInFromBothSidesHasBothEnds() {
        assertThat(gap(1e-4, 2e-4, 3e-4)).contains("0.2 mm", "0.1 mm", "0.3 mm");
        assertThat(gap(0.0, 2e-5, 3e-4))
                .contains("no more than a gap of 0.3 mm")
                .doesNotContain("0.02 mm");
    }

    @Test
    void aGapWithoutAnUpperEndHasTheLeastOne() {
        // the widest that was tried explains best, but half a millimetre will do
        assertThat(gap(5e-4, 5e-3, null)).contains("0.5 mm or more").doesNotContain(" 5 mm");
    }

    @Test
    void whereAnyGapWillDoNoneIsNamed() {
        assertThat(gap(0.0, 5e-3, null)).contains("say nothing").doesNotContain("mm");
    }
}
