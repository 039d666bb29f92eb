package hushmaze.sound.wave;

import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** Cells, functions and unknowns of a space at one frequency. */
final class WaveMesh {
    /** Widths that differ by less are the same when matrices are shared, m. */
    private static final double SAME_WIDTH = 1e-10;

    /** A cell: its interval on each axis, its medium, and its weight. */
    record Cell(int x, int y, int z, int medium, double weight) {
        int interval(int axis) {
            return axis == 0 ? x : axis == 1 ? y : z;
        }
    }

    /** Axes x, y, z. */
    final AxisCuts[] cuts = new AxisCuts[3];
    /** In the order in which they are added. */
    final List<Cell> cells;
    /** Matrix of each cell. */
    final List<CellMatrix> matrices = new ArrayList<>();

    private final List<int[]> unknowns = new ArrayList<>();
    private final int[] shared;
    private int count;

    private record Key(int medium, List<Integer> degrees, List<Long> widths) {}

    WaveMesh(BlockGrid blocks, SharpEdges edges, double wavenumber, double frequency, WaveAccuracy accuracy) {
        Complex[] density = new Complex[blocks.media.size()];
        Complex[] wave = new Complex[blocks.media.size()];
        for (int i = 0; i < density.length; i++) {
            density[i] = new Complex(1, 0).dividedBy(blocks.media.get(i).densityRatio(frequency));
            wave[i] = blocks.media.get(i).squaredIndex(frequency).times(wavenumber * wavenumber);
        }
        for (int axis = 0; axis < 3; axis++) {
            cuts[axis] = new AxisCuts(blocks, edges, axis, shortest(blocks, axis, wave), accuracy);
        }
        cells = new CellOrder(blocks, cuts).cells();
        shared = new int[cuts[0].grid.size() * cuts[1].grid.size() * cuts[2].grid.size()];
        Arrays.fill(shared, -1);
        Map<Key, CellMatrix> known = new HashMap<>();
        for (Cell cell : cells) {
            CellMatrix matrix =
                    known.computeIfAbsent(key(cell), k -> matrix(cell, density[cell.medium()], wave[cell.medium()]));
            matrices.add(matrix);
            unknowns.add(number(cell, matrix));
        }
    }

    /** Largest wavenumber in each slab of cells between two planes across an axis, 1/m. */
    private static double[] shortest(BlockGrid blocks, int axis, Complex[] wave) {
        double[] most = new double[blocks.cellsAlong(axis)];
        for (int x = 0; x < blocks.cellsAlong(0); x++) {
            for (int y = 0; y < blocks.cellsAlong(1); y++) {
                for (int z = 0; z < blocks.cellsAlong(2); z++) {
                    int medium = blocks.medium(x, y, z);
                    if (medium != BlockGrid.RIGID) {
                        int at = axis == 0 ? x : axis == 1 ? y : z;
                        most[at] = Math.max(most[at], Math.sqrt(Math.sqrt(wave[medium].absSquared())));
                    }
                }
            }
        }
        return most;
    }

    private IntervalBasis basis(Cell cell, int axis) {
        return cuts[axis].grid.basis[cell.interval(axis)];
    }

    private double width(Cell cell, int axis) {
        return cuts[axis].grid.width(cell.interval(axis));
    }

    private Key key(Cell cell) {
        List<Integer> degrees = new ArrayList<>(3);
        List<Long> widths = new ArrayList<>(3);
        for (int axis = 0; axis < 3; axis++) {
            degrees.add(basis(cell, axis).size());
            widths.add(Math.round(width(cell, axis) / SAME_WIDTH));
        }
        return new Key(cell.medium(), degrees, widths);
    }

    private CellMatrix matrix(Cell cell, Complex overDensity, Complex waveSquared) {
        CellShape shape = new CellShape(basis(cell, 0), basis(cell, 1), basis(cell, 2));
        double[] width = {width(cell, 0), width(cell, 1), width(cell, 2)};
        return new CellMatrix(shape, width, overDensity, waveSquared);
    }

    private int[] number(Cell cell, CellMatrix matrix) {
        int[] out = new int[matrix.size];
        int next = 0;
        for (int[] f : matrix.shape.shared) {
            int at = place(
                    cuts[0].grid.function(cell.x(), f[0]),
                    cuts[1].grid.function(cell.y(), f[1]),
                    cuts[2].grid.function(cell.z(), f[2]));
            if (shared[at] < 0) {
                shared[at] = count++;
            }
            out[next++] = shared[at];
        }
        while (next < out.length) {
            out[next++] = count++;
        }
        return out;
    }

    private int place(int x, int y, int z) {
        return (x * cuts[1].grid.size() + y) * cuts[2].grid.size() + z;
    }

    /** Number of the unknown of a product of functions, one of each axis. */
    int unknown(int x, int y, int z) {
        return shared[place(x, y, z)];
    }

    /** Unknowns of a cell: shared functions in the order of its shape, then kept inner ones. */
    int[] unknowns(int cell) {
        return unknowns.get(cell);
    }

    /** Number of unknowns. */
    int count() {
        return count;
    }

    /** A cell as a part of the system. */
    Element element(int cell) {
        CellMatrix matrix = matrices.get(cell);
        return new Element(
                unknowns.get(cell),
                matrix.kept.length,
                matrix.re,
                matrix.im,
                cells.get(cell).weight());
    }
}
