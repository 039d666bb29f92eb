package hushmaze.sound.quick;

import hushmaze.sound.porous.Complex;

/** How the modes of one section meet those of another across a plane. */
final class Coupling {
    private Coupling() {}

    /**
     * H with entries ∫ (h/ρ) u v over the smaller section, h and ρ those of the smaller section; rows are modes of the
     * larger one.
     *
     * <p>Pressure is continuous over the smaller section: its amplitudes are Hᵀ times those of the larger one. The flow of the
     * larger one is H times that of the smaller one: none through what the smaller one does not cover.
     */
    static CMatrix between(ModeSet small, ModeSet large) {
        CMatrix h = new CMatrix(large.count, small.count);
        Wave[] ua = waves(small.count);
        Wave[] ub = waves(small.count);
        Wave va = new Wave();
        Wave vb = new Wave();
        Overlap overlap = new Overlap();
        double from = small.low();
        while (from < small.high() - 1e-9) {
            double to = next(small, large, from);
            double middle = (from + to) / 2;
            int ls = small.layerAt(middle);
            int ll = large.layerAt(middle);
            for (int n = 0; n < small.count; n++) {
                small.at(n, ls, from, ua[n]);
                small.at(n, ls, to, ub[n]);
            }
            double wr = small.weightRe(ls);
            double wi = small.weightIm(ls);
            for (int m = 0; m < large.count; m++) {
                large.at(m, ll, from, va);
                large.at(m, ll, to, vb);
                for (int n = 0; n < small.count; n++) {
                    overlap.product(
                            small.acrossRe(n, ls),
                            small.acrossIm(n, ls),
                            ua[n],
                            ub[n],
                            large.acrossRe(m, ll),
                            large.acrossIm(m, ll),
                            va,
                            vb,
                            to - from);
                    int at = m * small.count + n;
                    h.re[at] += wr * overlap.re - wi * overlap.im;
                    h.im[at] += wr * overlap.im + wi * overlap.re;
                }
            }
            from = to;
        }
        return h;
    }

    /**
     * Impedance of a facing in a plane across a section, over its layers: j φ/H ∫ (h/ρ)² u v dy.
     *
     * @param facing φ/H, of the facing and over its own height
     */
    static CMatrix throughFacing(Complex facing, ModeSet modes) {
        int n = modes.count;
        CMatrix z = new CMatrix(n, n);
        Wave[] low = waves(n);
        Wave[] high = waves(n);
        Overlap overlap = new Overlap();
        for (int l = 0; l < modes.layers(); l++) {
            if (modes.isAir(l)) {
                continue;
            }
            Complex weight = new Complex(modes.weightRe(l), modes.weightIm(l));
            Complex factor = weight.times(weight).times(facing).times(new Complex(0, 1));
            double from = modes.edge(l);
            double to = modes.edge(l + 1);
            for (int m = 0; m < n; m++) {
                modes.at(m, l, from, low[m]);
                modes.at(m, l, to, high[m]);
            }
            for (int m = 0; m < n; m++) {
                for (int k = 0; k <= m; k++) {
                    if (k == m) {
                        overlap.square(modes.acrossRe(m, l), modes.acrossIm(m, l), low[m], high[m], to - from);
                    } else {
                        overlap.product(
                                modes.acrossRe(m, l),
                                modes.acrossIm(m, l),
                                low[m],
                                high[m],
                                modes.acrossRe(k, l),
                                modes.acrossIm(k, l),
                                low[k],
                                high[k],
                                to - from);
                    }
                    Complex part = factor.times(new Complex(overlap.re, overlap.im));
                    z.re[m * n + k] += part.re();
                    z.im[m * n + k] += part.im();
                    if (k < m) {
                        z.re[k * n + m] += part.re();
                        z.im[k * n + m] += part.im();
                    }
                }
            }
        }
        return z;
    }

    private static double next(ModeSet small, ModeSet large, double from) {
        double to = small.high();
        for (int i = 0; i <= small.layers(); i++) {
            to = small.edge(i) > from + 1e-9 ? Math.min(to, small.edge(i)) : to;
        }
        for (int i = 0; i <= large.layers(); i++) {
            to = large.edge(i) > from + 1e-9 ? Math.min(to, large.edge(i)) : to;
        }
        return to;
    }

    private static Wave[] waves(int n) {
        Wave[] waves = new Wave[n];
        for (int i = 0; i < n; i++) {
            waves[i] = new Wave();
        }
        return waves;
    }

    /** ∫ v cos(sπ(y - low)/W)·√(ε/W) dy over the section, rows modes, columns s: what a rigidly bounded slab's modes take. */
    static CMatrix withSlab(ModeSet modes, int count) {
        CMatrix c = new CMatrix(modes.count, count);
        Overlap overlap = new Overlap();
        Wave va = new Wave();
        Wave vb = new Wave();
        Wave[] ca = waves(count);
        Wave[] cb = waves(count);
        double width = modes.high() - modes.low();
        for (int l = 0; l < modes.layers(); l++) {
            double from = modes.edge(l);
            double to = modes.edge(l + 1);
            for (int s = 0; s < count; s++) {
                cosine(s, width, from - modes.low(), ca[s]);
                cosine(s, width, to - modes.low(), cb[s]);
            }
            for (int m = 0; m < modes.count; m++) {
                modes.at(m, l, from, va);
                modes.at(m, l, to, vb);
                for (int s = 0; s < count; s++) {
                    double q = s * Math.PI / width;
                    overlap.product(
                            modes.acrossRe(m, l), modes.acrossIm(m, l), va, vb, q * q, 0, ca[s], cb[s], to - from);
                    c.re[m * count + s] += overlap.re;
                    c.im[m * count + s] += overlap.im;
                }
            }
        }
        return c;
    }

    private static void cosine(int s, double width, double y, Wave out) {
        double q = s * Math.PI / width;
        double size = Math.sqrt((s == 0 ? 1 : 2) / width);
        out.set(size * Math.cos(q * y), 0, -size * q * Math.sin(q * y), 0);
    }
}
