package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;
import java.util.Arrays;

/**
 * Plane wave through an expansion chamber of rectangular section by mode matching, for tests: an own computation that has
 * nothing in common with the wave solution but the equation.
 *
 * <p>Half heights of duct and chamber b and B about a common axis, chamber length L, all modes even. By symmetry about the
 * chamber's middle the chamber is half as long with a rigid or a soft end; R = (rigid + soft)/2, T = (rigid - soft)/2. At the
 * step, with Q the product of a duct mode and a chamber mode over the opening, (D + Z K) r = (Z K - D) e, Z = Σ Q Qᵀ / (y N).
 */
final class ChamberModes {
    private final double b;
    private final double big;
    private final double half;
    private final int ductModes;
    private final int chamberModes;

    ChamberModes(double ductHeight, double chamberHeight, double length, int ductModes) {
        b = ductHeight / 2;
        big = chamberHeight / 2;
        half = length / 2;
        this.ductModes = ductModes;
        chamberModes = (int) Math.round(ductModes * big / b);
    }

    /** Transmission loss, dB, at the squared wavenumber that is left for the plane of the section, 1/m². */
    double transmissionLoss(double waveSquared) {
        Complex rigid = reflection(waveSquared, true);
        Complex soft = reflection(waveSquared, false);
        return -10 * Math.log10(rigid.plus(soft.times(-1)).times(0.5).absSquared());
    }

    private Complex reflection(double waveSquared, boolean rigid) {
        Complex[][] a = new Complex[ductModes][ductModes];
        Complex[] right = new Complex[ductModes];
        Complex[] k = new Complex[ductModes];
        for (int n = 0; n < ductModes; n++) {
            double squared = waveSquared - Math.pow(n * Math.PI / b, 2);
            k[n] = squared > 0 ? new Complex(Math.sqrt(squared), 0) : new Complex(0, -Math.sqrt(-squared));
        }
        Complex[][] z = impedance(waveSquared, rigid);
        for (int i = 0; i < ductModes; i++) {
            for (int j = 0; j < ductModes; j++) {
                a[i][j] = z[i][j].times(k[j]).plus(new Complex(i == j ? norm(i, b) : 0, 0));
            }
            right[i] = z[i][0].times(k[0]).plus(new Complex(i == 0 ? -b : 0, 0));
        }
        return ComplexSystem.solve(a, right)[0];
    }

    private static double norm(int n, double size) {
        return n == 0 ? size : size / 2;
    }

    private Complex[][] impedance(double waveSquared, boolean rigid) {
        Complex[][] z = new Complex[ductModes][ductModes];
        for (Complex[] row : z) {
            Arrays.fill(row, new Complex(0, 0));
        }
        for (int m = 0; m < chamberModes; m++) {
            double squared = waveSquared - Math.pow(m * Math.PI / big, 2);
            double size = Math.sqrt(Math.abs(squared));
            double x = size * half;
            double y;
            if (squared > 0) {
                y = rigid ? size * Math.tan(x) : -size / Math.tan(x);
            } else {
                y = rigid ? -size * Math.tanh(x) : -size / Math.tanh(x);
            }
            // 1 / (j y N)
            Complex over = new Complex(0, -1 / (y * norm(m, big)));
            for (int i = 0; i < ductModes; i++) {
                for (int j = 0; j < ductModes; j++) {
                    z[i][j] = z[i][j].plus(over.times(product(i, m) * product(j, m)));
                }
            }
        }
        return z;
    }

    /** ∫ cos(nπy/b) cos(mπy/B) from 0 to b. */
    private double product(int n, int m) {
        double p = n * Math.PI / b;
        double q = m * Math.PI / big;
        return (sinOver(p + q) + sinOver(p - q)) / 2;
    }

    private double sinOver(double s) {
        return Math.abs(s) * b < 1e-9 ? b : Math.sin(s * b) / s;
    }
}
