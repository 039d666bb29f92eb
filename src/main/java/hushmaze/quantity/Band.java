package hushmaze.quantity;

import java.util.Locale;

/**
 * One octave or third-octave band.
 *
 * <p>Exact centre f_m = 1000 Hz · G^(x/b) with G = 10^0.3, b the bands per octave and x the index counted from the 1 kHz
 * band; band edges f_m · G^(∓1/(2b)). Source: IEC 61260-1:2014, base-10 system (formulas as quoted in public annexes; the
 * edges from memory).
 *
 * @param fraction bands per octave: 1 or 3
 * @param index place counted from the 1 kHz band
 */
public record Band(int fraction, int index) {
    /** G, the octave ratio of the base-10 system. */
    public static final double OCTAVE_RATIO = Math.pow(10, 0.3);

    private static final double[] NOMINAL_DECADE = {1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8};

    public Band {
        if (fraction != 1 && fraction != 3) {
            throw new IllegalArgumentException("bands per octave must be 1 or 3, not " + fraction);
        }
    }

    /** Exact centre frequency, Hz. */
    public double centreHz() {
        return 1000 * Math.pow(10, 0.3 * index / fraction);
    }

    /** Lower band edge, Hz. */
    public double lowerHz() {
        return centreHz() * Math.pow(OCTAVE_RATIO, -0.5 / fraction);
    }

    /** Upper band edge, Hz. */
    public double upperHz() {
        return centreHz() * Math.pow(OCTAVE_RATIO, 0.5 / fraction);
    }

    /** The rounded frequency by which the band is called, Hz: 63, 80, 100, ... */
    public double nominalHz() {
        int thirds = index * (3 / fraction);
        int decade = Math.floorDiv(thirds, 10);
        return NOMINAL_DECADE[Math.floorMod(thirds, 10)] * Math.pow(10, decade + 3);
    }

    /** The band's usual name: "63", "1k", "3.15k". */
    public String label() {
        double hz = nominalHz();
        if (hz < 999) {
            return trim(hz);
        }
        return trim(hz / 1000) + "k";
    }

    private static String trim(double value) {
        String text = String.format(Locale.ROOT, "%.2f", value);
        return text.replaceAll("0+$", "").replaceAll("\\.$", "");
    }
}
