package hushmaze.app.field;

import hushmaze.app.model.EntryText;
import hushmaze.app.model.Texts;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.text.Font;
import javafx.scene.text.TextAlignment;

/** What the colours of a map mean, in figures. */
final class Legend {
    private static final double WIDEST = 460;
    private static final double MARGIN = 16;
    private static final double BAR_TOP = 22;
    private static final double BAR = 14;
    /** Figures closer than this are left out, pixels. */
    private static final double ROOM = 34;

    private final GraphicsContext to;
    private final FieldColours colours;
    private final double left;
    private final double top;
    private final double wide;

    /** @param top where the legend begins */
    Legend(GraphicsContext to, FieldColours colours, double width, double top) {
        this.to = to;
        this.colours = colours;
        this.top = top;
        wide = Math.round(Math.min(WIDEST, width - 2 * MARGIN));
        left = Math.round((width - wide) / 2);
    }

    void levels(LevelScale scale, ColourMap map) {
        title(Texts.of("inside.legend.level"));
        int count = scale.limits() + 1;
        for (int i = 0; i < count; i++) {
            double from = Math.round(left + wide * i / count);
            double end = Math.round(left + wide * (i + 1) / count);
            to.setFill(colour(map.at(scale.share(i - 0.5))));
            to.fillRect(from, top + BAR_TOP, end - from, BAR);
            if (i > 0) {
                figure(from, signed(scale.limit(i - 1)));
            }
        }
        frame();
    }

    private static String signed(double db) {
        return (db > 0 ? "+" : db < 0 ? "−" : "") + EntryText.brief(Math.abs(db));
    }

    void pressures(FieldImage image, ColourMap map) {
        title(Texts.of("inside.legend.pressure"));
        for (int x = 0; x < wide; x++) {
            to.setFill(colour(map.at(x / (wide - 1))));
            to.fillRect(left + x, top + BAR_TOP, 1, BAR);
        }
        double middle = left + wide / 2;
        figure(middle, "0");
        List<Double> taken = new ArrayList<>(List.of(0.0));
        for (double part : List.of(5.0, 2.0, 1.0, 0.1, 0.01, 0.001, 1e-4)) {
            double away = wide / 2 * image.share(part);
            boolean free = taken.stream().allMatch(other -> Math.abs(other - away) >= ROOM);
            if (part <= image.peak() && free) {
                taken.add(away);
                figure(middle + away, EntryText.brief(part));
                figure(middle - away, "−" + EntryText.brief(part));
            }
        }
        frame();
    }

    private void title(String words) {
        to.setFont(Font.font("Source Sans 3", 13));
        to.setTextBaseline(VPos.BASELINE);
        to.setTextAlign(TextAlignment.CENTER);
        to.setFill(colours.words());
        to.fillText(words, left + wide / 2, top + BAR_TOP - 7, wide + 2 * MARGIN - 8);
    }

    private void figure(double x, String text) {
        double at = Math.floor(x) + 0.5;
        to.setStroke(colours.line());
        to.setLineWidth(1);
        to.strokeLine(at, top + BAR_TOP, at, top + BAR_TOP + BAR + 3);
        to.setFont(Font.font("Source Sans 3", 13));
        to.setTextAlign(TextAlignment.CENTER);
        to.setTextBaseline(VPos.TOP);
        to.setFill(colours.words());
        to.fillText(text, at, top + BAR_TOP + BAR + 4);
    }

    private void frame() {
        to.setStroke(colours.line());
        to.setLineWidth(1);
        to.strokeRect(left + 0.5, top + BAR_TOP + 0.5, wide - 1, BAR - 1);
    }

    private static Color colour(int argb) {
        return Color.rgb(argb >> 16 & 0xff, argb >> 8 & 0xff, argb & 0xff);
    }
}
