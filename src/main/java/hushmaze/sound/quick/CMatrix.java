package hushmaze.sound.quick;

/** A small dense matrix of complex numbers, changed in place. */
final class CMatrix {
    final int rows;
    final int columns;
    final double[] re;
    final double[] im;

    CMatrix(int rows, int columns) {
        this.rows = rows;
        this.columns = columns;
        re = new double[rows * columns];
        im = new double[rows * columns];
    }

    static CMatrix identity(int n) {
        CMatrix unit = new CMatrix(n, n);
        for (int i = 0; i < n; i++) {
            unit.re[i * n + i] = 1;
        }
        return unit;
    }

    CMatrix copy() {
        CMatrix copy = new CMatrix(rows, columns);
        System.arraycopy(re, 0, copy.re, 0, re.length);
        System.arraycopy(im, 0, copy.im, 0, im.length);
        return copy;
    }

    void set(int row, int column, double valueRe, double valueIm) {
        re[row * columns + column] = valueRe;
        im[row * columns + column] = valueIm;
    }

    CMatrix transposed() {
        CMatrix t = new CMatrix(columns, rows);
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                t.re[j * rows + i] = re[i * columns + j];
                t.im[j * rows + i] = im[i * columns + j];
            }
        }
        return t;
    }

    CMatrix times(CMatrix b) {
        CMatrix product = new CMatrix(rows, b.columns);
        for (int i = 0; i < rows; i++) {
            product.addRows(i * b.columns, 0, b.columns, this, i * columns, 0, columns, b, 1);
        }
        return product;
    }

    /** The product with another matrix where it is known to be symmetric: only half of it is worked out. */
    CMatrix timesToSymmetric(CMatrix b) {
        CMatrix product = new CMatrix(rows, rows);
        for (int i = 0; i < rows; i++) {
            product.addRows(i * rows, i, rows, this, i * columns, 0, columns, b, 1);
            for (int j = 0; j < i; j++) {
                product.re[i * rows + j] = product.re[j * rows + i];
                product.im[i * rows + j] = product.im[j * rows + i];
            }
        }
        return product;
    }

    /**
     * Adds to the columns from low to high of a row a sign times the sum of rows of b, each times a factor: two at a time, so that what
     * is added to is read and written half as often.
     *
     * @param to where the row starts
     * @param factors that stand from a place on, those from first to end
     */
    private void addRows(
            int to, int low, int high, CMatrix factors, int place, int first, int end, CMatrix b, double sign) {
        int n = b.columns;
        double[] br = b.re;
        double[] bi = b.im;
        int k = first;
        for (; k < end - 1; k += 2) {
            double ar = sign * factors.re[place + k];
            double ai = sign * factors.im[place + k];
            double cr = sign * factors.re[place + k + 1];
            double ci = sign * factors.im[place + k + 1];
            int one = k * n;
            int two = one + n;
            for (int j = low; j < high; j++) {
                re[to + j] += ar * br[one + j] - ai * bi[one + j] + cr * br[two + j] - ci * bi[two + j];
                im[to + j] += ar * bi[one + j] + ai * br[one + j] + cr * bi[two + j] + ci * br[two + j];
            }
        }
        if (k < end) {
            double ar = sign * factors.re[place + k];
            double ai = sign * factors.im[place + k];
            for (int j = low; j < high; j++) {
                re[to + j] += ar * br[k * n + j] - ai * bi[k * n + j];
                im[to + j] += ar * bi[k * n + j] + ai * br[k * n + j];
            }
        }
    }

    /** The upper left part, or more rows and columns from a place on. */
    CMatrix part(int row, int column, int height, int width) {
        CMatrix part = new CMatrix(height, width);
        for (int i = 0; i < height; i++) {
            System.arraycopy(re, (row + i) * columns + column, part.re, i * width, width);
            System.arraycopy(im, (row + i) * columns + column, part.im, i * width, width);
        }
        return part;
    }

    /** Some rows and columns. */
    CMatrix chosen(int[] chosenRows, int[] chosenColumns) {
        CMatrix part = new CMatrix(chosenRows.length, chosenColumns.length);
        for (int i = 0; i < chosenRows.length; i++) {
            for (int j = 0; j < chosenColumns.length; j++) {
                int from = chosenRows[i] * columns + chosenColumns[j];
                part.re[i * part.columns + j] = re[from];
                part.im[i * part.columns + j] = im[from];
            }
        }
        return part;
    }

    CMatrix chosenRows(int[] chosen) {
        CMatrix part = new CMatrix(chosen.length, columns);
        for (int i = 0; i < chosen.length; i++) {
            System.arraycopy(re, chosen[i] * columns, part.re, i * columns, columns);
            System.arraycopy(im, chosen[i] * columns, part.im, i * columns, columns);
        }
        return part;
    }

    void put(int row, int column, CMatrix part) {
        for (int i = 0; i < part.rows; i++) {
            System.arraycopy(part.re, i * part.columns, re, (row + i) * columns + column, part.columns);
            System.arraycopy(part.im, i * part.columns, im, (row + i) * columns + column, part.columns);
        }
    }

    /** Adds a multiple of another matrix. */
    CMatrix add(CMatrix b, double factor) {
        for (int i = 0; i < re.length; i++) {
            re[i] += factor * b.re[i];
            im[i] += factor * b.im[i];
        }
        return this;
    }

    CMatrix addIdentity(double factor) {
        for (int i = 0; i < rows; i++) {
            re[i * columns + i] += factor;
        }
        return this;
    }

    /** Multiplies row i by the i-th entry of a vector. */
    CMatrix scaleRows(CVector by) {
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                multiply(i * columns + j, by.re[i], by.im[i]);
            }
        }
        return this;
    }

    /** Multiplies column j by the j-th entry of a vector. */
    CMatrix scaleColumns(CVector by) {
        for (int i = 0; i < rows; i++) {
            for (int j = 0; j < columns; j++) {
                multiply(i * columns + j, by.re[j], by.im[j]);
            }
        }
        return this;
    }

    private void multiply(int at, double byRe, double byIm) {
        double old = re[at];
        re[at] = old * byRe - im[at] * byIm;
        im[at] = old * byIm + im[at] * byRe;
    }

    /** Solves this X = b by elimination with row pivots; this and b are overwritten, b holds X after it. */
    CMatrix solve(CMatrix b) {
        int n = rows;
        int m = b.columns;
        for (int k = 0; k < n; k++) {
            int pivot = k;
            double largest = -1;
            for (int i = k; i < n; i++) {
                double size = Math.abs(re[i * n + k]) + Math.abs(im[i * n + k]);
                if (size > largest) {
                    largest = size;
                    pivot = i;
                }
            }
            if (pivot != k) {
                swap(pivot, k);
                b.swap(pivot, k);
            }
            double pr = re[k * n + k];
            double pi = im[k * n + k];
            double size = pr * pr + pi * pi;
            double ir = pr / size;
            double ii = -pi / size;
            for (int i = k + 1; i < n; i++) {
                double ar = re[i * n + k];
                double ai = im[i * n + k];
                if (ar == 0 && ai == 0) {
                    continue;
                }
                double fr = ar * ir - ai * ii;
                double fi = ar * ii + ai * ir;
                subtract(i * n, k * n, k + 1, n, fr, fi);
                b.subtract(i * m, k * m, 0, m, fr, fi);
            }
            b.scaleRow(k, ir, ii);
            scaleRow(k, ir, ii);
        }
        for (int i = n - 2; i >= 0; i--) {
            b.addRows(i * m, 0, m, this, i * n, i + 1, n, b, -1);
        }
        return b;
    }

    private void scaleRow(int row, double byRe, double byIm) {
        for (int j = row * columns; j < (row + 1) * columns; j++) {
            multiply(j, byRe, byIm);
        }
    }

    private void subtract(int to, int from, int low, int high, double fr, double fi) {
        for (int j = low; j < high; j++) {
            double br = re[from + j];
            double bi = im[from + j];
            re[to + j] -= fr * br - fi * bi;
            im[to + j] -= fr * bi + fi * br;
        }
    }

    private void swap(int a, int b) {
        for (int j = 0; j < columns; j++) {
            double r = re[a * columns + j];
            re[a * columns + j] = re[b * columns + j];
            re[b * columns + j] = r;
            double i = im[a * columns + j];
            im[a * columns + j] = im[b * columns + j];
            im[b * columns + j] = i;
        }
    }
}
