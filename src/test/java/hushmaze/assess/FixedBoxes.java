package hushmaze.assess;

import hushmaze.project.Brief;
import hushmaze.project.Mounting;
import hushmaze.project.Opening;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.size.FirstLayout;
import hushmaze.store.TestProjects;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;

/** The heavy box of a sample project, hung and set up in other ways, for tests. */
public final class FixedBoxes {
    private static final Project CELLAR = FirstLayout.complete(TestProjects.read("trio-cellar"), Progress.NONE);

    private FixedBoxes() {}

    /** The mounting of the sample with other values. */
    public static Mounting mounting(
            Mounting.Into into,
            double thread,
            int screws,
            double rows,
            Double studSpacing,
            Double cleatLength,
            Boolean abovePeople) {
        return new Mounting(
                into,
                Mounting.Timber.SPRUCE_PINE_FIR_SOUTH,
                Mounting.StudScrew.WOOD_10,
                thread,
                screws,
                rows,
                0.019,
                studSpacing,
                cleatLength,
                abovePeople,
                "invented for a test");
    }

    /** The project with its second box, of about 49 kg and 814 mm along the wall, over another surface. */
    public static Project project(Opening.Surface surface, Mounting mounting) {
        VentPath old = CELLAR.paths().get(1);
        Brief brief = old.brief();
        Opening o = brief.opening();
        Brief changed = brief.withAirFrom(
                        new Opening(o.kind(), surface, o.beyond(), o.width(), o.height()), brief.flow(), brief.drive())
                .withConstruction(brief.construction().mounted(mounting));
        List<VentPath> paths = new ArrayList<>(CELLAR.paths());
        paths.set(1, new VentPath(old.name(), old.purpose(), changed, old.box()));
        return CELLAR.withPaths(paths);
    }

    /** That box judged. */
    public static PathResult judged(Opening.Surface surface, Mounting mounting) {
        return Assessor.assess(project(surface, mounting), Methods.ESTIMATE, Progress.NONE)
                .paths()
                .get(1);
    }
}
