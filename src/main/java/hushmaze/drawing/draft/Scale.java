package hushmaze.drawing.draft;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A scale of reduction.
 *
 * <p>Source: ISO 5455, the series 1:1, 1:2, 1:5 and their tenfolds (the series as read in excerpts up to 1:10; the
 * tenfolds from memory).
 *
 * @param denominator how many millimetres of the thing one millimetre of paper stands for
 */
public record Scale(int denominator) {
    /** The scales used, largest picture first. */
    public static final List<Scale> SERIES =
            List.of(1, 2, 5, 10, 20, 50, 100).stream().map(Scale::new).toList();

    private static final double MM_PER_M = 1000;

    /** A true length in metres as millimetres on paper. */
    public double paper(double metres) {
        return metres * MM_PER_M / denominator;
    }

    /**
     * The longest of some true lengths that takes no more than its room on paper; the first if none does.
     *
     * @param choices in order, in a unit of their own
     * @param unit of theirs, mm
     * @param room mm on paper
     */
    double longest(double[] choices, double unit, double room) {
        double best = choices[0];
        for (double choice : choices) {
            best = choice * unit / denominator <= room ? choice : best;
        }
        return best;
    }

    /** As written in a title block: "1:10". */
    public String label() {
        return "1:" + denominator;
    }

    /** The scale with the largest picture that passes a test, if any does. */
    public static Optional<Scale> largest(Function<Scale, Boolean> fits) {
        return SERIES.stream().filter(fits::apply).findFirst();
    }

    /**
     * The scale with the largest picture of a thing within a room on paper, no larger than full size.
     *
     * @param width of the thing, m
     * @param height of the thing, m
     * @param roomWidth mm
     * @param roomHeight mm
     * @throws IllegalArgumentException if not even the smallest picture fits
     */
    public static Scale fitting(double width, double height, double roomWidth, double roomHeight) {
        return largest(s -> s.paper(width) <= roomWidth && s.paper(height) <= roomHeight)
                .orElseThrow(() -> new IllegalArgumentException(
                        width + " m x " + height + " m does not go on " + roomWidth + " mm x " + roomHeight + " mm"));
    }
}
