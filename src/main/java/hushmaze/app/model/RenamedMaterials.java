package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Construction;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import java.util.List;
import java.util.stream.Stream;

/** Offcuts are of a board or liner by its name: one that got another name keeps its offcuts. */
final class RenamedMaterials {
    private RenamedMaterials() {}

    /** Whether all but the name is as it was. */
    static boolean is(Board old, Board now) {
        return !old.equals(now) && old.named(now.name()).equals(now);
    }

    /** Whether all but the name is as it was. */
    static boolean is(Liner old, Liner now) {
        return !old.equals(now) && old.named(now.name()).equals(now);
    }

    /**
     * The later project with the offcuts of what was renamed under its new name; those of a name that is still in use elsewhere
     * stay with it.
     *
     * @param after has as many paths
     */
    static Project carried(Project before, Project after) {
        Stock stock = after.stock();
        List<Sheet> boards = stock.boardSheets();
        List<Sheet> liners = stock.linerSheets();
        for (int i = 0; i < after.paths().size(); i++) {
            Construction old = before.paths().get(i).brief().construction();
            Construction now = after.paths().get(i).brief().construction();
            if (is(old.board(), now.board())
                    && boards(after).noneMatch(old.board().name()::equals)) {
                boards = renamed(boards, old.board().name(), now.board().name());
            }
            if (is(old.liner(), now.liner())
                    && liners(after).noneMatch(old.liner().name()::equals)) {
                liners = renamed(liners, old.liner().name(), now.liner().name());
            }
        }
        Stock carried = new Stock(boards, liners, stock.saw(), stock.screw());
        return carried.equals(stock) ? after : after.withStock(carried);
    }

    private static List<Sheet> renamed(List<Sheet> sheets, String old, String now) {
        return sheets.stream()
                .map(sheet -> old.equals(sheet.material()) ? sheet.of(now) : sheet)
                .toList();
    }

    /** Names of all boards that the paths name. */
    private static Stream<String> boards(Project project) {
        return project.paths().stream().flatMap(RenamedMaterials::boards).map(Board::name);
    }

    private static Stream<Board> boards(VentPath path) {
        Box box = path.box();
        Stream<Board> ofBox =
                box == null ? Stream.empty() : Stream.concat(box.shell().stream(), Stream.of(box.baffleBoard()));
        return Stream.concat(
                Stream.concat(
                        Stream.of(path.brief().construction().board()), path.brief().choicesOrFree().boards().stream()),
                ofBox);
    }

    /** Names of all liners that the paths name. */
    private static Stream<String> liners(Project project) {
        return project.paths().stream().flatMap(RenamedMaterials::liners).map(Liner::name);
    }

    private static Stream<Liner> liners(VentPath path) {
        Box box = path.box();
        return Stream.concat(
                Stream.concat(
                        Stream.of(path.brief().construction().liner()), path.brief().choicesOrFree().liners().stream()),
                box == null ? Stream.empty() : Stream.ofNullable(box.liner()));
    }
}
