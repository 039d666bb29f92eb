package hushmaze.assess;

import hushmaze.air.PathAir;
import hushmaze.build.CutList;
import hushmaze.build.Quantities;
import hushmaze.build.SheetLayout;
import hushmaze.build.fixing.Fixing;
import hushmaze.build.fixing.Rows;
import hushmaze.build.joint.CollarPlan;
import hushmaze.build.joint.FastenerList;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.solid.Axis;
import hushmaze.solid.Solid;
import hushmaze.sound.LossTerm;
import java.util.List;

/**
 * One vent path judged.
 *
 * @param path with its box
 * @param solid of the box
 * @param quiet verdict on the sound
 * @param air verdict on the air
 * @param fits verdict on the space
 * @param buildable verdict on parts and sheets
 * @param thirds third-octave bands, lowest first
 * @param octaves octave bands, lowest first
 * @param sound what is behind the sound figures
 * @param pathAir the air through the box at the flow of the brief
 * @param carried what the path carries with the door shut; null when the room has no answer
 * @param cutList what to cut
 * @param layouts one per material and thickness, boards first
 * @param notices about this path
 */
public record PathResult(
        VentPath path,
        Solid solid,
        Quiet quiet,
        Air air,
        Fits fits,
        Buildable buildable,
        List<BandResult> thirds,
        List<BandResult> octaves,
        SoundDetail sound,
        PathAir pathAir,
        PathFlow carried,
        CutList cutList,
        List<SheetLayout> layouts,
        List<Notice> notices) {
    /**
     * @param ok whether the pessimistic edge meets the target
     * @param margin in the governing octave band, or of the whole, dB
     * @param whole whether the margin is of the A-weighted whole, as for a dB(A) target
     * @param governing the octave band with the least margin, or the one that adds most to the whole
     * @param wallsGovern whether in that band the walls let through more than the path
     * @param rating of what comes through this box, pessimistic edge, without the room's own noise
     */
    public record Quiet(boolean ok, double margin, boolean whole, Band governing, boolean wallsGovern, Rating rating) {}

    /**
     * @param ok whether pressure drop (high edge) and velocities keep their limits and the drive brings the flow
     * @param pressureOk whether the pressure drop does, that of the drive included
     * @param velocityOk whether the velocities do
     * @param flowOk whether the drive brings the flow of the brief against the high losses with the door shut
     */
    public record Air(boolean ok, boolean pressureOk, boolean velocityOk, boolean flowOk) {}

    /**
     * @param ok whether the box goes into the space
     * @param width of the box along the surface of the opening, m
     * @param height of the box along that surface, the other way, m
     * @param depth of the box away from that surface, m
     * @param standOff how far cleats, or without them a gasket, hold it off the surface besides, m
     * @param turned whether the width is the second of the box's directions along the surface, in the order x, y, z
     */
    public record Fits(boolean ok, double width, double height, double depth, double standOff, boolean turned) {}

    /**
     * @param ok whether the parts close, all fit on sheets in stock, and what is carried in one piece is light enough and goes
     *     through the doorway
     * @param mass of boards and liner, kg
     * @param panels number of boards to cut
     * @param linerPieces number of liner pieces to cut
     * @param sheets number of board sheets
     * @param keptOffcuts number of offcuts of boards, left by the boxes of paths before, that are cut up besides
     * @param waste share of the board sheets and these offcuts that is left over, 0 to 1
     */
    public record Buildable(
            boolean ok, double mass, int panels, int linerPieces, int sheets, int keptOffcuts, double waste) {}

    public PathResult {
        thirds = List.copyOf(thirds);
        octaves = List.copyOf(octaves);
        layouts = List.copyOf(layouts);
        notices = List.copyOf(notices);
    }

    /** Its bands of a set. */
    public List<BandResult> bands(BandSet set) {
        return set == BandSet.OCTAVE ? octaves : thirds;
    }

    /** The same result with its notices. */
    PathResult withNotices(List<Notice> others) {
        return with(path, others);
    }

    /** The same result for a path that differs only by what was measured of it. */
    PathResult of(VentPath measured) {
        return with(measured, notices);
    }

    /** The same result of a project that differs only by its units. */
    PathResult in(Project shown) {
        boolean proved = notices.stream().noneMatch(n -> n.kind() == NoticeKind.PARTS_DO_NOT_CLOSE);
        return withNotices(PathNotices.of(this, shown, proved));
    }

    private PathResult with(VentPath otherPath, List<Notice> otherNotices) {
        return new PathResult(
                otherPath,
                solid,
                quiet,
                air,
                fits,
                buildable,
                thirds,
                octaves,
                sound,
                pathAir,
                carried,
                cutList,
                layouts,
                otherNotices);
    }

    /** How the box gets to its place and stays there. */
    public Fixing fixing() {
        return Fixing.of(solid, path.brief(), level());
    }

    /** Where on its surface the box and its rows of screws go. */
    public Rows rows() {
        return Rows.of(solid, path.brief(), level());
    }

    /** The direction of the box its width in {@link #fits} is measured in: level on a wall. */
    public Axis level() {
        return BoxFit.level(solid, fits);
    }

    /**
     * Fasteners by kind and size; pins hold the liner where the mean air is faster than the joints allow.
     *
     * @param project this path is of, whose screw is used
     */
    public List<FastenerList.Counted> fasteners(Project project) {
        boolean pins = pathAir.velocities().stream()
                .anyMatch(v -> v.velocity() > solid.box().joinery().pinVelocity());
        return FastenerList.of(solid, project.stock().screw(), project.units(), pins);
    }

    /** The ducts' collars on the box. */
    public List<CollarPlan> collars(Project project) {
        return CollarPlan.of(path.brief(), solid, project.units());
    }

    /** Glue, sealant, gasket and paint. */
    public Quantities quantities() {
        return Quantities.of(solid);
    }

    /** Terms of the handbook estimate. */
    public List<LossTerm> terms() {
        return sound.loss().methods().estimate().terms();
    }

    /** By how much it keeps the limits on sound. */
    public SoundMargins soundMargins() {
        return SoundMargins.of(quiet.margin(), sound.heard());
    }

    /** Whether nobody outside hears more of the room through this path than they may. */
    public boolean othersOk() {
        return sound.heard().stream().allMatch(h -> h.received().ok());
    }

    /** Whether nothing stops it from being hung or stood as the brief has it. */
    public boolean holds() {
        return BoxFit.holds(solid, path.brief());
    }

    /** Whether all four verdicts are good, the box can be fixed as asked, and nobody outside hears too much. */
    public boolean ok() {
        return othersOk() && holds() && quiet.ok() && air.ok() && fits.ok() && buildable.ok();
    }
}
