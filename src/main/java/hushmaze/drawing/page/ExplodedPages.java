package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.Stroke;
import hushmaze.drawing.Weight;
import hushmaze.drawing.axon.Edge;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.axon.Marks;
import hushmaze.drawing.draft.Lettering;
import hushmaze.drawing.draft.SheetFrame;
import hushmaze.drawing.draft.Wrap;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.Arrays;
import java.util.List;

/** One page with all parts of the box pulled apart, one of each kind with its mark from the cut list. */
final class ExplodedPages {
    private static final double[] APART = {1, 1.3, 1.7, 2.3, 3};
    private static final double WORDS = 11;

    private final Job job;
    private final Solid solid;

    ExplodedPages(Job job) {
        this.job = job;
        this.solid = job.result().solid();
    }

    List<Draft> pages() {
        BoxPicture picture = picture();
        SheetFrame upright = new SheetFrame(job.paper(), false);
        SheetFrame lying = job.drawingSheet();
        SheetFrame sheet = !job.paper().large() && scale(picture, upright) > scale(picture, lying) ? upright : lying;
        Sketch sketch = new Sketch();
        Bounds room = sheet.content();
        double y = words(sketch, room);
        Sketch drawn = drawn(picture, scale(picture, sheet));
        Bounds b = drawn.bounds(job.measure());
        sketch.add(drawn, room.centreX() - b.centreX(), (y + room.y1()) / 2 - b.centreY());
        return List.of(new Draft(Labels.of("exploded.title"), Labels.of("type.exploded"), null, sheet, sketch));
    }

    /** The picture alone with its marks, no larger than given, mm; {@link #picture()} once is enough for any size. */
    Sketch alone(BoxPicture picture, double width, double height) {
        double scale = scale(picture, new Bounds(0, 0, width, height), Lettering.DIMENSION);
        return drawn(picture, scale);
    }

    private Sketch drawn(BoxPicture picture, double scale) {
        Isometric view = new Isometric(scale);
        Sketch drawn = new Sketch();
        picture.draw(drawn, view, ExplodedPages::ink).lines(axes(picture), Stroke.CENTRE);
        new Marks(picture.hull(view), Lettering.DIMENSION).draw(drawn, picture.marks(view, this::text));
        return drawn;
    }

    /** Parts as far apart as it takes to see one of every kind, if that can be. */
    BoxPicture picture() {
        BoxPicture picture = null;
        for (double apart : APART) {
            picture = new BoxPicture(new Explosion(solid, apart).parts());
            if (picture.hidden(this::text).isEmpty()) {
                break;
            }
        }
        return picture;
    }

    /** From the cover's outer corners left and right to the back's, where nothing hides them. */
    private List<Edge> axes(BoxPicture picture) {
        Cuboid outer = solid.outer();
        double low = picture.lowest();
        double high = picture.highest();
        // The corner in front would run across all parts, the one behind among them.
        return List.of(
                new Edge(Axis.Z, low, high, outer.x0(), outer.y1()),
                new Edge(Axis.Z, low, high, outer.x1(), outer.y0()));
    }

    private static Ink ink(Part part) {
        return part instanceof LinerPiece ? Ink.ACCENT_PALE : null;
    }

    private String text(Part part) {
        String mark = job.result().cutList().markOf(part);
        long count = job.result()
                .cutList()
                .items()
                .filter(i -> i.mark().equals(mark))
                .findFirst()
                .orElseThrow()
                .quantity();
        return count == 1 ? mark : Labels.of("exploded.several", mark, String.valueOf(count));
    }

    /** The largest picture that goes on the page with its marks, mm for a metre. */
    private double scale(BoxPicture picture, SheetFrame sheet) {
        return scale(picture, sheet.content(), WORDS + Lettering.DIMENSION);
    }

    /** @param taken of the height by other things, mm */
    private double scale(BoxPicture picture, Bounds room, double taken) {
        Isometric one = new Isometric(1);
        List<Point> hull = picture.hull(one);
        double width = extent(hull.stream().mapToDouble(Point::x).toArray());
        double height = extent(hull.stream().mapToDouble(Point::y).toArray());
        List<String> texts = List.copyOf(picture.names(this::text));
        double beside = Marks.room(texts, Lettering.DIMENSION, job.measure());
        return Math.min((room.width() - 2 * beside) / width, (room.height() - taken) / height);
    }

    private static double extent(double[] places) {
        return Arrays.stream(places).max().orElseThrow()
                - Arrays.stream(places).min().orElseThrow();
    }

    /** The note at the head; returns where it ends. */
    private double words(Sketch sketch, Bounds room) {
        double y = room.y0() + Lettering.SMALL;
        for (String line :
                Wrap.lines(Labels.of("exploded.note"), room.width(), Lettering.SMALL, Weight.REGULAR, job.measure())) {
            sketch.text(room.x0(), y, line, Lettering.SMALL, Weight.REGULAR, Anchor.START, Ink.GREY);
            y += Lettering.SMALL * Lettering.LEADING;
        }
        return y;
    }
}
