package hushmaze.app.model;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.app.model.StockModel.Material;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.size.FirstLayout;
import hushmaze.work.Progress;
import hushmaze.work.TaskRunner;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * Property tests of sheets on hand, of a liner's figures and of the faces openings are in: each change is one step, and what
 * cannot be is refused with its reason and changes nothing.
 */
class StockModelTest {
    @TempDir
    Path folder;

    private Designer designer;
    private StockModel stock;
    private Project before;

    @BeforeEach
    void open() {
        designer = TestDesigner.of(TaskRunner.ON_THIS_THREAD, folder.resolve("unnamed.json"));
        designer.files().newFrom("trio-cellar");
        before = designer.edit().project();
        stock = designer.stock();
    }

    @ParameterizedTest
    @EnumSource(Material.class)
    void sheetsComeAndGoAndOneStays(Material of) {
        List<Sheet> presets = of == Material.BOARD
                ? designer.presets().boardSheets()
                : designer.presets().linerSheets();
        List<Sheet> first = stock.sheets(of);
        List<Sheet> more = stock.more(of, presets);
        assertThat(more).isNotEmpty().doesNotContainAnyElementsOf(first);
        assertThat(stock.add(of, more.get(0))).isEmpty();
        assertThat(stock.add(of, stock.offcut(of))).isEmpty();
        assertThat(stock.add(of, stock.offcut(of))).isEmpty();
        List<Sheet> now = stock.sheets(of);
        assertThat(now).startsWith(first.toArray(Sheet[]::new)).hasSize(first.size() + 3);
        assertThat(now).extracting(Sheet::name).contains("Offcut 1", "Offcut 2");
        assertThat(now.get(now.size() - 1).stock()).isEqualTo(1);
        assertThat(stock.summary()).contains(now.size() + " sizes");
        while (stock.sheets(of).size() > 1) {
            assertThat(stock.remove(of, 0)).isEmpty();
        }
        assertThat(stock.remove(of, 0).orElseThrow()).startsWith("One size at least has to stay");
        assertThat(stock.sheets(of)).hasSize(1);
        while (!designer.edit().undoableProperty().get().isEmpty()) {
            designer.edit().undo();
        }
        assertThat(designer.edit().project()).isEqualTo(before);
    }

    /** While another path has a board of the old name, offcuts stay with it. */
    @Test
    void offcutsFollowABoardThatGetsAnotherName() {
        assertThat(stock.add(Material.BOARD, stock.offcut(Material.BOARD))).isEmpty();
        int offcut = stock.sheets(Material.BOARD).size() - 1;
        String old = before.paths().get(0).brief().construction().board().name();
        designer.edit().pathProperty().set(1);
        assertThat(designer.edit()
                        .set(
                                Field.of("path.brief.construction.board"),
                                "Board",
                                before.paths().get(0).brief().construction().board()))
                .isEmpty();
        assertThat(stock.sheets(Material.BOARD).get(offcut).material()).isEqualTo(old);
        for (int path = 0; path < 2; path++) {
            assertThat(stock.sheets(Material.BOARD).get(offcut).material()).isEqualTo(old);
            designer.edit().pathProperty().set(path);
            assertThat(designer.edit().set(Field.of("path.brief.construction.board.name"), "Board", "Shelf board"))
                    .isEmpty();
            assertThat(designer.edit()
                            .project()
                            .paths()
                            .get(path)
                            .box()
                            .shell()
                            .get(0)
                            .name())
                    .isEqualTo("Shelf board");
        }
        assertThat(stock.sheets(Material.BOARD).get(offcut).material()).isEqualTo("Shelf board");
        designer.edit().undo();
        assertThat(stock.sheets(Material.BOARD).get(offcut).material()).isEqualTo(old);
    }

    /** An offcut is marked as assumed until its size is typed; a size that is sold says that it was typed. */
    @Test
    void typedSizesSaySo() {
        stock.add(Material.BOARD, stock.offcut(Material.BOARD));
        int last = stock.sheets(Material.BOARD).size() - 1;
        assertThat(size(last, "900 mm")).isEmpty();
        assertThat(stock.sheets(Material.BOARD).get(last).source()).isEqualTo("Entered by hand.");
        String sold = stock.sheets(Material.BOARD).get(0).source();
        assertThat(size(0, "2445")).isEmpty();
        assertThat(size(0, "2442")).isEmpty();
        assertThat(stock.sheets(Material.BOARD).get(0))
                .extracting(Sheet::length, Sheet::source)
                .containsExactly(2.442, sold + "; size as entered.");
        assertThat(size(0, "20 m").orElseThrow()).contains("20", "from 50 to 10000 mm");
    }

    private Optional<String> size(int number, String text) {
        String sheet = "stock.boardSheets." + number + ".";
        return designer.edit()
                .enterSaying(
                        Field.of(sheet + "length"),
                        Field.of(sheet + "source"),
                        "Length",
                        text,
                        Texts.of("source.size"));
    }

    /** The range goes along with a likely value outside it, and the box follows; beyond all liners it is refused. */
    @Test
    void aLikelyResistivityTakesItsRangeAlong() {
        Field likely = Field.of("path.brief.construction.liner.flowResistivity");
        LinerFigures figures = new LinerFigures(designer.edit(), Field.of("path.brief.construction.liner"));
        Liner old = liner();
        double high = 2 * old.flowResistivityHigh();
        assertThat(figures.enterResistivity(likely, "Flow resistivity", String.valueOf(high)))
                .isEmpty();
        assertThat(liner())
                .isEqualTo(
                        old.resisting(high, old.flowResistivityLow(), high, old.source() + Texts.of("source.figure")));
        assertThat(designer.edit().project().paths().get(0).box().liner()).isEqualTo(liner());
        double low = old.flowResistivityLow() / 2;
        assertThat(figures.enterResistivity(likely, "Flow resistivity", String.valueOf(low)))
                .isEmpty();
        assertThat(liner().flowResistivityLow()).isEqualTo(low);
        assertThat(liner().flowResistivityHigh()).isEqualTo(high);
        Liner now = liner();
        assertThat(figures.enterResistivity(likely, "Flow resistivity", "12").orElseThrow())
                .contains("Flow resistivity: 12 Pa·s/m²", "500");
        assertThat(figures.enterResistivity(likely, "Flow resistivity", "soft").orElseThrow())
                .contains("soft");
        assertThat(liner()).isEqualTo(now);
    }

    private Liner liner() {
        return designer.edit().project().paths().get(0).brief().construction().liner();
    }

    /** Any face can be chosen, from any other, for both ends; an opening never grows. */
    @Test
    void openingsGoIntoAnyFace() {
        designer.edit().edit("box", p -> FirstLayout.complete(p, Progress.NONE));
        PortFaces faces = new PortFaces(designer.edit());
        List<String> refused = new ArrayList<>();
        for (String end : List.of("openingPort", "roomPort")) {
            Field field = Field.of("path.box." + end + ".face");
            for (PortFace face : PortFace.values()) {
                Port old = port(end);
                Optional<String> why = faces.set(field, "Face it is in", face);
                why.ifPresent(refused::add);
                if (why.isEmpty()) {
                    assertThat(port(end).face()).isEqualTo(face);
                    assertThat(port(end).width()).isLessThanOrEqualTo(old.width());
                    assertThat(port(end).height()).isLessThanOrEqualTo(old.height());
                }
            }
        }
        assertThat(refused).isEmpty();
    }

    private Port port(String end) {
        Box box = designer.edit().project().paths().get(0).box();
        return end.equals("roomPort") ? box.roomPort() : box.openingPort();
    }

    @Test
    void aSourceSaysAThingOnceAndOnlyWhereThereIsRoom() {
        assertThat(EditModel.saying("A.", "; more.")).isEqualTo("A.; more.");
        assertThat(EditModel.saying("A.; more.", "; more.")).isEqualTo("A.; more.");
        String full = "x".repeat(EditModel.LONGEST_SOURCE);
        assertThat(EditModel.saying(full, "; more.")).isEqualTo(full);
    }
}
