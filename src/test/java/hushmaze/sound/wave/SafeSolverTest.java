package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: every solution satisfies its equations, with or without pivoting; seeded. */
class SafeSolverTest {
    private static final Runnable GO_ON = () -> {};
    private static final long MEMORY = 100_000_000;

    private static SafeSolver solver(List<Element> elements, int unknowns) {
        List<int[]> members = elements.stream().map(Element::unknown).toList();
        return new SafeSolver(
                new FrontalPlan(members, new int[members.size()], unknowns), elements, unknowns, MEMORY, GO_ON);
    }

    private static Element element(int[] unknown, double... re) {
        return new Element(unknown, 0, re, new double[re.length], 1);
    }

    @Test
    void aZeroPivotIsPivotedAround() {
        // x1 = 2, x0 = 3: without pivoting the first step divides by zero
        SafeSolver solver = solver(List.of(element(new int[] {0, 1}, 0, 1, 1, 0)), 2);
        double[][] x = solver.solve(new double[] {2, 3}, new double[2]);
        assertThat(solver.neededPivoting()).isTrue();
        assertThat(x[0]).containsExactly(new double[] {3, 2}, within(1e-15));
        assertThat(solver.worst()).isLessThan(1e-15);
    }

    @Test
    void aChainWithZeroDiagonalIsPivotedAround() {
        Random random = new Random(11);
        List<Element> elements = new ArrayList<>();
        int n = 120;
        for (int i = 0; i + 3 < n; i++) {
            double[] re = new double[16];
            for (int r = 0; r < 4; r++) {
                for (int c = 0; c < r; c++) {
                    re[4 * r + c] = random.nextGaussian();
                    re[4 * c + r] = re[4 * r + c];
                }
            }
            elements.add(element(new int[] {i, i + 1, i + 2, i + 3}, re));
        }
        SafeSolver solver = solver(elements, n);
        double[] right = random.doubles(n).toArray();
        solver.solve(right, new double[n]);
        assertThat(solver.neededPivoting()).isTrue();
        assertThat(solver.worst()).isLessThan(1e-10);
    }

    @Test
    void aSoundMatrixNeedsNoPivoting() {
        Random random = new Random(5);
        List<Element> elements = new ArrayList<>();
        int n = 400;
        for (int i = 0; i < n; i++) {
            int[] unknown = random.ints(0, n).distinct().limit(5).toArray();
            double[] re = new double[25];
            double[] im = new double[25];
            for (int r = 0; r < 5; r++) {
                for (int c = 0; c <= r; c++) {
                    re[5 * r + c] = random.nextGaussian() + (r == c ? 8 : 0);
                    im[5 * r + c] = random.nextGaussian();
                    re[5 * c + r] = re[5 * r + c];
                    im[5 * c + r] = im[5 * r + c];
                }
            }
            elements.add(new Element(unknown, 0, re, im, 0.7));
        }
        for (int i = 0; i < n; i++) {
            elements.add(element(new int[] {i}, 1));
        }
        SafeSolver solver = solver(elements, n);
        solver.solve(random.doubles(n).toArray(), random.doubles(n).toArray());
        assertThat(solver.neededPivoting()).isFalse();
        assertThat(solver.worst()).isLessThan(1e-12);
    }

    @Test
    void aSingularMatrixIsAnError() {
        SafeSolver solver = solver(List.of(element(new int[] {0, 1}, 1, 1, 1, 1)), 2);
        assertThatThrownBy(() -> solver.solve(new double[] {1, 2}, new double[2]))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("residual");
    }

    @Test
    void pivotingThatDoesNotFitIsAnError() {
        List<Element> elements = List.of(element(new int[] {0, 1}, 0, 1, 1, 0));
        FrontalPlan plan = new FrontalPlan(List.of(new int[] {0, 1}), new int[1], 2);
        SafeSolver solver = new SafeSolver(plan, elements, 2, 10, GO_ON);
        assertThatThrownBy(() -> solver.solve(new double[] {1, 2}, new double[2]))
                .isInstanceOf(InvalidValue.class)
                .hasMessageContaining("pivoting");
    }

    /** The inner functions of a cell at their own resonance are kept, and nothing is lost. */
    @Test
    void resonanceOfACellIsHarmless() {
        double width = 0.1;
        WaveSpace duct = Spaces.space(
                List.of(Spaces.air(0, 0, width, width)), Spaces.low(0, 0, width), Spaces.high(width, 0, width));
        // the lowest inner eigenvalue is that of a half wave to many digits, whatever the degree
        for (double off : new double[] {0, 1e-13, 1e-10, 1e-7, 1e-5}) {
            double frequency = Math.sqrt(2) * Spaces.C / (2 * width) * (1 + off);
            WaveAnswer answer = new WaveSolver(duct).solve(frequency);
            assertThat(answer.transmittedPower(0)).isCloseTo(1, within(1e-8));
            assertThat(answer.residual()).isLessThan(1e-10);
        }
    }
}
