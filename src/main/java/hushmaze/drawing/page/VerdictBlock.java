package hushmaze.drawing.page;

import hushmaze.assess.PathResult;
import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Block;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.Wrap;
import java.util.ArrayList;
import java.util.List;

/** The four verdicts: a sign, a word and the sentence with its numbers. */
final class VerdictBlock {
    private static final double SIGN = 7;
    private static final double NAME = 21;
    private static final double PADDING = 1.6;

    /** What a sign says. */
    enum Sign {
        YES,
        NO,
        /** It cannot be said. */
        OPEN
    }

    private VerdictBlock() {}

    static List<Block> of(Job job) {
        PathResult result = job.result();
        boolean[] ok = {
            result.quiet().ok(),
            result.air().ok(),
            result.fits().ok(),
            result.buildable().ok()
        };
        String[] names = {"quiet", "air", "fits", "buildable"};
        List<String> sentences = job.wording().verdicts(result);
        List<Block> blocks = new ArrayList<>();
        for (int i = 0; i < ok.length; i++) {
            Sign sign = ok[i] ? Sign.YES : Sign.NO;
            blocks.add(row(job, i == 0, sign, Labels.of("verdict." + names[i]), sentences.get(i)));
        }
        return blocks;
    }

    /** One row of such a list. @param first whether it is the first one */
    static Block row(Job job, boolean first, Sign sign, String name, String sentence) {
        return job.blocks().sized(first ? 3 : 0, width -> row(job, width, sign, name, sentence));
    }

    private static Sketch row(Job job, double width, Sign sign, String name, String sentence) {
        Sketch sketch = new Sketch();
        double size = Lettering.TEXT;
        double room = width - SIGN - NAME;
        List<String> lines = Wrap.lines(sentence, room, size, Weight.REGULAR, job.measure());
        double leading = size * Lettering.LEADING;
        double height = lines.size() * leading + 2 * PADDING;
        // An invisible rule fixes the strip's height whatever is in it.
        sketch.line(0, 0, width, 0, Stroke.RULE);
        double foot = PADDING + size;
        sign(sketch, sign, foot - size * 0.33);
        sketch.text(SIGN, foot, name, size, Weight.SEMIBOLD, Anchor.START, sign == Sign.NO ? Ink.ALERT : Ink.BLACK);
        for (int i = 0; i < lines.size(); i++) {
            sketch.text(SIGN + NAME, foot + i * leading, lines.get(i), size, Anchor.START);
        }
        sketch.line(0, height, width, height, Stroke.RULE);
        return sketch;
    }

    /** A tick for yes, a crossed box for no, an empty box for what cannot be said. */
    private static void sign(Sketch sketch, Sign sign, double y) {
        Ink ink = sign == Sign.YES ? Ink.ACCENT : sign == Sign.NO ? Ink.ALERT : Ink.GREY;
        Stroke stroke = new Stroke(true, Stroke.Pattern.CONTINUOUS, ink);
        if (sign == Sign.YES) {
            sketch.path(List.of(new Point(0.6, y), new Point(2, y + 1.5), new Point(4.4, y - 1.7)), stroke);
            return;
        }
        sketch.rectangle(new Bounds(0.6, y - 1.7, 4, y + 1.7), stroke, null);
        if (sign == Sign.NO) {
            sketch.line(0.6, y - 1.7, 4, y + 1.7, stroke);
            sketch.line(0.6, y + 1.7, 4, y - 1.7, stroke);
        }
    }
}
