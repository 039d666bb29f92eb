package hushmaze.quantity;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;
import java.util.function.IntToDoubleFunction;

/**
 * One value in dB for every band of a set: levels, or losses. Immutable.
 *
 * <p>Whether the values are levels or losses decides how they may be combined, so the operations that differ say so in
 * their names.
 */
public final class Spectrum {
    /** Share of an octave's level in each of its thirds when the octave is split evenly: 10 lg 3, dB. */
    public static final double THIRD_OF_OCTAVE_DB = Energy.db(3);

    private final BandSet bands;
    private final double[] values;

    /**
     * @param bands the set
     * @param values one value per band, dB, lowest band first; infinite values are allowed, NaN is not
     * @throws IllegalArgumentException if the number of values is wrong or one is NaN
     */
    public Spectrum(BandSet bands, double... values) {
        if (values.length != bands.size()) {
            throw new IllegalArgumentException(
                    "a spectrum in " + bands + " bands needs " + bands.size() + " values, not " + values.length);
        }
        for (int i = 0; i < values.length; i++) {
            if (Double.isNaN(values[i])) {
                throw new IllegalArgumentException(
                        "the value at " + bands.bands().get(i).label() + " Hz is not a number");
            }
        }
        this.bands = bands;
        this.values = values.clone();
    }

    /** A spectrum computed band by band from the band's index. */
    public static Spectrum of(BandSet bands, IntToDoubleFunction valueAt) {
        double[] values = new double[bands.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = valueAt.applyAsDouble(i);
        }
        return new Spectrum(bands, values);
    }

    /** A spectrum computed from each band's exact centre frequency in Hz. */
    public static Spectrum ofFrequency(BandSet bands, DoubleUnaryOperator valueAtHz) {
        return of(bands, i -> valueAtHz.applyAsDouble(bands.centreHz(i)));
    }

    /** The same value in every band. */
    public static Spectrum flat(BandSet bands, double value) {
        return of(bands, i -> value);
    }

    public BandSet bands() {
        return bands;
    }

    public int size() {
        return values.length;
    }

    /** Value of one band, dB. */
    public double value(int index) {
        return values[index];
    }

    /** All values, lowest band first, dB. */
    public double[] values() {
        return values.clone();
    }

    /** Band by band arithmetic sum, dB: a level and a gain, or two losses in a row. */
    public Spectrum plus(Spectrum other) {
        requireSameBands(other);
        return of(bands, i -> values[i] + other.values[i]);
    }

    /** Band by band arithmetic difference, dB. */
    public Spectrum minus(Spectrum other) {
        requireSameBands(other);
        return of(bands, i -> values[i] - other.values[i]);
    }

    /** The same amount added to every band, dB. */
    public Spectrum plus(double db) {
        return of(bands, i -> values[i] + db);
    }

    /** Levels of two sources together, band by band by energy. */
    public Spectrum energyPlus(Spectrum other) {
        requireSameBands(other);
        return of(bands, i -> Energy.sum(values[i], other.values[i]));
    }

    /** What is left of these levels when others are taken away by energy, band by band. */
    public Spectrum energyMinus(Spectrum other) {
        requireSameBands(other);
        return of(bands, i -> Energy.minus(values[i], other.values[i]));
    }

    /** Loss of two routes side by side, band by band. */
    public Spectrum parallelLoss(Spectrum other) {
        requireSameBands(other);
        return of(bands, i -> Energy.parallelLoss(values[i], other.values[i]));
    }

    /** Levels per octave: the energy sum of the three thirds in each octave. An octave spectrum is returned as it is. */
    public Spectrum levelsInOctaves() {
        if (bands == BandSet.OCTAVE) {
            return this;
        }
        return of(BandSet.OCTAVE, i -> Energy.sum(values[3 * i], values[3 * i + 1], values[3 * i + 2]));
    }

    /**
     * Losses per octave for equal incident energy in the three thirds: their mean transmitted energy. An octave spectrum
     * is returned as it is.
     */
    public Spectrum lossesInOctaves() {
        if (bands == BandSet.OCTAVE) {
            return this;
        }
        return of(BandSet.OCTAVE, i -> Energy.meanLoss(values[3 * i], values[3 * i + 1], values[3 * i + 2]));
    }

    /**
     * Levels per third octave. Octave levels are split evenly: each third gets the octave's level less 10 lg 3. This is
     * an assumption; a third-octave spectrum is returned as it is.
     */
    public Spectrum levelsInThirds() {
        if (bands == BandSet.THIRD_OCTAVE) {
            return this;
        }
        return of(BandSet.THIRD_OCTAVE, i -> values[i / 3] - THIRD_OF_OCTAVE_DB);
    }

    /**
     * Losses, or a curve's values, per third octave: interpolated in a straight line over log frequency between octave
     * centres and held at the ends; between an infinite and a finite value infinite. This is an assumption; a
     * third-octave spectrum is returned as it is.
     */
    public Spectrum interpolatedInThirds() {
        if (bands == BandSet.THIRD_OCTAVE) {
            return this;
        }
        return of(BandSet.THIRD_OCTAVE, i -> {
            double place = (i - 1) / 3.0;
            int low = (int) Math.max(0, Math.min(values.length - 2, Math.floor(place)));
            double share = Math.max(0, Math.min(1, place - low));
            if (share == 0) {
                return values[low];
            }
            double step = values[low + 1] - values[low];
            if (share == 1 || Double.isInfinite(values[low + 1])) {
                return values[low + 1];
            }
            // next to an infinite value everything up to the other centre is infinite too
            return Double.isInfinite(step) ? values[low] : values[low] + share * step;
        });
    }

    /** Total of all bands by energy, dB. */
    public double total() {
        return Energy.sum(values);
    }

    private void requireSameBands(Spectrum other) {
        if (other.bands != bands) {
            throw new IllegalArgumentException("spectra in different bands: " + bands + " and " + other.bands);
        }
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Spectrum that && that.bands == bands && Arrays.equals(that.values, values);
    }

    @Override
    public int hashCode() {
        return 31 * bands.hashCode() + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return bands + Arrays.toString(values);
    }
}
