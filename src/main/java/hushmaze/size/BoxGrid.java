package hushmaze.size;

import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.LinedFaces;
import hushmaze.quantity.UnitSystem;
import java.util.ArrayList;
import java.util.List;

/**
 * The boxes the rule set looks at: both ways round in the space, 1 to 6 passes, and a ladder of clear widths that starts
 * where the air keeps its velocity limits and the opening goes into the pass.
 *
 * <p>Rules: the path is as long and as high as the space lets it be, or a stated share of that; clear sizes are whole {@link
 * Steps}; the turn gap is {@link PatternGrid#GAP_RATIO} clear widths; every outer wall has the layers asked for.
 */
final class BoxGrid {
    /** Clear widths tried, in multiples of the least that will do. */
    private static final double[] WIDTH_LADDER = {1, 1.15, 1.3, 1.5, 1.75, 2, 2.5, 3};
    /** Clear heights and lengths tried, in shares of the most there is room for. */
    private static final double[] SIZE_LADDER = {1, 0.85, 0.7, 0.55};
    /** Room for rounding when sizes are compared, m. */
    private static final double SLACK = 1e-9;

    private final Brief brief;
    private final Build build;
    private final Steps steps;
    private final BoxMaker maker;

    BoxGrid(Brief brief, UnitSystem units) {
        Construction wished = brief.construction();
        this.brief = brief;
        this.steps = new Steps(units);
        this.maker = new BoxMaker(brief, steps);
        this.build = new Build(
                wished.board(),
                wished.shellLayers(),
                wished.baffleLayers(),
                wished.liner(),
                wished.linedBroadFaces() ? LinedFaces.ALL : LinedFaces.FOLD_PLANE);
    }

    /** Every box of the grid that goes into the space; air, mass and sound are not looked at. */
    List<Box> boxes() {
        List<Box> boxes = new ArrayList<>();
        for (boolean turned : new boolean[] {false, true}) {
            Pattern kind = Pattern.straight(
                    turned,
                    brief.construction().openingFace(),
                    brief.construction().roomFace(),
                    build);
            Place place = Place.of(brief, kind.openingFace(), turned);
            double longest = place.length(build);
            double highest = Math.min(place.height(build), PatternGrid.MAX_CLEAR_HEIGHT);
            for (double height : SIZE_LADDER) {
                for (double length : SIZE_LADDER) {
                    Pattern sized = kind.ofHeight(steps.down(highest * height)).ofLength(steps.down(longest * length));
                    addBoxes(boxes, place, sized);
                }
            }
        }
        return boxes;
    }

    private void addBoxes(List<Box> boxes, Place place, Pattern sized) {
        if (sized.length() < Box.MIN_BAFFLE || sized.height() < BoxMaker.MIN_CLEAR) {
            return;
        }
        double least = maker.leastWidth(place, sized, sized.height());
        for (double factor : WIDTH_LADDER) {
            double width = steps.up(least * factor);
            for (int passes = 1; passes <= Box.MAX_PASSES; passes++) {
                if (width <= place.width(build, passes) + SLACK) {
                    double gap = passes > 1 ? steps.up(PatternGrid.GAP_RATIO * width) : 0;
                    maker.box(sized.ofPasses(passes, width, gap)).ifPresent(boxes::add);
                }
            }
        }
    }
}
