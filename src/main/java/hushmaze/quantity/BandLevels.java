package hushmaze.quantity;

import java.util.Arrays;
import java.util.List;
import java.util.function.IntToDoubleFunction;

/** Measured levels in the bands of a set, dB; some bands may have none. Immutable. */
public final class BandLevels {
    private static final int THIRDS = 3;

    private final BandSet bands;
    private final double[] levels;
    private final boolean[] covered;

    /**
     * @param bands the set
     * @param levels one per band, dB; what stands where a band is not covered does not matter
     * @param covered whether there is a level, one per band
     */
    public BandLevels(BandSet bands, double[] levels, boolean[] covered) {
        this.bands = InvalidValue.present("bands", bands);
        if (levels.length != bands.size() || covered.length != bands.size()) {
            throw new IllegalArgumentException(bands.size() + " bands need as many levels");
        }
        this.levels = levels.clone();
        this.covered = covered.clone();
        for (int i = 0; i < levels.length; i++) {
            if (covered[i] && Double.isNaN(levels[i])) {
                throw new InvalidValue(bands.bands().get(i).label() + " Hz", "not a number", "a level", "dB");
            }
        }
    }

    /** A level in every band. */
    public static BandLevels of(BandSet bands, IntToDoubleFunction level) {
        double[] levels = new double[bands.size()];
        Arrays.setAll(levels, level);
        boolean[] all = new boolean[bands.size()];
        Arrays.fill(all, true);
        return new BandLevels(bands, levels, all);
    }

    /**
     * Mean energy of several positions, in the bands that all of them have; in octaves as soon as one is.
     *
     * @param positions at least one
     */
    public static BandLevels mean(List<BandLevels> positions) {
        if (positions.isEmpty()) {
            throw new IllegalArgumentException("no levels to average");
        }
        List<BandLevels> same = alike(positions);
        BandSet set = same.get(0).bands;
        double[] levels = new double[set.size()];
        boolean[] covered = new boolean[set.size()];
        for (int i = 0; i < levels.length; i++) {
            int band = i;
            covered[i] = same.stream().allMatch(p -> p.covered[band]);
            if (covered[i]) {
                levels[i] = Energy.mean(
                        same.stream().mapToDouble(p -> p.levels[band]).toArray());
            }
        }
        return new BandLevels(set, levels, covered);
    }

    /** The same levels all in third octaves where all are, else all in octaves. */
    public static List<BandLevels> alike(List<BandLevels> all) {
        boolean thirds = all.stream().allMatch(l -> l.bands == BandSet.THIRD_OCTAVE);
        return thirds ? all : all.stream().map(BandLevels::inOctaves).toList();
    }

    public BandSet bands() {
        return bands;
    }

    /** Whether a band has a level. */
    public boolean covered(int index) {
        return covered[index];
    }

    /**
     * Level of a band, dB.
     *
     * @throws IllegalStateException if it has none
     */
    public double level(int index) {
        if (!covered[index]) {
            throw new IllegalStateException(bands.bands().get(index).label() + " Hz has no level");
        }
        return levels[index];
    }

    /** The bands without a level, lowest first. */
    public List<Band> missing() {
        return bands.bands().stream()
                .filter(band -> !covered[bands.bands().indexOf(band)])
                .toList();
    }

    /** The same levels and as many decibels more. */
    public BandLevels plus(double db) {
        double[] more = levels.clone();
        for (int i = 0; i < more.length; i++) {
            more[i] += db;
        }
        return new BandLevels(bands, more, covered);
    }

    /** The same without the levels of bands that are below a limit, dB. */
    public BandLevels above(double limit) {
        boolean[] left = covered.clone();
        for (int i = 0; i < left.length; i++) {
            left[i] &= levels[i] >= limit;
        }
        return new BandLevels(bands, levels, left);
    }

    /** Levels of the octaves whose three thirds all have one; octaves stay as they are. */
    public BandLevels inOctaves() {
        if (bands == BandSet.OCTAVE) {
            return this;
        }
        double[] sums = new double[BandSet.OCTAVE.size()];
        boolean[] whole = new boolean[sums.length];
        for (int i = 0; i < sums.length; i++) {
            int low = THIRDS * i;
            whole[i] = covered[low] && covered[low + 1] && covered[low + 2];
            if (whole[i]) {
                sums[i] = Energy.sum(levels[low], levels[low + 1], levels[low + 2]);
            }
        }
        return new BandLevels(BandSet.OCTAVE, sums, whole);
    }

    @Override
    public boolean equals(Object other) {
        if (!(other instanceof BandLevels that) || that.bands != bands || !Arrays.equals(that.covered, covered)) {
            return false;
        }
        for (int i = 0; i < levels.length; i++) {
            if (covered[i] && Double.compare(that.levels[i], levels[i]) != 0) {
                return false;
            }
        }
        return true;
    }

    @Override
    public int hashCode() {
        int hash = bands.hashCode();
        for (int i = 0; i < levels.length; i++) {
            hash = 31 * hash + (covered[i] ? Double.hashCode(levels[i]) : 0);
        }
        return hash;
    }

    @Override
    public String toString() {
        return bands + Arrays.toString(levels) + Arrays.toString(covered);
    }
}
