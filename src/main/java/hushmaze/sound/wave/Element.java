package hushmaze.sound.wave;

/**
 * A part of the system of equations.
 *
 * @param unknown numbers of the unknowns it couples
 * @param late how many of them, at the end, must not be eliminated before the others
 * @param re symmetric matrix, row by row
 * @param im its imaginary part
 * @param scale factor of the matrix
 */
record Element(int[] unknown, int late, double[] re, double[] im, double scale) {
    int size() {
        return unknown.length;
    }

    /** y -= A x. */
    void subtractProduct(double[] xRe, double[] xIm, double[] yRe, double[] yIm) {
        int n = unknown.length;
        for (int i = 0; i < n; i++) {
            double sumRe = 0;
            double sumIm = 0;
            for (int j = 0; j < n; j++) {
                double a = re[i * n + j];
                double b = im[i * n + j];
                double x = xRe[unknown[j]];
                double y = xIm[unknown[j]];
                sumRe += a * x - b * y;
                sumIm += a * y + b * x;
            }
            yRe[unknown[i]] -= scale * sumRe;
            yIm[unknown[i]] -= scale * sumIm;
        }
    }
}
