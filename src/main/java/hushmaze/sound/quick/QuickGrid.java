package hushmaze.sound.quick;

import hushmaze.quantity.BandSet;

/** The frequencies the quick wave is computed at: so many to a third octave, evenly over its logarithm. */
enum QuickGrid {
    FINE(5),
    /** Enough for the difference of two boxes that hardly differ. */
    COARSE(3);

    private static final int BANDS_PER_OCTAVE = 3;
    /** Hz. */
    private static final double MANY_TRAVEL = 4500;

    private final int perBand;
    private final double[] hz;

    /** @param perBand odd, so that one is in the middle of its band */
    QuickGrid(int perBand) {
        this.perBand = perBand;
        double stepsPerDecade = 10.0 * perBand;
        hz = new double[BandSet.THIRD_OCTAVE.size() * perBand];
        for (int i = 0; i < hz.length; i++) {
            double offset = i % perBand - (perBand - 1) / 2.0;
            hz[i] = BandSet.THIRD_OCTAVE.centreHz(i / perBand) * Math.pow(10, offset / stepsPerDecade);
        }
    }

    int size() {
        return hz.length;
    }

    double hz(int i) {
        return hz[i];
    }

    double[] all() {
        return hz.clone();
    }

    /** Number of the third octave a frequency belongs to. */
    int band(int i) {
        return i / perBand;
    }

    /** How many there are in a third octave. */
    int perBand() {
        return perBand;
    }

    /**
     * Whether the modes found at a frequency are to be counted: once an octave, and where many travel in every third octave.
     * Counted more often none changed below 5 kHz, in 160 random boxes.
     */
    boolean counts(int i) {
        boolean middle = i % perBand == perBand / 2;
        return middle && (band(i) % BANDS_PER_OCTAVE == 1 || BandSet.THIRD_OCTAVE.centreHz(band(i)) > MANY_TRAVEL);
    }
}
