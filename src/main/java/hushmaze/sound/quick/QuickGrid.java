package hushmaze.sound.quick;

import hushmaze.quantity.BandSet;

/** The frequencies the quick wave is computed at: five to a third octave, evenly over its logarithm. */
final class QuickGrid {
    static final int PER_BAND = 5;
    private static final double STEPS_PER_DECADE = 10.0 * PER_BAND;
    private static final double[] HZ = hz();

    private QuickGrid() {}

    static int size() {
        return HZ.length;
    }

    static double hz(int i) {
        return HZ[i];
    }

    static double[] all() {
        return HZ.clone();
    }

    /** Whether a frequency is the middle one of its band. */
    static boolean middle(int i) {
        return i % PER_BAND == PER_BAND / 2;
    }

    private static double[] hz() {
        double[] hz = new double[BandSet.THIRD_OCTAVE.size() * PER_BAND];
        for (int i = 0; i < hz.length; i++) {
            double offset = i % PER_BAND - (PER_BAND - 1) / 2.0;
            hz[i] = BandSet.THIRD_OCTAVE.centreHz(i / PER_BAND) * Math.pow(10, offset / STEPS_PER_DECADE);
        }
        return hz;
    }
}
