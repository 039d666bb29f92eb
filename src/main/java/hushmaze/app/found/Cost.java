package hushmaze.app.found;

import hushmaze.app.model.SizingModel;
import hushmaze.size.Design;

/** What quiet can be paid for with: the upright axis of the chart. */
enum Cost {
    DEPTH,
    MASS,
    SHEETS;

    double of(Design design) {
        return switch (this) {
            case DEPTH -> design.depth();
            case MASS -> design.mass();
            case SHEETS -> design.cost();
        };
    }

    /** In words with its unit. */
    String words(Design design, SizingModel model) {
        return switch (this) {
            case DEPTH -> model.amounts().length(design.depth());
            case MASS -> model.amounts().mass(design.mass());
            case SHEETS -> model.cost(design);
        };
    }
}
