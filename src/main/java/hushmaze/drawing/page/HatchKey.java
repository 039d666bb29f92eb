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

    private HatchKey() {}

    /** Sets the key under everything drawn so far. */
    static void under(Sketch view, Job job) {
        Box box = job.result().path().box();
        Bounds b = view.bounds(job.measure());
        List<String> words = new ArrayList<>();
        Stream.concat(box.shell().stream(), Stream.of(box.baffleBoard()))
                .map(board -> Labels.of("view.board", board.name(), job.length(board.thickness())))
                .distinct()
                .forEach(words::add);
        int boards = words.size();
        if (box.liner() != null) {
            words.add(Labels.of(
                    "view.liner", box.liner().name(), job.length(box.liner().thickness())));
        }
        double widest = words.stream()
                .mapToDouble(w -> job.measure().width(w, Lettering.TABLE, Weight.REGULAR))
                .max()
                .orElse(0);
        double x = b.centreX() - (WIDTH + GAP + widest) / 2;
        double y = b.y1() + GAP;
        for (int i = 0; i < words.size(); i++) {
            Bounds sample = new Bounds(x, y, x + WIDTH, y + HEIGHT);
            boolean board = i < boards;
            Stroke lines = Stroke.THIN.in(board ? Ink.GREY : Ink.LIGHT);
            (board ? Hatching.RISING : Hatching.CROSSED).fill(view, sample, lines);
            view.rectangle(sample, board ? Stroke.OUTLINE : Stroke.THIN.in(Ink.GREY), null);
            view.text(x + WIDTH + GAP, y + HEIGHT * 0.82, words.get(i), Lettering.TABLE, Anchor.START);
            y += LINE;
        }
    }
}
