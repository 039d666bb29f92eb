package hushmaze.build.joint;

import java.util.ArrayList;
import java.util.List;

/**
 * Where along a joint fasteners go: first and last at a distance from the ends, the others evenly between and no further
 * apart than a limit.
 *
 * @param fromEnd m
 * @param apart m
 */
record Spacing(double fromEnd, double apart) {
    private static final double SLACK = 1e-9;
    /** Two nearer than this would split the board between them; one does (common practice, no source), m. */
    private static final double NEAREST = 0.006;

    /** Whether one at all keeps its distance from both ends. */
    boolean fits(double length) {
        return length >= 2 * fromEnd - SLACK;
    }

    /** Places between two ends; the middle alone where there is no room for two. */
    List<Double> places(double from, double to) {
        double between = to - from - 2 * fromEnd;
        List<Double> places = new ArrayList<>();
        if (between < NEAREST) {
            places.add((from + to) / 2);
            return places;
        }
        int stretches = Math.max(1, (int) Math.ceil(between / apart - SLACK));
        for (int i = 0; i <= stretches; i++) {
            places.add(from + fromEnd + between * i / stretches);
        }
        return places;
    }
}
