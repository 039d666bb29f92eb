package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.Need;
import hushmaze.air.PathAir;
import hushmaze.build.CutList;
import hushmaze.build.CutListMaker;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetLayouts;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.PlacementProof;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;

/** Judges a project: the same project always gives the same assessment. */
public final class Assessor {
    private final Project project;
    private final AirState air;
    private final SoundJudge sound;
    private final Methods methods;

    private Assessor(Project project, Methods methods) {
        this.project = project;
        this.methods = methods;
        this.air = AirState.of(project.room());
        this.sound = new SoundJudge(project);
    }

    /**
     * The assessment of a project in which every path has a box.
     *
     * @throws InvalidValue if a path has no box, or a box cannot be built
     */
    public static Assessment assess(Project project, Methods methods, Progress progress) {
        Assessor assessor = new Assessor(project, methods);
        List<PathResult> results = new ArrayList<>();
        List<Spectrum> levels = new ArrayList<>();
        for (int i = 0; i < project.paths().size(); i++) {
            progress.check(
                    (double) i / project.paths().size(), project.paths().get(i).name());
            assessor.path(i, results, levels, progress);
        }
        RoomResult room = assessor.room(levels);
        return new Assessment(project, room, results, RoomNotices.of(project, room));
    }

    private void path(int index, List<PathResult> results, List<Spectrum> levels, Progress progress) {
        VentPath path = project.paths().get(index);
        Box box = path.box();
        if (box == null) {
            throw new InvalidValue(
                    "paths[" + index + "].box", "nothing", "given, or laid out from the brief first", "");
        }
        Solid solid = build(index, box);
        SoundJudge.PathSound heard = sound.judge(index, solid);
        PathAir flow = AirJudge.air(path, solid, air);
        CutList cuts = CutListMaker.of(solid);
        List<SheetLayout> layouts = SheetLayouts.of(cuts, project.stock(), methods.sheets(), progress);
        PathResult.Fits fits = BoxFit.fits(solid, path.brief());
        boolean proved = PlacementProof.faults(solid).isEmpty();
        PathResult.Buildable buildable = buildable(path, solid, cuts, layouts, proved);
        PathResult result = new PathResult(
                path,
                solid,
                heard.quiet(),
                AirJudge.verdict(path.brief(), flow),
                fits,
                buildable,
                heard.thirds(),
                heard.octaves(),
                heard.loss().estimate().terms(),
                flow,
                cuts,
                layouts,
                List.of());
        List<Notice> notices =
                PathNotices.of(result, project.stock(), heard.loss().estimate().notices(), proved);
        results.add(result.withNotices(notices));
        levels.add(heard.level());
    }

    private static Solid build(int index, Box box) {
        try {
            return SolidBuilder.build(box);
        } catch (InvalidValue e) {
            throw e.inside("paths[" + index + "].box");
        }
    }

    private static PathResult.Buildable buildable(
            VentPath path, Solid solid, CutList cuts, List<SheetLayout> layouts, boolean proved) {
        Double maxMass = path.brief().construction().maxMass();
        boolean light = maxMass == null || solid.mass() <= maxMass;
        boolean placed = layouts.stream().allMatch(l -> l.unplaced().isEmpty());
        List<SheetLayout> boards = layouts.stream()
                .filter(l -> cuts.boards().stream().anyMatch(i -> i.material().equals(l.material())))
                .toList();
        int sheets = boards.stream().mapToInt(l -> l.sheets().size()).sum();
        return new PathResult.Buildable(
                proved && placed && light,
                solid.mass(),
                solid.panels().size(),
                solid.liners().size(),
                sheets,
                waste(boards));
    }

    /** Share of all board sheets together that does not become a panel. */
    private static double waste(List<SheetLayout> layouts) {
        double area = 0;
        double left = 0;
        for (SheetLayout layout : layouts) {
            for (var plan : layout.sheets()) {
                double sheet = plan.sheet().length() * plan.sheet().width();
                area += sheet;
                left += plan.waste() * sheet;
            }
        }
        return area == 0 ? 0 : left / area;
    }

    private RoomResult room(List<Spectrum> levels) {
        double supply = flow(true);
        double extract = flow(false);
        double flow = Math.max(supply, extract);
        Need need = Need.of(project.room());
        Spectrum own = NoiseNeeds.ownNoise(project.room(), BandSet.THIRD_OCTAVE);
        Spectrum level = own == null ? Spectrum.flat(BandSet.THIRD_OCTAVE, Double.NEGATIVE_INFINITY) : own;
        for (Spectrum path : levels) {
            level = level.energyPlus(path);
        }
        return new RoomResult(
                null, need.co2Steady(flow), need.temperatureRise(flow), supply, extract, level, Rating.of(level));
    }

    private double flow(boolean supply) {
        return project.paths().stream()
                .filter(p -> (p.purpose() == Purpose.SUPPLY) == supply)
                .mapToDouble(p -> p.brief().flow())
                .sum();
    }
}
