package hushmaze.drawing.page;

import hushmaze.drawing.Anchor;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Ink;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.TextMeasure;
import hushmaze.drawing.Weight;
import hushmaze.drawing.draft.Lettering;

/** The word in a port: "opening port", "room port". */
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
}
