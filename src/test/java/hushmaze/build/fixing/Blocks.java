package hushmaze.build.fixing;

import hushmaze.material.Board;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Mounting.StudScrew;
import hushmaze.project.Mounting.Timber;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Panel;
import hushmaze.solid.Role;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import java.util.ArrayList;
import java.util.List;

/** Boxes whose weight sits where a test wants it, for statics by hand, and mountings with round values. */
final class Blocks {
    static final double INCH = 0.0254;

    private Blocks() {}

    /** A plate of one square metre with a mass in kg, around a place; only its middle counts for statics. */
    static Panel weight(Role role, double mass, double x, double y, double z) {
        double thick = mass > 80 ? 0.1 : 0.01;
        Board board = new Board("plate", thick, mass / thick, 1e9, 0.02, false, "invented for a test");
        boolean upright = role == Role.BAFFLE;
        double dy = upright ? thick / 2 : 0.5;
        double dz = upright ? 0.5 : thick / 2;
        Cuboid at = new Cuboid(x - 0.5, y - dy, z - dz, x + 0.5, y + dy, z + dz);
        return new Panel(role, 0, 0, board, at, List.of());
    }

    /** A box of 800 mm (x) by 600 mm (y) by 300 mm (z) around weights; it lies with its back against the building. */
    static Solid box(Panel... weights) {
        return box(PortFace.BACK, new Cuboid(0, 0, 0, 0.8, 0.6, 0.3), weights);
    }

    static Solid box(PortFace against, Cuboid outer, Panel... weights) {
        PortFace other = against == PortFace.BACK ? PortFace.FRONT : PortFace.BACK;
        Solid any = SolidBuilder.build(SampleBoxes.maze(
                3, 0.6, null, LinedFaces.NONE, 1, new Port(against, 0.1, 0.08, 0), new Port(other, 0.1, 0.08, 0)));
        return new Solid(
                any.box(),
                any.cavity(),
                outer,
                new ArrayList<>(List.of(weights)),
                List.of(),
                List.of(),
                any.baffles(),
                any.passes(),
                any.turns(),
                any.openingPort(),
                any.roomPort());
    }

    /** Screws of 38 mm thread through 19 mm into spruce-pine-fir, spacing of the studs not known. */
    static Mounting mounting(StudScrew screw, int perRow, double rows) {
        return mounting(Mounting.Into.STUDS, screw, perRow, rows, null, null, null);
    }

    static Mounting spaced(StudScrew screw, int perRow, double rows, double spacing, Double cleat) {
        return mounting(Mounting.Into.STUDS, screw, perRow, rows, spacing, cleat, null);
    }

    static Mounting mounting(
            Mounting.Into into,
            StudScrew screw,
            int perRow,
            double rows,
            Double spacing,
            Double cleat,
            Boolean abovePeople) {
        return new Mounting(
                into,
                Timber.SPRUCE_PINE_FIR,
                screw,
                1.5 * INCH,
                perRow,
                rows,
                0.75 * INCH,
                spacing,
                cleat,
                abovePeople,
                "test");
    }
}
