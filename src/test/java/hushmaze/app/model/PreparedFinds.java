package hushmaze.app.model;

import hushmaze.assess.Assessor;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.TestRooms;
import hushmaze.project.Box;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Space;
import hushmaze.project.VentPath;
import hushmaze.quantity.Unit;
import hushmaze.size.Design;
import hushmaze.size.FirstLayout;
import hushmaze.size.Kind;
import hushmaze.size.PathDesigns;
import hushmaze.size.Relaxation;
import hushmaze.size.ResizedBox;
import hushmaze.size.Sizing;
import hushmaze.size.Tally;
import hushmaze.work.Progress;
import java.util.List;

/** Finds in no time what was prepared: a search that tells of progress, of a first design, and of a second. */
public final class PreparedFinds implements SizingModel.Finder {
    private static final int STEPS = 10;

    private final List<Design> designs;

    /** @param level of the noise, dB: 20 is met by any box, 62 by none */
    public PreparedFinds(double level) {
        this.designs = List.of(
                design(project(level, 0.6), 0, Kind.RECOMMENDED, Kind.CHEAPEST),
                design(project(level, 0.8), 0.05, Kind.QUIETEST));
    }

    /** One path with a small space. */
    public static Project project(double level, double width) {
        return TestRooms.project(
                TestRooms.nc(20),
                null,
                new VentPath(
                        "in",
                        Purpose.SUPPLY,
                        TestRooms.brief(level, null, new Space(width, 0.34, 0.25), Opening.Beyond.INDOORS),
                        null));
    }

    private static Design design(Project project, double longer, Kind... kinds) {
        Project laidOut = FirstLayout.complete(project, Progress.NONE);
        VentPath path = laidOut.paths().get(0);
        Box box = path.box();
        Project whole = laidOut.withPath(
                0, path.withBox(new ResizedBox(box).with(ResizedBox.Size.LENGTH, box.clearLength() + longer)));
        PathResult result =
                Assessor.assess(whole, Methods.ESTIMATE, Progress.NONE).paths().get(0);
        return new Design(List.of(kinds), whole.paths().get(0).box(), result, 2.98);
    }

    /** What it finds. */
    public List<Design> designs() {
        return designs;
    }

    @Override
    public PathDesigns find(Project project, int path, int keep, Progress progress, Sizing.Watch watch) {
        for (int i = 0; i < STEPS; i++) {
            progress.check((double) i / STEPS, "comparing boxes");
            if (i == STEPS / 2) {
                watch.found(path, designs.subList(0, 1));
            }
        }
        watch.found(path, designs);
        double margin = designs.stream().mapToDouble(Design::margin).max().orElseThrow();
        List<Relaxation> ways = margin >= 0
                ? List.of()
                : List.of(new Relaxation(Relaxation.Limit.SPACE_DEPTH, 0.25, 0.4, Unit.MILLIMETRE));
        return new PathDesigns(
                path,
                designs,
                new Tally(5, 4, 0, 0, 3, 2, 2, 2),
                null,
                false,
                new PathDesigns.Shortfall(Math.max(0, -margin), 0),
                ways);
    }
}
