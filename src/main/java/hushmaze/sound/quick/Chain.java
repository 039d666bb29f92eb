package hushmaze.sound.quick;

/**
 * Joins ports, passes and turns of one box, frequency by frequency.
 *
 * <p>Backwards from the outlet: R seen from the start of a pass is E R E, E = exp(-jκL). A turn with scattering S and R behind
 * it lets D S21 through, D = (1 - S22 R)⁻¹, and reflects S11 + S12 R D S21. Forwards from the inlet the amplitudes follow. What
 * comes back through a pass that takes more than {@link #ONE_WAY} is left out.
 */
final class Chain {
    /** A mode that falls this far behind the first one over the shortest pass is not carried, Np. */
    private static final double BEHIND = 3.5;
    /** Decay along a pass from which on nothing is taken to come back through it, Np: 2 × 35 dB. */
    private static final double ONE_WAY = 4;

    private final PathPlan plan;
    private final PortTable inlet;
    private final PortTable outlet;
    private final TurnTable[] turns;
    private final SectionModes[] sections;
    private final double[][][] products;
    private final double soundSpeed;
    private final int passes;
    private int width;
    private final double shortest;

    /** Per pass: exp(-jκL), reflection at its end, waves let into it; all interleaved. */
    private final double[][] along;

    private final double[][] ends;
    private final double[][] through;
    private final double[] seen;
    private final double[] left;
    private final double[] right;
    private final double[] wave;
    private final double[] end;
    private final double[] back;
    private final double[] inPass;

    Chain(PathPlan plan, QuickTables tables) {
        this.plan = plan;
        soundSpeed = tables.soundSpeed();
        inlet = tables.port(plan.inlet());
        outlet = tables.port(plan.outlet());
        passes = plan.sections().size();
        int most = 1;
        turns = new TurnTable[passes - 1];
        sections = new SectionModes[passes];
        products = new double[passes][][];
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i < passes; i++) {
            boolean known =
                    i > 0 && plan.sections().get(i).equals(plan.sections().get(i - 1));
            sections[i] =
                    known ? sections[i - 1] : tables.section(plan.sections().get(i), plan.fluids());
            products[i] = sections[i].products();
            if (i < passes - 1) {
                boolean same = i > 0 && plan.turns().get(i).equals(plan.turns().get(i - 1));
                turns[i] = same ? turns[i - 1] : tables.turn(plan.turns().get(i));
            }
            least = Math.min(least, plan.lengths()[i]);
            most = Math.max(most, sections[i].carried(QuickGrid.size() - 1));
        }
        shortest = least;
        int square = 2 * most * most;
        along = new double[passes][2 * most];
        ends = new double[passes][square];
        through = new double[passes][square];
        seen = new double[square];
        left = new double[square];
        right = new double[square];
        wave = new double[2 * most];
        end = new double[2 * most];
        back = new double[2 * most];
        inPass = new double[passes];
    }

    /** Transmitted power over incident power at a frequency of the grid. */
    double transmitted(int f) {
        width = sections[0].carried(f);
        int m = carried(f);
        backwards(f, m);
        Small.copy(through[0], wave, 2 * m);
        for (int i = 0; i < passes; i++) {
            if (i > 0) {
                Small.times(through[i], end, wave, m, 1);
            }
            for (int j = 0; j < 2 * m; j += 2) {
                end[j] = wave[j] * along[i][j] - wave[j + 1] * along[i][j + 1];
                end[j + 1] = wave[j] * along[i][j + 1] + wave[j + 1] * along[i][j];
            }
            Small.times(ends[i], end, back, m, 1);
            inPass[i] = level(f, i, m);
        }
        double power = Small.form(outlet.outgoing(f), width, end, m);
        return power * soundSpeed / (2 * Math.PI * QuickGrid.hz(f));
    }

    /** Mean square of the pressure in a pass over that of the incident wave, at the frequency computed last. */
    double inPass(int pass) {
        return inPass[pass];
    }

    /** Whether a mode of some pass may be missing at high frequency. */
    boolean uncertain() {
        for (SectionModes section : sections) {
            if (!section.complete()) {
                return true;
            }
        }
        return false;
    }

    private void backwards(int f, int m) {
        if (m == 1) {
            backwardsOne(f);
            return;
        }
        Small.block(outlet.reflection(f), width, 0, 0, ends[passes - 1], m);
        for (int i = passes - 1; i >= 0; i--) {
            boolean oneWay = exponentials(f, i, m);
            if (!oneWay) {
                Small.scaled(ends[i], along[i], seen, m);
            }
            if (i == 0) {
                Small.copy(inlet.entry(f), through[0], 2 * m);
                if (!oneWay) {
                    Small.block(inlet.reflection(f), width, 0, 0, left, m);
                    Small.oneMinusProduct(left, seen, right, m);
                    Small.solve(right, through[0], m, 1);
                }
                return;
            }
            double[] s = turns[i - 1].at(f);
            Small.block(s, 2 * width, width, 0, through[i], m);
            Small.block(s, 2 * width, 0, 0, ends[i - 1], m);
            if (!oneWay) {
                Small.block(s, 2 * width, width, width, left, m);
                Small.oneMinusProduct(left, seen, right, m);
                Small.solve(right, through[i], m, m);
                Small.times(seen, through[i], right, m, m);
                Small.block(s, 2 * width, 0, width, left, m);
                Small.addProduct(left, right, ends[i - 1], m, m);
            }
        }
    }

    /** The same for a single mode. */
    private void backwardsOne(int f) {
        double rr = outlet.reflection(f)[0];
        double ri = outlet.reflection(f)[1];
        for (int i = passes - 1; i >= 0; i--) {
            boolean oneWay = exponentials(f, i, 1);
            ends[i][0] = rr;
            ends[i][1] = ri;
            double[] s = i == 0 ? inlet.entry(f) : turns[i - 1].at(f);
            int at = i == 0 ? 0 : 4 * width * width;
            if (oneWay) {
                through[i][0] = s[at];
                through[i][1] = s[at + 1];
                rr = s[0];
                ri = s[1];
                continue;
            }
            double er = along[i][0] * along[i][0] - along[i][1] * along[i][1];
            double ei = 2 * along[i][0] * along[i][1];
            double qr = rr * er - ri * ei;
            double qi = rr * ei + ri * er;
            double[] b = i == 0 ? inlet.reflection(f) : s;
            int bb = i == 0 ? 0 : at + 2 * width;
            double dr = 1 - (b[bb] * qr - b[bb + 1] * qi);
            double di = -(b[bb] * qi + b[bb + 1] * qr);
            double size = dr * dr + di * di;
            double tr = (s[at] * dr + s[at + 1] * di) / size;
            double ti = (s[at + 1] * dr - s[at] * di) / size;
            through[i][0] = tr;
            through[i][1] = ti;
            if (i > 0) {
                double ur = qr * tr - qi * ti;
                double ui = qr * ti + qi * tr;
                int ab = 2 * width;
                rr = s[0] + s[ab] * ur - s[ab + 1] * ui;
                ri = s[1] + s[ab] * ui + s[ab + 1] * ur;
            }
        }
    }

    /** Whether nothing comes back through the pass. */
    private boolean exponentials(int f, int i, int m) {
        double length = plan.lengths()[i];
        double[] k = sections[i].axial(f);
        boolean oneWay = -k[1] * length > ONE_WAY;
        if (i + 1 < passes && sections[i] == sections[i + 1] && length == plan.lengths()[i + 1]) {
            System.arraycopy(along[i + 1], 0, along[i], 0, 2 * m);
            return oneWay;
        }
        for (int j = 0; j < 2 * m; j += 2) {
            double size = Math.exp(k[j + 1] * length);
            double phase = k[j] * length;
            along[i][j] = size * Math.cos(phase);
            along[i][j + 1] = -size * Math.sin(phase);
        }
        return oneWay;
    }

    private double level(int f, int i, int m) {
        double mean =
                plan.lengths()[i] <= 0 ? atPlane(f, i, 1, end, back, false) : m == 1 ? ofOne(f, i) : ofSeveral(f, i, m);
        return mean * inlet.area() / plan.height();
    }

    /** Waves a e^(-jκx) and b e^(jκ(x-L)) of one mode, mean over the length. */
    private double ofOne(int f, int i) {
        double length = plan.lengths()[i];
        double[] k = sections[i].axial(f);
        double er = along[i][0];
        double ei = along[i][1];
        double left2 = er * er + ei * ei;
        double there = wave[0] * wave[0] + wave[1] * wave[1];
        double here = back[0] * back[0] + back[1] * back[1];
        double decay = -2 * k[1] * length;
        double mean = Math.abs(decay) < 1e-6 ? 1 : (1 - left2) / decay;
        double phase = k[0] * length;
        // sin(Re κL) e^(-αL) is minus the imaginary part of exp(-jκL)
        double both = Math.abs(phase) < 1e-6 ? Math.sqrt(left2) : -ei / phase;
        double cross = 2 * (wave[0] * back[0] + wave[1] * back[1]) * both;
        return products[i][f][0] * Math.max(0, (there + here) * mean + cross);
    }

    /** Of several modes: the logarithmic mean of both ends, as if the sound fell evenly between them. */
    private double ofSeveral(int f, int i, int m) {
        double start = atPlane(f, i, m, wave, back, true);
        double stop = atPlane(f, i, m, end, back, false);
        if (start <= 0 || stop <= 0 || Math.abs(start - stop) < 1e-6 * start) {
            return Math.max(0, start);
        }
        return (start - stop) / Math.log(start / stop);
    }

    /** Mean over the section of what goes one way and what comes back, at the start or end of a pass. */
    private double atPlane(int f, int i, int m, double[] going, double[] coming, boolean atStart) {
        for (int j = 0; j < 2 * m; j += 2) {
            double er = atStart ? along[i][j] : 1;
            double ei = atStart ? along[i][j + 1] : 0;
            seen[j] = going[j] + coming[j] * er - coming[j + 1] * ei;
            // the form is of u v*, so its conjugate is taken of the amplitudes
            seen[j + 1] = -(going[j + 1] + coming[j] * ei + coming[j + 1] * er);
        }
        return Small.form(products[i][f], width, seen, m);
    }

    private int carried(int f) {
        int most = 1;
        for (int i = 0; i < passes; i++) {
            if (i > 0 && sections[i] == sections[i - 1]) {
                continue;
            }
            double[] k = sections[i].axial(f);
            int m = most;
            while (m < width && (k[1] - k[2 * m + 1]) * shortest < BEHIND) {
                m++;
            }
            most = m;
        }
        return most;
    }
}
