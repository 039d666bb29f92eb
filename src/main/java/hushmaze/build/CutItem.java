package hushmaze.build;

import hushmaze.build.joint.Hole;
import hushmaze.solid.AirEdge;
import hushmaze.solid.Cutout;
import hushmaze.solid.Groove;
import hushmaze.solid.Part;
import java.util.List;

/**
 * Parts of one cut list that are alike: same material, size, cut-outs, grooves and holes.
 *
 * @param mark what is pencilled on them: "B1" for boards, "L1" for liner
 * @param material name of the board or liner
 * @param thickness m
 * @param grain whether the length must run with the sheet's length
 * @param plate what to make; its length is the longer side, or the one along the grain; grooves are in the face seen
 * @param airEdges for liner the stretches of its edges that air passes, to be sealed
 * @param parts the parts themselves, at least one; the first is the one drawn
 * @param turnings how each of the parts is laid down to be the plate
 */
public record CutItem(
        String mark,
        String material,
        double thickness,
        boolean grain,
        Plate plate,
        List<AirEdge> airEdges,
        List<Part> parts,
        List<Turning> turnings) {
    public CutItem {
        airEdges = List.copyOf(airEdges);
        parts = List.copyOf(parts);
        turnings = List.copyOf(turnings);
    }

    /** The longer side, or along the grain, m. */
    public double length() {
        return plate.length();
    }

    /** The other side, m. */
    public double width() {
        return plate.width();
    }

    /** Taken out, right through, in the length (u) and width (v) directions, m. */
    public List<Cutout> cutouts() {
        return plate.cutouts();
    }

    /** Sunk into the face seen, in the length (u) and width (v) directions, m. */
    public List<Groove> grooves() {
        return plate.grooves();
    }

    /** Drilled right through for screws, in the length (u) and width (v) directions, m. */
    public List<Hole> holes() {
        return plate.holes();
    }

    /** How many to cut. */
    public int quantity() {
        return parts.size();
    }
}
