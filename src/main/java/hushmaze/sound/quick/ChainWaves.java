package hushmaze.sound.quick;

/**
 * The waves in the passes of a path at one frequency: amplitudes of the modes, real and imaginary parts in turn.
 *
 * <p>In pass i the waves {@link #start} go towards the room from its start, arrive at its end as {@link #end}, and the waves
 * {@link #back} come back from there.
 */
final class ChainWaves {
    final double[][] along;
    final double[][] start;
    final double[][] end;
    final double[][] back;

    ChainWaves(int passes, int most) {
        along = new double[passes][2 * most];
        start = new double[passes][2 * most];
        end = new double[passes][2 * most];
        back = new double[passes][2 * most];
    }

    /** Sets exp(-jκL) of every pass. */
    void exponentials(ChainParts parts, int f, int m) {
        for (int i = 0; i < along.length; i++) {
            if (parts.alike[i] < i) {
                Small.copy(along[parts.alike[i]], along[i], 2 * m);
                continue;
            }
            double length = parts.lengths[i];
            double[] k = parts.sections[i].axial(f);
            for (int j = 0; j < 2 * m; j += 2) {
                double size = Math.exp(k[j + 1] * length);
                double phase = k[j] * length;
                along[i][j] = size * Math.cos(phase);
                along[i][j + 1] = -size * Math.sin(phase);
            }
        }
    }

    /** Carries the waves of a pass from its start to its end. */
    void carry(int i, int m) {
        Small.scaledVector(start[i], along[i], end[i], m);
    }
}
