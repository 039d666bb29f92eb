package hushmaze.document;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDPageContentStream;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.util.Matrix;

/** Paints the shapes of one page; turns millimetres with y downwards into points with y upwards. */
final class PdfPainter {
    private static final double POINTS = 72 / 25.4;
    /** Four arcs make a circle: distance of their inner control points as a share of the radius. */
    private static final double ARC = 4.0 / 3 * (Math.sqrt(2) - 1);

    private static final int BUTT_CAP = 0;
    private static final int SQUARE_CAP = 2;

    private final PDPageContentStream content;
    private final double height;
    private final double thin;
    private final Map<Weight, PDFont> fonts;
    private final FontMeasure measure;
    private final PdfTags tags;
    private boolean artifact;
    private Stroke stroke;
    private Ink fill;

    PdfPainter(
            PDPageContentStream content,
            double height,
            double thin,
            Map<Weight, PDFont> fonts,
            FontMeasure measure,
            PdfTags tags) {
        this.tags = tags;
        this.content = content;
        this.height = height;
        this.thin = thin;
        this.fonts = fonts;
        this.measure = measure;
    }

    void paint(Shape shape) throws IOException {
        if (shape instanceof Shape.Text text) {
            end();
            content.beginMarkedContent(COSName.P, tags.paragraph());
            paint(text);
            content.endMarkedContent();
        } else {
            if (!artifact) {
                content.beginMarkedContent(COSName.ARTIFACT);
                artifact = true;
            }
            draw(shape);
        }
    }

    /** Closes what is open after the last shape. */
    void end() throws IOException {
        if (artifact) {
            content.endMarkedContent();
            artifact = false;
        }
    }

    private void draw(Shape shape) throws IOException {
        if (shape instanceof Shape.Line line) {
            use(line.stroke(), null);
            content.moveTo(x(line.x1()), y(line.y1()));
            content.lineTo(x(line.x2()), y(line.y2()));
            content.stroke();
        } else if (shape instanceof Shape.Path path) {
            paint(path);
        } else if (shape instanceof Shape.Circle circle) {
            paint(circle);
        }
    }

    private void paint(Shape.Path path) throws IOException {
        use(path.stroke(), path.fill());
        List<Point> points = path.points();
        content.moveTo(x(points.get(0).x()), y(points.get(0).y()));
        for (Point point : points.subList(1, points.size())) {
            content.lineTo(x(point.x()), y(point.y()));
        }
        if (path.closed()) {
            content.closePath();
        }
        finish(path.stroke(), path.fill());
    }

    private void paint(Shape.Circle c) throws IOException {
        use(c.stroke(), c.fill());
        double r = c.radius();
        double k = ARC * r;
        content.moveTo(x(c.x() + r), y(c.y()));
        arc(c.x() + r, c.y() + k, c.x() + k, c.y() + r, c.x(), c.y() + r);
        arc(c.x() - k, c.y() + r, c.x() - r, c.y() + k, c.x() - r, c.y());
        arc(c.x() - r, c.y() - k, c.x() - k, c.y() - r, c.x(), c.y() - r);
        arc(c.x() + k, c.y() - r, c.x() + r, c.y() - k, c.x() + r, c.y());
        content.closePath();
        finish(c.stroke(), c.fill());
    }

    private void arc(double x1, double y1, double x2, double y2, double x3, double y3) throws IOException {
        content.curveTo(x(x1), y(y1), x(x2), y(y2), x(x3), y(y3));
    }

    private void paint(Shape.Text text) throws IOException {
        String words = measure.printable(text.text(), text.weight());
        double before = text.anchor().share() * measure.width(words, text.size(), text.weight());
        use(null, text.ink());
        content.beginText();
        content.setFont(fonts.get(text.weight()), (float) (text.size() * POINTS));
        content.setTextMatrix(
                text.upwards()
                        ? new Matrix(0, 1, -1, 0, x(text.x()), y(text.y() + before))
                        : new Matrix(1, 0, 0, 1, x(text.x() - before), y(text.y())));
        content.showText(words);
        content.endText();
    }

    /** Sets what differs from the shape before. */
    private void use(Stroke wantedStroke, Ink wantedFill) throws IOException {
        if (wantedStroke != null && !wantedStroke.equals(stroke)) {
            stroke = wantedStroke;
            content.setLineWidth((float) (stroke.width(thin) * POINTS));
            List<Double> dashes = stroke.pattern().dashes();
            float[] pattern = new float[dashes.size()];
            for (int i = 0; i < pattern.length; i++) {
                pattern[i] = (float) (dashes.get(i) * POINTS);
            }
            content.setLineDashPattern(pattern, 0);
            // Square ends close the corners of outlines that are drawn side by side; they would close gaps of dashes
            // too.
            content.setLineCapStyle(pattern.length == 0 ? SQUARE_CAP : BUTT_CAP);
            int rgb = stroke.ink().rgb();
            content.setStrokingColor(red(rgb), green(rgb), blue(rgb));
        }
        if (wantedFill != null && wantedFill != fill) {
            fill = wantedFill;
            content.setNonStrokingColor(red(fill.rgb()), green(fill.rgb()), blue(fill.rgb()));
        }
    }

    private void finish(Stroke lineStroke, Ink inside) throws IOException {
        if (lineStroke != null && inside != null) {
            content.fillAndStroke();
        } else if (inside != null) {
            content.fill();
        } else {
            content.stroke();
        }
    }

    private static float red(int rgb) {
        return (rgb >> 16 & 0xff) / 255f;
    }

    private static float green(int rgb) {
        return (rgb >> 8 & 0xff) / 255f;
    }

    private static float blue(int rgb) {
        return (rgb & 0xff) / 255f;
    }

    private static float x(double mm) {
        return (float) (mm * POINTS);
    }

    private float y(double mm) {
        return (float) ((height - mm) * POINTS);
    }
}
