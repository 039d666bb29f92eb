package hushmaze.sound.quick;

import java.util.Arrays;

/** Joins ports, passes and turns of one box, frequency by frequency. Not safe for use by two threads at once. */
final class Chain {
    /** A mode that falls this far behind the first one over the shortest pass is not carried, Np. */
    private static final double BEHIND = 3.5;
    /** Fewer modes than these are solved at once, without sweeps. */
    private static final int SWEPT = 3;

    private final ChainParts parts;
    private final ChainWaves waves;
    private final ChainDirect direct;
    private final ChainSweep sweep;
    private final PassLevel level;
    private final QuickGrid grid;
    private final double soundSpeed;
    private final double shortest;
    private final double levelFactor;
    private int lastFrequency;
    private int lastModes;

    Chain(PathPlan plan, QuickTables tables) {
        parts = new ChainParts(plan, tables);
        waves = new ChainWaves(parts.passes, parts.most);
        direct = new ChainDirect(parts, waves);
        sweep = new ChainSweep(parts, waves);
        level = new PassLevel(parts, waves);
        grid = tables.grid();
        soundSpeed = tables.soundSpeed();
        shortest = Arrays.stream(parts.lengths).min().orElseThrow();
        levelFactor = parts.inlet.area() / plan.height();
    }

    /** Transmitted power over incident power at a frequency of the grid. */
    double transmitted(int f) {
        int m = carried(f);
        lastFrequency = f;
        lastModes = m;
        waves.exponentials(parts, f, m);
        if (m < SWEPT || shortest <= 0 || !sweep.settles(f, m)) {
            direct.solve(f, m);
        }
        double power = Small.form(parts.outlet.outgoing(f), parts.width(f), waves.end[parts.passes - 1], m);
        return power * soundSpeed / (2 * Math.PI * grid.hz(f));
    }

    /** Mean square of the pressure in a pass over that of the incident wave, at the frequency computed last. */
    double inPass(int pass) {
        return levelFactor * level.of(lastFrequency, pass, lastModes);
    }

    /** Whether a mode of some pass may be missing at high frequency. */
    boolean uncertain() {
        return Arrays.stream(parts.sections).anyMatch(section -> !section.complete());
    }

    private int carried(int f) {
        int most = 1;
        int width = parts.width(f);
        for (int i = 0; i < parts.passes; i++) {
            if (i > 0 && parts.sections[i] == parts.sections[i - 1]) {
                continue;
            }
            double[] k = parts.sections[i].axial(f);
            while (most < width && (k[1] - k[2 * most + 1]) * shortest < BEHIND) {
                most++;
            }
        }
        return most;
    }
}
