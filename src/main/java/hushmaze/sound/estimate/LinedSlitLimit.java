package hushmaze.sound.estimate;

import hushmaze.material.Liner;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.solid.Pass;
import hushmaze.sound.porous.LinedSlit;
import hushmaze.sound.porous.MikiLiner;
import java.util.HashMap;
import java.util.Map;
import java.util.OptionalDouble;

/**
 * Holds the handbook's figure for lining at low frequencies to what a lined slit between stiff boards can do.
 *
 * <p>The regression was fitted to ducts of thin sheet metal, whose walls take low sound away; carried to narrow passes of
 * stiff board it credits up to ten times too much at 63 and 125 Hz. Up to the 500 Hz octave a pass is therefore credited with
 * no more than the decay of the {@link LinedSlit} over its whole clear length: waves long to the turns go round them and
 * decay along the way. A pass lined on one side only is half a slit of twice
 * the width; broad faces count when they are lined.
 *
 * <p>Differs from the handbook: this limit is not in it.
 */
final class LinedSlitLimit {
    /** Upper edge of the 500 Hz octave's middle third, Hz: the limit is used up to there. */
    private static final double HIGHEST = 562;

    private record Section(double width, double height, int sides, boolean broad) {}

    private final Liner liner;
    private final double soundSpeed;
    private final Map<Section, double[]> known = new HashMap<>();

    LinedSlitLimit(Liner liner, double soundSpeed) {
        this.liner = liner;
        this.soundSpeed = soundSpeed;
    }

    /** The loss of the lining of a pass, held to the limit, both sets of bands. */
    BandLoss held(BandLoss loss, Pass pass) {
        double[] rates = rates(pass);
        Spectrum thirds =
                Spectrum.of(BandSet.THIRD_OCTAVE, i -> Math.min(loss.thirds().value(i), pass.length() * rates[i]));
        // An octave's centre is that of its middle third.
        Spectrum octaves =
                Spectrum.of(BandSet.OCTAVE, i -> Math.min(loss.octaves().value(i), pass.length() * rates[3 * i + 1]));
        return new BandLoss(octaves, thirds, loss.notices());
    }

    private double[] rates(Pass pass) {
        int sides = (pass.lowLiner() > 0 ? 1 : 0) + (pass.highLiner() > 0 ? 1 : 0);
        return known.computeIfAbsent(
                new Section(pass.width(), pass.height(), sides, pass.broadLiner() > 0), this::rates);
    }

    /** Most decay per third octave, dB/m; infinite where the limit says nothing. */
    private double[] rates(Section section) {
        MikiLiner layer = new MikiLiner(liner.flowResistivity());
        double[] rates = new double[BandSet.THIRD_OCTAVE.size()];
        for (int i = 0; i < rates.length; i++) {
            double f = BandSet.THIRD_OCTAVE.centreHz(i);
            rates[i] = f > HIGHEST
                    ? Double.POSITIVE_INFINITY
                    : rate(section, layer, f).orElse(Double.POSITIVE_INFINITY);
        }
        return rates;
    }

    private OptionalDouble rate(Section section, MikiLiner layer, double f) {
        double width = section.sides() == 1 ? 2 * section.width() : section.width();
        if (section.sides() == 0) {
            return LinedSlit.attenuation(section.height(), liner.thickness(), layer, f, soundSpeed);
        }
        return section.broad()
                ? LinedSlit.attenuationOfDuct(width, section.height(), liner.thickness(), layer, f, soundSpeed)
                : LinedSlit.attenuation(width, liner.thickness(), layer, f, soundSpeed);
    }
}
