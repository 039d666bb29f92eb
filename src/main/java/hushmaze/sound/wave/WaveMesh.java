package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.sound.porous.Complex;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/** Cells, functions and unknowns of a space at one frequency. */
final class WaveMesh {
    /** Widths that differ by less are the same when matrices are shared, m. */
    private static final double SAME_WIDTH = 1e-10;

    /** Most unknowns of one system. */
    static final int MOST_UNKNOWNS = 400_000;
    /** Most products of functions in the box around a space, rigid ground counted too. */
    private static final int MOST_FUNCTIONS = 40_000_000;

    /** A cell: its interval on each axis, its medium, and its weight. */
    record Cell(int[] at, int medium, double weight) {}

    /** Axes x, y, z. */
    final AxisCuts[] cuts = new AxisCuts[3];
    /** Functions along each of them. */
    final AxisGrid[] grids = new AxisGrid[3];

    final List<Cell> cells = new ArrayList<>();
    /** Matrix of each cell. */
    final List<CellEquations> matrices = new ArrayList<>();

    private final List<int[]> unknowns = new ArrayList<>();
    private final UnknownNumbers numbers;

    private final CellDegrees degrees;
    /** Whether the pressure on the lowest plane along z is zero. */
    final boolean softFloor;

    private record Key(int medium, List<Integer> degrees, List<Long> widths) {}

    private record SharedKey(Key own, boolean onFloor, List<Integer> degrees) {}

    WaveMesh(BlockGrid blocks, double wavenumber, double frequency, WaveAccuracy accuracy, Runnable pause) {
        softFloor = blocks.softFloor;
        Complex[] density = new Complex[blocks.media.size()];
        Complex[] wave = new Complex[blocks.media.size()];
        for (int i = 0; i < density.length; i++) {
            density[i] = new Complex(1, 0).dividedBy(blocks.media.get(i).densityRatio(frequency));
            wave[i] = blocks.media.get(i).squaredIndex(frequency).times(wavenumber * wavenumber);
        }
        double[] sizes = Arrays.stream(wave)
                .mapToDouble(k2 -> Math.sqrt(Math.sqrt(k2.absSquared())))
                .toArray();
        ShortestWaves[] waves = new ShortestWaves[3];
        for (int axis = 0; axis < 3; axis++) {
            waves[axis] = new ShortestWaves(blocks, sizes, axis);
            cuts[axis] = new AxisCuts(blocks, axis, waves[axis].inSlabs(), accuracy);
        }
        requireFew((double) cuts[0].intervals() * cuts[1].intervals() * cuts[2].intervals());
        collect(blocks);
        degrees = new CellDegrees(blocks, cuts, cells, waves, accuracy);
        for (int axis = 0; axis < 3; axis++) {
            grids[axis] = new AxisGrid(cuts[axis].line, cuts[axis].constant, degrees.most(axis));
        }
        requireFew((double) grids[0].size() * grids[1].size() * grids[2].size());
        requireFewUnknowns(cells.stream().mapToLong(this::least).sum());
        numbers = new UnknownNumbers(blocks, cuts, grids);
        Map<Key, CellMatrix> known = new HashMap<>();
        Map<SharedKey, CellEquations> knownShared = new HashMap<>();
        for (Cell cell : cells) {
            pause.run();
            Key key = key(cell);
            CellMatrix own = known.computeIfAbsent(key, k -> matrix(cell, density[cell.medium], wave[cell.medium]));
            List<CellEquations.Part> parts = CellEquations.parts(own.shape, degrees, cell.at);
            boolean onFloor = blocks.softFloor && cell.at[2] == 0;
            CellEquations equations = knownShared.computeIfAbsent(
                    new SharedKey(
                            key,
                            onFloor,
                            parts.stream()
                                    .flatMapToInt(part -> Arrays.stream(part.degree()))
                                    .boxed()
                                    .toList()),
                    k -> new CellEquations(own, parts, onFloor));
            matrices.add(equations);
            unknowns.add(number(cell, equations));
        }
    }

    private static void requireFewUnknowns(long least) {
        if (least > MOST_UNKNOWNS) {
            throw tooMany("more", MOST_UNKNOWNS);
        }
    }

    private static void requireFew(double functions) {
        if (functions > MOST_FUNCTIONS) {
            throw tooMany(String.format(Locale.ROOT, "%.0f with those of rigid ground", functions), MOST_FUNCTIONS);
        }
    }

    private static InvalidValue tooMany(String given, int most) {
        return new InvalidValue("unknowns", given, "at most " + most, "");
    }

    private void collect(BlockGrid blocks) {
        for (int x = 0; x < cuts[0].intervals(); x++) {
            for (int y = 0; y < cuts[1].intervals(); y++) {
                for (int z = 0; z < cuts[2].intervals(); z++) {
                    int bx = cuts[0].blockInterval[x];
                    int by = cuts[1].blockInterval[y];
                    int bz = cuts[2].blockInterval[z];
                    if (blocks.reached(bx, by, bz)) {
                        cells.add(new Cell(new int[] {x, y, z}, blocks.medium(bx, by, bz), blocks.height(bx, by, bz)));
                        requireFewUnknowns(cells.size());
                    }
                }
            }
        }
    }

    /** Unknowns that a cell adds at least: those of its low sides. */
    private long least(Cell cell) {
        long functions = 1;
        long inner = 1;
        for (int a = 0; a < 3; a++) {
            IntervalBasis basis = basis(cell, a);
            functions *= basis.inner + basis.hats / 2;
            inner *= basis.inner;
        }
        return functions - inner;
    }

    private IntervalBasis basis(Cell cell, int axis) {
        return grids[axis].basis(degrees.of(axis, cell.at));
    }

    private double width(Cell cell, int axis) {
        return cuts[axis].width(cell.at[axis]);
    }

    private Key key(Cell cell) {
        List<Integer> degrees = new ArrayList<>(3);
        List<Long> widths = new ArrayList<>(3);
        for (int axis = 0; axis < 3; axis++) {
            degrees.add(basis(cell, axis).size());
            widths.add(Math.round(width(cell, axis) / SAME_WIDTH));
        }
        return new Key(cell.medium, degrees, widths);
    }

    private CellMatrix matrix(Cell cell, Complex overDensity, Complex waveSquared) {
        CellShape shape = new CellShape(basis(cell, 0), basis(cell, 1), basis(cell, 2));
        double[] width = {width(cell, 0), width(cell, 1), width(cell, 2)};
        return new CellMatrix(shape, width, overDensity, waveSquared);
    }

    private int[] number(Cell cell, CellEquations matrix) {
        int[] out = new int[matrix.size];
        int[] function = new int[3];
        int next = 0;
        for (int[] local : matrix.shared) {
            for (int a = 0; a < 3; a++) {
                function[a] = grids[a].function(cell.at[a], local[a]);
            }
            out[next++] = numbers.of(function, cell.at);
        }
        while (next < out.length) {
            out[next++] = numbers.next();
        }
        return out;
    }

    /** Degrees of the intervals of a mouth along one of the axes across it. */
    int[] degrees(Mouth mouth, int axis) {
        return degrees.atMouth(mouth, axis);
    }

    /** Unknown of a product of functions, one of each axis, that is not zero on a filled cell with the given intervals. */
    int unknown(int[] function, int[] cell) {
        return numbers.of(function, cell);
    }

    /** Unknowns of a cell: shared functions in the order of its shape, then kept inner ones. */
    int[] unknowns(int cell) {
        return unknowns.get(cell);
    }

    /** Number of unknowns. */
    int count() {
        return numbers.count();
    }

    /** A cell as a part of the system. */
    Element element(int cell) {
        CellEquations matrix = matrices.get(cell);
        return new Element(unknowns.get(cell), matrix.own.kept.length, matrix.re, matrix.im, cells.get(cell).weight);
    }
}
