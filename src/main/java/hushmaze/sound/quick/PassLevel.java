package hushmaze.sound.quick;

/** Mean square of the pressure in a pass, from the waves at its ends. */
final class PassLevel {
    private static final double SMALL = 1e-6;

    private final ChainParts parts;
    private final ChainWaves waves;
    private final double[][][] products;
    /** Mean |u|² of the first mode, side by side for all frequencies: mostly it is all that is needed. */
    private final double[][] firsts;

    private final double[] sum;

    PassLevel(ChainParts parts, ChainWaves waves) {
        this.parts = parts;
        this.waves = waves;
        products = new double[parts.passes][][];
        firsts = new double[parts.passes][];
        for (int i = 0; i < parts.passes; i++) {
            products[i] = parts.sections[i].products();
            firsts[i] = parts.sections[i].firsts();
        }
        sum = new double[2 * parts.most];
    }

    /** Mean over the air of a pass, at a clear height of 1 m. Of overlapping junctions it is that of the first mode. */
    double of(int f, int i, int m) {
        if (parts.lengths[i] <= 0) {
            return atPlane(f, i, 1, waves.end[i], false);
        }
        return m == 1 ? ofOne(f, i) : ofSeveral(f, i, m);
    }

    /** Waves a e^(-jκx) and b e^(jκ(x-L)) of one mode, mean over the length. */
    private double ofOne(int f, int i) {
        double length = parts.lengths[i];
        double[] k = parts.sections[i].axial(f);
        double[] start = waves.start[i];
        double[] back = waves.back[i];
        double er = waves.along[i][0];
        double ei = waves.along[i][1];
        double left = er * er + ei * ei;
        double there = start[0] * start[0] + start[1] * start[1];
        double here = back[0] * back[0] + back[1] * back[1];
        double decay = -2 * k[1] * length;
        double mean = Math.abs(decay) < SMALL ? 1 : (1 - left) / decay;
        double phase = k[0] * length;
        // sin(Re κL) e^(-αL) is minus the imaginary part of exp(-jκL)
        double both = Math.abs(phase) < SMALL ? Math.sqrt(left) : -ei / phase;
        double cross = 2 * (start[0] * back[0] + start[1] * back[1]) * both;
        return firsts[i][f] * Math.max(0, (there + here) * mean + cross);
    }

    /** Of several modes: the logarithmic mean of both ends, as if the sound fell evenly between them. */
    private double ofSeveral(int f, int i, int m) {
        double start = atPlane(f, i, m, waves.start[i], true);
        double stop = atPlane(f, i, m, waves.end[i], false);
        if (start <= 0 || stop <= 0 || Math.abs(start - stop) < SMALL * start) {
            return Math.max(0, start);
        }
        return (start - stop) / Math.log(start / stop);
    }

    /** Mean over the section of what goes one way and what comes back, at the start or end of a pass. */
    private double atPlane(int f, int i, int m, double[] going, boolean atStart) {
        double[] coming = waves.back[i];
        for (int j = 0; j < 2 * m; j += 2) {
            double er = atStart ? waves.along[i][j] : 1;
            double ei = atStart ? waves.along[i][j + 1] : 0;
            sum[j] = going[j] + coming[j] * er - coming[j + 1] * ei;
            // the form is of u v*, so its conjugate is taken of the amplitudes
            sum[j + 1] = -(going[j + 1] + coming[j] * ei + coming[j + 1] * er);
        }
        return Small.form(products[i][f], parts.width(f), sum, m);
    }
}
