package hushmaze.sound.estimate;

import hushmaze.solid.Pass;
import java.util.ArrayList;
import java.util.List;

/**
 * The lined slits that a pass is taken for: one across its width if its sides are lined, one across its height if its broad
 * faces are. A pass lined on one side only is half a slit of twice the width, by its mirror image in the bare side.
 *
 * @param widths clear widths of the slits, m: none if the pass is bare, at most two
 * @param depths of the lining on either side of each, m; where the two sides differ the lesser
 */
record LinedSlits(List<Double> widths, List<Double> depths) {
    LinedSlits {
        widths = List.copyOf(widths);
        depths = List.copyOf(depths);
    }

    static LinedSlits of(Pass pass) {
        List<Double> widths = new ArrayList<>();
        List<Double> depths = new ArrayList<>();
        boolean low = pass.lowLiner() > 0;
        boolean high = pass.highLiner() > 0;
        if (low || high) {
            widths.add(low && high ? pass.width() : 2 * pass.width());
            depths.add(
                    low && high
                            ? Math.min(pass.lowLiner(), pass.highLiner())
                            : Math.max(pass.lowLiner(), pass.highLiner()));
        }
        if (pass.broadLiner() > 0) {
            widths.add(pass.height());
            depths.add(pass.broadLiner());
        }
        return new LinedSlits(widths, depths);
    }

    /** Width of the narrowest slit, m; infinite if there is none. */
    double narrowest() {
        return widths.stream().mapToDouble(Double::doubleValue).min().orElse(Double.POSITIVE_INFINITY);
    }
}
