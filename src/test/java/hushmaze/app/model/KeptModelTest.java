package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.KeptModel.Column;
import hushmaze.project.Box;
import hushmaze.project.VentPath;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.ResizedBox;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of boxes put by and compared, without a window. */
class KeptModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private KeptModel kept;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        kept = designer.kept();
        kept.watchedProperty().set(true);
    }

    private Box box() {
        return path().box();
    }

    private VentPath path() {
        return designer.edit().project().paths().get(0);
    }

    private void widen(double by) {
        Box wider = new ResizedBox(box()).clear(box().clearWidth() + by, box().clearHeight(), box().clearLength());
        designer.edit().edit("wider", p -> p.withPath(0, p.paths().get(0).withBox(wider)));
    }

    private List<Column> columns() {
        return kept.columnsProperty().get();
    }

    @Test
    void aBoxIsKeptChangedComparedAndTakenBack() {
        Box first = box();
        assertThat(kept.keep()).isEmpty();
        widen(0.02);
        Box second = box();
        assertThat(columns()).extracting(Column::box).containsExactly(second, first);
        assertThat(columns()).allSatisfy(c -> assertThat(c.result()).isNotNull());
        // what is compared is what the results say of the box in the path
        assertThat(columns().get(0).result().quiet().margin())
                .isEqualTo(designer.results().pathResult().orElseThrow().quiet().margin());
        assertThat(columns().get(1).result().solid().box()).isEqualTo(first);

        assertThat(kept.use(0)).isEmpty();
        assertThat(box()).isEqualTo(first);
        // the one that was there is not lost
        assertThat(path().kept()).extracting(k -> k.box()).containsExactly(first, second);
        assertThat(kept.use(1)).isEmpty();
        assertThat(path().kept()).hasSize(2);
        designer.edit().undo();
        assertThat(box()).isEqualTo(first);
    }

    @Test
    void namesAreFreeAndCanBeChanged() {
        kept.keep();
        kept.keep();
        assertThat(path().kept()).extracting(k -> k.name()).containsExactly("Box 1", "Box 2");
        assertThat(kept.rename(0, " Low one ")).isEmpty();
        assertThat(path().kept().get(0).name()).isEqualTo("Low one");
        assertThat(kept.rename(1, "Low one").orElseThrow()).contains("two boxes of the same name");
        assertThat(kept.rename(1, " ").orElseThrow()).contains("a blank text");
        assertThat(path().kept().get(1).name()).isEqualTo("Box 2");
        kept.duplicate(0);
        assertThat(path().kept().get(2).name()).isEqualTo("Box 1");
        kept.remove(0);
        assertThat(path().kept()).extracting(k -> k.name()).containsExactly("Box 2", "Box 1");
    }

    @Test
    void noMoreThanSoMany() {
        for (int i = 0; i < VentPath.MAX_KEPT; i++) {
            assertThat(kept.keep()).isEmpty();
        }
        assertThat(kept.mayKeep()).isFalse();
        assertThat(kept.keep().orElseThrow()).contains("8 boxes");
        assertThat(kept.duplicate(0).orElseThrow()).contains("8 boxes");
        assertThat(path().kept()).hasSize(VentPath.MAX_KEPT);
    }

    @Test
    void theTableSaysWhatDiffersAndWhichIsBest() {
        kept.keep();
        widen(0.03);
        List<KeptTable.Row> rows = KeptTable.of(columns(), UnitSystem.METRIC);
        KeptTable.Row drop = row(rows, "drop");
        boolean widerIsEasier = columns().get(0).result().pathAir().pressureHigh()
                < columns().get(1).result().pathAir().pressureHigh();
        assertThat(drop.best()).hasValue(widerIsEasier ? 0 : 1);
        assertThat(drop.alike()).isFalse();
        assertThat(row(rows, "passes").alike()).isTrue();
        assertThat(row(rows, "clear").cells()).containsExactly("80 × 300 × 555 mm", "50 × 300 × 555 mm");
        assertThat(row(rows, "governing").best()).isEmpty();
    }

    private static KeptTable.Row row(List<KeptTable.Row> rows, String key) {
        return rows.stream()
                .filter(r -> r.name().equals(Texts.of("kept.row." + key)))
                .findFirst()
                .orElseThrow();
    }

    /** Nothing is judged while nobody looks; then all is. */
    @Test
    void judgedOnlyWhileLookedAt() {
        HeldRunner runner = new HeldRunner();
        Designer held = TestDesigner.of(
                TaskRunner.ON_THIS_THREAD, runner, (p, path, keep, progress, watch) -> null, folder.resolve("b.json"));
        held.files().newFrom("trio-cellar");
        runner.doAll();
        held.kept().keep();
        runner.doAll();
        assertThat(held.kept().columnsProperty().get())
                .allSatisfy(c -> assertThat(c.result()).isNull());
        held.kept().watchedProperty().set(true);
        runner.doAll();
        assertThat(held.kept().columnsProperty().get())
                .hasSize(2)
                .allSatisfy(c -> assertThat(c.result()).isNotNull());
    }
}
