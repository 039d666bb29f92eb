package hushmaze.sound.quick;

/**
 * The waves in a path by sweeping along it and back until they settle: every sweep adds one more echo. Quick where the
 * passes are lossy, and then cheaper than {@link ChainDirect} for more than two modes.
 */
final class ChainSweep {
    /** Echoes are left out when all that are still to come would change the waves at the outlet by less than this part. */
    private static final double SETTLED = 1e-4;

    /** Of one echo only it is not known how the next ones fall: they are taken to be so many times as strong as it says. */
    private static final double CAUTION = 4;

    private static final int MOST_SWEEPS = 8;
    /** Echoes that fall by less from one to the next are not swept up. */
    private static final double SLOWEST = 0.4;

    private final ChainParts parts;
    private final ChainWaves waves;
    private final double[] coming;
    private final double[] before;

    ChainSweep(ChainParts parts, ChainWaves waves) {
        this.parts = parts;
        this.waves = waves;
        coming = new double[2 * parts.most];
        before = new double[2 * parts.most];
    }

    /** Whether the waves settled; if not they are not to be used. */
    boolean settles(int f, int m) {
        double[] leaving = waves.end[parts.passes - 1];
        straightThrough(f, m);
        double lastStep = Small.size(leaving, 2 * m);
        for (int sweep = 1; sweep < MOST_SWEEPS; sweep++) {
            Small.copy(leaving, before, 2 * m);
            back(f, m);
            there(f, m);
            double step = Small.distance(leaving, before, 2 * m);
            double size = Small.size(leaving, 2 * m);
            double rate = step / lastStep;
            // a geometric series: what is still to come is step · rate / (1 - rate)
            double caution = sweep == 1 ? CAUTION : 1;
            if (rate < SLOWEST && step * rate * caution < SETTLED * (1 - rate) * size) {
                return true;
            }
            if (sweep > 2 && rate >= SLOWEST) {
                return false;
            }
            lastStep = step;
        }
        return false;
    }

    /** The first sweep, while nothing comes back. */
    private void straightThrough(int f, int m) {
        int width = parts.width(f);
        Small.copy(parts.inlet.entry(f), waves.start[0], 2 * m);
        waves.carry(0, m);
        for (int i = 1; i < parts.passes; i++) {
            Small.clear(waves.start[i], 2 * m);
            Small.addVector(parts.turns[i - 1].at(f), 2 * width, width, 0, waves.end[i - 1], waves.start[i], m);
            waves.carry(i, m);
        }
        for (double[] back : waves.back) {
            Small.clear(back, 2 * m);
        }
    }

    private void there(int f, int m) {
        int width = parts.width(f);
        for (int i = 0; i < parts.passes; i++) {
            double[] start = waves.start[i];
            Small.scaledVector(waves.back[i], waves.along[i], coming, m);
            if (i == 0) {
                Small.copy(parts.inlet.entry(f), start, 2 * m);
                Small.addVector(parts.inlet.reflection(f), width, 0, 0, coming, start, m);
            } else {
                double[] s = parts.turns[i - 1].at(f);
                Small.clear(start, 2 * m);
                Small.addVector(s, 2 * width, width, 0, waves.end[i - 1], start, m);
                Small.addVector(s, 2 * width, width, width, coming, start, m);
            }
            waves.carry(i, m);
        }
    }

    private void back(int f, int m) {
        int width = parts.width(f);
        for (int i = parts.passes - 1; i >= 0; i--) {
            double[] back = waves.back[i];
            Small.clear(back, 2 * m);
            if (i == parts.passes - 1) {
                Small.addVector(parts.outlet.reflection(f), width, 0, 0, waves.end[i], back, m);
            } else {
                double[] s = parts.turns[i].at(f);
                Small.scaledVector(waves.back[i + 1], waves.along[i + 1], coming, m);
                Small.addVector(s, 2 * width, 0, 0, waves.end[i], back, m);
                Small.addVector(s, 2 * width, 0, width, coming, back, m);
            }
        }
    }
}
