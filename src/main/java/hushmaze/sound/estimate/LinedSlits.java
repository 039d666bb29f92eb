package hushmaze.sound.estimate;

import hushmaze.solid.Pass;
import java.util.ArrayList;
import java.util.List;

/**
 * The lined slits that a pass is taken for: one across its width if its sides are lined, one across its height if its broad
 * faces are. A pass lined on one side only is half a slit of twice the width, by its mirror image in the bare side.
 *
 * @param widths clear widths of the slits, m: none if the pass is bare, at most two
 */
record LinedSlits(List<Double> widths) {
    LinedSlits {
        widths = List.copyOf(widths);
    }

    static LinedSlits of(Pass pass) {
        List<Double> widths = new ArrayList<>();
        boolean low = pass.lowLiner() > 0;
        boolean high = pass.highLiner() > 0;
        if (low || high) {
            widths.add(low && high ? pass.width() : 2 * pass.width());
        }
        if (pass.broadLiner() > 0) {
            widths.add(pass.height());
        }
        return new LinedSlits(widths);
    }

    /** Width of the narrowest slit, m; infinite if there is none. */
    double narrowest() {
        return widths.stream().mapToDouble(Double::doubleValue).min().orElse(Double.POSITIVE_INFINITY);
    }
}
