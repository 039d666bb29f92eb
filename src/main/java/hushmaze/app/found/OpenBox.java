package hushmaze.app.found;

import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageSource;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Point;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.axon.Form;
import hushmaze.drawing.axon.Isometric;
import hushmaze.drawing.axon.Picture;
import hushmaze.drawing.axon.Scene;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.LinerPiece;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import java.util.List;

/** A small picture of a box with its cover off, so that its passes are seen; it fills the room there is. */
final class OpenBox implements PageSource {
    private static final double MARGIN = 1;
    private static final double LINE = 0.16;

    private final List<Part> parts;
    private final Scene scene;
    private Page last;

    OpenBox(Solid solid) {
        Cuboid cavity = solid.cavity();
        this.parts = solid.parts()
                .filter(part -> part.normal() != Axis.Z || part.bounds().z0() < cavity.centre(Axis.Z))
                .toList();
        this.scene = new Scene(parts.stream()
                .map(part -> new Scene.Thing(Form.of(part), part instanceof LinerPiece ? 1 : 0))
                .toList());
    }

    @Override
    public Page page(double width, double height) {
        if (last == null || last.width() != width || last.height() != height) {
            last = drawn(width, height);
        }
        return last;
    }

    private Page drawn(double width, double height) {
        List<Point> corners = Picture.corners(scene, new Isometric(1));
        double x0 = corners.stream().mapToDouble(Point::x).min().orElseThrow();
        double x1 = corners.stream().mapToDouble(Point::x).max().orElseThrow();
        double y0 = corners.stream().mapToDouble(Point::y).min().orElseThrow();
        double y1 = corners.stream().mapToDouble(Point::y).max().orElseThrow();
        double scale = Math.min((width - 2 * MARGIN) / (x1 - x0), (height - 2 * MARGIN) / (y1 - y0));
        Sketch sketch = new Sketch();
        Picture picture = new Picture(scene, new Isometric(scale), sketch);
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof LinerPiece) {
                picture.fill(i, Ink.ACCENT_PALE);
            } else {
                picture.fill(i, Axis.Z, Ink.LIGHT).fill(i, Axis.X, Ink.PALE).fill(i, Axis.Y, Ink.PALE);
            }
        }
        picture.edges(false);
        Sketch placed = new Sketch().add(sketch, width / 2 - scale * (x0 + x1) / 2, height / 2 - scale * (y0 + y1) / 2);
        return Page.of(Texts.of("found.picture"), width, height, LINE, placed.shapes());
    }
}
