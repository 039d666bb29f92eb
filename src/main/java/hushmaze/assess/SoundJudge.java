package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.air.PathAir;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.Target;
import hushmaze.project.VentPath;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Severity;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import hushmaze.solid.Solid;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathCalculator;
import hushmaze.sound.PathMethods;
import hushmaze.sound.criterion.AWeighting;
import hushmaze.sound.criterion.SoundTransmissionClass;
import hushmaze.sound.criterion.WeightedReduction;
import hushmaze.sound.section.WaveResult;
import hushmaze.sound.wall.BoxWalls;
import hushmaze.sound.wall.ElementDifference;
import hushmaze.sound.wall.WallChoices;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges the sound of boxes for one project: the needs are found once, so many boxes can be judged in a row.
 *
 * <p>Octave losses are those for this path's own noise: its octave level through the bare opening less its octave level
 * through the box, both summed by energy over the thirds. Safe for use by several threads.
 */
public final class SoundJudge {
    private final Project project;
    private final List<NoiseNeed> needs;
    private final AirState air;
    private final PathCalculator paths;

    public SoundJudge(Project project) {
        this(project, new PathCalculator(AirState.of(project.room()).soundSpeed()));
    }

    /** One for boxes that hardly differ, whose differences are wanted: the quick wave is taken at fewer frequencies. */
    public static SoundJudge ofDifferences(Project project) {
        return new SoundJudge(
                project,
                PathCalculator.ofDifferences(AirState.of(project.room()).soundSpeed()));
    }

    /** @param paths for the speed of sound in the room */
    SoundJudge(Project project, PathCalculator paths) {
        this.project = project;
        this.needs = NoiseNeeds.of(project);
        this.air = AirState.of(project.room());
        this.paths = paths;
    }

    /**
     * What comes through one box.
     *
     * @param detail what is behind the figures
     * @param thirds bands
     * @param octaves bands
     * @param quiet verdict
     */
    record PathSound(SoundDetail detail, List<BandResult> thirds, List<BandResult> octaves, PathResult.Quiet quiet) {}

    /**
     * Margins of a box at the pessimistic edge, without the wave solution.
     *
     * @param path which path
     * @param solid of its box
     * @param flow air through it
     * @param quick how much of the quick wave; with it margins are mostly less
     */
    public SoundMargins margins(int path, Solid solid, PathAir flow, PathCalculator.Quick quick) {
        VentPath vent = project.paths().get(path);
        PathMethods methods = paths.methods(solid, vent.brief().opening(), quick, null);
        Spectrum low = BoxLoss.low(walls(vent, solid), methods);
        PathLevel level = PathLevel.of(project.room(), vent, solid, flow, methods, low, air);
        NoiseNeed need = needs.get(path);
        return SoundMargins.of(margin(need, level.total(need.noiseThirds(), low)), level.heard());
    }

    /**
     * Margins of a box to the target, dB.
     *
     * @param low at the pessimistic edge, as {@link #margins} gives it
     * @param likely with the likely loss of the box, and the noise of the moving air as for the other
     */
    public record Margins(double low, double likely) {}

    /**
     * Both margins of a box; other arguments as there.
     *
     * @param coverGap width of a slit all along the cover's joint, m; 0 for what the edges allow for
     */
    public Margins margins(int path, Solid solid, PathAir flow, PathCalculator.Quick quick, double coverGap) {
        VentPath vent = project.paths().get(path);
        PathMethods methods = paths.methods(solid, vent.brief().opening(), quick, null);
        BoxWalls walls = walls(vent, solid);
        BoxLoss plain = BoxLoss.of(walls, methods);
        BoxLoss loss = coverGap > 0 ? plain.withCoverGap(walls, coverGap) : plain;
        return new Margins(margin(path, solid, flow, loss), margin(path, solid, flow, loss.asLikely()));
    }

    private double margin(int path, Solid solid, PathAir flow, BoxLoss loss) {
        NoiseNeed need = needs.get(path);
        PathLevel level = PathLevel.of(project.room(), project.paths().get(path), solid, flow, loss, air);
        return margin(need, level.total(need.noiseThirds(), loss.thirds().low()));
    }

    /**
     * The sound of one box.
     *
     * @param path which path
     * @param solid of its box
     * @param flow air through it
     * @param quick how much of the quick wave
     * @param wave wave solution of its path; null when it was not run
     */
    PathSound judge(int path, Solid solid, PathAir flow, PathCalculator.Quick quick, WaveResult wave) {
        VentPath vent = project.paths().get(path);
        Brief brief = vent.brief();
        NoiseNeed need = needs.get(path);
        PathMethods methods = paths.methods(solid, brief.opening(), quick, wave);
        BoxWalls walls = walls(vent, solid);
        BoxLoss loss = BoxLoss.of(walls, methods);
        PathLevel brought = PathLevel.of(project.room(), vent, solid, flow, loss, air);
        Spectrum level = brought.total(need.noiseThirds(), loss.thirds().low());
        BandRows rows = new BandRows(need, loss, level);
        List<BandResult> octaves = rows.octaves();
        PathResult.Quiet quiet = quiet(need, loss, level, octaves);
        return new PathSound(detail(need, vent, walls, loss, brought, quiet.margin()), rows.thirds(), octaves, quiet);
    }

    private SoundDetail detail(
            NoiseNeed need, VentPath vent, BoxWalls walls, BoxLoss loss, PathLevel level, double margin) {
        List<Notice> notices = new ArrayList<>(level.flow().notices());
        walls.resonance(loss.lowWalls(), loss.path().low())
                .map(found ->
                        resonance(found, margin(need, level.total(need.noiseThirds(), loss.lowWith(found.route())))))
                .ifPresent(notices::add);
        Spectrum difference = ElementDifference.ofBox(
                loss.thirds().likely(), vent.brief().opening().area());
        return new SoundDetail(
                loss,
                level.routes(need.noiseThirds(), loss),
                level.flow(),
                improvements(need, walls, loss, level, margin),
                LossReason.of(loss),
                WeightedReduction.of(difference),
                SoundTransmissionClass.of(difference),
                level.heard(),
                notices);
    }

    /** What a panel's resonance would leave of the margin. */
    private static Notice resonance(BoxWalls.Resonance found, double margin) {
        String where = found.band().label() + " Hz, FREE_" + found.face();
        return margin < 0
                ? Notice.of(NoticeKind.PANEL_RESONANCE_DECIDES, Severity.WARNING, where, margin, 0, Unit.DECIBEL)
                : Notice.of(NoticeKind.PANEL_RESONANCE, Severity.NOTE, where, margin, 0, Unit.DECIBEL);
    }

    private List<Improvement> improvements(
            NoiseNeed need, BoxWalls walls, BoxLoss loss, PathLevel level, double margin) {
        WallChoices choices = loss.choices(walls);
        List<Improvement> improvements = new ArrayList<>();
        for (Improvement.Kind kind : Improvement.Kind.values()) {
            Spectrum low = loss.lowWith(
                    switch (kind) {
                        case ONE_MORE_LAYER -> choices.oneMoreLayer();
                        case TIGHT_JOINTS -> choices.sealed();
                        case BOTH -> choices.both();
                    });
            double with = margin(need, level.total(need.noiseThirds(), low));
            if (Double.isFinite(with) && Double.isFinite(margin)) {
                improvements.add(new Improvement(kind, with, with - margin));
            }
        }
        return improvements;
    }

    private BoxWalls walls(VentPath vent, Solid solid) {
        return BoxWalls.of(solid, vent.brief().opening(), air.soundSpeed());
    }

    private double margin(NoiseNeed need, Spectrum level) {
        if (need.allowedDbA() != null) {
            return need.allowedDbA() - AWeighting.total(level);
        }
        return isThirdOctaveLimit()
                ? leastMargin(need.allowedThirds(), level)
                : leastMargin(need.allowedOctaves(), level.levelsInOctaves());
    }

    private static double leastMargin(Spectrum allowed, Spectrum level) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < level.size(); i++) {
            least = Math.min(least, BandResult.margin(allowed.value(i), level.value(i)));
        }
        return least;
    }

    private PathResult.Quiet quiet(NoiseNeed need, BoxLoss loss, Spectrum level, List<BandResult> octaves) {
        boolean whole = need.allowedDbA() != null;
        BandResult governing = whole ? loudest(octaves) : least(octaves);
        double margin = margin(need, level);
        int octave = octaves.indexOf(governing);
        boolean walls = BandRows.inOctaves(need, loss.walls().low()).value(octave)
                < BandRows.inOctaves(need, loss.path().low()).value(octave);
        return new PathResult.Quiet(margin >= 0, margin, whole, governing.band(), walls, Rating.of(level));
    }

    private boolean isThirdOctaveLimit() {
        Target target = project.room().target();
        return target.kind() == Target.Kind.SPECTRUM && target.spectrum().bands() == BandSet.THIRD_OCTAVE;
    }

    private static BandResult least(List<BandResult> bands) {
        BandResult least = bands.get(0);
        for (BandResult band : bands) {
            least = band.margin() < least.margin() ? band : least;
        }
        return least;
    }

    /** The band with the highest A-weighted level. */
    private static BandResult loudest(List<BandResult> bands) {
        BandResult loudest = bands.get(0);
        for (BandResult band : bands) {
            loudest = weighted(band) > weighted(loudest) ? band : loudest;
        }
        return loudest;
    }

    private static double weighted(BandResult band) {
        return band.level() + AWeighting.at(band.band().centreHz());
    }
}
