package hushmaze.drawing.draft;

/** Moves labels in a row apart until none overlaps, each as little as the others allow. */
final class Spread {
    private Spread() {}

    /**
     * New centres for labels of equal room.
     *
     * <p>Labels that would touch are joined to a run that is centred on the mean of their wishes; runs that touch are
     * joined again.
     *
     * @param wished centres, ascending
     * @param pitch least distance of two centres
     * @param low no centre is lower, if the room allows it
     * @param high no centre is higher, if the room allows it
     */
    static double[] apart(double[] wished, double pitch, double low, double high) {
        double[] set = apart(wished, pitch);
        int last = set.length - 1;
        if (last * pitch > high - low) {
            return set;
        }
        for (int i = 0; i <= last; i++) {
            double least = low + i * pitch;
            double most = high - (last - i) * pitch;
            set[i] = Math.max(least, Math.min(most, set[i]));
        }
        return set;
    }

    private static double[] apart(double[] wished, double pitch) {
        int n = wished.length;
        double[] start = new double[n];
        double[] sum = new double[n];
        int[] count = new int[n];
        int runs = 0;
        for (int i = 0; i < n; i++) {
            // Taking i pitches off every wish turns "apart by a pitch" into "not descending".
            sum[runs] = wished[i] - i * pitch;
            count[runs] = 1;
            runs++;
            while (runs > 1 && sum[runs - 2] / count[runs - 2] >= sum[runs - 1] / count[runs - 1]) {
                sum[runs - 2] += sum[runs - 1];
                count[runs - 2] += count[runs - 1];
                runs--;
            }
        }
        int at = 0;
        for (int r = 0; r < runs; r++) {
            for (int k = 0; k < count[r]; k++, at++) {
                start[at] = sum[r] / count[r] + at * pitch;
            }
        }
        return start;
    }
}
