package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;
import java.util.Arrays;

/**
 * Matrix of a cell over its shared functions, inner ones condensed: ∫ (∇p·∇q - k² p q)/ρ.
 *
 * <p>Inner functions are uncoupled, so each is condensed by itself. One that is close to its resonance is kept as an unknown
 * of the cell, because dividing by what is almost zero would cost digits.
 */
final class CellMatrix {
    /** An inner function is kept when its own coefficient is this small to what it is the difference of. */
    private static final double NEAR_RESONANCE = 1e-2;

    final CellShape shape;
    /** Shared functions and kept ones. */
    final int size;
    /** Row by row. */
    final double[] re;

    final double[] im;
    /** Inner functions that are kept. */
    final int[] kept;

    private final double[] width;
    /** V / ρ. */
    private final Complex factor;

    private final Complex waveSquared;

    /**
     * @param shape its functions
     * @param width of the cell along each axis, m
     * @param overDensity 1/ρ
     * @param waveSquared k², 1/m²
     */
    CellMatrix(CellShape shape, double[] width, Complex overDensity, Complex waveSquared) {
        this.shape = shape;
        this.width = width.clone();
        this.factor = overDensity.times(width[0] * width[1] * width[2]);
        this.waveSquared = waveSquared;
        int[] near = new int[shape.innerCount()];
        int keep = 0;
        for (int q = 0; q < near.length; q++) {
            double own = own(q, 0);
            double rest = Math.hypot(own - waveSquared.re(), waveSquared.im());
            if (rest < NEAR_RESONANCE * Math.max(own, Math.sqrt(waveSquared.absSquared()))) {
                near[keep++] = q;
            }
        }
        kept = Arrays.copyOf(near, keep);
        size = shape.shared.length + keep;
        re = new double[size * size];
        im = new double[size * size];
        addShared();
        Coupling coupling = new Coupling();
        int next = 0;
        for (int q = 0; q < near.length; q++) {
            coupling.of(q);
            if (next < keep && kept[next] == q) {
                coupling.keep(shape.shared.length + next++);
            } else {
                coupling.condense();
            }
        }
    }

    private void addShared() {
        double[] over = new double[3];
        for (int a = 0; a < 3; a++) {
            over[a] = 1 / (width[a] * width[a]);
        }
        for (int i = 0; i < shape.shared.length; i++) {
            for (int j = 0; j <= i; j++) {
                int[] u = shape.shared[i];
                int[] v = shape.shared[j];
                double m0 = shape.basis[0].mass(u[0], v[0]);
                double m1 = shape.basis[1].mass(u[1], v[1]);
                double m2 = shape.basis[2].mass(u[2], v[2]);
                if ((m0 == 0 ? 1 : 0) + (m1 == 0 ? 1 : 0) + (m2 == 0 ? 1 : 0) > 1) {
                    // nothing in common: most of them
                    continue;
                }
                double stiff = shape.basis[0].stiffness(u[0], v[0]) * m1 * m2 * over[0]
                        + m0 * shape.basis[1].stiffness(u[1], v[1]) * m2 * over[1]
                        + m0 * m1 * shape.basis[2].stiffness(u[2], v[2]) * over[2];
                double mass = m0 * m1 * m2;
                set(i, j, stiff - waveSquared.re() * mass, -waveSquared.im() * mass);
            }
        }
    }

    /** Enters (valueRe + j valueIm) V / ρ. */
    private void set(int i, int j, double valueRe, double valueIm) {
        enter(i, j, scaledRe(valueRe, valueIm), scaledIm(valueRe, valueIm));
    }

    private double scaledRe(double valueRe, double valueIm) {
        return factor.re() * valueRe - factor.im() * valueIm;
    }

    private double scaledIm(double valueRe, double valueIm) {
        return factor.re() * valueIm + factor.im() * valueRe;
    }

    private void enter(int i, int j, double valueRe, double valueIm) {
        re[i * size + j] = valueRe;
        im[i * size + j] = valueIm;
        re[j * size + i] = valueRe;
        im[j * size + i] = valueIm;
    }

    /** Sum of λ/h² of inner function q over the axes that are not in a set of hats. */
    private double own(int q, int hats) {
        int[] at = shape.inner(q);
        double sum = 0;
        for (int a = 0; a < 3; a++) {
            if ((hats & 1 << a) == 0) {
                sum += shape.basis[a].eigenvalue[at[a]] / (width[a] * width[a]);
            }
        }
        return sum;
    }

    /** Inner coefficients of a solution whose shared and kept coefficients are given, as real and imaginary parts. */
    double[][] inner(double[] sharedRe, double[] sharedIm) {
        double[][] out = new double[2][shape.innerCount()];
        Coupling coupling = new Coupling();
        int next = 0;
        for (int q = 0; q < out[0].length; q++) {
            if (next < kept.length && kept[next] == q) {
                out[0][q] = sharedRe[shape.shared.length + next];
                out[1][q] = sharedIm[shape.shared.length + next++];
                continue;
            }
            coupling.of(q);
            Complex value = coupling.recover(sharedRe, sharedIm);
            out[0][q] = value.re();
            out[1][q] = value.im();
        }
        return out;
    }

    /** What couples one inner function with the shared ones. */
    private final class Coupling {
        private final int[] index = new int[26];
        private final double[] cRe = new double[26];
        private final double[] cIm = new double[26];
        private int count;
        private Complex diagonal;

        void of(int q) {
            count = 0;
            int[] at = shape.inner(q);
            double valueRe = own(q, 0) - waveSquared.re();
            double valueIm = -waveSquared.im();
            diagonal = new Complex(scaledRe(valueRe, valueIm), scaledIm(valueRe, valueIm));
            for (int hats = 1; hats < 8; hats++) {
                addHats(q, at, hats);
            }
        }

        private void addHats(int q, int[] at, int hats) {
            for (int a = 0; a < 3; a++) {
                if ((hats & 1 << a) != 0 && shape.basis[a].hats == 0) {
                    return;
                }
            }
            double own = own(q, hats);
            int axes = Integer.bitCount(hats);
            for (int ends = 0; ends < 1 << axes; ends++) {
                double mass = 1;
                int[] local = new int[3];
                int bit = 0;
                for (int a = 0; a < 3; a++) {
                    if ((hats & 1 << a) == 0) {
                        local[a] = shape.basis[a].hats + at[a];
                    } else {
                        local[a] = ends >> bit++ & 1;
                        mass *= shape.basis[a].hatInner[local[a]][at[a]];
                    }
                }
                double valueRe = mass * (own - waveSquared.re());
                double valueIm = -mass * waveSquared.im();
                index[count] = shape.indexOf(local[0], local[1], local[2]);
                cRe[count] = scaledRe(valueRe, valueIm);
                cIm[count] = scaledIm(valueRe, valueIm);
                count++;
            }
        }

        void condense() {
            for (int i = 0; i < count; i++) {
                Complex share = new Complex(cRe[i], cIm[i]).dividedBy(diagonal);
                double a = share.re();
                double b = share.im();
                int row = index[i] * size;
                for (int j = 0; j < count; j++) {
                    int at = row + index[j];
                    re[at] -= a * cRe[j] - b * cIm[j];
                    im[at] -= a * cIm[j] + b * cRe[j];
                }
            }
        }

        void keep(int row) {
            enter(row, row, diagonal.re(), diagonal.im());
            for (int i = 0; i < count; i++) {
                enter(row, index[i], cRe[i], cIm[i]);
            }
        }

        Complex recover(double[] sharedRe, double[] sharedIm) {
            double sumRe = 0;
            double sumIm = 0;
            for (int i = 0; i < count; i++) {
                int at = index[i];
                sumRe -= cRe[i] * sharedRe[at] - cIm[i] * sharedIm[at];
                sumIm -= cRe[i] * sharedIm[at] + cIm[i] * sharedRe[at];
            }
            return new Complex(sumRe, sumIm).dividedBy(diagonal);
        }
    }
}
