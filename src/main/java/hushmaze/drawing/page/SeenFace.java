package hushmaze.drawing.page;

import hushmaze.build.CutItem;
import hushmaze.solid.Cutout;
import hushmaze.solid.Part;
import hushmaze.solid.Role;
import java.util.List;

/**
 * Which face of a part its drawing shows.
 *
 * <p>A part drawn with its u to the right and its v upwards shows the face towards u × v. A cut list may turn a part so
 * that its longer side comes first, or mirror it to join it with an alike one; each swap and each mirroring shows the
 * other face. The turning that was used is found by trying all eight against the cut-outs.
 */
enum SeenFace {
    INSIDE,
    OUTSIDE,
    /** Baffles and their liner: air on both sides, or no matter. */
    EITHER;

    private static final double SAME = 1e-6;

    /** The face of one of the item's parts that its drawing shows. */
    static SeenFace of(CutItem item, Part part) {
        if (part.role() == Role.BAFFLE || item.cutouts().isEmpty()) {
            return EITHER;
        }
        boolean flipped = flipped(item, part);
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

    private static boolean flipped(CutItem item, Part part) {
        for (int turning = 0; turning < 8; turning++) {
            boolean swap = (turning & 4) != 0;
            boolean mirrorU = (turning & 1) != 0;
            boolean mirrorV = (turning & 2) != 0;
            if (matches(item, part, swap, mirrorU, mirrorV)) {
                return swap ^ mirrorU ^ mirrorV;
            }
        }
        throw new IllegalStateException("the cut-outs of " + item.mark() + " are not those of its part");
    }

    private static boolean matches(CutItem item, Part part, boolean swap, boolean mirrorU, boolean mirrorV) {
        double length = swap ? part.vSize() : part.uSize();
        double width = swap ? part.uSize() : part.vSize();
        if (Math.abs(length - item.length()) > SAME || Math.abs(width - item.width()) > SAME) {
            return false;
        }
        List<Cutout> turned = part.cutouts().stream()
                .map(c -> swap ? new Cutout(c.v0(), c.u0(), c.v1(), c.u1()) : c)
                .map(c -> mirrorU ? new Cutout(length - c.u1(), c.v0(), length - c.u0(), c.v1()) : c)
                .map(c -> mirrorV ? new Cutout(c.u0(), width - c.v1(), c.u1(), width - c.v0()) : c)
                .toList();
        return turned.size() == item.cutouts().size()
                && turned.stream().allMatch(c -> item.cutouts().stream().anyMatch(o -> same(c, o)));
    }

    private static boolean same(Cutout a, Cutout b) {
        return Math.abs(a.u0() - b.u0()) < SAME
                && Math.abs(a.v0() - b.v0()) < SAME
                && Math.abs(a.u1() - b.u1()) < SAME
                && Math.abs(a.v1() - b.v1()) < SAME;
    }
}
