package hushmaze.drawing.page;

import hushmaze.build.joint.Hole;
import hushmaze.drawing.Labels;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** Screw holes in words: row by row, each as far as it goes, from the lower left corner of the drawing. */
final class HoleRows {
    private static final double SAME = 1e-6;
    /** So many letters stand under a part's picture; more go into a list of their own. */
    private static final int MOST = 480;

    private final Job job;

    HoleRows(Job job) {
        this.job = job;
    }

    /** Whether the rows would be more than a picture has room for. */
    boolean many(List<Hole> holes) {
        return words(holes).stream().mapToInt(String::length).sum() > MOST;
    }

    /** One line for each row. */
    List<String> words(List<Hole> holes) {
        List<Hole> left = new ArrayList<>(holes);
        List<String> rows = new ArrayList<>();
        while (!left.isEmpty()) {
            List<Hole> along = longest(left, true);
            List<Hole> up = longest(left, false);
            boolean isAlong = along.size() >= up.size();
            List<Hole> row = isAlong ? along : up;
            left.removeAll(row);
            rows.add(row(row, isAlong));
        }
        return rows;
    }

    private static List<Hole> longest(List<Hole> holes, boolean along) {
        return holes.stream()
                .map(h -> holes.stream()
                        .filter(o -> Math.abs(along ? o.v() - h.v() : o.u() - h.u()) < SAME)
                        .toList())
                .max(Comparator.comparingInt(List::size))
                .orElse(List.of());
    }

    private String row(List<Hole> row, boolean along) {
        double fixed = along ? row.get(0).v() : row.get(0).u();
        String places = row.stream()
                .map(h -> along ? h.u() : h.v())
                .sorted()
                .map(job::bare)
                .collect(Collectors.joining(", "));
        return Labels.of(along ? "partView.holes.along" : "partView.holes.up", job.bare(fixed), places);
    }
}
