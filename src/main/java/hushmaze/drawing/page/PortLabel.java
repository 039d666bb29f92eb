package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Labels;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Lettering;
import hushmaze.solid.PortPlace;
import hushmaze.solid.Solid;

/** The word in a port: "opening", "room". */
final class PortLabel {
    private static final double SIZE = Lettering.TABLE;

    private PortLabel() {}

    /** Writes the word into the hole, along its longer side, if it has the room. */
    static void put(Sketch sketch, TextMeasure measure, Bounds hole, String word) {
        double need = measure.width(word, SIZE, Weight.REGULAR) + 1;
        Bounds box = new Bounds(
                hole.centreX() - need / 2,
                hole.centreY() - SIZE * 0.6,
                hole.centreX() + need / 2,
                hole.centreY() + SIZE * 0.6);
        if (hole.contains(box)) {
            sketch.rectangle(box, null, Ink.WHITE);
            sketch.text(
                    hole.centreX(),
                    hole.centreY() + SIZE * 0.33,
                    word,
                    SIZE,
                    Weight.REGULAR,
                    Anchor.MIDDLE,
                    Ink.ACCENT);
        }
    }

    /** Writes the word into the lower half of the hole, clear of the line of the air and of other texts, if it has the room. */
    static void putBelowMiddle(Sketch sketch, TextMeasure measure, Bounds hole, String word) {
        double base = hole.centreY() + SIZE * 1.25;
        Shape.Text text =
                new Shape.Text(hole.centreX(), base, word, SIZE, Weight.REGULAR, Anchor.MIDDLE, false, Ink.ACCENT);
        Bounds box = text.bounds(measure).grown(0.5);
        boolean free = sketch.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .noneMatch(other -> other.bounds(measure).overlaps(box));
        if (hole.contains(box) && free) {
            sketch.add(text);
        }
    }

    /** What a port of a box is called. */
    static String word(Solid solid, PortPlace port) {
        return Labels.of(port.equals(solid.openingPort()) ? "view.opening" : "view.room");
    }
}
