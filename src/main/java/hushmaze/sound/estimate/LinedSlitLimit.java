package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Pass;
import hushmaze.sound.porous.LinedSlit;
import hushmaze.sound.porous.MikiLiner;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What a lined slit between stiff boards takes from low sound: the limit to which the handbook's figure for lining is held.
 *
 * <p>Formula: D = decay of the {@link LinedSlit} in dB/m times the length; of a pass lined on both pairs of faces, that of
 * the two slits together.
 *
 * <p>Symbols: D in dB; length in m, the whole clear length of the pass: waves long to the turns go round them and decay along
 * the way.
 *
 * <p>Source: the mode of {@link LinedSlit}; that it is used as a limit is our own judgement. The regression was fitted to
 * ducts of thin sheet metal, whose walls take low sound away; carried to narrow passes of stiff board it credits up to
 * ten times too much at 63 and 125 Hz.
 *
 * <p>Range: up to the 500 Hz band, and as far as {@link LinedSlit} goes; above that it says nothing. A liner's model is
 * fitted for f/σ of 0.01 to 1 (SI).
 *
 * <p>Accuracy: that of {@link LinedSlit}.
 *
 * <p>Differs from the source: a pass lined on one side is half a slit of twice its width.
 */
final class LinedSlitLimit {
    /** Upper edge of the 500 Hz octave's middle third, Hz: the limit is used up to there. */
    private static final double HIGHEST = 562;

    private final Liner liner;
    private final EstimateTables tables;
    private final double soundSpeed;

    LinedSlitLimit(Liner liner, EstimateTables tables) {
        this.liner = liner;
        this.tables = tables;
        this.soundSpeed = tables.soundSpeed();
    }

    /** Most the lining of a pass is credited with, third octaves, dB; infinite where the limit says nothing. */
    Spectrum most(Pass pass) {
        LinedSlits slits = LinedSlits.of(pass);
        double[] rates = tables.decay(slits, liner, () -> rates(slits));
        return Spectrum.of(BandSet.THIRD_OCTAVE, i -> pass.length() * rates[i]);
    }

    private double[] rates(LinedSlits slits) {
        MikiLiner layer = new MikiLiner(liner.flowResistivity());
        double[] rates = new double[BandSet.THIRD_OCTAVE.size()];
        for (int i = 0; i < rates.length; i++) {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            rates[i] = f > HIGHEST
                    ? Double.POSITIVE_INFINITY
                    : rate(slits, layer, f).orElse(Double.POSITIVE_INFINITY);
        }
        return rates;
    }

    private OptionalDouble rate(LinedSlits slits, MikiLiner layer, double f) {
        List<Double> widths = slits.widths();
        List<Double> depths = slits.depths();
        return switch (widths.size()) {
            case 0 -> OptionalDouble.empty();
            case 1 -> LinedSlit.attenuation(widths.get(0), depths.get(0), layer, f, soundSpeed);
            default ->
                LinedSlit.attenuationOfDuct(
                        widths.get(0), widths.get(1), depths.get(0), depths.get(1), layer, f, soundSpeed);
        };
    }
}
