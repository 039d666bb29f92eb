package hushmaze.app.field;

import hushmaze.solid.Axis;
import hushmaze.sound.section.PathField;
import java.nio.IntBuffer;
import javafx.scene.image.PixelBuffer;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** A field as pixels. What is rigid takes the colour beside it, so that the edges of boards drawn over it stay clean. */
final class FieldImage {
    private static final int PHASES = 1024;
    /** Places into a board that take the colour beside it. */
    private static final int RIM = 3;
    /** How dark a line between two colours is. */
    private static final double LINE = 0.55;

    private static final int LIGHT_LINE = 190;
    /** Colours with less green than this are dark. */
    private static final int DARK = 70;

    private static final int OPAQUE = 0xff000000;
    /** Share of the colour map that the weaker of both mouths has at its strongest. */
    private static final double WEAKEST = 0.35;

    private static final double LEAST_POWER = 0.2;
    /** Share of a place's own largest pressure within which the colours go over evenly from one side to the other. */
    private static final double SOFT = 0.08;

    private final PathField field;
    private final int columns;
    private final int rows;
    private final double[] level;
    private final LevelScale scale;
    private final double peak;
    private final double power;
    private final float[] size;
    private final short[] phase;
    private final float[] swing = new float[PHASES];
    private final PixelBuffer<IntBuffer> buffer;
    private final WritableImage moving;

    FieldImage(PathField field) {
        this.field = field;
        columns = field.columns();
        rows = field.rows();
        scale = LevelScale.of(field);
        int[] from = nearest();
        level = new double[from.length];
        double largest = 0;
        for (int i = 0; i < from.length; i++) {
            level[i] = Math.max(-400, field.level(from[i] % columns, from[i] / columns));
            largest = Double.isNaN(level[i]) ? largest : Math.max(largest, amplitude(level[i]));
        }
        peak = largest;
        double weak = amplitude(Math.min(0, -field.fall())) / peak;
        power = weak >= WEAKEST ? 1 : Math.max(LEAST_POWER, Math.log(WEAKEST) / Math.log(weak));
        size = new float[from.length];
        phase = new short[from.length];
        for (int i = 0; i < from.length; i++) {
            double re = field.real(from[i] % columns, from[i] / columns);
            double im = field.imaginary(from[i] % columns, from[i] / columns);
            size[i] = Double.isNaN(re) ? 0 : (float) share(Math.hypot(re, im));
            phase[i] = (short) Math.floorMod(Math.round(Math.atan2(im, re) / (2 * Math.PI) * PHASES), (long) PHASES);
        }
        for (int i = 0; i < PHASES; i++) {
            double cos = Math.cos(2 * Math.PI * i / PHASES);
            swing[i] = (float) (cos * Math.pow((cos * cos + SOFT * SOFT) / (1 + SOFT * SOFT), (power - 1) / 2));
        }
        buffer = new PixelBuffer<>(
                columns, rows, IntBuffer.allocate(columns * rows), PixelFormat.getIntArgbPreInstance());
        moving = new WritableImage(buffer);
    }

    private static double amplitude(double db) {
        return Math.pow(10, db / 20);
    }

    /** For every place itself, or a near one that is not rigid. */
    private int[] nearest() {
        int[] from = new int[columns * rows];
        for (int i = 0; i < from.length; i++) {
            from[i] = i;
        }
        for (int round = 0; round < RIM; round++) {
            int[] before = from.clone();
            for (int i = 0; i < from.length; i++) {
                if (isRigid(before[i])) {
                    from[i] = beside(before, i);
                }
            }
        }
        return from;
    }

    private boolean isRigid(int place) {
        return Double.isNaN(field.real(place % columns, place / columns));
    }

    private int beside(int[] from, int place) {
        int column = place % columns;
        int row = place / columns;
        for (int down = -1; down <= 1; down++) {
            for (int right = -1; right <= 1; right++) {
                int c = column + right;
                int r = row + down;
                boolean inside = c >= 0 && r >= 0 && c < columns && r < rows;
                if (inside && !isRigid(from[r * columns + c])) {
                    return from[r * columns + c];
                }
            }
        }
        return from[place];
    }

    LevelScale scale() {
        return scale;
    }

    /** Share of the half map that a pressure has, in parts of that at the opening; 1 for the largest there is. */
    double share(double pressure) {
        return Math.pow(Math.min(1, Math.abs(pressure) / peak), power);
    }

    /** The largest pressure, in parts of that at the opening. */
    double peak() {
        return peak;
    }

    /** Level in steps of one colour each, with lines between them. The first row is the one of highest y. */
    WritableImage levels(int width, int height, ColourMap map) {
        double[] places = new double[(width + 1) * (height + 1)];
        for (int y = 0; y <= height; y++) {
            for (int x = 0; x <= width; x++) {
                double column = (x + 0.5) / width * field.solid().outer().size(Axis.X) / field.step() - 0.5;
                double row = (height - y - 0.5) / height * field.solid().outer().size(Axis.Y) / field.step() - 0.5;
                places[y * (width + 1) + x] = scale.place(between(column, row));
            }
        }
        int[] pixels = new int[width * height];
        for (int y = 0; y < height; y++) {
            for (int x = 0; x < width; x++) {
                int i = y * (width + 1) + x;
                int colour = map.at(scale.share(places[i]));
                double slope = Math.hypot(places[i + 1] - places[i], places[i + width + 1] - places[i]);
                pixels[y * width + x] = lined(colour, places[i], slope, map);
            }
        }
        WritableImage image = new WritableImage(width, height);
        image.getPixelWriter().setPixels(0, 0, width, height, PixelFormat.getIntArgbInstance(), pixels, 0, width);
        return image;
    }

    /** A colour with the line over it that runs along the limit between two colours: dark, but light on dark ones. */
    private int lined(int colour, double place, double slope, ColourMap map) {
        double limit = Math.max(0, Math.min(scale.limits() - 1, Math.rint(place)));
        double distance = Math.abs(place - limit) / Math.max(1e-9, slope);
        double share = LINE * Math.max(0, Math.min(1, 1.1 - distance));
        if (!(share > 0)) {
            return colour;
        }
        int above = map.at(scale.share(limit));
        int line = (above >> 8 & 0xff) < DARK ? LIGHT_LINE : 0;
        int out = OPAQUE;
        for (int shift = 0; shift <= 16; shift += 8) {
            double part = colour >> shift & 0xff;
            out |= (int) Math.round(part + (line - part) * share) << shift;
        }
        return out;
    }

    private double between(double column, double row) {
        int c = (int) Math.max(0, Math.min(columns - 2, Math.floor(column)));
        int r = (int) Math.max(0, Math.min(rows - 2, Math.floor(row)));
        double x = Math.max(0, Math.min(1, column - c));
        double y = Math.max(0, Math.min(1, row - r));
        double sum = 0;
        double weight = 0;
        for (int k = 0; k < 4; k++) {
            double one = level[(r + k / 2) * columns + c + k % 2];
            double part = (k % 2 == 0 ? 1 - x : x) * (k / 2 == 0 ? 1 - y : y);
            if (!Double.isNaN(one)) {
                sum += part * one;
                weight += part;
            }
        }
        return weight > 0 ? sum / weight : Double.NaN;
    }

    /**
     * The pressure at an instant, one pixel for every place; the same image every time. The first row is the one of highest y.
     *
     * @param turn share of the period, 0 to 1
     */
    WritableImage pressure(double turn, ColourMap map) {
        buffer.updateBuffer(b -> {
            pressure(turn, map, b.getBuffer().array());
            return null;
        });
        return moving;
    }

    /** The same as pixels. */
    void pressure(double turn, ColourMap map, int[] pixels) {
        int shift = (int) Math.round(turn * PHASES);
        for (int row = 0; row < rows; row++) {
            int to = (rows - 1 - row) * columns;
            for (int column = 0; column < columns; column++) {
                int i = row * columns + column;
                float value = size[i] * swing[phase[i] + shift & PHASES - 1];
                pixels[to + column] = map.at((1 + value) / 2);
            }
        }
    }

    /** Of the whole grid, m: a little more than the box. */
    double width() {
        return columns * field.step();
    }

    /** Of the whole grid, m. */
    double height() {
        return rows * field.step();
    }
}
