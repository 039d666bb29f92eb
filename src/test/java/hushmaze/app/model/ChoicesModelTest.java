package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.ChoicesModel.End;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Property tests of what a search may choose among: each change is one step, four materials at most, a project with everything free
 * says nothing, and what is not possible is refused with its reason.
 */
class ChoicesModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private ChoicesModel choices;
    private Project before;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("lesson-cabin");
        designer.edit()
                .edit(
                        "free",
                        p -> p.withPath(
                                0,
                                p.paths()
                                        .get(0)
                                        .withBrief(p.paths().get(0).brief().choosing(null))));
        before = designer.edit().project();
        choices = designer.choices();
    }

    private Brief brief() {
        return designer.edit().project().paths().get(0).brief();
    }

    @Test
    void boardsComeAndGoFourAtMost() {
        Board own = brief().construction().board();
        List<Board> more = choices.moreBoards(designer.presets().boards());
        assertThat(more)
                .startsWith(own)
                .doesNotHaveDuplicates()
                .containsAll(designer.presets().boards());
        assertThat(choices.summary()).isEqualTo("free, of the materials above");
        for (int i = 0; i < 4; i++) {
            assertThat(choices.add(more.get(i))).isEmpty();
        }
        assertThat(designer.edit().undoableProperty().get())
                .isEqualTo(more.get(3).name() + " added");
        assertThat(choices.boards()).isEqualTo(more.subList(0, 4));
        assertThat(choices.moreBoards(designer.presets().boards())).doesNotContainAnyElementsOf(more.subList(0, 4));
        assertThat(choices.add(more.get(4)).orElseThrow())
                .startsWith("Boards on hand: 5 given")
                .contains("at most 4");
        assertThat(choices.add(more.get(0))).isEmpty();
        assertThat(choices.boards()).hasSize(4);
        assertThat(choices.summary()).isEqualTo("4 boards");
        designer.edit().undo();
        assertThat(choices.boards()).isEqualTo(more.subList(0, 3));
        for (int left = 2; left >= 0; left--) {
            assertThat(choices.removeBoard(0)).isEmpty();
            assertThat(choices.boards()).hasSize(left);
        }
        assertThat(brief().choices()).isNull();
    }

    @Test
    void linersAreAListOfTheirOwn() {
        Liner liner = choices.moreLiners(designer.presets().liners()).get(1);
        assertThat(choices.add(liner)).isEmpty();
        assertThat(brief().choices()).isEqualTo(new Choices(null, List.of(liner), null, null, null, null));
        assertThat(choices.summary()).isEqualTo("1 liner");
        assertThat(choices.removeLiner(0)).isEmpty();
        assertThat(designer.edit().project()).isEqualTo(before);
    }

    @Test
    void layersAreOneToThreeOrFree() {
        String label = "Layers in a wall, at most";
        assertThat(choices.layers()).isEmpty();
        assertThat(choices.enterLayers(label, "2")).isEmpty();
        assertThat(brief().choices().mostLayers()).isEqualTo(2);
        assertThat(choices.layers()).isEqualTo("2");
        assertThat(choices.summary()).isEqualTo("layers up to 2");
        for (String wrong : List.of("0", "4", "1.5", "two")) {
            assertThat(choices.enterLayers(label, wrong).orElseThrow())
                    .startsWith(label)
                    .contains(wrong);
            assertThat(choices.layers()).isEqualTo("2");
        }
        assertThat(choices.enterLayers(label, " ")).isEmpty();
        assertThat(designer.edit().project()).isEqualTo(before);
        designer.edit().undo();
        assertThat(choices.layers()).isEqualTo("2");
    }

    @Test
    void facesAreFreeWithNoneOrAllOfThem() {
        assertThat(choices.isFree(End.OPENING)).isTrue();
        choices.choose(End.OPENING, PortFace.SIDE, true);
        choices.choose(End.OPENING, PortFace.BACK, true);
        assertThat(brief().choices().openingFaces()).containsExactly(PortFace.BACK, PortFace.SIDE);
        assertThat(choices.isFree(End.OPENING)).isFalse();
        assertThat(choices.isFree(End.ROOM)).isTrue();
        assertThat(choices.summary()).isEqualTo("some faces");
        choices.choose(End.OPENING, PortFace.END, true);
        assertThat(choices.isFree(End.OPENING)).isTrue();
        assertThat(brief().choices().openingFaces()).isEqualTo(End.OPENING.usual());
        choices.choose(End.ROOM, PortFace.FRONT, true);
        assertThat(brief().choices().roomFaces()).containsExactly(PortFace.FRONT);
        designer.edit().undo();
        for (PortFace face : End.OPENING.usual()) {
            assertThat(choices.isChosen(End.OPENING, face)).isTrue();
            choices.choose(End.OPENING, face, false);
        }
        assertThat(designer.edit().project()).isEqualTo(before);
    }

    /** Whoever measures the path's board has measured the same board on hand. */
    @Test
    void aBoardMeasuredIsMeasuredOnHandToo() {
        Board own = brief().construction().board();
        Board other = choices.moreBoards(designer.presets().boards()).get(3);
        choices.add(own);
        choices.add(other);
        Field thickness = Field.of("path.brief.construction.board.thickness");
        Field source = Field.of("path.brief.construction.board.source");
        assertThat(designer.edit()
                        .enterSaying(thickness, source, "Real thickness", "15.3 mm", Texts.of("source.thickness")))
                .isEmpty();
        assertThat(choices.boards()).containsExactly(brief().construction().board(), other);
        assertThat(choices.boards().get(0).thickness()).isEqualTo(0.0153);
        Board third = choices.moreBoards(designer.presets().boards()).get(5);
        designer.edit().set(Field.of("path.brief.construction.board"), "Board", third);
        assertThat(choices.boards().get(0).name()).isEqualTo(own.name());

        Field onHand = Field.of("path.brief.choices.boards.1.thickness");
        Field from = Field.of("path.brief.choices.boards.1.source");
        assertThat(designer.edit().enterSaying(onHand, from, "Real thickness", "17.9", Texts.of("source.thickness")))
                .isEmpty();
        assertThat(designer.edit().shown(onHand)).isEqualTo("17.9 mm");
        assertThat(choices.boards().get(1).source()).startsWith(other.source()).isNotEqualTo(other.source());
    }
}
