package hushmaze.document;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Layer;
import hushmaze.drawing.Page;
import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import java.util.Locale;
import java.util.stream.Collectors;

/**
 * Writes a page as SVG in true millimetres: the picture is as large as the page and one user unit is 1 mm. Each named layer
 * is a group with its name as id.
 */
public final class SvgWriter {
    private final TextMeasure measure;

    /**
     * @param measure with which the page was set; each text is held to the width it had there
     */
    public SvgWriter(TextMeasure measure) {
        this.measure = measure;
    }

    /** The whole file. */
    public String write(Page page) {
        StringBuilder svg = new StringBuilder();
        svg.append("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        svg.append(format(
                "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"%smm\" height=\"%smm\" viewBox=\"0 0 %s %s\""
                        + " font-family=\"'Source Sans 3', 'Source Sans Pro', sans-serif\">\n",
                number(page.width()), number(page.height()), number(page.width()), number(page.height())));
        svg.append("<title>").append(escaped(page.title())).append("</title>\n");
        for (Layer layer : page.layers()) {
            if (layer.isNamed()) {
                String title = escaped(layer.title());
                svg.append(format("<g id=\"%s\" aria-label=\"%s\">\n", escaped(layer.id()), title));
                svg.append("<title>").append(title).append("</title>\n");
            }
            for (Shape shape : layer.shapes()) {
                svg.append(element(shape, page.thinLine())).append('\n');
            }
            svg.append(layer.isNamed() ? "</g>\n" : "");
        }
        return svg.append("</svg>\n").toString();
    }

    private String element(Shape shape, double thin) {
        if (shape instanceof Shape.Line line) {
            return format(
                    "<line x1=\"%s\" y1=\"%s\" x2=\"%s\" y2=\"%s\"%s/>",
                    number(line.x1()),
                    number(line.y1()),
                    number(line.x2()),
                    number(line.y2()),
                    look(line.stroke(), null, thin));
        }
        if (shape instanceof Shape.Path path) {
            String tag = path.closed() ? "polygon" : "polyline";
            String points = path.points().stream().map(SvgWriter::pair).collect(Collectors.joining(" "));
            return format("<%s points=\"%s\"%s/>", tag, points, look(path.stroke(), path.fill(), thin));
        }
        if (shape instanceof Shape.Circle c) {
            return format(
                    "<circle cx=\"%s\" cy=\"%s\" r=\"%s\"%s/>",
                    number(c.x()), number(c.y()), number(c.radius()), look(c.stroke(), c.fill(), thin));
        }
        return text((Shape.Text) shape);
    }

    private String text(Shape.Text text) {
        String anchor = switch (text.anchor()) {
            case START -> "start";
            case MIDDLE -> "middle";
            case END -> "end";
        };
        String turn =
                text.upwards() ? format(" transform=\"rotate(-90 %s %s)\"", number(text.x()), number(text.y())) : "";
        String cut = text.weight() == Weight.SEMIBOLD
                ? " font-weight=\"600\""
                : text.weight() == Weight.ITALIC ? " font-style=\"italic\"" : "";
        return format(
                "<text x=\"%s\" y=\"%s\" font-size=\"%s\" text-anchor=\"%s\" textLength=\"%s\" fill=\"%s\"%s%s>%s</text>",
                number(text.x()),
                number(text.y()),
                number(text.size()),
                anchor,
                number(measure.width(text.text(), text.size(), text.weight())),
                text.ink().hex(),
                cut,
                turn,
                escaped(text.text()));
    }

    private static String look(Stroke stroke, Ink fill, double thin) {
        StringBuilder look = new StringBuilder();
        look.append(format(" fill=\"%s\"", fill == null ? "none" : fill.hex()));
        if (stroke != null) {
            look.append(
                    format(" stroke=\"%s\" stroke-width=\"%s\"", stroke.ink().hex(), number(stroke.width(thin))));
            if (stroke.pattern().dashes().isEmpty()) {
                look.append(" stroke-linecap=\"square\"");
            } else {
                String dashes = stroke.pattern().dashes().stream()
                        .map(SvgWriter::number)
                        .collect(Collectors.joining(" "));
                look.append(format(" stroke-dasharray=\"%s\"", dashes));
            }
        }
        return look.toString();
    }

    private static String pair(Point point) {
        return number(point.x()) + "," + number(point.y());
    }

    /** Ten-thousandths of a millimetre, without idle zeros. */
    private static String number(double value) {
        String text = format("%.4f", value).replaceAll("0+$", "").replaceAll("\\.$", "");
        return text.equals("-0") ? "0" : text;
    }

    private static String escaped(String text) {
        StringBuilder clean = new StringBuilder();
        text.codePoints().filter(SvgWriter::allowed).forEach(c -> {
            switch (c) {
                case '&' -> clean.append("&amp;");
                case '<' -> clean.append("&lt;");
                case '>' -> clean.append("&gt;");
                case '"' -> clean.append("&quot;");
                default -> clean.appendCodePoint(c);
            }
        });
        return clean.toString();
    }

    /** Characters an XML file may hold. */
    private static boolean allowed(int c) {
        return c == '\t' || c == '\n' || c >= 0x20 && c != 0xfffe && c != 0xffff && !(c >= 0xd800 && c <= 0xdfff);
    }

    private static String format(String pattern, Object... values) {
        return String.format(Locale.ROOT, pattern, values);
    }
}
