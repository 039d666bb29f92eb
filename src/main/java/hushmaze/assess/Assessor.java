package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.air.need.RoomNeed;
import hushmaze.build.CutListMaker;
import hushmaze.build.Effort;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetLayouts;
import hushmaze.build.Supply;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.VentPath;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Notice;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.section.WaveResult;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;

/** Judges a project: the same project always gives the same assessment. */
public final class Assessor {
    private final Project project;
    private final AirState air;
    private final SoundJudge sound;
    private final Methods methods;
    private final KnownBoxes known;
    private final List<KnownBoxes.Bench> benches = new ArrayList<>();
    private RoomAir roomAir;
    /** What the paths before leave of the sheets there are only so many of, and of those they cut. */
    private Supply supply;

    private Assessor(Project project, Methods methods, KnownBoxes known) {
        this.project = project;
        this.methods = methods;
        this.known = known;
        this.supply = Supply.of(project.stock());
        this.air = AirState.of(project.room());
        this.sound = new SoundJudge(project, known.calculator(air.soundSpeed()));
    }

    /**
     * The assessment of a project in which every path has a box; a flow that a brief leaves out follows from the need.
     *
     * @throws InvalidValue if a path has no box, a box cannot be built, or a flow does not follow
     */
    public static Assessment assess(Project asked, Methods methods, Progress progress) {
        return assess(asked, methods, new KnownBoxes(), progress);
    }

    /**
     * The same assessment, one of many.
     *
     * @param known what was worked out of boxes before; what is worked out now is added
     */
    public static Assessment assess(Project asked, Methods methods, KnownBoxes known, Progress progress) {
        Project project = AskedFlows.settled(asked);
        Assessor assessor = new Assessor(project, methods, known);
        List<PathResult> results = new ArrayList<>();
        progress.check(0, "room air");
        assessor.solidsAndAir();
        for (int i = 0; i < project.paths().size(); i++) {
            progress.check(
                    (double) i / project.paths().size(), project.paths().get(i).name());
            assessor.path(i, results, progress);
        }
        RoomResult room = assessor.room(results);
        return new Assessment(project, room, results, RoomNotices.of(project, room));
    }

    /**
     * One path judged by itself: what it carries in the room is left open, since that hangs on the other paths.
     *
     * @param settled project with every flow given
     * @param index of the path
     * @param box for it, instead of its own
     * @param supply sheets the paths before leave
     * @throws InvalidValue if the box cannot be built
     */
    public static PathResult alone(
            Project settled, int index, Box box, Methods methods, Supply supply, Progress progress) {
        Assessor assessor = new Assessor(settled, methods, new KnownBoxes());
        assessor.supply = supply;
        VentPath path = settled.paths().get(index).withBox(box);
        return assessor.judged(index, path, assessor.bench(index, box), null, progress);
    }

    /**
     * What the paths before one leave of the sheets there are only so many of, and of those they cut, as far as they have boxes.
     *
     * @param effort for their layouts
     */
    public static Supply supply(Project project, int index, Effort effort, Progress progress) {
        Supply left = Supply.of(project.stock());
        for (VentPath before : project.paths().subList(0, index)) {
            left = before.box() == null
                    ? left
                    : left.after(layouts(before.box(), left, effort, progress), before.name());
        }
        return left;
    }

    /** None where the box cannot be built: it takes no sheets. */
    private static List<SheetLayout> layouts(Box box, Supply supply, Effort effort, Progress progress) {
        Solid solid;
        try {
            solid = SolidBuilder.build(box);
        } catch (InvalidValue noBox) {
            return List.of();
        }
        return SheetLayouts.of(CutListMaker.of(solid), supply, effort, progress);
    }

    private void solidsAndAir() {
        for (int i = 0; i < project.paths().size(); i++) {
            Box box = project.paths().get(i).box();
            if (box == null) {
                throw new InvalidValue(
                        "paths[" + i + "].box", "nothing", "given, or laid out from the brief first", "");
            }
            benches.add(bench(i, box));
        }
        roomAir = RoomAir.of(
                project, benches.stream().map(KnownBoxes.Bench::solid).toList(), air);
    }

    private void path(int index, List<PathResult> results, Progress progress) {
        PathFlow carried = roomAir.flows().isEmpty() ? null : roomAir.flows().get(index);
        VentPath path = project.paths().get(index);
        results.add(judged(index, path, benches.get(index), carried, within(progress, index)));
    }

    private PathResult judged(int index, VentPath path, KnownBoxes.Bench bench, PathFlow carried, Progress progress) {
        Solid solid = bench.solid();
        PathAir flow = AirJudge.air(path, solid, air);
        WaveResult wave = methods.wave() ? known.wave(solid, air.soundSpeed(), progress) : null;
        SoundJudge.PathSound heard = sound.judge(index, solid, flow, methods.quick(), wave);
        List<SheetLayout> layouts = known.layouts(bench, supply, methods.sheets(), progress);
        supply = supply.after(layouts, path.name());
        PathResult.Fits fits = BoxFit.fits(solid, path.brief());
        PathResult.Buildable buildable = buildable(path, bench, layouts);
        PathResult result = new PathResult(
                path,
                solid,
                heard.quiet(),
                AirJudge.verdict(path.brief(), flow, carried),
                fits,
                buildable,
                heard.thirds(),
                heard.octaves(),
                heard.detail(),
                flow,
                carried,
                bench.cuts(),
                layouts,
                List.of());
        List<Notice> notices = PathNotices.of(result, project, bench.proved());
        return result.withNotices(notices);
    }

    /** Progress of one path as a share of all. */
    private Progress within(Progress progress, int index) {
        double paths = project.paths().size();
        return (fraction, doing) -> progress.check(
                (index + fraction) / paths, project.paths().get(index).name() + ": " + doing);
    }

    private KnownBoxes.Bench bench(int index, Box box) {
        try {
            return known.bench(box);
        } catch (InvalidValue e) {
            throw e.inside("paths[" + index + "].box");
        }
    }

    private static PathResult.Buildable buildable(VentPath path, KnownBoxes.Bench bench, List<SheetLayout> layouts) {
        Solid solid = bench.solid();
        boolean carried = Carried.of(solid, path.brief().construction()).ok();
        boolean placed = layouts.stream().allMatch(l -> l.unplaced().isEmpty());
        List<SheetLayout> boards = SheetLayouts.ofBoards(bench.cuts(), layouts);
        int sheets = boards.stream().mapToInt(SheetLayout::fromStock).sum();
        int keptOffcuts = boards.stream().mapToInt(l -> l.keptOffcuts().size()).sum();
        return new PathResult.Buildable(
                bench.proved() && placed && carried,
                solid.mass(),
                solid.panels().size(),
                solid.liners().size(),
                sheets,
                keptOffcuts,
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

    private RoomResult room(List<PathResult> results) {
        Room room = project.room();
        double supply = AskedFlows.asked(project, true);
        double extract = AskedFlows.asked(project, false);
        double flow = roomAir.fresh() == null ? Math.max(supply, extract) : roomAir.fresh();
        boolean sealed = roomAir.isWithoutAir(supply, extract);
        RoomNoise noise = RoomNoise.of(project, results, air.soundSpeed());
        List<DraughtAtPerson> draughts = results.stream()
                .filter(r -> r.path().purpose() == Purpose.SUPPLY)
                .map(r -> DraughtAtPerson.of(r.path(), r.pathAir(), room))
                .toList();
        return new RoomResult(
                roomAir,
                RoomNeed.governing(room).orElse(null),
                flow,
                RoomNeed.need(room).co2Steady(flow),
                RoomNeed.temperatureRise(room, flow),
                supply,
                extract,
                RoomNeed.course(room, sealed ? 0 : flow, 0, RoomResult.COURSE),
                RoomNeed.sealed(room, RoomResult.COURSE),
                draughts,
                noise,
                Rating.of(noise.level()));
    }
}
