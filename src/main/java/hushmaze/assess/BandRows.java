package hushmaze.assess;

import hushmaze.quantity.Spectrum;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathMethods;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

/** The bands of one path, put together from its losses and levels. */
final class BandRows {
    private final NoiseNeed need;
    private final BoxLoss loss;
    private final Spectrum level;

    /** @param level at the microphone, pessimistic edge, third octaves, dB */
    BandRows(NoiseNeed need, BoxLoss loss, Spectrum level) {
        this.need = need;
        this.loss = loss;
        this.level = level;
    }

    List<BandResult> thirds() {
        return rows(need.noiseThirds(), need.allowedThirds(), level, 1, s -> s);
    }

    List<BandResult> octaves() {
        return rows(need.noiseOctaves(), need.allowedOctaves(), level.levelsInOctaves(), 3, s -> inOctaves(need, s));
    }

    /**
     * The rows of one set of bands.
     *
     * @param levels at the microphone
     * @param thirds how many third octaves a band has; its wave solution needs them all
     * @param inBands a loss in third octaves turned into these bands
     */
    private List<BandResult> rows(
            Spectrum noise, Spectrum allowed, Spectrum levels, int thirds, UnaryOperator<Spectrum> inBands) {
        PathMethods methods = loss.methods();
        Spectrum estimate = inBands.apply(methods.estimateLoss());
        Spectrum quick = methods.quickLoss() == null ? null : inBands.apply(methods.quickLoss());
        // Bands without a wave solution have another method's figure here and are left out below.
        Spectrum wave = inBands.apply(methods.best());
        Spectrum path = inBands.apply(loss.path().likely());
        Spectrum walls = inBands.apply(loss.walls().likely());
        Spectrum low = inBands.apply(loss.thirds().low());
        Spectrum likely = inBands.apply(loss.thirds().likely());
        Spectrum high = inBands.apply(loss.thirds().high());
        List<BandResult> rows = new ArrayList<>();
        for (int i = 0; i < noise.size(); i++) {
            boolean solved = methods.waveLoss(thirds * i + thirds - 1) != null;
            rows.add(new BandResult(
                    noise.bands().bands().get(i),
                    noise.value(i),
                    allowed.value(i),
                    Math.max(0, noise.value(i) - allowed.value(i)),
                    estimate.value(i),
                    quick == null ? null : Double.valueOf(quick.value(i)),
                    solved ? Double.valueOf(wave.value(i)) : null,
                    path.value(i),
                    walls.value(i),
                    low.value(i),
                    likely.value(i),
                    high.value(i),
                    levels.value(i)));
        }
        return rows;
    }

    /** Loss per octave for a path's own noise. */
    static Spectrum inOctaves(NoiseNeed need, Spectrum lossThirds) {
        return need.noiseOctaves().minus(need.noiseThirds().minus(lossThirds).levelsInOctaves());
    }
}
