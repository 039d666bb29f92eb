package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Hatching;
import hushmaze.drawing.draft.Lettering;
import hushmaze.project.Box;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** What the hatchings of a section mean, one line each, under the section. */
final class HatchKey {
    private static final double WIDTH = 9;
    private static final double HEIGHT = 3.4;
    private static final double LINE = 5.2;
    private static final double GAP = 2;
    private static final double BETWEEN = 6;
    /** Width that is used even under a narrow view. */
    private static final double LEAST = 120;

    private HatchKey() {}

    /** Sets the key under everything drawn so far. */
    static void under(Sketch view, Job job) {
        Box box = job.result().path().box();
        Bounds b = view.bounds(job.measure());
        List<String> words = new ArrayList<>();
        Stream.concat(box.shell().stream(), Stream.of(box.baffleBoard()))
                .map(board -> Labels.of("view.board", board.name(), job.thickness(board.thickness())))
                .distinct()
                .forEach(words::add);
        int boards = words.size();
        if (box.liner() != null) {
            words.add(Labels.of(
                    "view.liner",
                    job.wording().liner(box.liner()),
                    job.length(box.liner().thickness())));
        }
        double total = words.stream().mapToDouble(w -> entry(w, job)).sum() - BETWEEN;
        boolean row = total <= Math.max(LEAST, b.width());
        double widest = row
                ? total
                : words.stream().mapToDouble(w -> entry(w, job)).max().orElse(0) - BETWEEN;
        double x = b.centreX() - widest / 2;
        double y = b.y1() + GAP;
        for (int i = 0; i < words.size(); i++) {
            sample(view, i < boards, new Bounds(x, y, x + WIDTH, y + HEIGHT));
            view.text(x + WIDTH + GAP, y + HEIGHT * 0.82, words.get(i), Lettering.TABLE, Anchor.START);
            x += row ? entry(words.get(i), job) : 0;
            y += row ? 0 : LINE;
        }
    }

    private static double entry(String words, Job job) {
        return WIDTH + GAP + job.measure().width(words, Lettering.TABLE, Weight.REGULAR) + BETWEEN;
    }

    private static void sample(Sketch view, boolean board, Bounds sample) {
        (board ? Hatching.RISING : Hatching.CROSSED).fill(view, sample, Stroke.THIN.in(board ? Ink.GREY : Ink.LIGHT));
        view.rectangle(sample, board ? Stroke.OUTLINE : Stroke.THIN.in(Ink.GREY), null);
    }
}
