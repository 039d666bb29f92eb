package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.drawing.draft.Lettering;
import hushmaze.project.Seam;
import hushmaze.solid.Solid;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** Seams in the plan: a chain line across the box, named beside its upper end, dimensioned from the near end. */
final class SeamLines {
    private static final double SIZE = Lettering.TABLE;
    /** How far a line goes on beyond the outline, mm. */
    private static final double BEYOND = 4.5;

    private final PlanarView view;
    private final Solid solid;

    SeamLines(PlanarView view) {
        this.view = view;
        this.solid = view.job().result().solid();
    }

    void draw() {
        Bounds outer = view.picture(solid.outer());
        for (Seam seam : solid.box().seams()) {
            double x = view.x(place(seam));
            boolean apart = seam.kind() == Seam.Kind.PARTING;
            Stroke stroke = new Stroke(apart, Stroke.Pattern.CHAIN, Ink.ALERT);
            view.sketch().line(x, outer.y0() - BEYOND, x, outer.y1() + BEYOND, stroke);
            name(seam, x, outer.y0() - BEYOND);
        }
    }

    private void name(Seam seam, double x, double top) {
        String words = Labels.of("view.seam." + seam.kind().name().toLowerCase(Locale.ROOT));
        TextMeasure measure = view.job().measure();
        double width = measure.width(words, SIZE, Weight.REGULAR);
        double foot = top + SIZE;
        view.sketch().rectangle(new Bounds(x + 0.5, top - 0.2, x + 1.5 + width, foot + SIZE * 0.3), null, Ink.WHITE);
        view.sketch().text(x + 1, foot, words, SIZE, Weight.REGULAR, Anchor.START, Ink.ALERT);
    }

    /** The places of the seams from the outer face of the near end. */
    void dimension() {
        if (!solid.box().seams().isEmpty()) {
            double[] seams =
                    solid.box().seams().stream().mapToDouble(this::place).toArray();
            view.dimension(
                    Side.ABOVE,
                    Places.of(DoubleStream.concat(
                                    DoubleStream.of(
                                            solid.outer().x0(), solid.outer().x1()),
                                    DoubleStream.of(seams))
                            .toArray()));
        }
    }

    private double place(Seam seam) {
        return solid.outer().x0() + seam.position();
    }
}
