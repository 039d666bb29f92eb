package hushmaze.sound.room;

import hushmaze.project.DuctRun;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Spectrum;
import hushmaze.quantity.Unit;
import java.util.function.DoubleUnaryOperator;

/**
 * Attenuation along a straight duct without lining, per octave 63 Hz to 8 kHz.
 *
 * <p>Formula, rectangular: up to 250 Hz 17.0 (P/A)^-0.25 f^-0.85 for P/A from 3 up, 1.64 (P/A)^0.73 f^-0.58 below; above
 * 250 Hz 0.02 (P/A)^0.8. Round: 0.1 dB/m up to 250 Hz and none above for diameters up to 300 mm, none for larger ones.
 * Stiff walls: none.
 *
 * <p>Symbols: attenuation in dB/ft; P perimeter and A area, P/A in 1/ft; f nominal octave centre in Hz. Arguments are in SI
 * and converted here.
 *
 * <p>Source: rectangular, ASHRAE Handbook, HVAC Applications, from memory; with the regression for lining it reproduces the
 * table printed in <i>Minimizing Excessive Sound in Ventilation System Design</i> (2009). Round, as read in an engineering
 * reference on unlined sheet-metal ducts, which gives diameters from 100 mm.
 *
 * <p>Range: thin sheet metal, whose walls give way. Round ducts below 100 mm are taken as 100 mm.
 *
 * <p>Accuracy: a factor of two; the reference's own figures for rectangular ducts are lower by a third at 63 Hz.
 *
 * <p>Differs from the source: thirds are interpolated between octaves over log frequency.
 */
final class BareDuct {
    /** Up to here round ducts have any attenuation, m. */
    private static final double SMALL_ROUND = 0.3;

    private static final double SMALL_ROUND_PER_METRE = 0.1;
    private static final double LOW = 250;
    private static final double DENSE = 3;

    private BareDuct() {}

    /** Attenuation of a whole run, octaves, dB. */
    static Spectrum loss(DuctRun run) {
        return switch (run.kind()) {
            case STIFF_WALLS -> Spectrum.flat(BandSet.OCTAVE, 0);
            case ROUND_SHEET -> octaves(f -> run.length() * round(run.width(), f));
            case RECTANGULAR_SHEET -> {
                double perimeter = 2 * (run.width() + run.height());
                yield octaves(f -> run.length() * rectangular(perimeter / run.area(), f));
            }
        };
    }

    /** dB/m; perimeter over area in 1/m, nominal octave centre in Hz. */
    static double rectangular(double perimeterOverArea, double f) {
        double pa = Unit.FOOT.toSi(perimeterOverArea);
        double perFoot;
        if (f > LOW) {
            perFoot = 0.02 * Math.pow(pa, 0.8);
        } else if (pa >= DENSE) {
            perFoot = 17.0 * Math.pow(pa, -0.25) * Math.pow(f, -0.85);
        } else {
            perFoot = 1.64 * Math.pow(pa, 0.73) * Math.pow(f, -0.58);
        }
        return Unit.FOOT.fromSi(perFoot);
    }

    /** dB/m; diameter in m, nominal octave centre in Hz. */
    static double round(double diameter, double f) {
        return f <= LOW && diameter <= SMALL_ROUND ? SMALL_ROUND_PER_METRE : 0;
    }

    private static Spectrum octaves(DoubleUnaryOperator lossAt) {
        return Spectrum.of(
                BandSet.OCTAVE,
                i -> lossAt.applyAsDouble(BandSet.OCTAVE.bands().get(i).nominalHz()));
    }
}
