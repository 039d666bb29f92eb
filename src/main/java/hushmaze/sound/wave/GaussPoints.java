package hushmaze.sound.wave;

/** Points and weights of Gauss and Legendre's quadrature on the unit interval; n points are exact to degree 2n - 1. */
final class GaussPoints {
    private static final int STEPS = 60;

    final double[] point;
    final double[] weight;

    GaussPoints(int n) {
        point = new double[n];
        weight = new double[n];
        for (int i = 0; i < n; i++) {
            double x = Math.cos(Math.PI * (i + 0.75) / (n + 0.5));
            double slope = 0;
            for (int step = 0; step < STEPS; step++) {
                double before = 1;
                double here = x;
                for (int j = 2; j <= n; j++) {
                    double next = ((2 * j - 1) * x * here - (j - 1) * before) / j;
                    before = here;
                    here = next;
                }
                slope = n * (x * here - before) / (x * x - 1);
                double change = here / slope;
                x -= change;
                if (Math.abs(change) < 1e-15) {
                    break;
                }
            }
            point[i] = (1 + x) / 2;
            weight[i] = 1 / ((1 - x * x) * slope * slope);
        }
    }
}
