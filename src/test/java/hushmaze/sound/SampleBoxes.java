package hushmaze.sound;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Opening;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import java.util.Collections;
import java.util.List;

/** Boxes with round sizes for the tests of sound. */
public final class SampleBoxes {
    private static final String INVENTED = "invented for a test";
    /** Speed of sound at 20 °C, m/s. */
    public static final double SOUND_SPEED = 343.2;

    private SampleBoxes() {}

    public static Board board() {
        return board(0.018);
    }

    public static Board board(double thickness) {
        return new Board("board", thickness, 750, 3.5e9, 0.02, false, INVENTED);
    }

    public static Liner liner(double thickness) {
        return new Liner("liner", thickness, 48, 20000, 10000, 30000, 0.0009, INVENTED);
    }

    /** Passes of 100 mm by 300 mm by 600 mm with 25 mm liner in the fold plane, ports in the ends as large as the pass. */
    public static Box maze(int passes) {
        return maze(passes, 0.6, liner(0.025), LinedFaces.FOLD_PLANE, 1);
    }

    public static Box maze(int passes, double length, Liner liner, LinedFaces faces, int layers) {
        Port port = new Port(PortFace.END, 0.1, 0.3, 0);
        return maze(passes, length, liner, faces, layers, port, port);
    }

    public static Box maze(
            int passes, double length, Liner liner, LinedFaces faces, int layers, Port inlet, Port outlet) {
        List<Board> shell = Collections.nCopies(layers, board());
        double gap = passes > 1 ? 0.1 : 0;
        return new Box(Box.Form.MAZE, passes, 0.1, 0.3, length, gap, shell, board(), 1, liner, faces, inlet, outlet);
    }

    /** A lined chamber of 500 mm by 400 mm by 900 mm, ports of 100 mm by 300 mm at opposite corners of its ends. */
    public static Box chamber(Liner liner) {
        Port port = new Port(PortFace.END, 0.1, 0.3, 0);
        LinedFaces faces = liner == null ? LinedFaces.NONE : LinedFaces.ALL;
        return new Box(
                Box.Form.OFFSET_CHAMBER, 1, 0.5, 0.4, 0.9, 0, List.of(board()), board(), 1, liner, faces, port, port);
    }

    /** The same box with its ports exchanged, which is the box seen from its other end. */
    public static Box exchanged(Box box) {
        return withPorts(box, box.roomPort(), box.openingPort());
    }

    /** The same box with other ports. */
    public static Box withPorts(Box box, Port opening, Port room) {
        return new Box(
                box.form(),
                box.passes(),
                box.clearWidth(),
                box.clearHeight(),
                box.clearLength(),
                box.turnGap(),
                box.shell(),
                box.baffleBoard(),
                box.baffleLayers(),
                box.liner(),
                box.linedFaces(),
                opening,
                room);
    }

    /** An opening of a given kind, 100 mm by 300 mm. */
    public static Opening opening(Opening.Kind kind) {
        return new Opening(kind, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.1, 0.3);
    }
}
