package hushmaze.drawing.page;

import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.draft.DimensionChain.Side;
import hushmaze.project.Seam;
import hushmaze.solid.Solid;
import java.util.List;
import java.util.Locale;
import java.util.stream.DoubleStream;

/** Seams in the plan: a chain line across the box, named in the words below, dimensioned from the near end. */
final class SeamLines {
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
            boolean apart = seam.comesApart();
            Stroke stroke = new Stroke(apart, Stroke.Pattern.CHAIN, Ink.ALERT);
            view.sketch().line(x, outer.y0() - BEYOND, x, outer.y1() + BEYOND, stroke);
        }
    }

    /** One line for each seam. */
    List<String> words() {
        return solid.box().seams().stream()
                .map(seam -> Labels.of(
                        "view.plan.seam",
                        view.job().length(seam.position()),
                        Labels.of("view.seam." + seam.kind().name().toLowerCase(Locale.ROOT))))
                .toList();
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
