package hushmaze.assess;

import static org.assertj.core.api.Assertions.assertThat;

import hushmaze.build.Effort;
import hushmaze.build.KeptOffcut;
import hushmaze.build.SheetLayout;
import hushmaze.build.SheetPlan;
import hushmaze.build.Supply;
import hushmaze.material.Board;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.LinedFaces;
import hushmaze.project.Port;
import hushmaze.project.PortFace;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import hushmaze.quantity.Notice;
import hushmaze.quantity.NoticeKind;
import hushmaze.size.FirstLayout;
import hushmaze.store.SampleProjects;
import hushmaze.work.Progress;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** Property tests: paths and materials of one project never take more of a sheet than there is, and cut up what the boxes before leave. */
class SharedSheetsTest {
    private static Project with(Project project, Sheet... boards) {
        Stock old = project.stock();
        return project.withStock(new Stock(List.of(boards), old.linerSheets(), old.saw(), old.screw()));
    }

    private static Assessment assess(Project project) {
        return Assessor.assess(FirstLayout.complete(project, Progress.NONE), Methods.ESTIMATE, Progress.NONE);
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
        Project cellar = FirstLayout.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
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
        Project cellar = FirstLayout.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
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

    /** What is cut up is an offcut that the box it is named after leaves, of the same board, and serves once. */
    @Test
    void offcutsOfTheBoxesBeforeServeOnce() {
        int served = 0;
        for (String sample : SampleProjects.names()) {
            Assessment all = assess(SampleProjects.read(sample));
            Set<KeptOffcut> cutUp = new HashSet<>();
            for (int i = 0; i < all.paths().size(); i++) {
                for (SheetLayout layout : all.paths().get(i).layouts()) {
                    for (KeptOffcut offcut : layout.keptOffcuts()) {
                        served++;
                        assertThat(cutUp.add(offcut)).as("%s", offcut).isTrue();
                        assertThat(offcut.material()).isEqualTo(layout.material());
                        assertThat(offcut.thickness()).isEqualTo(layout.thickness());
                        assertThat(left(all.paths().subList(0, i), offcut)).isTrue();
                    }
                }
            }
        }
        assertThat(served).isPositive();
    }

    private static boolean left(List<PathResult> before, KeptOffcut offcut) {
        SheetLayout.Offcut wanted = new SheetLayout.Offcut(offcut.sheet(), offcut.length(), offcut.width());
        return before.stream()
                .filter(path -> path.path().name().equals(offcut.path()))
                .flatMap(path -> path.layouts().stream())
                .filter(layout -> layout.material().equals(offcut.material()))
                .anyMatch(layout -> layout.offcuts().contains(wanted));
    }

    /** Two small boxes: the second needs nothing bought, and alone it needs as many sheets as the first. */
    @Test
    void twoSmallBoxesGoOnTheSheetsOfOne() {
        Sheet bought = new Sheet("2500 x 1250", 2.5, 1.25, 60.0, null, "test");
        Project cellar = FirstLayout.complete(SampleProjects.read("trio-cellar"), Progress.NONE);
        Box old = cellar.paths().get(0).box();
        Box small = new Box(
                Box.Form.MAZE,
                1,
                0.15,
                0.15,
                0.4,
                0,
                old.shell(),
                old.baffleBoard(),
                1,
                old.liner(),
                LinedFaces.FOLD_PLANE,
                new Port(PortFace.END, 0.15, 0.15, 0),
                new Port(PortFace.END, 0.15, 0.15, 0),
                old.joinery(),
                List.of());
        Project one = with(cellar, bought);
        List<VentPath> both =
                one.paths().stream().map(path -> path.withBox(small)).toList();
        Assessment all = Assessor.assess(one.withPaths(both), Methods.ESTIMATE, Progress.NONE);
        PathResult.Buildable first = all.paths().get(0).buildable();
        PathResult.Buildable second = all.paths().get(1).buildable();
        assertThat(first.sheets()).isOne();
        assertThat(first.keptOffcuts()).isZero();
        assertThat(second.sheets()).isZero();
        assertThat(second.keptOffcuts()).isPositive();
        assertThat(second.ok()).isTrue();
        assertThat(all.paths().get(1).layouts())
                .allMatch(layout -> layout.cost().orElseThrow() == 0);
        Assessment alone = Assessor.assess(one.withPaths(both.subList(1, 2)), Methods.ESTIMATE, Progress.NONE);
        assertThat(alone.paths().get(0).buildable().sheets()).isOne();
        Supply left = Assessor.supply(all.project(), 1, Methods.ESTIMATE.sheets(), Progress.NONE);
        assertThat(left.keptOffcuts())
                .containsAll(all.paths().get(1).layouts().get(0).keptOffcuts());
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
