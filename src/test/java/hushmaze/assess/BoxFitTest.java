package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.store.SampleProjects;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Which way round a box lies over its opening, by hand. */
class BoxFitTest {
    private static final VentPath PATH =
            SampleProjects.read("story-booth").paths().get(0);

    private static PathResult.Fits fits(double portWidth, double portHeight, Opening opening, Space space) {
        Port port = new Port(PortFace.BACK, portWidth, portHeight, 0);
        Port room = new Port(PortFace.FRONT, portWidth, portHeight, 0);
        Box box = new Box(
                Box.Form.MAZE,
                2,
                0.3,
                0.2,
                0.8,
                0.3,
                List.of(PATH.brief().construction().board()),
                PATH.brief().construction().board(),
                1,
                null,
                LinedFaces.NONE,
                port,
                room);
        Solid solid = SolidBuilder.build(box);
        Brief brief = PATH.brief()
                .withAirFrom(opening, PATH.brief().flow(), PATH.brief().drive())
                .withSpace(space);
        return BoxFit.fits(solid, brief);
    }

    private static Opening wall(double width, double height) {
        return new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, width, height);
    }

    /**
     * A box long in x whose port is 120 long there and 260 across, over an opening 260 wide and 120 high: it must stand on end,
     * though it would go into the space lying too. With the port the other way it lies.
     */
    @Test
    void thePortLiesAsTheOpeningDoes() {
        Space space = new Space(1.5, 1.5, 0.5);
        PathResult.Fits upright = fits(0.12, 0.26, wall(0.26, 0.12), space);
        assertThat(upright.turned()).isTrue();
        assertThat(upright.height()).isGreaterThan(upright.width());
        assertThat(upright.ok()).isTrue();
        PathResult.Fits lying = fits(0.26, 0.12, wall(0.26, 0.12), space);
        assertThat(lying.turned()).isFalse();
        assertThat(lying.width()).isCloseTo(upright.height(), within(1e-12));
    }

    /** A space too low for the box on end is too low, though lying down it would go in. */
    @Test
    void aSpaceForTheOtherWayRoundIsNoSpace() {
        Space low = new Space(1.5, 0.72, 0.5);
        assertThat(fits(0.12, 0.26, wall(0.26, 0.12), low).ok()).isFalse();
        assertThat(fits(0.26, 0.12, wall(0.26, 0.12), low).ok()).isTrue();
    }

    /** A square opening goes with either way: the box lies as it goes in. */
    @Test
    void aSquareOpeningLeavesTheChoice() {
        Space high = new Space(0.72, 1.5, 0.5);
        PathResult.Fits fits = fits(0.26, 0.12, wall(0.2, 0.2), high);
        assertThat(fits.ok()).isTrue();
        assertThat(fits.turned()).isTrue();
    }
}
