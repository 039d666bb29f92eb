package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Pass;
import hushmaze.sound.porous.Complex;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinedSlit;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.porous.SlitMedia;
import hushmaze.sound.porous.SlitRoots;
import hushmaze.sound.porous.SlitSection;

/**
 * What a lined slit between stiff boards takes from low sound: the limit to which the handbook's figure for lining is held.
 *
 * <p>Formula: D = decay in dB/m of the mode of the slit that decays least, times the length; of a pass lined on both pairs of faces the
 * cross wavenumbers of the two slits are added, kx² = kx1² + kx2² - k0².
 *
 * <p>Symbols: D in dB; length in m, the whole clear length of the pass: waves long to the turns go round them and decay along
 * the way.
 *
 * <p>Source: the mode of {@link LinedSlit}, and for slits too wide for that the first of {@link SlitRoots}; that it is used as a limit is our own judgement. The regression was fitted to
 * ducts of thin sheet metal, whose walls take low sound away; carried to narrow passes of stiff board it credits up to
 * ten times too much at 63 and 125 Hz.
 *
 * <p>Range: up to the 500 Hz band; above that it says nothing. A liner's model is
 * fitted for f/σ of 0.01 to 1 (SI).
 *
 * <p>Accuracy: that of {@link LinedSlit}.
 *
 * <p>Differs from the source: a pass lined on one side is half a slit of twice its width.
 */
final class LinedSlitLimit {
    /** Upper edge of the 500 Hz octave's middle third, Hz: the limit is used up to there. */
    private static final double HIGHEST = 562;

    private static final double DB_PER_NEPER = 20 / Math.log(10);
    /** So many modes are looked for, so that none that decays less is passed over. */
    private static final int MODES = 4;

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
        LinerModel layer = FacedLiner.miki(liner);
        double[] rates = new double[BandSet.THIRD_OCTAVE.size()];
        for (int i = 0; i < rates.length; i++) {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            rates[i] = f > HIGHEST || slits.widths().isEmpty() ? Double.POSITIVE_INFINITY : rate(slits, layer, f);
        }
        return rates;
    }

    private double rate(LinedSlits slits, LinerModel layer, double f) {
        double k0 = 2 * Math.PI * f / soundSpeed;
        Complex squared = new Complex(k0 * k0, 0);
        for (int i = 0; i < slits.widths().size(); i++) {
            squared = squared.plus(
                    lessThanFree(slits.widths().get(i), slits.depths().get(i), layer, f));
        }
        return DB_PER_NEPER * Math.abs(squared.sqrt().im());
    }

    /** kx² - k0² of one slit, 1/m². */
    private Complex lessThanFree(double width, double depth, LinerModel layer, double f) {
        double k0 = 2 * Math.PI * f / soundSpeed;
        Complex free = new Complex(-k0 * k0, 0);
        return LinedSlit.axialSquared(width, depth, layer, f, soundSpeed)
                .map(ratio -> ratio.times(k0 * k0).plus(free))
                .orElseGet(() -> leastDecaying(width, depth, layer, f).plus(free));
    }

    /** kx² of the mode of a slit that decays least, of those that are alike in both halves, 1/m². */
    private Complex leastDecaying(double width, double depth, LinerModel layer, double f) {
        SlitRoots roots = new SlitRoots(new SlitSection(0, width / 2, depth));
        return roots.find(SlitMedia.of(layer, f, soundSpeed), MODES, true)[0].squared();
    }
}
