package hushmaze.size;

import java.util.List;
import java.util.TreeSet;

/** A few sizes, in ratios to the least or to the most there is room for. */
record SomeSizes(Steps steps) implements Ladder {
    private static final double[] WIDER = {1, 1.2, 1.45, 1.75, 2.1, 2.6, 3.2};
    private static final double[] LOWER = {1, 0.78, 0.6, 0.45};
    private static final double[] SHORTER = {1, 0.8, 0.63, 0.5, 0.4};
    private static final double[] NARROWER = {1, 0.75, 0.55};
    private static final double SLACK = 1e-9;

    @Override
    public List<Double> widths(double least, double fill) {
        TreeSet<Double> widths = new TreeSet<>();
        for (double wider : WIDER) {
            widths.add(steps.up(least * wider));
        }
        if (least <= fill + SLACK) {
            widths.add(fill);
        }
        widths.removeIf(width -> width > fill + SLACK);
        return List.copyOf(widths);
    }

    @Override
    public List<Double> chamberWidths(double least, double fill) {
        return shares(NARROWER, least, fill);
    }

    @Override
    public List<Double> heights(double least, double most, double flowing) {
        TreeSet<Double> heights = new TreeSet<>(shares(LOWER, least, most));
        heights.add(flowing);
        heights.removeIf(height -> height < least - SLACK || height > most + SLACK);
        return List.copyOf(heights);
    }

    @Override
    public List<Double> lengths(double least, double longest) {
        return shares(SHORTER, least, longest);
    }

    /** From the most down. */
    private List<Double> shares(double[] shares, double least, double most) {
        TreeSet<Double> sizes = new TreeSet<>();
        for (double share : shares) {
            sizes.add(steps.down(most * share));
        }
        sizes.removeIf(size -> size < least - SLACK);
        return List.copyOf(sizes.descendingSet());
    }

    @Override
    public int mostWidths() {
        return WIDER.length;
    }

    @Override
    public int mostChamberWidths() {
        return NARROWER.length;
    }

    @Override
    public int mostLengths() {
        return SHORTER.length;
    }
}
