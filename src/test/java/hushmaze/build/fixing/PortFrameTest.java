package hushmaze.build.fixing;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.assess.BoxFit;
import hushmaze.project.Brief;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Opening;
import hushmaze.project.Opening.Surface;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.RandomBoxes;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.SampleProjects;
import org.junit.jupiter.api.Test;

/** <em>Property</em>: the frame around a port keeps to the box and off its cleats, over random boxes. */
class PortFrameTest {
    private static Brief brief(double rows) {
        Brief any = SampleProjects.read("story-booth").paths().get(0).brief();
        Opening o = any.opening();
        return any.withAirFrom(
                        new Opening(o.kind(), Surface.WALL, o.beyond(), o.width(), o.height()), any.flow(), any.drive())
                .withConstruction(any.construction().mounted(Blocks.mounting(StudScrew.LAG_QUARTER, 2, rows)));
    }

    @Test
    void stripsKeepToTheBoxAndOffTheCleats() {
        RandomBoxes boxes = new RandomBoxes(5);
        int whole = 0;
        int closedByCleats = 0;
        for (int i = 0; i < 200; i++) {
            Solid solid = SolidBuilder.build(boxes.next());
            Brief brief = brief(0.12 + 0.002 * i);
            Rows rows = Rows.of(solid, brief, BoxFit.level(solid, brief));
            PortFrame frame = PortFrame.of(solid, rows).orElseThrow();
            Cuboid hole = solid.openingPort().hole();
            Axis up = rows.between();
            double gasket = solid.box().joinery().gasket();
            assertThat(frame.thickness()).isCloseTo(0.01905 - (gasket > 0 ? gasket : 0.003), within(1e-9));
            double low = hole.low(up) - frame.along().low();
            double high = hole.high(up) + frame.along().high();
            assertThat(low).isGreaterThanOrEqualTo(solid.outer().low(up) - 1e-9);
            assertThat(high).isLessThanOrEqualTo(solid.outer().high(up) + 1e-9);
            for (Rows.Cleat cleat : rows.cleats()) {
                boolean apart = cleat.high() <= low + 1e-9 || cleat.low() >= high - 1e-9;
                boolean onPort = cleat.high() > hole.low(up) && cleat.low() < hole.high(up);
                boolean beside =
                        cleat.to() <= hole.low(rows.along()) - 0.04 || cleat.from() >= hole.high(rows.along()) + 0.04;
                boolean closes = frame.along().low() == 0 || frame.along().high() == 0;
                assertThat(apart || onPort || beside || closes)
                        .as("box %d, %s", i, cleat.kind())
                        .isTrue();
            }
            whole += frame.strips().size() == 4 ? 1 : 0;
            closedByCleats += frame.strips().size() < 4 ? 1 : 0;
        }
        assertThat(whole).isGreaterThan(20);
        assertThat(closedByCleats).isGreaterThan(5);
    }
}
