package hushmaze.drawing.page;

import hushmaze.drawing.draft.DimensionChain;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
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
     * Draws the chain.
     *
     * @param toPaper place on paper for a place of the thing
     * @param figure text for a length in metres
     * @return how far the next dimension line must keep from the outline, mm
     */
    double draw(DimensionChain chain, DoubleUnaryOperator toPaper, DoubleFunction<String> figure) {
        List<Double> paper = new ArrayList<>();
        List<String> figures = new ArrayList<>();
        for (int i = 0; i < sorted.size(); i++) {
            paper.add(toPaper.applyAsDouble(sorted.get(i)));
            if (i > 0) {
                figures.add(figure.apply(sorted.get(i) - sorted.get(i - 1)));
            }
        }
        if (paper.get(0) > paper.get(paper.size() - 1)) {
            java.util.Collections.reverse(paper);
            java.util.Collections.reverse(figures);
        }
        return chain.draw(paper, figures);
    }
}
