package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Wrap;

/**
 * One step: number and marks in a head line, the picture, the words.
 *
 * @param number from 1
 * @param marks of the parts it adds, empty for none
 * @param words what to do
 * @param picture the box so far
 * @param sizes to be measured in this step
 */
record StepCell(int number, String marks, String words, StepPicture picture, Sizes sizes) {
    /** Which sizes are shown. */
    enum Sizes {
        NONE,
        /** In a plan below the picture. */
        INSIDE,
        /** On the picture. */
        OUTSIDE
    }

    /** Highest picture of a box, mm. */
    private static final double HIGH = 42;
    /** Highest picture where the cover is lifted, mm. */
    private static final double HIGHEST = 58;

    /** By how much pictures are larger on large paper. */
    private static final double LARGER = 1.2;

    private static final double HEAD = 7;
    private static final double SAMPLE = 9;

    /**
     * Draws it.
     *
     * @param share of the height its picture has by itself
     */
    Sketch draw(Job job, double width, double share) {
        TextMeasure measure = job.measure();
        Sketch cell = new Sketch();
        cell.line(0, 0, width, 0, Stroke.RULE);
        cell.text(0, 5, String.valueOf(number), Lettering.HEADING, Weight.SEMIBOLD, Anchor.START, Ink.BLACK);
        double y = HEAD;
        if (!marks.isEmpty()) {
            y = lines(cell, measure, marks, 9, width - 9, 5, Weight.SEMIBOLD) + 1;
        }
        y = picture(cell, job, width, Math.max(y, HEAD), share) + 1.5;
        if (sizes == Sizes.INSIDE) {
            Sketch plan = InsidePlan.of(job, width);
            cell.add(plan, 0, y + 1);
            y += plan.bounds(measure).y1() + 3;
        }
        lines(cell, measure, words, 0, width, y + Lettering.TABLE, Weight.REGULAR);
        return cell;
    }

    private double picture(Sketch cell, Job job, double width, double y, double share) {
        OuterSizes outer = new OuterSizes(job);
        double large = share * (job.paper().large() ? LARGER : 1);
        double high = large * (picture.lie() == StepPicture.Lie.LIFTED ? HIGHEST : HIGH);
        double beside = sizes == Sizes.OUTSIDE ? outer.beside() : StepPicture.beside(job.measure());
        double room = width - 2 * beside;
        Isometric view = new Isometric(Math.min(room / picture.width(), high / picture.height()));
        Sketch drawn = picture.draw(view, job.result().cutList()::markOf);
        if (sizes == Sizes.OUTSIDE) {
            outer.draw(drawn, view);
        }
        Bounds b = drawn.bounds(job.measure());
        cell.add(drawn, width / 2 - b.centreX(), y - b.y0());
        return y + b.height();
    }

    /** Sets lines below each other; returns the foot of the last. */
    private static double lines(
            Sketch cell, TextMeasure measure, String text, double x, double width, double y, Weight weight) {
        double at = y;
        for (String line : Wrap.lines(text, width, Lettering.TABLE, weight, measure)) {
            cell.text(x, at, line, Lettering.TABLE, weight, Anchor.START, Ink.BLACK);
            at += Lettering.TABLE * Lettering.LEADING;
        }
        return at - Lettering.TABLE * (Lettering.LEADING - TextMeasure.DESCENT);
    }

    /** What tint and lines of the pictures mean. */
    static Sketch legend() {
        Sketch sketch = new Sketch();
        double line = Lettering.TABLE * Lettering.LEADING;
        double y = Lettering.TABLE;
        sketch.rectangle(new Bounds(0, y - 2.4, SAMPLE, y + 0.2), Stroke.THIN, Ink.ACCENT_PALE);
        sketch.text(SAMPLE + 2, y, Labels.of("assembly.key.added"), Lettering.TABLE, Anchor.START);
        for (StepPicture.Kind kind : StepPicture.Kind.values()) {
            y += line;
            double middle = y - Lettering.TABLE * TextMeasure.CAPITAL / 2;
            sketch.line(0, middle, SAMPLE, middle, kind.stroke());
            String key = "assembly.key." + kind.name().toLowerCase(java.util.Locale.ROOT);
            sketch.text(SAMPLE + 2, y, Labels.of(key), Lettering.TABLE, Anchor.START);
        }
        return sketch;
    }
}
