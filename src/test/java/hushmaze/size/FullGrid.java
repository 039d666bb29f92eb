package hushmaze.size;

import hushmaze.assess.Methods;
import hushmaze.build.Supply;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.LinedFaces;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Every box of a path whose sizes are multiples of a step, judged by the methods of the search without the wave solution: what a search
 * is held against. Turn gaps are 1.1 clear widths, room ports as large as they must be.
 */
final class FullGrid {
    private final List<Candidate> judged;

    private FullGrid(List<Candidate> judged) {
        this.judged = judged;
    }

    /** The best of a grid by what boxes are recommended for. */
    record Best(Pattern pattern, double cost, double margin) {}

    /**
     * @param project with every flow settled
     * @param step of clear width, height and length, m
     */
    static FullGrid of(Project project, int path, double step) {
        Brief brief = project.paths().get(path).brief();
        Appraiser appraiser = new Appraiser(project, path, Methods.QUICK, Supply.of(project.stock()));
        List<Candidate> all = patterns(brief, Freedom.of(brief), new Steps(project.units()), step).parallelStream()
                .map(p -> appraiser.first(p, null))
                .filter(first -> first.end() == Appraiser.End.DONE)
                .map(Appraiser.First::candidate)
                .toList();
        // Whatever comes nowhere near the target by the estimate is not judged by the quick wave.
        double near = all.stream().mapToDouble(Candidate::margin).max().orElse(0) < 0 ? -99 : -3;
        List<Candidate> judged = all.stream().filter(c -> c.margin() >= near).toList();
        judged.parallelStream()
                .map(c -> appraiser.next(c, Progress.NONE))
                .toList()
                .forEach(Appraiser.Verdict::apply);
        return new FullGrid(judged.stream()
                .filter(c -> c.level() == Level.QUICK && !c.dropped())
                .toList());
    }

    int judged() {
        return judged.size();
    }

    /** The one a search should recommend. */
    Best best() {
        Candidate best = judged.stream().min(Kind.RECOMMENDED.order()).orElseThrow();
        return new Best(best.pattern(), best.cost(), best.margin(Level.QUICK));
    }

    /** The most margin of any, dB. */
    double most() {
        return judged.stream().mapToDouble(c -> c.margin(Level.QUICK)).max().orElseThrow();
    }

    private static List<Pattern> patterns(Brief brief, Freedom freedom, Steps steps, double step) {
        List<Pattern> all = new ArrayList<>();
        for (Build build : builds(freedom)) {
            for (PortFace over : freedom.openingFaces()) {
                for (PortFace room : freedom.roomFaces()) {
                    for (boolean turned : new boolean[] {false, true}) {
                        Place place = Place.of(brief, over, turned);
                        Pattern straight = Pattern.straight(turned, over, room, build);
                        for (int passes = 1; passes <= Box.MAX_PASSES; passes++) {
                            add(all, place, straight.ofPasses(passes, 0, 0), steps, step);
                        }
                        add(all, place, straight.ofForm(Box.Form.OFFSET_CHAMBER), steps, step);
                    }
                }
            }
        }
        all.sort(Comparator.comparingDouble(Pattern::width));
        return all;
    }

    /** Each build with every number of layers of liner: the same on sides and baffles, any on ends and broad faces. */
    private static List<Build> builds(Freedom freedom) {
        List<Build> all = new ArrayList<>();
        for (Build build : freedom.builds()) {
            if (!build.lined().equals(LinedFaces.FOLD_PLANE)) {
                continue;
            }
            for (int sides = 1; sides <= freedom.linerLayers(); sides++) {
                for (int ends = 1; ends <= freedom.linerLayers(); ends++) {
                    for (int broad = 0; broad <= freedom.linerLayers(); broad++) {
                        all.add(build.lined(new LinedFaces(sides, sides, ends, broad)));
                    }
                }
            }
        }
        return all;
    }

    private static void add(List<Pattern> all, Place place, Pattern kind, Steps steps, double step) {
        int passes = kind.passes();
        for (double width = 0.04; width <= place.width(kind.build(), passes) + 1e-9; width += step) {
            double gap = passes == 1 ? 0 : steps.up(PatternGrid.GAP_RATIO * width);
            for (double height = 0.04; height <= place.height(kind.build()) + 1e-9; height += step) {
                for (double length = 0.1; length <= place.length(kind.build()) + 1e-9; length += step) {
                    all.add(kind.ofWidth(steps.nearest(width), gap)
                            .ofHeight(steps.nearest(height))
                            .ofLength(steps.nearest(length)));
                }
            }
        }
    }
}
