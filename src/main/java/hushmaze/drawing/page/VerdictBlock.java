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
            String name = Labels.of("verdict." + names[i]);
            String sentence = sentences.get(i);
            boolean good = ok[i];
            blocks.add(job.blocks().sized(i == 0 ? 3 : 0, width -> row(job, width, good, name, sentence)));
        }
        return blocks;
    }

    private static Sketch row(Job job, double width, boolean ok, String name, String sentence) {
        Sketch sketch = new Sketch();
        double size = Lettering.TEXT;
        double room = width - SIGN - NAME;
        List<String> lines = Wrap.lines(sentence, room, size, Weight.REGULAR, job.measure());
        double leading = size * Lettering.LEADING;
        double height = lines.size() * leading + 2 * PADDING;
        // An invisible rule fixes the strip's height whatever is in it.
        sketch.line(0, 0, width, 0, Stroke.RULE);
        double foot = PADDING + size;
        sign(sketch, ok, foot - size * 0.33);
        sketch.text(SIGN, foot, name, size, Weight.SEMIBOLD, Anchor.START, ok ? Ink.BLACK : Ink.ALERT);
        for (int i = 0; i < lines.size(); i++) {
            sketch.text(SIGN + NAME, foot + i * leading, lines.get(i), size, Anchor.START);
        }
        sketch.line(0, height, width, height, Stroke.RULE);
        return sketch;
    }

    /** A tick for yes, a crossed box for no. */
    private static void sign(Sketch sketch, boolean ok, double y) {
        Stroke stroke = new Stroke(true, Stroke.Pattern.CONTINUOUS, ok ? Ink.ACCENT : Ink.ALERT);
        if (ok) {
            sketch.path(List.of(new Point(0.6, y), new Point(2, y + 1.5), new Point(4.4, y - 1.7)), stroke);
        } else {
            sketch.rectangle(new Bounds(0.6, y - 1.7, 4, y + 1.7), stroke, null);
            sketch.line(0.6, y - 1.7, 4, y + 1.7, stroke);
            sketch.line(0.6, y + 1.7, 4, y - 1.7, stroke);
        }
    }
}
