package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.build.Effort;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.build.Supply;
import hushmaze.material.Board;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.size.LayoutRules;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Property tests: paths and materials of one project never take more of a sheet than there is. */
class SharedSheetsTest {
    private static Project with(Project project, Sheet... boards) {
        Stock old = project.stock();
        return new Project(
                project.formatVersion(),
                project.name(),
                project.titleBlock(),
                project.units(),
                project.room(),
                new Stock(List.of(boards), old.linerSheets(), old.saw(), old.screw()),
                project.paths(),
                project.readings());
    }

    private static Assessment assess(Project project) {
        return Assessor.assess(LayoutRules.complete(project, Progress.NONE), Methods.ESTIMATE, Progress.NONE);
    }

    private static long used(Assessment all, Sheet sheet) {
        return all.paths().stream()
                .flatMap(path -> path.layouts().stream())
                .flatMap(layout -> layout.sheets().stream())
                .map(SheetPlan::sheet)
                .filter(sheet::equals)
                .count();
    }

    @Test
    void thePathThatComesFirstTakesTheSheetThereIs() {
        Sheet one = new Sheet("2800 x 2070, one left", 2.8, 2.07, null, 1, "test");
        Sheet bought = new Sheet("2500 x 1250", 2.5, 1.25, 60.0, null, "test");
        Project cellar = SampleProjects.read("trio-cellar");
        Assessment both = assess(with(cellar, one, bought));
        assertThat(used(both, one)).isOne();
        assertThat(both.paths().get(0).layouts().get(0).sheets())
                .extracting(SheetPlan::sheet)
                .contains(one);
        assertThat(used(both, bought)).isPositive();
        assertThat(both.paths()).allMatch(path -> path.buildable().ok());

        Assessment short1 = assess(with(cellar, one));
        assertThat(short1.paths().get(0).buildable().ok()).isTrue();
        assertThat(short1.paths().get(1).buildable().ok()).isFalse();
        assertThat(short1.paths().get(1).notices()).extracting(Notice::kind).contains(NoticeKind.NOT_ENOUGH_SHEETS);
        Supply left = Assessor.supply(short1.project(), 1, Effort.rounds(0), Progress.NONE);
        assertThat(left.taken()).containsEntry(one, 1);
    }

    /** Walls of one board and baffles of another, cut from the same two sheets. */
    @Test
    void materialsOfOneBoxShareToo() {
        Sheet two = new Sheet("2440 x 1220, two left", 2.44, 1.22, null, 2, "test");
        Project cellar = LayoutRules.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
        VentPath path = cellar.paths().get(0);
        Board board = path.box().shell().get(0);
        Board other = new Board(
                "Plywood 18 mm", board.thickness(), 600, board.youngModulus(), board.lossFactor(), false, "test");
        Box mixed = path.box().ofBoards(path.box().shell(), other);
        Project one = with(cellar, two).withPaths(List.of(path.withBox(mixed)));
        Assessment all = assess(one);
        List<SheetLayout> boards = all.paths().get(0).layouts().stream()
                .filter(layout -> !layout.sheets().isEmpty()
                        && layout.sheets().get(0).sheet().equals(two))
                .toList();
        assertThat(boards).extracting(SheetLayout::material).containsExactly(board.name(), "Plywood 18 mm");
        assertThat(used(all, two)).isEqualTo(2);
        Sheet single = two.having(1);
        Assessment less = assess(with(one, single));
        assertThat(used(less, single)).isOne();
        assertThat(less.paths().get(0).buildable().ok()).isFalse();
    }

    /** A sheet that is of one board is left alone by the others, however well it would do. */
    @Test
    void anOffcutIsOfOneBoard() {
        Sheet large = new Sheet("2800 x 2070, one left", 2.8, 2.07, null, 1, "Plywood 18 mm", "test");
        Sheet bought = new Sheet("2500 x 1250", 2.5, 1.25, 60.0, null, "test");
        Project cellar = LayoutRules.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
        VentPath path = cellar.paths().get(0);
        Project one = with(cellar, large, bought).withPaths(List.of(path));
        assertThat(used(assess(one), large)).isZero();
        Board old = path.box().shell().get(0);
        Board plywood =
                new Board("Plywood 18 mm", old.thickness(), 600, old.youngModulus(), old.lossFactor(), false, "test");
        Box other = path.box().ofBoards(List.of(plywood), plywood);
        assertThat(used(assess(one.withPaths(List.of(path.withBox(other)))), large))
                .isOne();
        Assessment none = assess(with(one, large));
        assertThat(none.paths().get(0).buildable().ok()).isFalse();
        assertThat(none.paths().get(0).notices())
                .extracting(Notice::kind)
                .contains(NoticeKind.NOT_ENOUGH_SHEETS)
                .doesNotContain(NoticeKind.PANEL_LARGER_THAN_SHEET);
    }

    @Test
    void samplesTakeNoMoreThanThereIs() {
        for (String sample : SampleProjects.names()) {
            Assessment all = assess(SampleProjects.read(sample));
            for (Sheet sheet : all.project().stock().boardSheets()) {
                if (sheet.stock() != null) {
                    assertThat(used(all, sheet)).isLessThanOrEqualTo(sheet.stock());
                }
            }
        }
    }
}
