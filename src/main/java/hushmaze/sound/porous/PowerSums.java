package hushmaze.sound.porous;

/**
 * Numbers from the sums of their powers, s_p = Σ z^p.
 *
 * <p>Newton's identities give the coefficients of the polynomial with these roots, p e_p = Σ (-1)^(i-1) e_(p-i) s_i; the
 * iteration of Durand and Kerner gives the roots. Source: textbook algebra.
 */
final class PowerSums {
    private static final int ROUNDS = 200;

    private PowerSums() {}

    /** The numbers; entry p of the argument is the sum of the p-th powers, entry 0 is not used. */
    static Complex[] roots(Complex[] sums) {
        int n = sums.length - 1;
        Complex[] e = new Complex[n + 1];
        e[0] = new Complex(1, 0);
        for (int p = 1; p <= n; p++) {
            Complex total = new Complex(0, 0);
            for (int i = 1; i <= p; i++) {
                total = total.plus(e[p - i].times(sums[i]).times(i % 2 == 1 ? 1 : -1));
            }
            e[p] = total.times(1.0 / p);
        }
        Complex[] z = new Complex[n];
        Complex turn = new Complex(0.4, 0.9);
        z[0] = n > 0 ? new Complex(0.5, 0.3) : null;
        for (int i = 1; i < n; i++) {
            z[i] = z[i - 1].times(turn);
        }
        for (int round = 0; round < ROUNDS; round++) {
            for (int i = 0; i < n; i++) {
                z[i] = z[i].plus(value(e, z[i]).dividedBy(others(z, i)).times(-1));
            }
        }
        return z;
    }

    /** z^n - e1 z^(n-1) + e2 z^(n-2) - ... */
    private static Complex value(Complex[] e, Complex z) {
        Complex value = e[0];
        for (int p = 1; p < e.length; p++) {
            value = value.times(z).plus(e[p].times(p % 2 == 1 ? -1 : 1));
        }
        return value;
    }

    private static Complex others(Complex[] z, int i) {
        Complex product = new Complex(1, 0);
        for (int j = 0; j < z.length; j++) {
            if (j != i) {
                Complex gap = z[i].plus(z[j].times(-1));
                product = product.times(gap.absSquared() == 0 ? new Complex(1e-12, 0) : gap);
            }
        }
        return product;
    }
}
