package hushmaze.sound.wave;

import hushmaze.quantity.InvalidValue;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.sound.porous.Complex;
import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;

/** Pressure everywhere in a space at one frequency, for a plane wave of amplitude 1 that comes in through the inlet. */
public final class WaveField {
    private final WaveMesh mesh;
    private final double[] re;
    private final double[] im;
    /** Number of the cell at each product of intervals; -1 where it is rigid. */
    private final int[] cellAt;
    /** Coefficients of each cell's functions in the order of the axes, real and imaginary, once they were asked for. */
    private final double[][][] known;

    WaveField(WaveMesh mesh, double[] re, double[] im) {
        this.mesh = mesh;
        this.re = re;
        this.im = im;
        cellAt = new int[intervals(0) * intervals(1) * intervals(2)];
        Arrays.fill(cellAt, -1);
        for (int c = 0; c < mesh.cells.size(); c++) {
            cellAt[place(mesh.cells.get(c).at())] = c;
        }
        known = new double[mesh.cells.size()][][];
    }

    private int intervals(int axis) {
        return mesh.cuts[axis].intervals();
    }

    private int place(int[] at) {
        return (at[0] * intervals(1) + at[1]) * intervals(2) + at[2];
    }

    /** Pressure at a place of a flat space, m; nothing where it is rigid or no sound comes. */
    public Optional<Complex> pressure(double x, double y) {
        return pressure(x, y, 0);
    }

    /** Pressure at a place, m; nothing where it is rigid or no sound comes. z does not matter in a flat space. */
    public Optional<Complex> pressure(double x, double y, double z) {
        double[] where = {x, y, z};
        int[][] near = new int[3][];
        for (int a = 0; a < 3; a++) {
            int low = mesh.grids[a].intervalAt(where[a]);
            if (low < 0) {
                return Optional.empty();
            }
            // on a line the cell on either side will do
            boolean both = low + 1 < intervals(a) && mesh.cuts[a].line[low + 1] == where[a];
            near[a] = both ? new int[] {low, low + 1} : new int[] {low};
        }
        for (int i : near[0]) {
            for (int j : near[1]) {
                for (int k : near[2]) {
                    int[] at = {i, j, k};
                    if (cellAt[place(at)] >= 0) {
                        return Optional.of(value(cellAt[place(at)], where));
                    }
                }
            }
        }
        return Optional.empty();
    }

    /**
     * Pressure at all places of a grid, real parts then imaginary ones, row by row from the first y; not a number where it is
     * rigid or no sound comes.
     *
     * @param xs m
     * @param ys m
     * @param z m; does not matter in a flat space
     */
    public double[][] grid(double[] xs, double[] ys, double z) {
        Line[] columns = Arrays.stream(xs).mapToObj(x -> line(0, x)).toArray(Line[]::new);
        Line[] rows = Arrays.stream(ys).mapToObj(y -> line(1, y)).toArray(Line[]::new);
        Line level = line(2, z);
        double[][] out = new double[2][xs.length * ys.length];
        Arrays.fill(out[0], Double.NaN);
        Arrays.fill(out[1], Double.NaN);
        for (int j = 0; j < ys.length; j++) {
            for (int i = 0; i < xs.length; i++) {
                Optional<Complex> there = pressure(columns[i], rows[j], level);
                int at = j * xs.length + i;
                there.ifPresent(p -> {
                    out[0][at] = p.re();
                    out[1][at] = p.im();
                });
            }
        }
        return out;
    }

    /** A place on one axis: the interval it is in, -1 outside, and where in it, 0 to 1. */
    private record Line(double place, int interval, boolean between, double share, Map<IntervalBasis, double[]> known) {
        /** Values of the functions there. */
        double[] values(IntervalBasis basis) {
            return known.computeIfAbsent(basis, b -> b.values(share));
        }
    }

    private Line line(int axis, double place) {
        AxisGrid grid = mesh.grids[axis];
        int interval = grid.intervalAt(place);
        if (interval < 0) {
            return new Line(place, interval, false, 0, Map.of());
        }
        boolean between = interval + 1 < grid.intervals() && grid.line[interval + 1] == place;
        double share = (place - grid.line[interval]) / grid.width(interval);
        return new Line(place, interval, between, share, new HashMap<>());
    }

    private Optional<Complex> pressure(Line x, Line y, Line z) {
        if (x.interval() < 0 || y.interval() < 0 || z.interval() < 0) {
            return Optional.empty();
        }
        int cell = cellAt[place(new int[] {x.interval(), y.interval(), z.interval()})];
        if (cell >= 0) {
            IntervalBasis[] basis = basis(cell);
            double[][] values = {x.values(basis[0]), y.values(basis[1]), z.values(basis[2])};
            return Optional.of(value(coefficients(cell), values));
        }
        return x.between() || y.between() || z.between() ? pressure(x.place(), y.place(), z.place()) : Optional.empty();
    }

    private Complex value(int cell, double[] where) {
        double[][] values = new double[3][];
        for (int a = 0; a < 3; a++) {
            AxisGrid grid = mesh.grids[a];
            int interval = mesh.cells.get(cell).at()[a];
            values[a] = basis(cell)[a].values((where[a] - grid.line[interval]) / grid.width(interval));
        }
        return value(coefficients(cell), values);
    }

    private IntervalBasis[] basis(int cell) {
        return mesh.matrices.get(cell).own.shape.basis;
    }

    private static Complex value(double[][] coefficients, double[][] values) {
        double sumRe = 0;
        double sumIm = 0;
        int at = 0;
        for (double x : values[0]) {
            for (double y : values[1]) {
                for (double z : values[2]) {
                    sumRe += x * y * z * coefficients[0][at];
                    sumIm += x * y * z * coefficients[1][at++];
                }
            }
        }
        return new Complex(sumRe, sumIm);
    }

    private double[][] coefficients(int cell) {
        if (known[cell] == null) {
            known[cell] = recovered(cell);
        }
        return known[cell];
    }

    private double[][] recovered(int cell) {
        CellEquations equations = mesh.matrices.get(cell);
        CellMatrix matrix = equations.own;
        int[] unknowns = mesh.unknowns(cell);
        double[] ownRe =
                equations.own(Arrays.stream(unknowns).mapToDouble(u -> re[u]).toArray());
        double[] ownIm =
                equations.own(Arrays.stream(unknowns).mapToDouble(u -> im[u]).toArray());
        double[][] inner = matrix.inner(ownRe, ownIm);
        CellShape shape = matrix.shape;
        double[][] out = new double[2][shape.functionCount()];
        for (int i = 0; i < shape.shared.length; i++) {
            int at = shape.place(shape.shared[i][0], shape.shared[i][1], shape.shared[i][2]);
            out[0][at] = ownRe[i];
            out[1][at] = ownIm[i];
        }
        for (int q = 0; q < inner[0].length; q++) {
            int[] l = shape.inner(q);
            IntervalBasis[] b = shape.basis;
            int at = shape.place(b[0].hats + l[0], b[1].hats + l[1], b[2].hats + l[2]);
            out[0][at] = inner[0][q];
            out[1][at] = inner[1][q];
        }
        return out;
    }

    /**
     * Mean square of the pressure in the part of a block that is not rigid, over that of the incident plane wave.
     *
     * @throws InvalidValue if all of the block is rigid
     */
    public double meanSquare(Cuboid room) {
        double sum = 0;
        double volume = 0;
        for (int cell = 0; cell < mesh.cells.size(); cell++) {
            double[] part = new double[6];
            double own = mesh.cells.get(cell).weight();
            for (Axis axis : Axis.values()) {
                own *= overlap(cell, axis, room, part);
            }
            if (own > 0) {
                volume += own;
                sum += own * meanSquare(cell, part);
            }
        }
        if (volume == 0) {
            throw new InvalidValue("room", "a block in rigid ground", "a block that has air or liner in it", "");
        }
        return sum / volume;
    }

    /** Length that a cell and a room have in common, and from where to where in the cell, 0 to 1. */
    private double overlap(int cell, Axis axis, Cuboid room, double[] part) {
        int a = axis.ordinal();
        AxisGrid grid = mesh.grids[a];
        int interval = mesh.cells.get(cell).at()[a];
        if (grid.isConstant()) {
            part[2 * a + 1] = 1;
            return 1;
        }
        double low = Math.max(grid.line[interval], room.low(axis));
        double high = Math.min(grid.line[interval + 1], room.high(axis));
        part[2 * a] = (low - grid.line[interval]) / grid.width(interval);
        part[2 * a + 1] = (high - grid.line[interval]) / grid.width(interval);
        return Math.max(0, high - low);
    }

    private double meanSquare(int cell, double[] part) {
        double[][][] values = new double[3][][];
        double[][] weights = new double[3][];
        for (int a = 0; a < 3; a++) {
            IntervalBasis basis = basis(cell)[a];
            GaussPoints gauss = new GaussPoints(basis.hats == 0 ? 1 : basis.size());
            weights[a] = gauss.weight;
            double low = part[2 * a];
            double size = part[2 * a + 1] - low;
            values[a] = Arrays.stream(gauss.point)
                    .mapToObj(p -> basis.values(low + size * p))
                    .toArray(double[][]::new);
        }
        double sum = 0;
        for (int i = 0; i < weights[0].length; i++) {
            for (int j = 0; j < weights[1].length; j++) {
                for (int k = 0; k < weights[2].length; k++) {
                    double[][] at = {values[0][i], values[1][j], values[2][k]};
                    sum += weights[0][i]
                            * weights[1][j]
                            * weights[2][k]
                            * value(coefficients(cell), at).absSquared();
                }
            }
        }
        return sum;
    }
}
