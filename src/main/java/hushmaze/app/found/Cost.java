package hushmaze.app.found;

import hushmaze.app.model.SizingModel;
import hushmaze.size.Design;
import java.util.function.ToDoubleFunction;

/** What quiet can be paid for with: the upright axis of the chart. */
enum Cost {
    DEPTH(Design::depth),
    MASS(Design::mass),
    SHEETS(Design::cost);

    private final ToDoubleFunction<Design> figure;

    Cost(ToDoubleFunction<Design> figure) {
        this.figure = figure;
    }

    double of(Design design) {
        return figure.applyAsDouble(design);
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
