package hushmaze.assess;

import hushmaze.air.AirState;
import hushmaze.project.Brief;
import hushmaze.project.Project;
import hushmaze.project.Target;
import hushmaze.quantity.Band;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Solid;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.criterion.AWeighting;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges the sound of boxes for one project: the needs are found once, so many boxes can be judged in a row.
 *
 * <p>Octave losses are those for this path's own noise: its octave level through the bare opening less its octave level
 * through the box, both summed by energy over the thirds.
 */
public final class SoundJudge {
    private final Project project;
    private final List<NoiseNeed> needs;
    private final double soundSpeed;

    public SoundJudge(Project project) {
        this.project = project;
        this.needs = NoiseNeeds.of(project);
        this.soundSpeed = AirState.of(project.room()).soundSpeed();
    }

    /**
     * What comes through one box.
     *
     * @param loss of path and walls
     * @param level at the microphone, pessimistic edge, third octaves, dB
     * @param thirds bands
     * @param octaves bands
     * @param quiet verdict
     */
    record PathSound(
            BoxLoss loss, Spectrum level, List<BandResult> thirds, List<BandResult> octaves, PathResult.Quiet quiet) {}

    /** Margin of a box to the target at the pessimistic edge, dB; negative infinity if nothing is left for the path. */
    public double margin(int path, Solid solid) {
        return judge(path, solid).quiet().margin();
    }

    PathSound judge(int path, Solid solid) {
        Brief brief = project.paths().get(path).brief();
        NoiseNeed need = needs.get(path);
        BoxLoss loss = BoxLoss.of(solid, brief.opening(), soundSpeed);
        Spectrum level = need.noiseThirds().minus(loss.thirds().low());
        List<BandResult> thirds = bands(
                need.noiseThirds(),
                need.allowedThirds(),
                loss.estimate().thirds(),
                loss.walls().likely(),
                loss.thirds().low(),
                loss.thirds().likely(),
                loss.thirds().high());
        List<BandResult> octaves = bands(
                need.noiseOctaves(),
                need.allowedOctaves(),
                inOctaves(need, loss.estimate().thirds()),
                inOctaves(need, loss.walls().likely()),
                inOctaves(need, loss.thirds().low()),
                inOctaves(need, loss.thirds().likely()),
                inOctaves(need, loss.thirds().high()));
        return new PathSound(loss, level, thirds, octaves, quiet(need, loss, level, thirds, octaves));
    }

    private PathResult.Quiet quiet(
            NoiseNeed need, BoxLoss loss, Spectrum level, List<BandResult> thirds, List<BandResult> octaves) {
        BandResult governing = least(octaves);
        double margin = governing.margin();
        if (need.allowedDbA() != null) {
            margin = need.allowedDbA() - AWeighting.total(level);
            governing = loudest(octaves);
        } else if (isThirdOctaveLimit()) {
            margin = least(thirds).margin();
        }
        int octave = octaves.indexOf(governing);
        boolean walls = inOctaves(need, loss.walls().low()).value(octave)
                < inOctaves(need, loss.pathLow()).value(octave);
        boolean whole = need.allowedDbA() != null;
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

    private static Spectrum inOctaves(NoiseNeed need, Spectrum lossThirds) {
        return need.noiseOctaves().minus(need.noiseThirds().minus(lossThirds).levelsInOctaves());
    }

    private static List<BandResult> bands(
            Spectrum noise,
            Spectrum allowed,
            Spectrum estimate,
            Spectrum walls,
            Spectrum low,
            Spectrum likely,
            Spectrum high) {
        List<BandResult> bands = new ArrayList<>();
        for (int i = 0; i < noise.size(); i++) {
            Band band = noise.bands().bands().get(i);
            double needed = Math.max(0, noise.value(i) - allowed.value(i));
            bands.add(new BandResult(
                    band,
                    noise.value(i),
                    allowed.value(i),
                    needed,
                    estimate.value(i),
                    null,
                    null,
                    walls.value(i),
                    low.value(i),
                    likely.value(i),
                    high.value(i),
                    noise.value(i) - low.value(i)));
        }
        return bands;
    }
}
