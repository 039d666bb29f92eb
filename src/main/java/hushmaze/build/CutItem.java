package hushmaze.build;

import hushmaze.solid.Cutout;
import hushmaze.solid.Part;
import java.util.List;

/**
 * Parts of one cut list that are alike: same material, size and cut-outs.
 *
 * @param mark what is pencilled on them: "B1" for boards, "L1" for liner
 * @param material name of the board or liner
 * @param thickness m
 * @param length the longer side, or along the grain, m
 * @param width the other side, m
 * @param grain whether the length must run with the sheet's length
 * @param cutouts in the length (u) and width (v) directions of this item, m
 * @param parts the parts themselves, at least one; the first is the one drawn
 */
public record CutItem(
        String mark,
        String material,
        double thickness,
        double length,
        double width,
        boolean grain,
        List<Cutout> cutouts,
        List<Part> parts) {
    public CutItem {
        cutouts = List.copyOf(cutouts);
        parts = List.copyOf(parts);
    }

    /** How many to cut. */
    public int quantity() {
        return parts.size();
    }
}
