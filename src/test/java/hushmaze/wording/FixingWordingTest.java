package hushmaze.wording;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.FixedBoxes;
import hushmaze.assess.PathResult;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.Into;
import hushmaze.project.Opening.Surface;
import hushmaze.quantity.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Property: what is said of lifting and fixing follows the figures, in both systems of units. */
class FixingWordingTest {
    private final Wording metric = new Wording(UnitSystem.METRIC);
    private final Wording inches = new Wording(UnitSystem.INCH);

    private static PathResult judged(Surface surface, Boolean above, Double spacing) {
        return FixedBoxes.judged(surface, FixedBoxes.mounting(null, 0.04, 4, 0.3, spacing, null, above));
    }

    /** By hand: 0.4 mm are 0.016 in; each way outside two boards, across also the boards between the passes. */
    @Test
    void ofBoards() {
        PathResult result = judged(Surface.WALL, null, null);
        int between = (result.path().box().passes() - 1) * result.path().box().baffleLayers();
        int outside = 2 * result.path().box().shell().size();
        List<String> said = metric.boards(result);
        assertThat(said).hasSize(1);
        String along =
                new BigDecimal("0.4").multiply(BigDecimal.valueOf(outside)).toPlainString() + " mm longer";
        String across = new BigDecimal("0.4")
                        .multiply(BigDecimal.valueOf(outside + between))
                        .toPlainString() + " mm wider";
        assertThat(said.get(0))
                .contains("Were it 0.4 mm thicker", along, across)
                .doesNotContain("{");
        assertThat(inches.boards(result).get(0)).contains("Were it 0.016 in thicker");
    }

    @Test
    void onTheWall() {
        List<String> wall = metric.fixing(judged(Surface.WALL, null, null));
        assertThat(wall).hasSize(4).noneMatch(s -> s.contains("{"));
        assertThat(wall.get(0))
                .contains("more than two people should lift (30.7 kg)")
                .contains("hang the carcass first")
                .doesNotContain("prop");
        assertThat(wall.get(1))
                .startsWith("On the wall, rows along its side of 814 mm")
                .contains("% of what");
        assertThat(wall.get(3)).startsWith("Screws of this kind needed").contains("is not said");
        List<String> people = metric.fixing(judged(Surface.WALL, true, null));
        assertThat(people.get(0)).contains("set a prop under it");
        assertThat(people.get(1)).startsWith("On the wall above people").contains("factor of 2");
    }

    @Test
    void studsAndALongerCleat() {
        // By hand: two studs of 406.4 mm and 8 · 4.826 mm are 851.4 mm, in whole centimetres 860 mm.
        assertThat(metric.fixing(judged(Surface.WALL, null, 0.4064)).get(3))
                .contains("crosses 1 for certain", "timber for 2 screws", "asked for: 4", "A cleat of 860 mm");
        assertThat(inches.fixing(judged(Surface.WALL, null, 0.4064)).get(3)).contains("Studs 16 in apart");
    }

    @Test
    void underTheCeilingAndOnTheFloor() {
        List<String> ceiling = inches.fixing(judged(Surface.CEILING, null, null));
        assertThat(ceiling.get(0)).contains("prop").contains("lb");
        assertThat(ceiling.get(1)).startsWith("Under the ceiling").contains("lbf");
        List<String> floor = metric.fixing(judged(Surface.FLOOR, null, null));
        assertThat(floor).hasSize(3).noneMatch(s -> s.contains("{"));
        assertThat(floor.get(1)).startsWith("It stands on its opening").contains("gasket");
        assertThat(floor.get(2)).contains("common practice, no source");
    }

    @ParameterizedTest
    @EnumSource(
            value = Into.class,
            names = {"MASONRY", "RESILIENT", "UNKNOWN"})
    void refusalsAreSaid(Into into) {
        Mounting mounting = FixedBoxes.mounting(into, 0.04, 2, 0.3, null, null, null);
        PathResult path = FixedBoxes.judged(Surface.WALL, mounting);
        List<String> said = metric.fixing(path);
        assertThat(said).hasSize(2);
        assertThat(said.get(1)).contains("sk a carpenter or engineer").contains("computed");
        assertThat(metric.lifting(path)).isEqualTo(said.get(0));
        assertThat(path.notices().stream().map(metric::notice))
                .anyMatch(s -> s.contains("is not computed: ") && !s.contains(into.name()));
    }
}
