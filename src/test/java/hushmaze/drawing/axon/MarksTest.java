package hushmaze.drawing.axon;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.drawing.Point;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Sketch;
import hushmaze.drawing.axon.Marks.Mark;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;

/** Property: over seeded random places in a picture every mark is set, no two leaders cross, no two marks touch. */
class MarksTest {
    private static List<Shape.Line> lines(Sketch sketch) {
        return sketch.shapes().stream()
                .filter(Shape.Line.class::isInstance)
                .map(Shape.Line.class::cast)
                .toList();
    }

    @Test
    void leadersDoNotCross() {
        Random random = new Random(128);
        for (int i = 0; i < 300; i++) {
            List<Point> around = List.of(new Point(0, 50), new Point(60, 0), new Point(120, 40), new Point(60, 100));
            List<Mark> marks = new ArrayList<>();
            for (int k = 2 + random.nextInt(25); k > 0; k--) {
                double s = random.nextDouble();
                double x = 20 + 80 * random.nextDouble();
                marks.add(new Mark("B" + k, new Point(x, 35 + 30 * s)));
            }
            Sketch sketch = new Sketch();
            new Marks(around, 3).draw(sketch, marks);
            List<Shape.Line> lines = lines(sketch);
            assertThat(lines).hasSameSizeAs(marks);
            for (int p = 0; p < lines.size(); p++) {
                for (int q = 0; q < p; q++) {
                    assertThat(Marks.cross(from(lines.get(p)), to(lines.get(p)), from(lines.get(q)), to(lines.get(q))))
                            .as("picture %d: %s and %s", i, lines.get(p), lines.get(q))
                            .isFalse();
                }
            }
            textsApart(sketch, i);
        }
    }

    private static void textsApart(Sketch sketch, int picture) {
        List<Shape.Text> texts = sketch.shapes().stream()
                .filter(Shape.Text.class::isInstance)
                .map(Shape.Text.class::cast)
                .toList();
        for (Shape.Text a : texts) {
            for (Shape.Text b : texts) {
                if (!a.equals(b)) {
                    // Half the size a letter, as a rule wider than letters are.
                    assertThat(a.bounds((t, size, w) -> 0.6 * size * t.length())
                                    .overlaps(b.bounds((t, size, w) -> 0.6 * size * t.length())))
                            .as("picture %d: %s and %s", picture, a, b)
                            .isFalse();
                }
            }
        }
    }

    private static Point from(Shape.Line line) {
        return new Point(line.x1(), line.y1());
    }

    private static Point to(Shape.Line line) {
        return new Point(line.x2(), line.y2());
    }
}
