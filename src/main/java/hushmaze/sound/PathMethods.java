package hushmaze.sound;

import hushmaze.quantity.BandSet;
import hushmaze.quantity.NoticeKind;
import hushmaze.quantity.Spectrum;
import hushmaze.sound.estimate.PathEstimate;
import hushmaze.sound.quick.QuickResult;
import hushmaze.sound.section.PathWave;
import hushmaze.sound.section.WaveResult;
import hushmaze.sound.wall.BoxWalls;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The path through a box by every method that was run, as insertion losses: what quick wave and wave solution give between
 * unlined ducts of the ports' sections, with the mouths' term of the estimate added; walls taken as tight.
 *
 * @param estimate handbook estimate
 * @param quick quick wave with the liner's own flow resistivity; null when it was not run
 * @param variants quick wave with the lowest and highest flow resistivity the liner may have, and with another model of it
 * @param wave wave solution; null when it was not run
 */
public record PathMethods(PathEstimate estimate, QuickResult quick, List<QuickResult> variants, WaveResult wave) {

    /**
     * What fitting by hand may cost the path: a tenth of its loss in dB, for gaps behind and between liner pieces and a
     * clear width some millimetres off. Our own allowance, no source.
     */
    static final double WORKMANSHIP = 0.1;

    public PathMethods {
        variants = List.copyOf(variants);
    }

    /** Estimate, third octaves, dB. */
    public Spectrum estimateLoss() {
        return estimate.thirds();
    }

    /** Quick wave, third octaves, dB; null when it was not run. */
    public Spectrum quickLoss() {
        return quick == null ? null : quick.thirds().plus(mouths());
    }

    /** Quick wave with the other liners, third octaves, dB. */
    public List<Spectrum> variantLosses() {
        Spectrum mouths = mouths();
        return variants.stream().map(v -> v.thirds().plus(mouths)).toList();
    }

    /** Wave solution in one third octave, dB; null where it was not computed. */
    public Double waveLoss(int third) {
        return wave == null || third >= wave.computed() ? null : wave.thirds().get(third) + mouths().value(third);
    }

    /** The best figure there is for each third octave: wave solution, else quick wave, else estimate, dB. */
    public Spectrum best() {
        Spectrum next = quick == null ? estimateLoss() : quickLoss();
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            Double waveLoss = waveLoss(i);
            return waveLoss == null ? next.value(i) : waveLoss;
        });
    }

    /**
     * Range of the path: the least and the most that any method or liner says, the least less {@link #WORKMANSHIP}. Figures of quick
     * wave and wave solution count as less by what the flat section may hide. The likely figure is the best one.
     */
    public LossRange range() {
        List<Spectrum> waves = waves();
        Spectrum low = Spectrum.of(BandSet.THIRD_OCTAVE, i -> {
            double least = waves.stream().mapToDouble(s -> s.value(i)).min().orElse(Double.POSITIVE_INFINITY);
            double sure = Math.min(estimateLoss().value(i), least - doubt(i));
            return sure - WORKMANSHIP * Math.max(0, sure);
        });
        Spectrum high = Spectrum.of(
                BandSet.THIRD_OCTAVE,
                i -> waves.stream()
                        .mapToDouble(s -> s.value(i))
                        .reduce(estimateLoss().value(i), Math::max));
        return new LossRange(low, best(), high);
    }

    /** What is taken off for a port through a broad face where no method shows it as it is, dB. */
    private double doubt(int third) {
        if (wave != null) {
            return wave.doubt(third);
        }
        boolean standIn = quick != null
                && third >= PathWave.FULL_BANDS
                && third < PathWave.BANDS
                && quick.notices().stream().anyMatch(n -> n.kind() == NoticeKind.QUICK_BROAD_PORT);
        return standIn ? WaveResult.standInDoubt(quickLoss().value(third)) : 0;
    }

    /** Best figures there are for the sound in every pass over the wave that comes into the opening, third octaves, dB. */
    public List<Spectrum> levels() {
        List<Spectrum> levels = quick == null ? BoxWalls.levels(estimate.legs()) : quick.passLevels();
        if (wave == null) {
            return levels;
        }
        return IntStream.range(0, levels.size())
                .mapToObj(pass -> wave.levelCompletedBy(pass, levels.get(pass)))
                .toList();
    }

    /** All that quick wave and wave solution say. */
    private List<Spectrum> waves() {
        Spectrum mouths = mouths();
        List<Spectrum> all = new ArrayList<>(variantLosses());
        if (quick != null) {
            all.add(quickLoss());
        }
        if (wave != null) {
            Spectrum best = best();
            all.add(best);
            all.add(Spectrum.of(
                    BandSet.THIRD_OCTAVE,
                    i -> i < wave.computed() ? wave.equalEnergyThirds().get(i) + mouths.value(i) : best.value(i)));
        }
        return all;
    }

    private Spectrum mouths() {
        return estimate.thirdsOf("mouths");
    }
}
