package hushmaze.drawing;

import hushmaze.assess.Assessment;
import hushmaze.assess.Assessor;
import hushmaze.assess.BandResult;
import hushmaze.assess.Methods;
import hushmaze.assess.PathResult;
import hushmaze.assess.Rating;
import hushmaze.assess.RoomResult;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Saw;
import hushmaze.material.Screw;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Brief;
import hushmaze.project.Construction;
import hushmaze.project.LinedFaces;
import hushmaze.project.Mounting;
import hushmaze.project.Noise;
import hushmaze.project.Opening;
import hushmaze.project.PathReadings;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Purpose;
import hushmaze.project.Room;
import hushmaze.project.RoomReadings;
import hushmaze.project.Space;
import hushmaze.project.Stock;
import hushmaze.project.Target;
import hushmaze.project.TitleBlock;
import hushmaze.project.VentPath;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Solid;
import hushmaze.work.Progress;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

/**
 * Assessments put together by hand: real solids, real losses of air, real cut lists and layouts, but sound figures from a
 * made-up formula. They serve to draw, not to judge.
 */
public final class SampleAssessment {
    private static final String INVENTED = "invented for a test";
    private static final Board MDF = new Board("MDF 18 mm", 0.018, 740, 3.5e9, 0.02, false, INVENTED);
    private static final Liner LINER =
            new Liner("Mineral wool slab, faced", 0.025, 60, 20000, 12000, 30000, 0.0009, INVENTED);

    private SampleAssessment() {}

    /** Two paths: a box of four passes with two layers of shell, and one of three passes. */
    public static Assessment twoPaths(UnitSystem units) {
        return of(
                units,
                List.of(
                        path("Supply, west wall", Purpose.SUPPLY, fourPasses()),
                        path("Return to the hall", Purpose.RETURN, threePasses())));
    }

    /** One path around any box. */
    public static Assessment of(UnitSystem units, Box box) {
        return of(units, List.of(path("Path", Purpose.SUPPLY, box)));
    }

    /** The same over an opening in some surface, fixed in some way or in none. */
    public static Assessment of(UnitSystem units, Box box, Opening.Surface surface, Mounting mounting) {
        Brief brief = brief();
        Opening o = brief.opening();
        Brief changed = brief.withAirFrom(
                        new Opening(o.kind(), surface, o.beyond(), o.width(), o.height()), brief.flow(), brief.drive())
                .withConstruction(brief.construction().mounted(mounting));
        return of(units, List.of(new VentPath("Path", Purpose.SUPPLY, changed, box)));
    }

    /** The first of the two paths with readings of it and of the room's air. */
    public static Assessment measured(UnitSystem units, PathReadings readings, RoomReadings room) {
        return measured(units, fourPasses(), readings, room);
    }

    /** One path around any box, with readings. */
    public static Assessment measured(UnitSystem units, Box box, PathReadings readings, RoomReadings room) {
        VentPath path = path("Supply, west wall", Purpose.SUPPLY, box).measured(readings);
        return of(units, List.of(path, path("Return to the hall", Purpose.RETURN, threePasses())), room);
    }

    /** Four passes, ports in the near end. */
    public static Box fourPasses() {
        return new Box(
                Box.Form.MAZE,
                4,
                0.1,
                0.2,
                0.9,
                0.11,
                List.of(MDF, MDF),
                MDF,
                1,
                LINER,
                LinedFaces.FOLD_PLANE,
                new Port(PortFace.BACK, 0.2, 0.1, 0.02),
                new Port(PortFace.SIDE, 0.2, 0.15, 0.03));
    }

    private static Box threePasses() {
        return new Box(
                Box.Form.MAZE,
                3,
                0.12,
                0.25,
                0.6,
                0.13,
                List.of(MDF),
                MDF,
                1,
                LINER,
                LinedFaces.ALL,
                new Port(PortFace.END, 0.12, 0.25, 0),
                new Port(PortFace.FRONT, 0.2, 0.12, 0.02));
    }

    private static VentPath path(String name, Purpose purpose, Box box) {
        return new VentPath(name, purpose, brief(), box);
    }

    private static Brief brief() {
        return new Brief(
                new Opening(Opening.Kind.WALL_OPENING, Opening.Surface.WALL, Opening.Beyond.INDOORS, 0.2, 0.1),
                0.028,
                12,
                2.5,
                1.3,
                new Noise(
                        Spectrum.of(BandSet.OCTAVE, i -> 68 - 4 * i),
                        Noise.Place.AT_MICROPHONE,
                        null,
                        "Typical hall beside a kitchen, " + INVENTED),
                null,
                new Space(1.2, 0.8, 0.4),
                new Construction(MDF, 2, 1, LINER, false, PortFace.BACK, PortFace.SIDE, 60.0));
    }

    private static Assessment of(UnitSystem units, List<VentPath> paths) {
        return of(units, paths, RoomReadings.NONE);
    }

    private static Assessment of(UnitSystem units, List<VentPath> paths, RoomReadings readings) {
        Project project = new Project(
                1,
                "Voice booth",
                new TitleBlock(
                        "A. Listener, 12 Quiet Lane", "VB-2026-01", LocalDate.of(2026, 3, 14), "A. Listener", null),
                units,
                room(),
                stock(),
                paths,
                readings);
        Assessment judged = Assessor.assess(project, Methods.ESTIMATE, Progress.NONE);
        List<PathResult> results =
                judged.paths().stream().map(SampleAssessment::result).toList();
        RoomResult room = judged.room();
        RoomResult whole = new RoomResult(
                room.air(),
                room.need(),
                0.028,
                9.1e-4,
                6.4,
                0.028,
                0.028,
                room.course(),
                room.sealed(),
                room.draughts(),
                room.noise(),
                room.rating());
        return new Assessment(
                project,
                whole,
                results,
                List.of(Notice.of(NoticeKind.ROOM_HAS_FEW_MODES, Severity.NOTE, "", 500, 63, Unit.NUMBER)));
    }

    private static Room room() {
        return new Room(
                "the voice booth",
                18,
                1,
                5.2e-6,
                4.2e-4,
                220,
                List.of(2.0, 3.0, 5.0, 7.0, 8.0, 8.0, 8.0, 8.0),
                1.5,
                21,
                100,
                null,
                new Target(Target.Kind.NC, 20.0, null, "Recording of speech, " + INVENTED));
    }

    private static Stock stock() {
        return new Stock(
                List.of(new Sheet("MDF 2440 × 1220", 2.44, 1.22, 48.0, null, INVENTED)),
                List.of(new Sheet("Slab 1200 × 600", 1.2, 0.6, 14.0, null, INVENTED)),
                new Saw("Track saw", 0.0022, 0.006, INVENTED),
                new Screw("4.5 × 50 mm chipboard screw", 0.0045, 0.05, 0.0028, INVENTED));
    }

    private static PathResult result(PathResult judged) {
        Solid solid = judged.solid();
        List<BandResult> octaves = bands(BandSet.OCTAVE, judged.path());
        Spectrum level = Spectrum.of(BandSet.OCTAVE, i -> octaves.get(i).level());
        return new PathResult(
                judged.path(),
                solid,
                new PathResult.Quiet(true, 2.4, false, new Band(1, -3), false, Rating.of(level)),
                new PathResult.Air(false, true, false, true),
                judged.fits(),
                new PathResult.Buildable(
                        true,
                        solid.mass(),
                        solid.panels().size(),
                        solid.liners().size(),
                        judged.buildable().sheets(),
                        judged.buildable().keptOffcuts(),
                        0.23),
                bands(BandSet.THIRD_OCTAVE, judged.path()),
                octaves,
                judged.sound(),
                judged.pathAir(),
                judged.carried(),
                judged.cutList(),
                judged.layouts(),
                notices());
    }

    private static List<Notice> notices() {
        return List.of(
                Notice.of(
                        NoticeKind.VELOCITY_ABOVE_LIMIT,
                        Severity.STOP,
                        "opening port",
                        1.4,
                        1.3,
                        Unit.METRE_PER_SECOND),
                Notice.of(NoticeKind.LIFT_WITH_TWO, Severity.WARNING, "", 47, 25, Unit.KILOGRAM),
                Notice.of(NoticeKind.RUN_SHORTER_THAN_RANGE, Severity.NOTE, "pass 1", 0.9, 3, Unit.METRE),
                Notice.of(NoticeKind.OCTAVES_INTERPOLATED, Severity.NOTE, ""),
                Notice.of(NoticeKind.FITTINGS_NOT_COUNTED, Severity.NOTE, ""));
    }

    private static List<BandResult> bands(BandSet set, VentPath path) {
        List<BandResult> bands = new ArrayList<>();
        Spectrum noise = path.brief().noise().levels();
        Spectrum levels = set == BandSet.OCTAVE ? noise : noise.levelsInThirds();
        for (int i = 0; i < set.size(); i++) {
            double octaves = Math.log(set.centreHz(i) / 63) / Math.log(2);
            double estimate = 4 + 9 * octaves;
            double walls = 22 + 4.5 * octaves;
            double likely = Energy.parallelLoss(estimate, walls);
            double allowed = 54 - 5.6 * octaves - (set == BandSet.OCTAVE ? 0 : 5);
            double level = levels.value(i) - likely + 4 + octaves / 2;
            bands.add(new BandResult(
                    set.bands().get(i),
                    levels.value(i),
                    allowed,
                    Math.max(0, levels.value(i) - allowed),
                    estimate,
                    estimate + 3,
                    null,
                    estimate + 3,
                    walls,
                    levels.value(i) - level,
                    likely,
                    likely + 4,
                    level));
        }
        return bands;
    }
}
