package hushmaze.app.recording;

import hushmaze.app.field.ColourMap;
import hushmaze.app.model.EntryText;
import hushmaze.app.model.Texts;
import hushmaze.quantity.BandSet;
import java.util.function.DoubleFunction;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** Frames, figures of frequency and time, and what the colours mean. */
final class AxesPainter {
    private static final double[] STEPS = {
        0.1, 0.2, 0.5, 1, 2, 5, 10, 15, 30, 60, 120, 300, 600, 900, 1800, 3600, 7200, 14_400, 36_000
    };
    /** Least pixels between two figures of time, of frequency and of level. */
    private static final double TIME_ROOM = 62;

    private static final double FIGURE_ROOM = 17;
    private static final double MINUTE = 60;
    private static final int OCTAVE = 3;
    /** Place of 63 Hz among the third octaves. */
    private static final int FIRST_OCTAVE = 1;

    private static final double TICK = 4;
    private static final double BAR_GAP = 10;
    private static final double BAR = 12;
    private static final Font FONT = Font.font("Source Sans 3", 12);

    private final GraphicsContext to;
    private final RecordingFrame frame;
    private final RecordingColours colours;

    AxesPainter(GraphicsContext to, RecordingFrame frame, RecordingColours colours) {
        this.to = to;
        this.frame = frame;
        this.colours = colours;
        to.setFont(FONT);
        to.setLineWidth(1);
    }

    void frames() {
        to.setStroke(colours.line());
        to.strokeRect(frame.left() - 0.5, frame.waveTop() - 0.5, frame.width() + 1, frame.waveHeight() + 1);
        to.strokeRect(frame.left() - 0.5, frame.top() - 0.5, frame.width() + 1, frame.height() + 1);
    }

    void frequencies() {
        int count = BandSet.THIRD_OCTAVE.size();
        double row = frame.height() / count;
        int every = OCTAVE * row >= FIGURE_ROOM ? OCTAVE : 2 * OCTAVE;
        for (int band = FIRST_OCTAVE; band < count; band += every) {
            double y = Math.floor(frame.bottom() - (band + 0.5) * row) + 0.5;
            to.setStroke(colours.line());
            to.strokeLine(frame.left() - TICK, y, frame.left() - 1, y);
            words(
                    BandSet.THIRD_OCTAVE.bands().get(band).label(),
                    frame.left() - TICK - 2,
                    y,
                    TextAlignment.RIGHT,
                    VPos.CENTER);
        }
        words(
                Texts.of("recording.axis.hz"),
                frame.left() - TICK - 2,
                frame.waveTop() + frame.waveHeight() - 2,
                TextAlignment.RIGHT,
                VPos.CENTER);
    }

    void times(DoubleFunction<String> text) {
        double step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && frame.width() * STEPS[i] / frame.seconds() >= TIME_ROOM; i--) {
            step = STEPS[i];
        }
        double last = 0;
        for (int i = 0; i * step <= frame.seconds(); i++) {
            double x = Math.floor(frame.x(i * step)) + 0.5;
            to.setStroke(colours.line());
            to.strokeLine(x, frame.bottom() + 1, x, frame.bottom() + 1 + TICK);
            words(text.apply(i * step), x, frame.bottom() + TICK + 2, TextAlignment.CENTER, VPos.TOP);
            last = x;
        }
        String unit = Texts.of(frame.seconds() < MINUTE ? "recording.axis.seconds" : "recording.axis.minutes");
        double end = frame.left() + frame.width() + RecordingFrame.AT_RIGHT - 6;
        if (end - last > TIME_ROOM) {
            words(unit, end, frame.bottom() + TICK + 2, TextAlignment.RIGHT, VPos.TOP);
        }
    }

    void legend(LevelRange range, ColourMap map) {
        double left = frame.left() + frame.width() + BAR_GAP;
        for (int y = 0; y < (int) frame.height(); y++) {
            to.setFill(colour(map.at(1 - y / (frame.height() - 1))));
            to.fillRect(left, frame.top() + y, BAR, 1);
        }
        to.setStroke(colours.line());
        to.strokeRect(left - 0.5, frame.top() - 0.5, BAR + 1, frame.height() + 1);
        double span = range.high() - range.low();
        double step = frame.height() * 10 / span >= FIGURE_ROOM ? 10 : 20;
        for (double level = range.high(); level >= range.low(); level -= step) {
            double y = Math.floor(frame.top() + frame.height() * (range.high() - level) / span) + 0.5;
            double inside = Math.max(frame.top() + 5, Math.min(frame.bottom() - 5, y));
            to.setStroke(colours.line());
            to.strokeLine(left + BAR, y, left + BAR + TICK, y);
            words(signed(level), left + BAR + TICK + 2, inside, TextAlignment.LEFT, VPos.CENTER);
        }
        words(
                Texts.of("recording.legend"),
                left,
                frame.waveTop() + frame.waveHeight() - 2,
                TextAlignment.LEFT,
                VPos.CENTER);
    }

    private static String signed(double db) {
        return (db < 0 ? "−" : "") + EntryText.brief(Math.abs(db));
    }

    private void words(String text, double x, double y, TextAlignment align, VPos baseline) {
        to.setFill(colours.words());
        to.setTextAlign(align);
        to.setTextBaseline(baseline);
        to.fillText(text, x, y);
    }

    private static Color colour(int argb) {
        return Color.rgb(argb >> 16 & 0xff, argb >> 8 & 0xff, argb & 0xff);
    }
}
