package hushmaze.sound.quick;

import hushmaze.quantity.BandSet;

/** The frequencies the quick wave is computed at: so many to a third octave, evenly over its logarithm. */
enum QuickGrid {
    FINE(5),
    /** Enough for the difference of two boxes that hardly differ. */
    COARSE(3);

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

    /** Whether a frequency is the middle one of its band. */
    boolean middle(int i) {
        return i % perBand == perBand / 2;
    }
}
