package hushmaze.sound.quick;

import java.util.Arrays;

/**
 * Arithmetic of very small complex matrices without making objects: row by row, real and imaginary parts in turn, in arrays
 * that may be larger than the matrix.
 */
final class Small {
    private Small() {}

    static void copy(double[] from, double[] to, int n) {
        System.arraycopy(from, 0, to, 0, n);
    }

    static void clear(double[] v, int n) {
        Arrays.fill(v, 0, n, 0);
    }

    /** Length of a vector of so many real numbers. */
    static double size(double[] v, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += v[i] * v[i];
        }
        return Math.sqrt(sum);
    }

    /** Length of the difference. */
    static double distance(double[] v, double[] w, int n) {
        double sum = 0;
        for (int i = 0; i < n; i++) {
            sum += (v[i] - w[i]) * (v[i] - w[i]);
        }
        return Math.sqrt(sum);
    }

    /** b = e a with e a diagonal. */
    static void scaledVector(double[] a, double[] e, double[] b, int m) {
        for (int j = 0; j < 2 * m; j += 2) {
            b[j] = a[j] * e[j] - a[j + 1] * e[j + 1];
            b[j + 1] = a[j] * e[j + 1] + a[j + 1] * e[j];
        }
    }

    /** y += a x with a the block of m by m out of a matrix with so many columns. */
    static void addVector(double[] a, int columns, int row, int column, double[] x, double[] y, int m) {
        if (m == 2) {
            addVectorOfTwo(a, 2 * (row * columns + column), 2 * columns, x, y);
            return;
        }
        for (int i = 0; i < m; i++) {
            double re = y[2 * i];
            double im = y[2 * i + 1];
            int at = 2 * ((row + i) * columns + column);
            for (int j = 0; j < 2 * m; j += 2) {
                re += a[at + j] * x[j] - a[at + j + 1] * x[j + 1];
                im += a[at + j] * x[j + 1] + a[at + j + 1] * x[j];
            }
            y[2 * i] = re;
            y[2 * i + 1] = im;
        }
    }

    private static void addVectorOfTwo(double[] a, int at, int row, double[] x, double[] y) {
        int next = at + row;
        double pr = x[0];
        double pi = x[1];
        double qr = x[2];
        double qi = x[3];
        y[0] += a[at] * pr - a[at + 1] * pi + a[at + 2] * qr - a[at + 3] * qi;
        y[1] += a[at] * pi + a[at + 1] * pr + a[at + 2] * qi + a[at + 3] * qr;
        y[2] += a[next] * pr - a[next + 1] * pi + a[next + 2] * qr - a[next + 3] * qi;
        y[3] += a[next] * pi + a[next + 1] * pr + a[next + 2] * qi + a[next + 3] * qr;
    }

    /** A block of m by m out of a matrix with so many columns. */
    static void block(double[] from, int columns, int row, int column, double[] to, int m) {
        for (int i = 0; i < m; i++) {
            System.arraycopy(from, 2 * ((row + i) * columns + column), to, 2 * i * m, 2 * m);
        }
    }

    /** c = a b, a of m by m and b of m by columns. */
    static void times(double[] a, double[] b, double[] c, int m, int columns) {
        Arrays.fill(c, 0, 2 * m * columns, 0);
        addProduct(a, b, c, m, columns);
    }

    /** c += a b. */
    static void addProduct(double[] a, double[] b, double[] c, int m, int columns) {
        if (m == 2) {
            addProductOfTwo(a, b, c, columns);
            return;
        }
        for (int i = 0; i < m; i++) {
            for (int k = 0; k < m; k++) {
                double ar = a[2 * (i * m + k)];
                double ai = a[2 * (i * m + k) + 1];
                int from = 2 * k * columns;
                int to = 2 * i * columns;
                for (int j = 0; j < 2 * columns; j += 2) {
                    c[to + j] += ar * b[from + j] - ai * b[from + j + 1];
                    c[to + j + 1] += ar * b[from + j + 1] + ai * b[from + j];
                }
            }
        }
    }

    private static void addProductOfTwo(double[] a, double[] b, double[] c, int columns) {
        int row = 2 * columns;
        for (int j = 0; j < row; j += 2) {
            double pr = b[j];
            double pi = b[j + 1];
            double qr = b[row + j];
            double qi = b[row + j + 1];
            c[j] += a[0] * pr - a[1] * pi + a[2] * qr - a[3] * qi;
            c[j + 1] += a[0] * pi + a[1] * pr + a[2] * qi + a[3] * qr;
            c[row + j] += a[4] * pr - a[5] * pi + a[6] * qr - a[7] * qi;
            c[row + j + 1] += a[4] * pi + a[5] * pr + a[6] * qi + a[7] * qr;
        }
    }

    /** c = 1 - a b. */
    static void oneMinusProduct(double[] a, double[] b, double[] c, int m) {
        times(a, b, c, m, m);
        for (int i = 0; i < 2 * m * m; i++) {
            c[i] = -c[i];
        }
        for (int i = 0; i < m; i++) {
            c[2 * (i * m + i)] += 1;
        }
    }

    /** b = e a e with e a diagonal. */
    static void scaled(double[] a, double[] e, double[] b, int m) {
        for (int i = 0; i < m; i++) {
            for (int j = 0; j < m; j++) {
                int at = 2 * (i * m + j);
                double er = e[2 * i] * e[2 * j] - e[2 * i + 1] * e[2 * j + 1];
                double ei = e[2 * i] * e[2 * j + 1] + e[2 * i + 1] * e[2 * j];
                b[at] = a[at] * er - a[at + 1] * ei;
                b[at + 1] = a[at] * ei + a[at + 1] * er;
            }
        }
    }

    /** The real number v* g v of a Hermitian matrix with so many columns; of g its upper half is read. */
    static double form(double[] g, int columns, double[] v, int m) {
        double sum = 0;
        for (int i = 0; i < m; i++) {
            int row = 2 * i * columns;
            double re = g[row + 2 * i] * v[2 * i] / 2;
            double im = g[row + 2 * i] * v[2 * i + 1] / 2;
            for (int j = 2 * (i + 1); j < 2 * m; j += 2) {
                re += g[row + j] * v[j] - g[row + j + 1] * v[j + 1];
                im += g[row + j] * v[j + 1] + g[row + j + 1] * v[j];
            }
            sum += v[2 * i] * re + v[2 * i + 1] * im;
        }
        return 2 * sum;
    }

    /** Solves a x = b with b of m by columns; a is overwritten, b holds x after it. */
    static void solve(double[] a, double[] b, int m, int columns) {
        if (m == 2) {
            solveTwo(a, b, columns);
            return;
        }
        for (int k = 0; k < m; k++) {
            pivot(a, b, m, columns, k);
            int d = 2 * (k * m + k);
            double size = a[d] * a[d] + a[d + 1] * a[d + 1];
            double ir = a[d] / size;
            double ii = -a[d + 1] / size;
            scale(b, 2 * k * columns, columns, ir, ii);
            scale(a, 2 * (k * m + k), m - k, ir, ii);
            for (int i = 0; i < m; i++) {
                if (i != k) {
                    double fr = a[2 * (i * m + k)];
                    double fi = a[2 * (i * m + k) + 1];
                    subtract(a, 2 * (i * m + k), 2 * (k * m + k), m - k, fr, fi);
                    subtract(b, 2 * i * columns, 2 * k * columns, columns, fr, fi);
                }
            }
        }
    }

    /** Two equations by Cramer's rule. */
    private static void solveTwo(double[] a, double[] b, int columns) {
        double dr = a[0] * a[6] - a[1] * a[7] - a[2] * a[4] + a[3] * a[5];
        double di = a[0] * a[7] + a[1] * a[6] - a[2] * a[5] - a[3] * a[4];
        double size = dr * dr + di * di;
        double ir = dr / size;
        double ii = -di / size;
        int row = 2 * columns;
        for (int j = 0; j < row; j += 2) {
            double pr = b[j];
            double pi = b[j + 1];
            double qr = b[row + j];
            double qi = b[row + j + 1];
            double ur = a[6] * pr - a[7] * pi - a[2] * qr + a[3] * qi;
            double ui = a[6] * pi + a[7] * pr - a[2] * qi - a[3] * qr;
            double vr = a[0] * qr - a[1] * qi - a[4] * pr + a[5] * pi;
            double vi = a[0] * qi + a[1] * qr - a[4] * pi - a[5] * pr;
            b[j] = ur * ir - ui * ii;
            b[j + 1] = ur * ii + ui * ir;
            b[row + j] = vr * ir - vi * ii;
            b[row + j + 1] = vr * ii + vi * ir;
        }
    }

    private static void pivot(double[] a, double[] b, int m, int columns, int k) {
        int best = k;
        double largest = -1;
        for (int i = k; i < m; i++) {
            int at = 2 * (i * m + k);
            double size = Math.abs(a[at]) + Math.abs(a[at + 1]);
            if (size > largest) {
                largest = size;
                best = i;
            }
        }
        if (best != k) {
            swap(a, 2 * k * m, 2 * best * m, 2 * m);
            swap(b, 2 * k * columns, 2 * best * columns, 2 * columns);
        }
    }

    private static void swap(double[] a, int p, int q, int n) {
        for (int i = 0; i < n; i++) {
            double kept = a[p + i];
            a[p + i] = a[q + i];
            a[q + i] = kept;
        }
    }

    private static void scale(double[] a, int from, int n, double fr, double fi) {
        for (int i = from; i < from + 2 * n; i += 2) {
            double re = a[i] * fr - a[i + 1] * fi;
            a[i + 1] = a[i] * fi + a[i + 1] * fr;
            a[i] = re;
        }
    }

    private static void subtract(double[] a, int to, int from, int n, double fr, double fi) {
        for (int i = 0; i < 2 * n; i += 2) {
            double re = a[from + i];
            double im = a[from + i + 1];
            a[to + i] -= re * fr - im * fi;
            a[to + i + 1] -= re * fi + im * fr;
        }
    }
}
