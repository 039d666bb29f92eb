package hushmaze.assess;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.BoxLoss;
import hushmaze.sound.PathMethods;
import java.util.ArrayList;
import java.util.List;

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
        PathMethods methods = loss.methods();
        Spectrum quick = methods.quickLoss();
        List<BandResult> rows = new ArrayList<>();
        for (int i = 0; i < BandSet.THIRD_OCTAVE.size(); i++) {
            rows.add(row(
                    BandSet.THIRD_OCTAVE,
                    i,
                    methods.estimateLoss().value(i),
                    quick == null ? null : Double.valueOf(quick.value(i)),
                    methods.waveLoss(i),
                    loss.path().likely().value(i),
                    loss.walls().likely().value(i),
                    loss.thirds().low().value(i),
                    loss.thirds().likely().value(i),
                    loss.thirds().high().value(i),
                    level.value(i)));
        }
        return rows;
    }

    List<BandResult> octaves() {
        PathMethods methods = loss.methods();
        Spectrum estimate = octaves(methods.estimateLoss());
        Spectrum quick = methods.quickLoss() == null ? null : octaves(methods.quickLoss());
        // Bands without a wave solution are filled here and left out below.
        Spectrum wave = octaves(methods.best());
        Spectrum path = octaves(loss.path().likely());
        Spectrum walls = octaves(loss.walls().likely());
        Spectrum low = octaves(loss.thirds().low());
        Spectrum likely = octaves(loss.thirds().likely());
        Spectrum high = octaves(loss.thirds().high());
        Spectrum levels = level.levelsInOctaves();
        List<BandResult> rows = new ArrayList<>();
        for (int i = 0; i < BandSet.OCTAVE.size(); i++) {
            Double solved = methods.waveLoss(3 * i + 2) == null ? null : Double.valueOf(wave.value(i));
            rows.add(row(
                    BandSet.OCTAVE,
                    i,
                    estimate.value(i),
                    quick == null ? null : Double.valueOf(quick.value(i)),
                    solved,
                    path.value(i),
                    walls.value(i),
                    low.value(i),
                    likely.value(i),
                    high.value(i),
                    levels.value(i)));
        }
        return rows;
    }

    private BandResult row(
            BandSet bands,
            int i,
            double estimate,
            Double quick,
            Double wave,
            double path,
            double walls,
            double low,
            double likely,
            double high,
            double atMicrophone) {
        boolean octave = bands == BandSet.OCTAVE;
        double noise = (octave ? need.noiseOctaves() : need.noiseThirds()).value(i);
        double allowed = (octave ? need.allowedOctaves() : need.allowedThirds()).value(i);
        double needed = Math.max(0, noise - allowed);
        return new BandResult(
                bands.bands().get(i),
                noise,
                allowed,
                needed,
                estimate,
                quick,
                wave,
                path,
                walls,
                low,
                likely,
                high,
                atMicrophone);
    }

    private Spectrum octaves(Spectrum lossThirds) {
        return inOctaves(need, lossThirds);
    }

    /** Loss per octave for a path's own noise. */
    static Spectrum inOctaves(NoiseNeed need, Spectrum lossThirds) {
        return need.noiseOctaves().minus(need.noiseThirds().minus(lossThirds).levelsInOctaves());
    }
}
