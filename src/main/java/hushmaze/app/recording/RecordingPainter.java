package hushmaze.app.recording;

import hushmaze.app.field.ColourMap;
import hushmaze.measure.RecordingPicture;
import hushmaze.quantity.BandSet;
import hushmaze.quantity.Energy;
import java.util.Arrays;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.PixelFormat;
import javafx.scene.image.WritableImage;

/** Draws the wave and the third octaves of a recording: every column of pixels is of all columns of the picture that fall into it. */
final class RecordingPainter {
    /** So loud a peak at least fills the height of the wave: silence shall look silent. */
    private static final double LEAST_PEAK = 1e-4;

    private final RecordingPicture picture;
    private final RecordingFrame frame;
    private final RecordingColours colours;
    private final GraphicsContext to;

    RecordingPainter(RecordingPicture picture, RecordingFrame frame, RecordingColours colours, GraphicsContext to) {
        this.picture = picture;
        this.frame = frame;
        this.colours = colours;
        this.to = to;
    }

    private int first(int pixel) {
        return (int) Math.min(picture.columns() - 1, (long) pixel * picture.columns() / (long) frame.width());
    }

    private int end(int pixel) {
        return Math.max(first(pixel) + 1, first(pixel + 1));
    }

    void wave() {
        double peak = LEAST_PEAK;
        for (int column = 0; column < picture.columns(); column++) {
            peak = Math.max(peak, Math.max(picture.greatest(column), -picture.least(column)));
        }
        double middle = frame.waveTop() + frame.waveHeight() / 2;
        double scale = (frame.waveHeight() / 2 - 1) / peak;
        for (int pixel = 0; pixel < (int) frame.width(); pixel++) {
            double high = 0;
            double low = 0;
            boolean full = false;
            for (int column = first(pixel); column < end(pixel); column++) {
                high = Math.max(high, picture.greatest(column));
                low = Math.min(low, picture.least(column));
                full |= picture.isFull(column);
            }
            double above = Math.max(0.5, scale * high);
            double below = Math.max(0.5, -scale * low);
            to.setFill(full ? colours.full() : colours.wave());
            to.fillRect(frame.left() + pixel, middle - above, 1, above + below);
        }
    }

    void bands(LevelRange range, double added, ColourMap map) {
        int width = (int) frame.width();
        int height = (int) frame.height();
        int count = BandSet.THIRD_OCTAVE.size();
        WritableImage image = new WritableImage(width, height);
        int[] row = new int[width];
        int drawn = -1;
        for (int y = 0; y < height; y++) {
            int band = count - 1 - y * count / height;
            if (band != drawn) {
                drawn = band;
                fill(row, band, range, added, map);
            }
            image.getPixelWriter().setPixels(0, y, width, 1, PixelFormat.getIntArgbInstance(), row, 0, width);
        }
        to.drawImage(image, frame.left(), frame.top());
    }

    /** Pixels of one band; without colour if it has no levels. */
    private void fill(int[] row, int band, LevelRange range, double added, ColourMap map) {
        if (!picture.covered(band)) {
            Arrays.fill(row, 0);
            return;
        }
        for (int pixel = 0; pixel < row.length; pixel++) {
            double[] levels = new double[end(pixel) - first(pixel)];
            for (int i = 0; i < levels.length; i++) {
                levels[i] = picture.level(first(pixel) + i, band);
            }
            double level = levels.length == 1 ? levels[0] : Energy.mean(levels);
            row[pixel] = map.at(range.share(level + added));
        }
    }
}
