package hushmaze.app.field;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.solid.Solid;
import hushmaze.solid.SolidBuilder;
import hushmaze.sound.SampleBoxes;
import hushmaze.sound.section.PathField;
import hushmaze.work.Progress;
import javafx.scene.image.WritableImage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Property: every pixel has the colour of its level or pressure, limits are even and hold all but rare places. */
class FieldImageTest {
    private static PathField maze(double frequency) {
        return PathField.of(
                SolidBuilder.build(SampleBoxes.maze(2)),
                SampleBoxes.liner(0.025),
                SampleBoxes.SOUND_SPEED,
                frequency,
                Progress.NONE);
    }

    @ParameterizedTest
    @CsvSource({"63", "250", "1000", "4000"})
    void limitsAreEvenAndHoldAllButRarePlaces(double frequency) {
        PathField field = maze(frequency);
        LevelScale scale = LevelScale.of(field);
        assertThat(scale.limits()).isBetween(1, 9);
        int below = 0;
        int above = 0;
        int all = 0;
        for (int row = 0; row < field.rows(); row++) {
            for (int column = 0; column < field.columns(); column++) {
                double level = field.level(column, row);
                if (!Double.isNaN(level)) {
                    all++;
                    below += level < scale.limit(0) - scale.step() ? 1 : 0;
                    above += level > scale.limit(scale.limits() - 1) + scale.step() ? 1 : 0;
                }
            }
        }
        assertThat(below).isLessThan(all / 20);
        assertThat(above).isLessThan(all / 100);
        for (int i = 0; i < scale.limits(); i++) {
            assertThat(scale.limit(i) / scale.step()).isCloseTo(Math.rint(scale.limit(i) / scale.step()), within(1e-9));
            assertThat(scale.place(scale.limit(i))).isCloseTo(i, within(1e-9));
        }
        assertThat(scale.share(scale.place(scale.limit(0) - 1e-6)))
                .isCloseTo(Math.max(0, 1 - scale.limits() * scale.step() / 12), within(1e-9));
        assertThat(scale.share(scale.place(scale.limit(scale.limits() - 1) + 1e-6)))
                .isEqualTo(1);
    }

    @Test
    void pressureTurnsOverInHalfAPeriod() {
        PathField field = maze(500);
        FieldImage image = new FieldImage(field);
        ColourMap map = ColourMap.pressure(95);
        int[] first = new int[field.columns() * field.rows()];
        int[] half = first.clone();
        int[] whole = first.clone();
        image.pressure(0, map, first);
        image.pressure(0.5, map, half);
        image.pressure(1, map, whole);
        assertThat(whole).isEqualTo(first);
        int blue = 0;
        for (int i = 0; i < first.length; i++) {
            if (blueness(first[i]) > 30) {
                blue++;
                assertThat(blueness(half[i])).isLessThan(-10);
            }
        }
        assertThat(blue).isGreaterThan(first.length / 20);
    }

    private static int blueness(int argb) {
        return (argb & 0xff) - (argb >> 16 & 0xff);
    }

    /** In a straight duct without a standing wave there is one colour and no line, to the edges of the boards. */
    @Test
    void oneLevelIsOneColour() {
        Port end = new Port(PortFace.END, 0.1, 0.3, 0);
        Solid solid = SolidBuilder.build(SampleBoxes.maze(1, 0.6, null, LinedFaces.NONE, 1, end, end));
        PathField field = PathField.of(solid, null, SampleBoxes.SOUND_SPEED, 400, Progress.NONE);
        WritableImage picture = new FieldImage(field).levels(400, 86, ColourMap.level());
        int colour = picture.getPixelReader().getArgb(200, 43);
        for (int x = 0; x < 400; x++) {
            assertThat(picture.getPixelReader().getArgb(x, 43)).isEqualTo(colour);
        }
        int wall = (int) Math.round(0.018 / 0.136 * 86);
        assertThat(picture.getPixelReader().getArgb(200, wall + 1)).isEqualTo(colour);
        assertThat(picture.getPixelReader().getArgb(200, wall - 1)).isEqualTo(colour);
    }
}
