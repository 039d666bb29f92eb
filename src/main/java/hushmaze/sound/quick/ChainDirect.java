package hushmaze.sound.quick;

/**
 * The waves in a path with all echoes: reflections from the outlet backwards, then amplitudes from the inlet forwards.
 *
 * <p>R seen from the start of a pass is E R E, E = exp(-jκL). A turn with scattering S and R behind it lets D S21 through, D = (1 -
 * S22 R)⁻¹, and reflects S11 + S12 R D S21.
 */
final class ChainDirect {
    private final ChainParts parts;
    private final ChainWaves waves;
    /** Per pass: reflection at its end, and what is let into it by the turn or port before. */
    private final double[][] ends;

    private final double[][] through;
    private final double[] seen;
    private final double[] left;
    private final double[] right;

    ChainDirect(ChainParts parts, ChainWaves waves) {
        this.parts = parts;
        this.waves = waves;
        int square = 2 * parts.most * parts.most;
        ends = new double[parts.passes][square];
        through = new double[parts.passes][square];
        seen = new double[square];
        left = new double[square];
        right = new double[square];
    }

    void solve(int f, int m) {
        if (m == 1) {
            backwardsOne(f);
            forwardsOne();
            return;
        }
        backwards(f, m);
        Small.copy(through[0], waves.start[0], 2 * m);
        for (int i = 0; i < parts.passes; i++) {
            if (i > 0) {
                Small.times(through[i], waves.end[i - 1], waves.start[i], m, 1);
            }
            waves.carry(i, m);
            Small.times(ends[i], waves.end[i], waves.back[i], m, 1);
        }
    }

    private void backwards(int f, int m) {
        int width = parts.width(f);
        Small.block(parts.outlet.reflection(f), width, 0, 0, ends[parts.passes - 1], m);
        for (int i = parts.passes - 1; i > 0; i--) {
            Small.scaled(ends[i], waves.along[i], seen, m);
            double[] s = parts.turns[i - 1].at(f);
            Small.block(s, 2 * width, width, 0, through[i], m);
            Small.block(s, 2 * width, width, width, left, m);
            Small.oneMinusProduct(left, seen, right, m);
            Small.solve(right, through[i], m, m);
            Small.times(seen, through[i], right, m, m);
            Small.block(s, 2 * width, 0, width, left, m);
            Small.block(s, 2 * width, 0, 0, ends[i - 1], m);
            Small.addProduct(left, right, ends[i - 1], m, m);
        }
        Small.scaled(ends[0], waves.along[0], seen, m);
        Small.copy(parts.inlet.entry(f), through[0], 2 * m);
        Small.block(parts.inlet.reflection(f), width, 0, 0, left, m);
        Small.oneMinusProduct(left, seen, right, m);
        Small.solve(right, through[0], m, 1);
    }

    private void forwardsOne() {
        double er = 1;
        double ei = 0;
        for (int i = 0; i < parts.passes; i++) {
            double[] t = through[i];
            double sr = t[0] * er - t[1] * ei;
            double si = t[0] * ei + t[1] * er;
            double[] along = waves.along[i];
            er = sr * along[0] - si * along[1];
            ei = sr * along[1] + si * along[0];
            waves.start[i][0] = sr;
            waves.start[i][1] = si;
            waves.end[i][0] = er;
            waves.end[i][1] = ei;
            double[] r = ends[i];
            waves.back[i][0] = r[0] * er - r[1] * ei;
            waves.back[i][1] = r[0] * ei + r[1] * er;
        }
    }

    /** Reflections for a single mode. */
    private void backwardsOne(int f) {
        int width = parts.width(f);
        double rr = parts.outlet.reflection(f)[0];
        double ri = parts.outlet.reflection(f)[1];
        for (int i = parts.passes - 1; i >= 0; i--) {
            ends[i][0] = rr;
            ends[i][1] = ri;
            double[] e = waves.along[i];
            double er = e[0] * e[0] - e[1] * e[1];
            double ei = 2 * e[0] * e[1];
            double qr = rr * er - ri * ei;
            double qi = rr * ei + ri * er;
            // S21 and S22 of the turn before, or entry and reflection of the inlet
            double[] s = i == 0 ? parts.inlet.entry(f) : parts.turns[i - 1].at(f);
            double[] b = i == 0 ? parts.inlet.reflection(f) : s;
            int entry = i == 0 ? 0 : 4 * width * width;
            int own = i == 0 ? 0 : entry + 2 * width;
            double dr = 1 - (b[own] * qr - b[own + 1] * qi);
            double di = -(b[own] * qi + b[own + 1] * qr);
            double size = dr * dr + di * di;
            double tr = (s[entry] * dr + s[entry + 1] * di) / size;
            double ti = (s[entry + 1] * dr - s[entry] * di) / size;
            through[i][0] = tr;
            through[i][1] = ti;
            if (i > 0) {
                double ur = qr * tr - qi * ti;
                double ui = qr * ti + qi * tr;
                int over = 2 * width;
                rr = s[0] + s[over] * ur - s[over + 1] * ui;
                ri = s[1] + s[over] * ui + s[over + 1] * ur;
            }
        }
    }
}
