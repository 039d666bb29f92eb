package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Wrap;
import java.util.List;

/** The words under a view. */
final class Caption {
    private static final double ABOVE = 4.5;
    private static final double LEAST_WIDTH = 70;

    private Caption() {}

    /**
     * Sets a name and further lines centred under everything drawn so far.
     *
     * @param name of the view, in semibold
     * @param lines below it; long ones wrap
     */
    static void under(Sketch view, TextMeasure measure, String name, List<String> lines) {
        under(view, measure, LEAST_WIDTH, name, lines);
    }

    /** The same with lines that are at least so long before they wrap, mm. */
    static void under(Sketch view, TextMeasure measure, double leastWidth, String name, List<String> lines) {
        Bounds b = view.bounds(measure);
        double width = Math.max(leastWidth, b.width());
        double y = b.y1() + ABOVE + Lettering.HEADING * TextMeasure.CAPITAL;
        for (String line : Wrap.lines(name, width, Lettering.HEADING, Weight.SEMIBOLD, measure)) {
            view.text(b.centreX(), y, line, Lettering.HEADING, Weight.SEMIBOLD, Anchor.MIDDLE, Ink.BLACK);
            y += Lettering.HEADING * Lettering.LEADING;
        }
        y += Lettering.TABLE - Lettering.HEADING;
        for (String line : lines) {
            for (String part : Wrap.lines(line, width, Lettering.TABLE, Weight.REGULAR, measure)) {
                view.text(b.centreX(), y, part, Lettering.TABLE, Anchor.MIDDLE);
                y += Lettering.TABLE * Lettering.LEADING;
            }
        }
    }
}
