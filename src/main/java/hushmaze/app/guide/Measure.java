package hushmaze.app.guide;

import hushmaze.app.model.EntryText;
import hushmaze.app.model.FirstBox;
import hushmaze.app.model.Question;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.DimensionChain;
import hushmaze.drawing.draft.DimensionChain.Side;
import java.util.List;

/** Draws the dimension a question is about; that of the question being answered is thick and coloured. */
final class Measure {
    private static final double OFF = 6;

    private final Sketch on;
    private final FirstBox box;
    private final Question looked;
    private final TextMeasure widths;

    Measure(Sketch on, FirstBox box, Question looked, TextMeasure widths) {
        this.on = on;
        this.box = box;
        this.looked = looked;
        this.widths = widths;
    }

    boolean isLooked(Question question) {
        return question == looked;
    }

    /**
     * One dimension.
     *
     * @param outline where the drawing ends on that side, mm
     * @param from where the dimension begins along it, mm
     * @param to where it ends, mm
     */
    void draw(Question question, Side side, double outline, double from, double to) {
        draw(
                isLooked(question),
                EntryText.show(box.number(question), question.unit(), box.units()),
                side,
                outline,
                from,
                to);
    }

    void draw(boolean pointed, String figure, Side side, double outline, double from, double to) {
        Sketch own = new Sketch();
        new DimensionChain(own, widths, side, outline, OFF).draw(List.of(from, to), List.of(figure));
        for (Shape shape : own.shapes()) {
            on.add(pointed ? accented(shape) : shape);
        }
    }

    private static Shape accented(Shape shape) {
        if (shape instanceof Shape.Line line) {
            return new Shape.Line(line.x1(), line.y1(), line.x2(), line.y2(), thick(line.stroke()));
        }
        if (shape instanceof Shape.Path path) {
            return new Shape.Path(
                    path.points(),
                    path.closed(),
                    path.stroke() == null ? null : thick(path.stroke()),
                    path.fill() == null ? null : Ink.ACCENT);
        }
        if (shape instanceof Shape.Text text) {
            return new Shape.Text(
                    text.x(),
                    text.y(),
                    text.text(),
                    text.size(),
                    Weight.SEMIBOLD,
                    text.anchor(),
                    text.upwards(),
                    Ink.ACCENT);
        }
        return shape;
    }

    private static Stroke thick(Stroke stroke) {
        return new Stroke(true, stroke.pattern(), Ink.ACCENT);
    }
}
