package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.solid.Part;
import hushmaze.solid.Role;

/**
 * Which face of a part its drawing shows.
 *
 * <p>A part drawn with its u to the right and its v upwards shows the face towards u × v. A cut list may turn a part so
 * that its longer side comes first, or mirror it to join it with an alike one; each swap and each mirroring shows the
 * other face. Boards with holes only may lie either way: the holes run right through.
 */
enum SeenFace {
    INSIDE,
    OUTSIDE,
    /** Baffles and their liner: air on both sides, or no matter. */
    EITHER;

    /** The face of one of the item's parts that its drawing shows. */
    static SeenFace of(CutItem item, Part part) {
        boolean plain = item.cutouts().isEmpty() && item.grooves().isEmpty();
        if (part.role() == Role.BAFFLE || plain) {
            return EITHER;
        }
        boolean flipped = item.turnings().get(item.parts().indexOf(part)).flips();
        return insideWhenUnturned(part.role()) != flipped ? INSIDE : OUTSIDE;
    }

    /** Whether u to the right and v upwards shows the inside. */
    private static boolean insideWhenUnturned(Role role) {
        // x × y = +z, towards the inside at the back only; x × z = -y; y × z = +x.
        return switch (role) {
            case BACK, LAST_SIDE, NEAR_END -> true;
            case FRONT, FIRST_SIDE, FAR_END -> false;
            case BAFFLE -> throw new IllegalArgumentException("a baffle has no inside");
        };
    }
}
