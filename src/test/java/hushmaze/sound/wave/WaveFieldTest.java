package hushmaze.sound.wave;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Validation: the field of a plane wave in a duct, exp(-jkx). Property: fields are continuous and agree with answers. */
class WaveFieldTest {
    private static final double FREQUENCY = 1234;
    private static final WaveSpace DUCT =
            Spaces.space(List.of(Spaces.air(0, 0, 1, 0.1)), Spaces.low(0, 0, 0.1), Spaces.high(1, 0, 0.1));

    @Test
    void planeWaveInADuct() {
        WaveField field = new WaveSolver(DUCT, WaveAccuracy.FINE).solveField(FREQUENCY);
        double k = 2 * Math.PI * FREQUENCY / Spaces.C;
        for (double x = 0; x <= 1; x += 0.0625) {
            Complex p = field.pressure(x, 0.03).orElseThrow();
            assertThat(p.re()).isCloseTo(Math.cos(k * x), within(1e-4));
            assertThat(p.im()).isCloseTo(-Math.sin(k * x), within(1e-4));
        }
        assertThat(field.pressure(0.5, 0.2)).isEmpty();
        assertThat(field.pressure(-0.1, 0.05)).isEmpty();
        assertThat(field.meanSquare(Spaces.flat(0.2, 0.01, 0.5, 0.07))).isCloseTo(1, within(1e-4));
    }

    @Test
    void gridHoldsThePoints() {
        WaveField field = new WaveSolver(Spaces.turn(0.1)).solveField(900);
        double[] xs = {0.02, 0.05, 0.1, 0.2};
        double[] ys = {0.03, 0.09};
        double[][] grid = field.grid(xs, ys, 0);
        for (int j = 0; j < ys.length; j++) {
            for (int i = 0; i < 3; i++) {
                Complex there = field.pressure(xs[i], ys[j]).orElseThrow();
                assertThat(grid[0][j * xs.length + i]).isEqualTo(there.re());
                assertThat(grid[1][j * xs.length + i]).isEqualTo(there.im());
            }
        }
        assertThat(field.pressure(0.2, 0.03)).isEmpty();
        assertThat(grid[0][3]).isNaN();
        assertThat(grid[1][3]).isNaN();
    }

    @Test
    void pressureIsContinuousWhereDegreesDiffer() {
        WaveSpace space = MazeSpaces.solid(MazeSpaces.flat(2, 0.5, 0.3, 0.03, 20_000), 0.12, 0.03);
        WaveMesh mesh = new WaveSolver(space).system(700, () -> {}).mesh;
        assertThat(mesh.matrices).anyMatch(m -> m.shared.length < m.own.shape.shared.length);
        WaveField field = new WaveSolver(space).solveField(700);
        int seen = 0;
        for (int axis = 0; axis < 3; axis++) {
            for (double line : mesh.cuts[axis].line) {
                for (double s = 0.05; s < 1; s += 0.13) {
                    double[] below = {0.5 * s, 0.3 * s, 0.12 * s};
                    double[] above = below.clone();
                    below[axis] = line - 1e-9;
                    above[axis] = line + 1e-9;
                    Optional<Complex> one = field.pressure(below[0], below[1], below[2]);
                    Optional<Complex> other = field.pressure(above[0], above[1], above[2]);
                    if (one.isPresent() && other.isPresent()) {
                        seen++;
                        Complex step =
                                one.orElseThrow().plus(other.orElseThrow().times(-1));
                        assertThat(step.absSquared()).isLessThan(1e-12);
                    }
                }
            }
        }
        assertThat(seen).isGreaterThan(50);
    }

    @Test
    void pressureIsContinuousFromAirToLiner() {
        WaveField field = new WaveSolver(MazeSpaces.flat(2, 0.5, 0.3, 0.03, 20_000)).solveField(700);
        for (double x = 0.05; x < 0.4; x += 0.05) {
            Complex below = field.pressure(x, 0.03 - 1e-9).orElseThrow();
            Complex above = field.pressure(x, 0.03 + 1e-9).orElseThrow();
            assertThat(below.plus(above.times(-1)).absSquared()).isLessThan(1e-12);
        }
    }

    @Test
    void meanSquareIsThatOfThePoints() {
        WaveSpace maze = MazeSpaces.flat(2, 0.5, 0.3, 0.03, 20_000);
        Cuboid room = Spaces.flat(0.101, 0.05, 0.307, 0.09);
        List<Cuboid> rooms = List.of(room, Spaces.flat(0.1, 0.2, 0.3, 0.25));
        WaveAnswer answer = new WaveSolver(maze, WaveAccuracy.STANDARD, rooms).solve(700);
        WaveField field = new WaveSolver(maze).solveField(700);
        double sum = 0;
        int n = 60;
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double x = room.x0() + (i + 0.5) / n * (room.x1() - room.x0());
                double y = room.y0() + (j + 0.5) / n * (room.y1() - room.y0());
                sum += field.pressure(x, y).orElseThrow().absSquared() / (n * n);
            }
        }
        assertThat(answer.meanSquare().get(0)).isCloseTo(sum, within(1e-3 * sum));
        assertThat(answer.meanSquare().get(1)).isLessThan(answer.meanSquare().get(0));
        assertThatThrownBy(() -> field.meanSquare(Spaces.flat(2, 2, 3, 3))).isInstanceOf(InvalidValue.class);
    }
}
