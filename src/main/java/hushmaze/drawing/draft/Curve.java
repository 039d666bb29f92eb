package hushmaze.drawing.draft;

import hushmaze.drawing.Point;
import hushmaze.drawing.Stroke;
import java.util.List;

/**
 * A line of a chart.
 *
 * @param name in the legend
 * @param stroke of the line; lines of one chart differ by pattern or width, not by colour alone
 * @param points values across and up, in the units the chart asks for, from left to right
 */
public record Curve(String name, Stroke stroke, List<Point> points) {
    public Curve {
        points = List.copyOf(points);
    }
}
