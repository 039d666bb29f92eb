package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Opening;
import hushmaze.project.Opening.Surface;
import hushmaze.solid.Axis;
import hushmaze.solid.Role;
import hushmaze.store.SampleProjects;
import org.junit.jupiter.api.Test;

/** Places of cleats and screws, by hand, on a box of 800 x 600 x 300 mm. */
class RowsTest {
    private static Rows rows(Surface surface, Mounting mounting) {
        Brief any = SampleProjects.read("story-booth").paths().get(0).brief();
        Opening o = any.opening();
        Brief brief = any.withAirFrom(
                        new Opening(o.kind(), surface, o.beyond(), o.width(), o.height()), any.flow(), any.drive())
                .withConstruction(any.construction().mounted(mounting));
        return Rows.of(Blocks.box(Blocks.weight(Role.BAFFLE, 10, 0.4, 0.3, 0.12)), brief, Axis.X);
    }

    /**
     * Rows 0.4 m apart about 0.3 m. The port is from 0 to 0.1 m along the row: studs 0.4 m apart on both sides of it are at -0.15,
     * 0.25 and 0.65; a cleat of 0.9 m about 0.4 m crosses the last two, 4 diameters from its ends at the least.
     */
    @Test
    void screwsInStuds() {
        Rows rows = rows(Surface.WALL, Blocks.spaced(StudScrew.LAG_QUARTER, 2, 0.4, 0.4, 0.9));
        assertThat(rows.away()).isEqualTo(Axis.Z);
        assertThat(rows.along()).isEqualTo(Axis.X);
        assertThat(rows.between()).isEqualTo(Axis.Y);
        assertThat(rows.centre()).isCloseTo(0.12, within(1e-12));
        assertThat(rows.cleats()).hasSize(2);
        Rows.Cleat lower = rows.cleats().get(0);
        assertThat(lower.at()).isCloseTo(0.1, within(1e-12));
        assertThat(rows.cleats().get(1).at()).isCloseTo(0.5, within(1e-12));
        assertThat(lower.from()).isCloseTo(-0.05, within(1e-12));
        assertThat(lower.to()).isCloseTo(0.85, within(1e-12));
        assertThat(lower.screws()).hasSize(2);
        assertThat(lower.screws().get(0)).isCloseTo(0.25, within(1e-12));
        assertThat(lower.screws().get(1)).isCloseTo(0.65, within(1e-12));
        // By hand: two cleats of 900 mm, no more than 150 mm apart: seven each.
        assertThat(rows.screwsFromInside()).isEqualTo(14);
        // 5.5 diameters of 6.35 mm where no two share a stud
        assertThat(lower.width()).isCloseTo(5.5 * 0.00635, within(1e-12));
    }

    /** Without a spacing they are spread from 4 diameters off one end to as much off the other; one alone is in the middle. */
    @Test
    void screwsSpread() {
        Rows rows = rows(Surface.CEILING, Blocks.mounting(StudScrew.LAG_QUARTER, 3, 0.4));
        // Under a ceiling along the shorter side.
        assertThat(rows.along()).isEqualTo(Axis.Y);
        assertThat(rows.cleats().get(0).screws()).hasSize(3);
        assertThat(rows.cleats().get(0).screws().get(0)).isCloseTo(4 * 0.00635, within(1e-12));
        assertThat(rows.cleats().get(0).screws().get(1)).isCloseTo(0.3, within(1e-12));
        assertThat(rows(Surface.WALL, Blocks.mounting(StudScrew.LAG_QUARTER, 1, 0.4))
                        .cleats()
                        .get(0)
                        .screws())
                .containsExactly(0.4);
    }

    @Test
    void noCleatsWhereItStandsOrIsNotComputed() {
        assertThat(rows(Surface.FLOOR, Blocks.mounting(StudScrew.LAG_QUARTER, 2, 0.4))
                        .cleats())
                .isEmpty();
        assertThat(rows(Surface.WALL, null).cleats()).isEmpty();
        Mounting masonry = Blocks.mounting(Mounting.Into.MASONRY, StudScrew.LAG_QUARTER, 2, 0.4, null, null, null);
        assertThat(rows(Surface.WALL, masonry).cleats()).isEmpty();
    }
}
