package hushmaze.drawing.page;

import hushmaze.drawing.draft.DimensionChain;
import hushmaze.quantity.LengthFormat;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/** Places along one direction of a thing, in metres, that a dimension chain joins. */
final class Places {
    private static final double SAME = 1e-6;

    private final List<Double> sorted;

    private Places(List<Double> sorted) {
        this.sorted = sorted;
    }

    /** The places in order, each once. */
    static Places of(double... places) {
        List<Double> sorted = new ArrayList<>();
        double[] all = places.clone();
        Arrays.sort(all);
        for (double place : all) {
            if (sorted.isEmpty() || place - sorted.get(sorted.size() - 1) > SAME) {
                sorted.add(place);
            }
        }
        return new Places(sorted);
    }

    /** Number of stretches between the places. */
    int stretches() {
        return sorted.size() - 1;
    }

    /**
     * Draws the chain. Places are rounded from its start, so that its figures add up to that of the whole.
     *
     * @param toPaper place on paper for a place of the thing
     * @return how far the next dimension line must keep from the outline, mm
     */
    double draw(DimensionChain chain, DoubleUnaryOperator toPaper, Job job) {
        List<Double> paper = new ArrayList<>();
        List<String> figures = new ArrayList<>();
        sorted.forEach(place -> paper.add(toPaper.applyAsDouble(place)));
        printed(job.units()).forEach(stretch -> figures.add(job.bare(stretch)));
        if (paper.get(0) > paper.get(paper.size() - 1)) {
            java.util.Collections.reverse(paper);
            java.util.Collections.reverse(figures);
        }
        return chain.draw(paper, figures);
    }

    /** What is printed for each stretch, m: differences of rounded places, so that it adds up to what is printed for the whole. */
    List<Double> printed(UnitSystem units) {
        List<Double> stretches = new ArrayList<>();
        double before = 0;
        for (double place : sorted.subList(1, sorted.size())) {
            double here = LengthFormat.rounded(place - sorted.get(0), units);
            stretches.add(here - before);
            before = here;
        }
        return stretches;
    }
}
