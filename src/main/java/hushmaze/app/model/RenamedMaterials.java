package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.material.Sheet;
import hushmaze.project.Box;
import hushmaze.project.Choices;
import hushmaze.project.Construction;
import hushmaze.project.Project;
import hushmaze.project.Stock;
import hushmaze.project.VentPath;
import java.util.List;
import java.util.stream.Stream;

/** A board or liner that got another name has it among those on hand too, and keeps its offcuts, which are of it by its name. */
final class RenamedMaterials {
    private RenamedMaterials() {}

    /** Whether all but the name is as it was. */
    private static boolean is(Board old, Board now) {
        return !old.equals(now) && old.named(now.name()).equals(now);
    }

    /** Whether all but the name is as it was. */
    private static boolean is(Liner old, Liner now) {
        return !old.equals(now) && old.named(now.name()).equals(now);
    }

    /** The later path with the new names among the boards and liners on hand. */
    static VentPath onHand(VentPath before, VentPath after) {
        Construction old = before.brief().construction();
        Construction now = after.brief().construction();
        Choices choices = after.brief().choicesOrFree();
        Choices renamed = choices;
        if (is(old.board(), now.board()) && choices.boards().contains(old.board())) {
            renamed = renamed.withBoards(replaced(choices.boards(), old.board(), now.board()));
        }
        if (is(old.liner(), now.liner()) && choices.liners().contains(old.liner())) {
            renamed = renamed.withLiners(replaced(choices.liners(), old.liner(), now.liner()));
        }
        return renamed.equals(choices) ? after : after.withBrief(after.brief().choosing(renamed));
    }

    private static <T> List<T> replaced(List<T> all, T old, T now) {
        return all.stream().map(one -> one.equals(old) ? now : one).distinct().toList();
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
