package hushmaze.drawing.draft;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.project.TitleBlock;
import java.util.List;

/**
 * The title block.
 *
 * <p>Source: ISO 7200: owner, identification number, date of issue, sheet, title, person who approves, creator and
 * document type are required, number of sheets and supplementary title optional (as read in a copy of its field table);
 * its width of 180 mm is from memory. Scale and projection symbol are added.
 */
public final class TitleBlockDraft {
    /** mm. */
    public static final double WIDTH = 180;
    /** mm. */
    public static final double HEIGHT = 25.5;

    static final double LEAST_FOOT = 40;
    private static final double ROW = HEIGHT / 3;
    private static final double INSET = 1.4;
    private static final double CAPTION = 2.1;

    /**
     * What differs from page to page.
     *
     * @param title of the set
     * @param subtitle of the page
     * @param type of document
     * @param scale "1:10", or a dash
     * @param sheet number of this page
     * @param sheets number of pages
     * @param firstAngle whether views are arranged in first-angle projection, else third
     */
    public record Fields(
            String title, String subtitle, String type, String scale, int sheet, int sheets, boolean firstAngle) {}

    private final Sketch sketch;
    private final TextMeasure measure;
    private final double right;
    private final double top;

    private TitleBlockDraft(Sketch sketch, TextMeasure measure, double right, double top) {
        this.sketch = sketch;
        this.measure = measure;
        this.right = right;
        this.top = top;
    }

    /** Draws frame and title block of a sheet. */
    public static void draw(Sketch sketch, TextMeasure measure, SheetFrame sheet, TitleBlock block, Fields fields) {
        sheet.draw(sketch);
        Bounds frame = sheet.frame();
        double width = sheet.foot() == null ? frame.width() : WIDTH;
        new TitleBlockDraft(sketch, measure, frame.x1(), frame.y1() - HEIGHT).draw(width, block, fields);
    }

    private void draw(double width, TitleBlock block, Fields fields) {
        sketch.rectangle(new Bounds(right - width, top, right, top + HEIGHT), Stroke.OUTLINE, null);
        double split = width - 70;
        rule(right - width, top + ROW, right);
        rule(right - 70, top + 2 * ROW, right);
        for (double x : new double[] {70, 35}) {
            sketch.line(right - x, top, right - x, top + 2 * ROW, Stroke.THIN);
        }
        sketch.line(right - 70, top + 2 * ROW, right - 70, top + HEIGHT, Stroke.THIN);
        sketch.line(right - 35 - 13, top + 2 * ROW, right - 35 - 13, top + HEIGHT, Stroke.THIN);
        sketch.line(right - 27, top + 2 * ROW, right - 27, top + HEIGHT, Stroke.THIN);
        sketch.line(right - width + split - 42, top, right - width + split - 42, top + ROW, Stroke.THIN);
        cell(right - width, split - 42, 0, "titleBlock.owner", block.owner());
        cell(right - 112, 42, 0, "titleBlock.type", fields.type());
        cell(right - 70, 35, 0, "titleBlock.creator", block.creator());
        cell(right - 35, 35, 0, "titleBlock.approver", block.approver() == null ? "–" : block.approver());
        cell(right - 70, 35, 1, "titleBlock.number", block.number());
        cell(right - 35, 35, 1, "titleBlock.date", block.date().toString());
        cell(right - 70, 22, 2, "titleBlock.scale", fields.scale());
        caption(right - 48, 2, "titleBlock.projection");
        projection(right - 48 + 8, top + 2 * ROW + 5.6, fields.firstAngle());
        String sheet = Labels.of("titleBlock.sheetOf", String.valueOf(fields.sheet()), String.valueOf(fields.sheets()));
        cell(right - 27, 27, 2, "titleBlock.sheet", sheet);
        title(right - width, split, fields);
    }

    private void title(double x, double width, Fields fields) {
        caption(x, 1, "titleBlock.title");
        double room = width - 2 * INSET;
        double size = Wrap.shrunk(fields.title(), room, 5, Weight.SEMIBOLD, measure);
        sketch.text(x + INSET, top + ROW + 8.2, fields.title(), size, Weight.SEMIBOLD, Anchor.START, Ink.BLACK);
        double small = Wrap.shrunk(fields.subtitle(), room, 3.6, Weight.REGULAR, measure);
        sketch.text(x + INSET, top + ROW + 14.2, fields.subtitle(), small, Anchor.START);
    }

    private void cell(double x, double width, int row, String key, String value) {
        caption(x, row, key);
        double size = Wrap.shrunk(value, width - 2 * INSET, 3.4, Weight.REGULAR, measure);
        sketch.text(x + INSET, top + row * ROW + 6.9, value, size, Anchor.START);
    }

    private void caption(double x, int row, String key) {
        sketch.text(x + INSET, top + row * ROW + 3, Labels.of(key), CAPTION, Weight.REGULAR, Anchor.START, Ink.GREY);
    }

    private void rule(double x1, double y, double x2) {
        sketch.line(x1, y, x2, y, Stroke.THIN);
    }

    /**
     * A truncated cone with its small end to the left, and its view from the left: that stands on the right in
     * first-angle and on the left in third-angle projection.
     */
    private void projection(double x, double y, boolean firstAngle) {
        double cone = firstAngle ? x - 3 : x + 2.6;
        double rings = firstAngle ? x + 3.2 : x - 3.2;
        sketch.polygon(
                List.of(
                        new Point(cone - 2.2, y - 1),
                        new Point(cone + 2.2, y - 1.8),
                        new Point(cone + 2.2, y + 1.8),
                        new Point(cone - 2.2, y + 1)),
                Stroke.THIN,
                null);
        sketch.add(new hushmaze.drawing.Shape.Circle(rings, y, 1.8, Stroke.THIN, null));
        sketch.add(new hushmaze.drawing.Shape.Circle(rings, y, 1, Stroke.THIN, null));
    }
}
