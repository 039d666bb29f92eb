package hushmaze.sound.quick;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.List;

/** Boxes for the tests of the quick wave. */
final class TestPaths {
    static final double SOUND_SPEED = 343.2;
    static final double HEIGHT = 0.3;
    static final LinedFaces SIDES = new LinedFaces(1, 1, 0, 0);
    private static final String INVENTED = "invented for a test";

    private TestPaths() {}

    static Board board(double thickness) {
        return new Board("board", thickness, 750, 3.5e9, 0.02, false, INVENTED);
    }

    static Liner liner(double thickness, double sigma) {
        return new Liner("liner", thickness, 48, sigma, sigma, sigma, 0.0009, INVENTED);
    }

    static Port end(double width) {
        return new Port(PortFace.END, width, HEIGHT, 0);
    }

    static Port side(double along) {
        return new Port(PortFace.SIDE, along, HEIGHT, 0);
    }

    /** One pass. */
    static Solid straight(double width, double length, Liner liner, LinedFaces faces, Port in, Port out) {
        return maze(1, width, length, 0, 0.018, 1, liner, faces, in, out);
    }

    static Solid maze(
            int passes,
            double width,
            double length,
            double gap,
            double baffle,
            int baffleLayers,
            Liner liner,
            LinedFaces faces,
            Port in,
            Port out) {
        return SolidBuilder.build(new Box(
                Box.Form.MAZE,
                passes,
                width,
                HEIGHT,
                length,
                gap,
                List.of(board(0.018)),
                board(baffle),
                baffleLayers,
                liner,
                faces,
                in,
                out));
    }

    /** The place of the grid's frequency nearest to one in Hz. */
    static int nearest(double hz) {
        int best = 0;
        for (int i = 0; i < QuickGrid.FINE.size(); i++) {
            if (Math.abs(QuickGrid.FINE.hz(i) - hz) < Math.abs(QuickGrid.FINE.hz(best) - hz)) {
                best = i;
            }
        }
        return best;
    }
}
