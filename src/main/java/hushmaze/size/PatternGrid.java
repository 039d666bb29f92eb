package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.LinedFaces;
import hushmaze.project.PortFace;
import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;
import java.util.stream.Stream;

/**
 * The patterns a search begins with: every form and number of passes, both ways round, every pair of faces, each build, and
 * ladders of clear widths, heights and lengths from the least that keeps the limits on velocity and lets the opening in to the
 * most there is room for. The turn gap is 1.1 clear widths, where the computed table of U-turns has its least loss. What
 * these rungs leave out is tried later, around the best.
 */
final class PatternGrid {
    /** Gap at a baffle's tip in clear widths. */
    static final double GAP_RATIO = 1.1;
    /** Highest clear height: a wider slot sags and rattles, m; our own judgement. */
    static final double MAX_CLEAR_HEIGHT = 0.6;

    private static final double[] WIDER = {1, 1.2, 1.45, 1.75, 2.1, 2.6, 3.2};
    private static final double[] LOWER = {1, 0.78, 0.6, 0.45};
    private static final double[] SHORTER = {1, 0.8, 0.63, 0.5, 0.4};
    private static final double[] NARROWER = {1, 0.75, 0.55};
    private static final double SLACK = 1e-9;

    private final Brief brief;
    private final Freedom freedom;
    private final Steps steps;
    private final BoxMaker maker;
    private long tooNarrow;

    PatternGrid(Brief brief, Freedom freedom, Steps steps) {
        this.brief = brief;
        this.freedom = freedom;
        this.steps = steps;
        this.maker = new BoxMaker(brief, steps);
    }

    /**
     * Boxes alike but for their length.
     *
     * @param longest as a pattern
     * @param lengths from the longest down, m
     */
    record Line(Pattern longest, List<Double> lengths) {
        /** Each of them. */
        Stream<Pattern> all() {
            return lengths.stream().map(longest::ofLength);
        }
    }

    /** All lines that have room in the space and whose passes are wide enough for the air. */
    List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (Build build : freedom.builds()) {
            for (PortFace over : freedom.openingFaces()) {
                for (boolean turned : new boolean[] {false, true}) {
                    Place place = Place.of(brief, over, turned);
                    for (PortFace room : freedom.roomFaces()) {
                        add(lines, place, Pattern.straight(turned, over, room, build));
                    }
                }
            }
        }
        return lines;
    }

    /** Patterns that were put aside for want of space or air. */
    long tooNarrow() {
        return tooNarrow;
    }

    private void add(List<Line> lines, Place place, Pattern kind) {
        LinedFaces lined = kind.build().lined();
        boolean bareBaffles = lined.baffles() == 0 && lined.walls() > 0;
        for (int passes = bareBaffles ? 2 : 1; passes <= Box.MAX_PASSES; passes++) {
            addMazes(lines, place, kind, passes);
        }
        if (!bareBaffles) {
            addChambers(lines, place, kind.ofForm(Box.Form.OFFSET_CHAMBER));
        }
    }

    private void addMazes(List<Line> lines, Place place, Pattern kind, int passes) {
        double fill = steps.down(place.width(kind.build(), passes));
        double most = highest(place, kind.build());
        for (double height : heights(place, kind, most, fill)) {
            double least = maker.leastWidth(place, kind, height);
            TreeSet<Double> widths = new TreeSet<>();
            for (double wider : WIDER) {
                double width = steps.up(least * wider);
                if (width <= fill + SLACK) {
                    widths.add(width);
                } else {
                    tooNarrow += SHORTER.length;
                }
            }
            if (least <= fill + SLACK) {
                widths.add(fill);
            }
            for (double width : widths) {
                double gap = passes > 1 ? steps.up(GAP_RATIO * width) : 0;
                addLine(lines, place, kind.ofPasses(passes, width, gap).ofHeight(height));
            }
        }
    }

    /** Openings out of line, so the chamber is at least twice as wide as what goes into it. */
    private void addChambers(List<Line> lines, Place place, Pattern chamber) {
        double fill = steps.down(place.width(chamber.build(), 1));
        double most = highest(place, chamber.build());
        for (double height : heights(place, chamber, most, fill)) {
            double least = 2 * maker.leastWidth(place, chamber, height);
            for (double share : NARROWER) {
                double width = steps.down(fill * share);
                if (width < least - SLACK) {
                    tooNarrow += SHORTER.length;
                    continue;
                }
                addLine(lines, place, chamber.ofWidth(width, 0).ofHeight(height));
            }
        }
    }

    private void addLine(List<Line> lines, Place place, Pattern pattern) {
        double longest = steps.down(place.length(pattern.build()));
        double least = shortest(place, pattern);
        TreeSet<Double> lengths = new TreeSet<>();
        for (double share : SHORTER) {
            double length = steps.down(longest * share);
            if (length >= least - SLACK) {
                lengths.add(length);
            } else {
                tooNarrow++;
            }
        }
        if (!lengths.isEmpty()) {
            lines.add(new Line(pattern.ofLength(lengths.last()), List.copyOf(lengths.descendingSet())));
        }
    }

    /** The least clear length that holds a baffle with its gap, and the ports, m. */
    private double shortest(Place place, Pattern pattern) {
        double least = Box.MIN_BAFFLE + pattern.gap();
        if (pattern.openingFace() != PortFace.END) {
            least = Math.max(least, place.openingWidth());
        }
        return least;
    }

    private double highest(Place place, Build build) {
        return steps.down(Math.min(place.height(build), MAX_CLEAR_HEIGHT));
    }

    private TreeSet<Double> heights(Place place, Pattern kind, double most, double widest) {
        TreeSet<Double> heights = new TreeSet<>();
        double least = leastHeight(place, kind);
        for (double share : LOWER) {
            heights.add(steps.down(most * share));
        }
        if (widest > 0) {
            heights.add(steps.up(Math.max(least, brief.flow() / brief.maxPathVelocity() / widest)));
        }
        heights.removeIf(height -> height < least - SLACK || height > most + SLACK);
        return heights;
    }

    private static double leastHeight(Place place, Pattern kind) {
        return kind.openingFace().isBroad() ? BoxMaker.MIN_CLEAR : Math.max(BoxMaker.MIN_CLEAR, place.openingHeight());
    }
}
