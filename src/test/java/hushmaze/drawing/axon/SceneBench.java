package hushmaze.drawing.axon;

import hushmaze.drawing.SampleAssessment;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.axon.Scene.Thing;
import hushmaze.solid.Axis;
import hushmaze.solid.Cuboid;
import hushmaze.solid.Part;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import java.util.ArrayList;
import java.util.List;

/** How long the picture of a box of four passes, two layers, pulled apart, takes: all lines and all fills. */
public final class SceneBench {
    private SceneBench() {}

    public static void main(String[] args) {
        Solid solid = SolidBuilder.build(SampleAssessment.fourPasses());
        for (int i = 0; i < 30; i++) {
            long start = System.nanoTime();
            List<Thing> things = new ArrayList<>();
            for (Part part : solid.parts().toList()) {
                Cuboid b = part.bounds();
                Form form = Form.of(part).moved(2 * b.centre(Axis.X), 2 * b.centre(Axis.Y), 2 * b.centre(Axis.Z));
                things.add(new Thing(form, things.size()));
            }
            Sketch sketch = new Sketch();
            Picture picture = new Picture(new Scene(things), new Isometric(100), sketch);
            for (int k = 0; k < things.size(); k++) {
                picture.fill(k, hushmaze.drawing.Ink.PALE);
            }
            picture.edges(true);
            System.out.printf(
                    "%d parts, %d shapes: %.1f ms%n",
                    things.size(), sketch.shapes().size(), (System.nanoTime() - start) / 1e6);
        }
    }
}
