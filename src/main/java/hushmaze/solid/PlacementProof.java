package hushmaze.solid;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;

/**
 * Proves that the parts of a solid, put back in their places, make the box.
 *
 * <p>All faces of all parts cut space into cells; every cell is full or empty as a whole, so the answer is exact, not
 * sampled. Gaskets and the play of joints, filled with glue or sealant, count as closed. Checked are: no two parts overlap; from outside, with the two ports closed, no air gets in; from the port
 * at the opening every empty cell inside is reached, the port in the room among them; the air inside is just the passes,
 * the gaps at the baffle tips and the ports; the volumes add up; and every face that shall be lined is covered.
 */
public final class PlacementProof {
    /** Planes closer than this are the same plane, m. */
    private static final double SAME_PLANE = 1e-7;
    /** Volumes that differ by less than this are equal, m³. */
    private static final double SAME_VOLUME = 1e-8;

    private static final int EMPTY = CellGrid.NOTHING;
    private static final int PORT = -2;
    /** A gasket, glue or sealant. */
    private static final int SEALED = Integer.MAX_VALUE;

    /** What can be wrong. */
    public enum Fault {
        /** Two parts fill the same space. */
        OVERLAP,
        /** The shell has a hole that is not a port. */
        LEAK,
        /** The port in the room cannot be reached from the one at the opening. */
        NO_PATH,
        /** There is a void the air path does not reach. */
        HIDDEN_VOID,
        /** The air inside is not the passes, gaps and ports. */
        AIR_VOLUME,
        /** A face that shall be lined is bare. */
        BARE_FACE
    }

    private final Solid solid;
    private final List<Part> parts;
    private final CellGrid grid;
    private final List<Fault> faults = new ArrayList<>();
    private double sealed;

    private PlacementProof(Solid solid) {
        this.solid = solid;
        this.parts = solid.parts().toList();
        this.grid = CellGrid.of(solid, SAME_PLANE);
    }

    /** The faults of a solid; none when it is proved. */
    public static List<Fault> faults(Solid solid) {
        PlacementProof proof = new PlacementProof(solid);
        proof.fill();
        proof.shell();
        proof.air();
        proof.lining();
        return List.copyOf(proof.faults);
    }

    private void fill() {
        boolean clash = false;
        for (int p = 0; p < parts.size(); p++) {
            Part part = parts.get(p);
            for (int cell : grid.filledBy(part)) {
                clash |= grid.at(cell) != EMPTY;
                grid.put(cell, p);
            }
        }
        if (clash) {
            faults.add(Fault.OVERLAP);
        }
        sealed = grid.seal(solid, SEALED);
    }

    private void shell() {
        for (PortPlace port : List.of(solid.openingPort(), solid.roomPort())) {
            for (int cell : grid.cells(port.hole())) {
                if (grid.at(cell) != EMPTY) {
                    faults.add(Fault.OVERLAP);
                    return;
                }
                grid.put(cell, PORT);
            }
        }
        boolean[] outside = flood(grid.outsideCell(), false);
        for (int cell : grid.cells(solid.outer())) {
            if (outside[cell]) {
                faults.add(Fault.LEAK);
                return;
            }
        }
    }

    private void air() {
        int[] opening = grid.cells(solid.openingPort().hole());
        int[] room = grid.cells(solid.roomPort().hole());
        boolean[] reached = flood(opening[0], true);
        if (!reached[room[0]]) {
            faults.add(Fault.NO_PATH);
        }
        double air = 0;
        boolean hidden = false;
        for (int cell : grid.cells(solid.outer())) {
            if (grid.at(cell) < 0) {
                air += grid.volume(cell);
                hidden |= !reached[cell];
            }
        }
        if (hidden) {
            faults.add(Fault.HIDDEN_VOID);
        }
        double full = parts.stream().mapToDouble(Part::volume).sum();
        boolean addsUp = Math.abs(solid.outer().volume() - full - sealed - air) < SAME_VOLUME;
        if (!addsUp || Math.abs(expectedAir() - air) > SAME_VOLUME) {
            faults.add(Fault.AIR_VOLUME);
        }
    }

    private double expectedAir() {
        double height = solid.box().clearHeight();
        return solid.passes().stream().mapToDouble(p -> p.clear().volume()).sum()
                + solid.turns().stream()
                        .mapToDouble(t -> t.gap() * t.tipWidth() * height)
                        .sum()
                + solid.openingPort().hole().volume()
                + solid.roomPort().hole().volume();
    }

    private void lining() {
        for (int cell : grid.cells(solid.outer())) {
            if (grid.at(cell) == EMPTY && touchesBareFace(cell)) {
                faults.add(Fault.BARE_FACE);
                return;
            }
        }
    }

    private boolean touchesBareFace(int cell) {
        for (Axis axis : Axis.values()) {
            for (int step = -1; step <= 1; step += 2) {
                int beside = grid.beside(cell, axis, step);
                if (beside >= 0
                        && grid.at(beside) >= 0
                        && grid.at(beside) != SEALED
                        && parts.get(grid.at(beside)) instanceof Panel panel
                        && panel.normal() == axis
                        && lined(panel.role())) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean lined(Role role) {
        return switch (role) {
            case BACK, FRONT -> solid.box().linedFaces().broad() > 0;
            case FIRST_SIDE, LAST_SIDE -> solid.box().linedFaces().walls() > 0;
            case NEAR_END, FAR_END -> solid.box().linedFaces().ends() > 0;
            case BAFFLE -> solid.box().linedFaces().baffles() > 0;
        };
    }

    /** Everything air reaches from a cell; through the ports or not, and never out of the box once inside. */
    private boolean[] flood(int start, boolean inside) {
        boolean[] reached = new boolean[grid.size()];
        boolean[] allowed = new boolean[grid.size()];
        if (inside) {
            for (int cell : grid.cells(solid.outer())) {
                allowed[cell] = grid.at(cell) < 0;
            }
        } else {
            for (int cell = 0; cell < grid.size(); cell++) {
                allowed[cell] = grid.at(cell) == EMPTY;
            }
        }
        ArrayDeque<Integer> open = new ArrayDeque<>();
        open.add(start);
        reached[start] = true;
        while (!open.isEmpty()) {
            int cell = open.remove();
            for (Axis axis : Axis.values()) {
                for (int step = -1; step <= 1; step += 2) {
                    int beside = grid.beside(cell, axis, step);
                    if (beside >= 0 && allowed[beside] && !reached[beside]) {
                        reached[beside] = true;
                        open.add(beside);
                    }
                }
            }
        }
        return reached;
    }
}
