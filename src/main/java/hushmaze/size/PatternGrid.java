package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.LinedFaces;
import hushmaze.project.PortFace;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/**
 * The patterns of a brief: every form and number of passes, both ways round, every pair of faces, each build, and clear widths,
 * heights and lengths from the least that keeps the limits on velocity and lets the opening in to the most there is room for. The turn
 * gap is 1.1 clear widths, where the computed table of U-turns has its least loss. A search begins with a few {@link Ladder}s' worth;
 * what those leave out is tried later, around the best.
 */
final class PatternGrid {
    /** Gap at a baffle's tip in clear widths. */
    static final double GAP_RATIO = 1.1;
    /** Highest clear height: a wider slot sags and rattles, m; our own judgement. */
    static final double MAX_CLEAR_HEIGHT = 0.6;

    private final Brief brief;
    private final Freedom freedom;
    private final Steps steps;
    private final BoxMaker maker;
    private final Ladder ladder;
    private long tooNarrow;
    /** Null until asked for. */
    private Count count;

    private PatternGrid(Brief brief, Freedom freedom, Steps steps, Ladder ladder) {
        this.brief = brief;
        this.freedom = freedom;
        this.steps = steps;
        this.maker = new BoxMaker(brief, steps);
        this.ladder = ladder;
    }

    /** Some sizes, in ratios to the least or most. */
    static PatternGrid ofSome(Brief brief, Freedom freedom, Steps steps) {
        return new PatternGrid(brief, freedom, steps, new SomeSizes(steps));
    }

    /** Every size that is a whole number of steps. */
    static PatternGrid ofEvery(Brief brief, Freedom freedom, Steps steps) {
        return ofEvery(brief, freedom, steps, 1);
    }

    /** Every length that is a whole number of steps; of widths and heights one in so many, and the least. */
    static PatternGrid ofEvery(Brief brief, Freedom freedom, Steps steps, int apart) {
        return new PatternGrid(brief, freedom, steps, new EverySize(steps, apart));
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
        each(lines::add);
        return lines;
    }

    /** How many there are. */
    record Count(long lines, long boxes) {}

    /** How many lines and boxes there are; counted once, for there may be millions. */
    Count count() {
        if (count == null) {
            long[] counts = new long[2];
            each(line -> {
                counts[0]++;
                counts[1] += line.lengths().size();
            });
            count = new Count(counts[0], counts[1]);
        }
        return count;
    }

    /** Tells all lines, one after the other. */
    void each(Consumer<Line> told) {
        for (Build build : freedom.builds()) {
            for (PortFace over : freedom.openingFaces()) {
                for (boolean turned : new boolean[] {false, true}) {
                    Place place = Place.of(brief, over, turned);
                    for (PortFace room : freedom.roomFaces()) {
                        add(told, place, Pattern.straight(turned, over, room, build));
                    }
                }
            }
        }
    }

    /** Patterns that were put aside for want of space or air. */
    long tooNarrow() {
        return tooNarrow;
    }

    private void add(Consumer<Line> lines, Place place, Pattern kind) {
        LinedFaces lined = kind.build().lined();
        boolean bareBaffles = lined.baffles() == 0 && lined.walls() > 0;
        for (int passes = bareBaffles ? 2 : 1; passes <= Box.MAX_PASSES; passes++) {
            addMazes(lines, place, kind, passes);
        }
        if (!bareBaffles) {
            addChambers(lines, place, kind.ofForm(Box.Form.OFFSET_CHAMBER));
        }
    }

    private void addMazes(Consumer<Line> lines, Place place, Pattern kind, int passes) {
        double fill = steps.down(place.width(kind.build(), passes));
        for (double height : heights(place, kind, fill)) {
            List<Double> widths = ladder.widths(maker.leastWidth(place, kind, height), fill);
            leftOut(ladder.mostWidths() - widths.size());
            for (double width : widths) {
                double gap = passes > 1 ? steps.up(GAP_RATIO * width) : 0;
                addLine(lines, place, kind.ofPasses(passes, width, gap).ofHeight(height));
            }
        }
    }

    /** Openings out of line, so the chamber is at least twice as wide as what goes into it. */
    private void addChambers(Consumer<Line> lines, Place place, Pattern chamber) {
        double fill = steps.down(place.width(chamber.build(), 1));
        for (double height : heights(place, chamber, fill)) {
            List<Double> widths = ladder.chamberWidths(2 * maker.leastWidth(place, chamber, height), fill);
            leftOut(ladder.mostChamberWidths() - widths.size());
            for (double width : widths) {
                addLine(lines, place, chamber.ofWidth(width, 0).ofHeight(height));
            }
        }
    }

    private void leftOut(int widths) {
        tooNarrow += (long) Math.max(0, widths) * ladder.mostLengths();
    }

    private void addLine(Consumer<Line> lines, Place place, Pattern pattern) {
        List<Double> lengths = ladder.lengths(shortest(place, pattern), steps.down(place.length(pattern.build())));
        tooNarrow += Math.max(0, ladder.mostLengths() - lengths.size());
        if (!lengths.isEmpty()) {
            lines.accept(new Line(pattern.ofLength(lengths.get(0)), lengths));
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

    private List<Double> heights(Place place, Pattern kind, double widest) {
        double least = leastHeight(place, kind);
        double most = steps.down(Math.min(place.height(kind.build()), MAX_CLEAR_HEIGHT));
        double flowing = widest > 0 ? steps.up(Math.max(least, brief.flow() / brief.maxPathVelocity() / widest)) : most;
        return ladder.heights(least, most, flowing);
    }

    private static double leastHeight(Place place, Pattern kind) {
        return kind.openingFace().isBroad() ? BoxMaker.MIN_CLEAR : Math.max(BoxMaker.MIN_CLEAR, place.openingHeight());
    }
}
