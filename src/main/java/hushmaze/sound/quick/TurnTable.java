package hushmaze.sound.quick;

/**
 * A turn round a baffle's tip over all frequencies, by mode matching along x.
 *
 * <p>The passes open into the wide section beyond the tip; after the gap it ends on the end's liner. With R the end's
 * reflection seen from the plane of the tip, the passes scatter by S + T R (1 - W R)⁻¹ V: S into each other, V into the wide
 * section, W back within it, T out of it. Modes of the wide section that die on their way over the gap do not come back.
 */
final class TurnTable {
    /** A mode that decays so far over the gap is left out, Np. */
    private static final double DEAD = 3.5;

    private final double[][] scattering;

    TurnTable(TurnPlace place, QuickTables tables) {
        TurnMouth mouth = tables.mouth(place.mouth());
        scattering = new double[tables.grid().size()][];
        for (int f = 0; f < scattering.length; f++) {
            scattering[f] = interleaved(closed(mouth.at(f), place.gap()));
        }
    }

    /** Scattering matrix of both passes' carried modes at a frequency, row by row, real and imaginary parts in turn. */
    double[] at(int f) {
        return scattering[f];
    }

    private static CMatrix closed(TurnMouth.At mouth, double gap) {
        CMatrix first = closed(mouth.parts()[0], gap);
        return mouth.parts().length == 1 ? first : joined(first, closed(mouth.parts()[1], gap), mouth.parities());
    }

    /** Of a symmetric and an antisymmetric half: within a pass half their sum, across half their difference. */
    private static CMatrix joined(CMatrix even, CMatrix odd, int[] parities) {
        int n = parities.length;
        CMatrix whole = new CMatrix(2 * n, 2 * n);
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                int at = i * n + j;
                double sumRe = (even.re[at] + odd.re[at]) / 2;
                double sumIm = (even.im[at] + odd.im[at]) / 2;
                double acrossRe = (even.re[at] - odd.re[at]) / 2;
                double acrossIm = (even.im[at] - odd.im[at]) / 2;
                int both = parities[i] * parities[j];
                whole.set(i, j, sumRe, sumIm);
                whole.set(n + i, n + j, both * sumRe, both * sumIm);
                whole.set(n + i, j, parities[i] * acrossRe, parities[i] * acrossIm);
                whole.set(i, n + j, parities[j] * acrossRe, parities[j] * acrossIm);
            }
        }
        return whole;
    }

    private static CMatrix closed(TurnMouth.Part mouth, double gap) {
        int alive = 1;
        while (alive < mouth.axial().size() && -mouth.axial().im[alive] * gap < DEAD) {
            alive++;
        }
        CVector along = Fields.along(mouth.axial(), gap);
        CMatrix r = Fields.before(mouth.end().part(0, 0, alive, alive), along);
        CMatrix loop = new CMatrix(alive, alive)
                .add(mouth.wide().part(0, 0, alive, alive).times(r), -1)
                .addIdentity(1);
        int n = mouth.back().rows;
        CMatrix inside = loop.solve(mouth.in().part(0, 0, alive, n));
        CMatrix s = mouth.out().part(0, 0, n, alive).times(r.times(inside));
        return s.add(mouth.back(), 1);
    }

    static double[] interleaved(CMatrix m) {
        double[] all = new double[2 * m.re.length];
        for (int i = 0; i < m.re.length; i++) {
            all[2 * i] = m.re[i];
            all[2 * i + 1] = m.im[i];
        }
        return all;
    }
}
