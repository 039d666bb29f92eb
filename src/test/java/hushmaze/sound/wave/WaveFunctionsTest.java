package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Validation: functions on an interval and spherical Bessel functions against quadrature; the lowest eigenvalues against
 * (nπ)².
 */
class WaveFunctionsTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 3, 5, 9, 16, 30})
    void massesOfAnInterval(int degree) {
        IntervalBasis basis = IntervalBasis.ofDegree(degree);
        GaussPoints gauss = new GaussPoints(degree + 1);
        double[][] mass = new double[degree + 1][degree + 1];
        for (int q = 0; q <= degree; q++) {
            double[] values = basis.values(gauss.point[q]);
            for (int a = 0; a <= degree; a++) {
                for (int b = 0; b <= degree; b++) {
                    mass[a][b] += gauss.weight[q] * values[a] * values[b];
                }
            }
        }
        for (int a = 0; a <= degree; a++) {
            for (int b = 0; b <= degree; b++) {
                assertThat(basis.mass(a, b)).isCloseTo(mass[a][b], within(1e-11));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3, 5, 9})
    void functionsOfALowerDegreeAreSumsOfThoseOfAHigher(int degree) {
        IntervalBasis coarse = IntervalBasis.ofDegree(degree);
        for (int more : new int[] {0, 1, 4}) {
            IntervalBasis fine = IntervalBasis.ofDegree(degree + more);
            double[][] into = coarse.into(fine);
            for (double x = 0; x <= 1; x += 0.09) {
                double[] values = fine.values(x);
                double[] expected = coarse.values(x);
                for (int i = 0; i < coarse.inner; i++) {
                    double sum = 0;
                    for (int q = 0; q < fine.inner; q++) {
                        sum += into[i][q] * values[fine.hats + q];
                    }
                    assertThat(sum).isCloseTo(expected[coarse.hats + i], within(1e-11));
                }
            }
        }
    }

    @Test
    void lowestEigenvaluesAreThoseOfAString() {
        IntervalBasis basis = IntervalBasis.ofDegree(16);
        for (int n = 1; n <= 4; n++) {
            int which = n;
            assertThat(Arrays.stream(basis.eigenvalue).boxed())
                    .anyMatch(e -> Math.abs(e / Math.pow(which * Math.PI, 2) - 1) < 1e-6);
        }
        assertThat(basis.values(0)).startsWith(1, 0);
        assertThat(basis.values(1)[1]).isEqualTo(1);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, 1e-13, 1e-6, 0.1, 1, 3.14159265, 7.5, 12, 40, 300})
    void sphericalBesselFunctions(double x) {
        int last = 12;
        double[] found = SphericalBessel.upTo(last, x);
        GaussPoints gauss = new GaussPoints(240);
        for (int m = 0; m <= last; m++) {
            // j_m(x) = 1/2 ∫ P_m(ξ) cos(xξ - mπ/2) dξ from -1 to 1
            double sum = 0;
            for (int q = 0; q < gauss.point.length; q++) {
                double xi = 2 * gauss.point[q] - 1;
                sum += gauss.weight[q] * legendre(m, xi) * Math.cos(x * xi - m * Math.PI / 2);
            }
            assertThat(found[m]).as("order %s", m).isCloseTo(sum, within(1e-12));
        }
    }

    private static double legendre(int n, double x) {
        double before = 1;
        double here = x;
        for (int j = 2; j <= n; j++) {
            double next = ((2 * j - 1) * x * here - (j - 1) * before) / j;
            before = here;
            here = next;
        }
        return n == 0 ? 1 : here;
    }
}
