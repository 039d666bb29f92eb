package hushmaze.measure;

import hushmaze.quantity.BandLevels;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.InvalidValue;
import java.io.IOException;
import java.io.InputStream;

/**
 * Levels in bands from a text with the columns frequency and level.
 *
 * <p>Third octaves and octaves are known by their centres, nominal or exact, by either octave ratio; bands below 50 Hz and
 * above 10 kHz are read and left. Any other frequencies are narrow bands or lines and are summed by energy
 * ({@link NarrowBands}). Frequencies that are all an octave apart are octaves.
 */
public final class SpectrumText {
    /** A nominal centre is up to 1.0 % off the exact one, a centre of octaves of the ratio 2 another 0.8 %. */
    private static final double SAME_BAND = 0.015;

    private static final int LEAST_BANDS = 3;
    private static final int THIRDS = 3;
    private static final int FIRST_THIRD = -30;
    private static final int LAST_THIRD = 16;

    private SpectrumText() {}

    /**
     * Levels of a text.
     *
     * @param bytes of the text, which are read to the end and not closed
     * @param name of the text, for messages
     * @throws InvalidValue with name, line, value and limit
     */
    public static BandLevels read(InputStream bytes, String name) throws IOException {
        LevelTable table = LevelTable.read(bytes, name);
        if (table.size() < LEAST_BANDS) {
            throw new InvalidValue(
                    name, table.size() + " lines with a frequency and a level", "at least " + LEAST_BANDS, "");
        }
        int[] thirds = thirds(table.frequencies());
        return thirds.length == 0 ? NarrowBands.of(table) : banded(table, thirds);
    }

    private static BandLevels banded(LevelTable table, int[] thirds) {
        boolean octaves = true;
        for (int third : thirds) {
            octaves &= Math.floorMod(third, THIRDS) == 0;
        }
        BandSet set = octaves ? BandSet.OCTAVE : BandSet.THIRD_OCTAVE;
        double[] levels = new double[set.size()];
        boolean[] covered = new boolean[set.size()];
        boolean[] seen = new boolean[LAST_THIRD - FIRST_THIRD + 1];
        for (int i = 0; i < thirds.length; i++) {
            if (seen[thirds[i] - FIRST_THIRD]) {
                throw new InvalidValue(table.name(), band(table, i) + " twice", "every band once", "");
            }
            seen[thirds[i] - FIRST_THIRD] = true;
            int index = (octaves ? thirds[i] / THIRDS : thirds[i])
                    - set.bands().get(0).index();
            if (index >= 0 && index < set.size()) {
                levels[index] = table.levels()[i];
                covered[index] = true;
            }
        }
        BandLevels found = new BandLevels(set, levels, covered);
        if (found.missing().size() == set.size()) {
            throw new InvalidValue(table.name(), "no band from 50 Hz to 10 kHz", "with such bands", "");
        }
        return found;
    }

    private static String band(LevelTable table, int i) {
        return Hertz.text(table.frequencies()[i]) + " Hz";
    }

    /** Index of the third octave of every frequency, counted from 1 kHz; none if one is not a centre. */
    private static int[] thirds(double[] frequencies) {
        int[] thirds = new int[frequencies.length];
        for (int i = 0; i < thirds.length; i++) {
            long near = Math.round(10 * Math.log10(Math.max(frequencies[i], 1e-3) / 1000));
            double centre = 1000 * Math.pow(10, near / 10.0);
            boolean fits = Math.abs(frequencies[i] / centre - 1) <= SAME_BAND;
            if (!fits || near < FIRST_THIRD || near > LAST_THIRD) {
                return new int[0];
            }
            thirds[i] = (int) near;
        }
        return thirds;
    }
}
