package hushmaze.sound.section;

import hushmaze.material.Liner;
import hushmaze.quantity.Energy;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Solid;
import hushmaze.solid.Turn;
import hushmaze.sound.porous.FacedLiner;
import hushmaze.sound.porous.LinerModel;
import hushmaze.sound.wave.WaveAccuracy;
import hushmaze.sound.wave.WaveField;
import hushmaze.sound.wave.WavePort;
import hushmaze.sound.wave.WaveSolver;
import hushmaze.sound.wave.WaveSpace;
import hushmaze.work.Progress;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * Sound pressure in a box at one frequency, for a plane wave that comes in at the opening, half way up the clear height.
 *
 * <p>A box that its flat section cannot show ({@link SolidSpace#needsFull}) is solved in all three directions as long as that
 * takes no longer than a second or two, and this is a slice of it; everything else is of the flat section. Levels are of mean square
 * pressure over that in the opening's mouth, where the wave that comes in and what the box throws back of it are together: the fall from
 * mouth to mouth differs from the transmission loss by that. With one mode in each mouth, fall = TL + 10 lg(S_room / S_opening) + 10 lg |1 + r|²,
 * r what is thrown back of a pressure of 1, S the areas of the mouths.
 *
 * <p>Cost on one processor: a tenth to half a second.
 */
public final class PathField {
    /** Lowest frequency, Hz. */
    public static final double LOWEST = 20;
    /** Highest frequency, Hz: the top of the bands the wave solution is made for. */
    public static final double HIGHEST = 5000;

    /** Most multiplications for a solution in three directions: about a second. */
    private static final double MOST_MULTIPLICATIONS = 1e9;
    /** Places along the longer side of the box. */
    private static final int PLACES = 360;
    /** Thickness of a slab that stands for a cross section, m. */
    private static final double THIN = 1e-6;

    private final Solid solid;
    private final double frequency;
    private final boolean flat;
    private final SectionShape shape;
    private final List<Double> levels;
    private final double reference;
    private final double step;
    private final int columns;
    private final int rows;
    private final double[] re;
    private final double[] im;

    private PathField(Solid solid, WaveSpace space, WaveField field, double frequency) {
        this.solid = solid;
        this.frequency = frequency;
        this.flat = space.flat();
        this.shape = SectionShape.of(solid, space);
        List<Cuboid> sections = sections(solid, space);
        reference = field.meanSquare(sections.get(0));
        levels = sections.stream()
                .map(section -> Energy.db(field.meanSquare(section) / reference))
                .toList();
        Cuboid outer = solid.outer();
        step = Math.max(outer.size(Axis.X), outer.size(Axis.Y)) / PLACES;
        columns = count(outer.size(Axis.X));
        rows = count(outer.size(Axis.Y));
        double[][] grid = field.grid(places(outer.x0(), columns), places(outer.y0(), rows), SectionShape.height(solid));
        double scale = 1 / Math.sqrt(reference);
        re = scaled(grid[0], scale);
        im = scaled(grid[1], scale);
    }

    private int count(double size) {
        return (int) Math.ceil(size / step - 1e-9);
    }

    private double[] places(double from, int count) {
        return IntStream.range(0, count)
                .mapToDouble(i -> from + (i + 0.5) * step)
                .toArray();
    }

    private static double[] scaled(double[] values, double scale) {
        double[] out = new double[values.length];
        for (int i = 0; i < out.length; i++) {
            out[i] = values[i] * scale;
        }
        return out;
    }

    /**
     * The field of a box with the usual liner model.
     *
     * @param solid of the box
     * @param liner on its faces; null for a bare box
     * @param soundSpeed m/s
     * @param frequency Hz, {@value #LOWEST} to {@value #HIGHEST}
     * @param progress asked now and then whether it is still wanted
     * @throws InvalidValue if the frequency is out of range
     */
    public static PathField of(Solid solid, Liner liner, double soundSpeed, double frequency, Progress progress) {
        InvalidValue.within("frequency", frequency, LOWEST, HIGHEST, Unit.HERTZ);
        LinerModel model = liner == null ? null : FacedLiner.miki(liner);
        if (SolidSpace.needsFull(solid)) {
            WaveSpace space = SolidSpace.full(solid, model, soundSpeed);
            WaveSolver full = new WaveSolver(space, PathWave.FULL_ACCURACY);
            progress.check(0, "");
            if (full.multiplications(frequency) <= MOST_MULTIPLICATIONS) {
                return new PathField(solid, space, full.solveField(frequency, progress), frequency);
            }
        }
        WaveSpace space = SolidSpace.flat(solid, model, soundSpeed);
        WaveSolver solver = new WaveSolver(space, WaveAccuracy.STANDARD);
        return new PathField(solid, space, solver.solveField(frequency, progress), frequency);
    }

    /** Both mouths, and between them the middle of every turn, from the opening to the room. */
    private static List<Cuboid> sections(Solid solid, WaveSpace space) {
        List<Cuboid> sections = new ArrayList<>();
        sections.add(within(space.inlet()));
        for (Turn turn : solid.turns()) {
            double y = solid.baffles().get(turn.number()).centre(Axis.Y);
            sections.add(turn.clear().with(Axis.Y, y - THIN / 2, y + THIN / 2));
        }
        sections.add(within(space.outlet()));
        return sections;
    }

    private static Cuboid within(WavePort port) {
        return port.high()
                ? port.start().with(port.normal(), port.at() - THIN, port.at())
                : port.start().with(port.normal(), port.at(), port.at() + THIN);
    }

    public Solid solid() {
        return solid;
    }

    /** Hz. */
    public double frequency() {
        return frequency;
    }

    /** Whether it is of the flat section and not of the box in three directions. */
    public boolean flat() {
        return flat;
    }

    /** Boards, air and liner in the plane it is of. */
    public SectionShape shape() {
        return shape;
    }

    /** Level in the opening's mouth, in the middle of every turn and in the room's mouth, over that in the opening's, dB. */
    public List<Double> levels() {
        return levels;
    }

    /** By how much the level falls from the opening to the room, dB. */
    public double fall() {
        return -levels.get(levels.size() - 1);
    }

    /**
     * By how much the level falls in a pass, from the middle of the turn before it to that of the turn after it, or from and to a
     * mouth, dB.
     *
     * @param pass from the opening, counted from 0
     */
    public double fall(int pass) {
        return levels.get(pass) - levels.get(pass + 1);
    }

    /** Places of the grid along x. */
    public int columns() {
        return columns;
    }

    /** Places of the grid along y. */
    public int rows() {
        return rows;
    }

    /** Distance of places, m; the first is half of it inside the box's low corner. */
    public double step() {
        return step;
    }

    /** Pressure at a place of the grid as the wave comes in, over the effective one in the opening's mouth; not a number in a board. */
    public double real(int column, int row) {
        return re[row * columns + column];
    }

    /** The same a quarter of a period before. */
    public double imaginary(int column, int row) {
        return im[row * columns + column];
    }

    /** Level at a place of the grid over that in the opening's mouth, dB; not a number in a board. */
    public double level(int column, int row) {
        double a = real(column, row);
        double b = imaginary(column, row);
        return Double.isNaN(a) ? Double.NaN : Energy.db(a * a + b * b);
    }

    /** Level at a place over that in the opening's mouth, dB; nothing in a board or outside. */
    public OptionalDouble levelAt(double x, double y) {
        int column = (int) Math.floor((x - solid.outer().x0()) / step);
        int row = (int) Math.floor((y - solid.outer().y0()) / step);
        if (column < 0 || row < 0 || column >= columns || row >= rows || Double.isNaN(real(column, row))) {
            return OptionalDouble.empty();
        }
        return OptionalDouble.of(level(column, row));
    }
}
