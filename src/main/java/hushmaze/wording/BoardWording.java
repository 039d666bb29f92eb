package hushmaze.wording;

import hushmaze.assess.PathResult;
import hushmaze.build.BoardCheck;
import hushmaze.build.PrintedFit;
import java.util.List;

/** What follows the real thickness of a board, as sentences. */
final class BoardWording {
    private final Wording wording;
    private final Amounts amounts;

    BoardWording(Wording wording) {
        this.wording = wording;
        this.amounts = wording.amounts();
    }

    List<String> all(PathResult result) {
        return BoardCheck.of(result.solid(), result.cutList()).stream()
                .map(check -> sentence(check, result))
                .toList();
    }

    private String sentence(BoardCheck check, PathResult result) {
        long moved = check.changes().stream().mapToLong(c -> c.parts().size()).sum();
        PrintedFit ignored = check.ignored(result.solid(), BoardCheck.EXAMPLE);
        BoardCheck.Outside outer = check.outer();
        return wording.text(
                "board.measure",
                check.board().name(),
                amounts.thickness(BoardCheck.EXAMPLE),
                String.valueOf(moved),
                String.valueOf(result.solid().panels().size()),
                amounts.thickness(ignored.step()),
                amounts.thickness(outer.length() * BoardCheck.EXAMPLE),
                amounts.thickness(outer.width() * BoardCheck.EXAMPLE),
                amounts.thickness(outer.height() * BoardCheck.EXAMPLE));
    }
}
