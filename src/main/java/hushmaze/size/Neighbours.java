package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.LinedFaces;
import java.util.ArrayList;
import java.util.List;

/** Boxes a little different from one box, one choice at a time: what the grid leaves out between its rungs. */
final class Neighbours {
    private static final double[] SIZES = {0.8, 0.85, 0.89, 0.93, 0.96, 1.04, 1.07, 1.15};
    private static final double[] GAPS = {0.8, 0.95, 1.1, 1.3, 1.6};
    private static final double[] MOUTHS = {1, 1.25, 1.6};
    private static final double SLACK = 1e-9;

    private final Brief brief;
    private final Freedom freedom;
    private final Steps steps;

    Neighbours(Brief brief, Freedom freedom, Steps steps) {
        this.brief = brief;
        this.freedom = freedom;
        this.steps = steps;
    }

    /** All neighbours that have room in the space; some may be no boxes. */
    List<Pattern> of(Pattern pattern) {
        Place place = Place.of(brief, pattern.openingFace(), pattern.turned());
        List<Pattern> all = new ArrayList<>();
        double longest = steps.down(place.length(pattern.build()));
        for (double length : around(pattern.length(), longest)) {
            all.add(pattern.ofLength(length));
        }
        double highest = steps.down(Math.min(place.height(pattern.build()), PatternGrid.MAX_CLEAR_HEIGHT));
        for (double height : around(pattern.height(), highest)) {
            all.add(pattern.ofHeight(height));
        }
        double widest = steps.down(place.width(pattern.build(), pattern.passes()));
        for (double width : around(pattern.width(), widest)) {
            all.add(pattern.ofWidth(width, scaled(pattern, width)));
        }
        folds(all, pattern, place);
        builds(all, pattern);
        for (double mouth : MOUTHS) {
            all.add(pattern.ofMouth(mouth));
        }
        all.removeIf(other -> other.equals(pattern) || !fits(other, place));
        return all;
    }

    private List<Double> around(double size, double most) {
        List<Double> sizes = new ArrayList<>();
        sizes.add(size - steps.size());
        sizes.add(size + steps.size());
        sizes.add(most);
        for (double factor : SIZES) {
            sizes.add(steps.nearest(size * factor));
        }
        return sizes.stream().map(steps::nearest).distinct().toList();
    }

    private double scaled(Pattern pattern, double width) {
        return pattern.passes() == 1 ? 0 : steps.nearest(pattern.gap() / pattern.width() * width);
    }

    private void folds(List<Pattern> all, Pattern pattern, Place place) {
        if (pattern.form() != Box.Form.MAZE) {
            return;
        }
        if (pattern.passes() > 1) {
            for (double ratio : GAPS) {
                all.add(pattern.ofWidth(pattern.width(), steps.nearest(ratio * pattern.width())));
            }
        }
        for (int passes : new int[] {pattern.passes() - 1, pattern.passes() + 1}) {
            if (passes >= 1 && passes <= Box.MAX_PASSES) {
                double width = steps.down(place.width(pattern.build(), passes));
                double gap = passes > 1 ? steps.up(PatternGrid.GAP_RATIO * width) : 0;
                all.add(pattern.ofPasses(passes, width, gap));
            }
        }
    }

    private void builds(List<Pattern> all, Pattern pattern) {
        Build build = pattern.build();
        for (Build other : freedom.builds()) {
            boolean near = other.layers() != build.layers() || !other.lined().equals(build.lined());
            boolean same = other.board().equals(build.board()) && other.liner().equals(build.liner());
            if (near && same) {
                all.add(pattern.ofBuild(other));
            }
        }
        if (freedom.linings()) {
            linings(all, pattern);
        }
    }

    /** Baffles bare, and one layer of liner more or less on the sides and baffles, the ends, the broad faces. */
    private void linings(List<Pattern> all, Pattern pattern) {
        Build build = pattern.build();
        LinedFaces now = build.lined();
        List<LinedFaces> others = new ArrayList<>();
        if (pattern.passes() > 1 && now.baffles() > 0) {
            others.add(now.withBaffles(0));
        }
        for (int step = -1; step <= 1; step += 2) {
            if (now.baffles() == now.walls() && isAllowed(now.walls() + step, 1)) {
                others.add(now.withSides(now.walls() + step));
            }
            if (isAllowed(now.ends() + step, 1)) {
                others.add(now.withEnds(now.ends() + step));
            }
            if (isAllowed(now.broad() + step, 0)) {
                others.add(now.withBroad(now.broad() + step));
            }
        }
        others.forEach(lined -> all.add(pattern.ofBuild(build.lined(lined))));
    }

    private boolean isAllowed(int layers, int least) {
        return layers >= least && layers <= freedom.linerLayers();
    }

    private static boolean fits(Pattern pattern, Place place) {
        Build build = pattern.build();
        return pattern.length() > 0
                && pattern.length() <= place.length(build) + SLACK
                && pattern.height() >= BoxMaker.MIN_CLEAR - SLACK
                && pattern.height() <= place.height(build) + SLACK
                && pattern.width() >= BoxMaker.MIN_CLEAR - SLACK
                && pattern.width() <= place.width(build, pattern.passes()) + SLACK;
    }
}
