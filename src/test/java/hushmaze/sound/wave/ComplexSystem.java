package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;

/** Small dense complex equations for reference computations in tests: Gauss with partial pivoting. */
final class ComplexSystem {
    private ComplexSystem() {}

    static Complex[] solve(Complex[][] a, Complex[] b) {
        int n = b.length;
        for (int k = 0; k < n; k++) {
            int best = k;
            for (int i = k + 1; i < n; i++) {
                if (a[i][k].absSquared() > a[best][k].absSquared()) {
                    best = i;
                }
            }
            Complex[] row = a[k];
            a[k] = a[best];
            a[best] = row;
            Complex value = b[k];
            b[k] = b[best];
            b[best] = value;
            for (int i = k + 1; i < n; i++) {
                Complex f = a[i][k].dividedBy(a[k][k]).times(-1);
                for (int j = k; j < n; j++) {
                    a[i][j] = a[i][j].plus(f.times(a[k][j]));
                }
                b[i] = b[i].plus(f.times(b[k]));
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j < n; j++) {
                b[k] = b[k].plus(a[k][j].times(b[j]).times(-1));
            }
            b[k] = b[k].dividedBy(a[k][k]);
        }
        return b;
    }
}
