package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.List;

/**
 * The duct behind a mouth, as its modes: every mode that leaves is taken up without reflection, whether it carries sound or
 * dies away.
 *
 * <p>Adds Σ j k_n b_n b_nᵀ / A over all modes, with b_n the mode projected on the functions at the mouth, A the duct's
 * area and k_n² = k² - (nπ/a)² - (mπ/b)², Re k_n positive or Im k_n negative. A mode that comes in with amplitude 1 adds 2 j
 * k_n b_n on the right side.
 */
final class PortModes {
    /** A mode carries sound when its squared wavenumber is above this share of k². */
    private static final double CARRIES = 1e-9;

    private final DuctModes u;
    private final DuctModes v;
    private final double wavenumber;
    private final int[] unknown;
    private final List<PortMode> carrying = new ArrayList<>();

    PortModes(Mouth mouth, WaveMesh mesh, double wavenumber) {
        this.wavenumber = wavenumber;
        u = modes(mouth, mouth.u(), mesh);
        v = modes(mouth, mouth.v(), mesh);
        unknown = new int[u.function.length * v.function.length];
        int[] function = new int[3];
        int[] cell = new int[3];
        int line = mesh.cuts[mouth.normal()].lineOf[mouth.plane()];
        function[mouth.normal()] = line;
        cell[mouth.normal()] = mouth.inside(mesh.cuts);
        for (int i = 0; i < u.function.length; i++) {
            for (int j = 0; j < v.function.length; j++) {
                function[mouth.u()] = u.function[i];
                function[mouth.v()] = v.function[j];
                cell[mouth.u()] = u.interval[i];
                cell[mouth.v()] = v.interval[j];
                unknown[i * v.function.length + j] = mesh.unknown(function, cell);
            }
        }
        for (int n = 0; n < u.integral.length; n++) {
            for (int m = 0; m < v.integral.length; m++) {
                double squared = squared(n, m);
                if (squared > CARRIES * wavenumber * wavenumber) {
                    carrying.add(new PortMode(n, m, Math.sqrt(squared)));
                }
            }
        }
    }

    private static DuctModes modes(Mouth mouth, int axis, WaveMesh mesh) {
        double height = mouth.port().start().z1() - mouth.port().start().z0();
        return new DuctModes(
                mesh.cuts[axis],
                mesh.grids[axis],
                mouth.span()[axis],
                mesh.degrees(mouth, axis),
                height,
                mesh.softFloor && axis == 2);
    }

    private double squared(int n, int m) {
        double a = u.across[n];
        double b = v.across[m];
        return wavenumber * wavenumber - a * a - b * b;
    }

    /** m². */
    double area() {
        return u.size * v.size;
    }

    /** Modes that carry sound; the plane wave first. */
    List<PortMode> carrying() {
        return carrying;
    }

    /** Unknowns at the mouth. */
    int[] unknown() {
        return unknown;
    }

    /** All modes as a part of the system. */
    Element element() {
        int nu = u.function.length;
        int nv = v.function.length;
        int n = nu * nv;
        double[] re = new double[n * n];
        double[] im = new double[n * n];
        for (int mode = 0; mode < u.integral.length; mode++) {
            double[][] across = across(mode);
            double[] b = u.integral[mode];
            for (int i = 0; i < nu; i++) {
                for (int k = 0; k < nu; k++) {
                    double both = b[i] * b[k];
                    for (int j = 0; j < nv; j++) {
                        int row = (i * nv + j) * n + k * nv;
                        for (int l = 0; l < nv; l++) {
                            re[row + l] += both * across[0][j * nv + l];
                            im[row + l] += both * across[1][j * nv + l];
                        }
                    }
                }
            }
        }
        return new Element(unknown, 0, re, im, 1);
    }

    /** Σ over modes of the second axis of j k b bᵀ / A, real and imaginary part. */
    private double[][] across(int n) {
        int nv = v.function.length;
        double[][] sum = new double[2][nv * nv];
        for (int m = 0; m < v.integral.length; m++) {
            double squared = squared(n, m);
            double[] part = squared > 0 ? sum[1] : sum[0];
            double factor = Math.sqrt(Math.abs(squared)) / area();
            double[] b = v.integral[m];
            for (int j = 0; j < nv; j++) {
                for (int l = 0; l < nv; l++) {
                    part[j * nv + l] += factor * b[j] * b[l];
                }
            }
        }
        return sum;
    }

    /** Adds the right side for a mode that comes in with amplitude 1; it is purely imaginary. */
    void addIncident(PortMode mode, double[] rightIm) {
        for (int i = 0; i < u.function.length; i++) {
            for (int j = 0; j < v.function.length; j++) {
                rightIm[unknown[i * v.function.length + j]] +=
                        2 * mode.wavenumber() * u.integral[mode.u()][i] * v.integral[mode.v()][j];
            }
        }
    }

    /** Amplitude of a mode in a solution at the mouth. */
    Complex amplitude(PortMode mode, double[] re, double[] im) {
        double sumRe = 0;
        double sumIm = 0;
        for (int i = 0; i < u.function.length; i++) {
            for (int j = 0; j < v.function.length; j++) {
                double b = u.integral[mode.u()][i] * v.integral[mode.v()][j];
                sumRe += b * re[unknown[i * v.function.length + j]];
                sumIm += b * im[unknown[i * v.function.length + j]];
            }
        }
        return new Complex(sumRe / area(), sumIm / area());
    }
}
