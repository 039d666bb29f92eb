package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.drawing.Page;
import hushmaze.solid.Part;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Property tests of the chosen part: words from the cut list, steps round all parts, its drawing, given up with the part. */
class PartsModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private PartsModel model;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        model = designer.parts();
    }

    private PathResult result() {
        return designer.results().pathResult().orElseThrow();
    }

    @Test
    void everyPartIsToldByItsMarkSizeMaterialAndCount() {
        assertThat(model.words()).startsWith("Click a part");
        for (Part part : result().solid().parts().toList()) {
            model.choose(part);
            CutItem item = result().cutList()
                    .items()
                    .filter(i -> i.parts().contains(part))
                    .findFirst()
                    .orElseThrow();
            assertThat(model.words())
                    .startsWith(item.mark() + ": ")
                    .contains(" × ", " mm", item.material())
                    .endsWith(item.quantity() == 1 ? "the only one." : "one of " + item.quantity() + ".");
        }
        model.choose(null);
        assertThat(model.words()).startsWith("Click a part");
    }

    @Test
    void stepsGoRoundTheParts() {
        List<Part> all = result().solid().parts().toList();
        model.step(all, 1);
        assertThat(model.chosenProperty().get()).isEqualTo(all.get(0));
        model.step(all, -1);
        assertThat(model.chosenProperty().get()).isEqualTo(all.get(all.size() - 1));
        model.step(all, 1);
        assertThat(model.chosenProperty().get()).isEqualTo(all.get(0));
        model.step(all.subList(3, 5), 1);
        assertThat(model.chosenProperty().get()).isEqualTo(all.get(3));
        model.step(List.of(), 1);
        assertThat(model.chosenProperty().get()).isNull();
        model.step(all, -1);
        assertThat(model.chosenProperty().get()).isEqualTo(all.get(all.size() - 1));
    }

    @Test
    void theDocumentsTurnToThePartsDrawing() {
        for (CutItem item : result().cutList().items().toList()) {
            designer.pages().watchedProperty().set(false);
            model.choose(item.parts().get(0));
            model.showDrawing();
            assertThat(designer.pages().soughtProperty().get()).isEqualTo(item.mark());
            designer.pages().watchedProperty().set(true);
            Page page = designer.pages()
                    .drawingProperty()
                    .get()
                    .pages()
                    .get(designer.pages().pageProperty().get());
            assertThat(page.title()).matches("Parts? (.*, )?" + item.mark() + "(, .*)?");
            assertThat(designer.pages().soughtProperty().get()).isEmpty();
        }
    }

    @Test
    void aPartThatIsNoLongerThereIsNoLongerChosen() {
        model.choose(result().solid().panels().get(0));
        assertThat(designer.edit().enter(Field.of("room.people"), "People", "1"))
                .isEmpty();
        assertThat(model.chosenProperty().get()).isNotNull();
        designer.edit().pathProperty().set(1);
        assertThat(model.chosenProperty().get()).isNull();
        model.choose(result().solid().panels().get(0));
        assertThat(designer.edit().enter(Field.of("path.box.clearLength"), "Length", "850 mm"))
                .isEmpty();
        assertThat(model.chosenProperty().get()).isNull();
    }
}
