package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Box;
import hushmaze.project.Choices;
import hushmaze.project.Construction;
import hushmaze.project.Joinery;
import hushmaze.project.LinedFaces;
import hushmaze.project.Project;
import hushmaze.project.VentPath;
import java.util.ArrayList;
import java.util.List;
import java.util.Objects;

/** Carries a changed choice of material over to the box that is there, so that its verdict is about what was chosen. */
final class Materials {
    private Materials() {}

    /** The later project, with every box following what changed in its path's construction. */
    static Project carried(Project before, Project after) {
        if (before.paths().size() != after.paths().size()) {
            return after;
        }
        List<VentPath> paths = new ArrayList<>();
        for (int i = 0; i < after.paths().size(); i++) {
            VentPath old = before.paths().get(i);
            VentPath now = RenamedMaterials.onHand(old, after.paths().get(i));
            paths.add(carried(old, faced(old, measured(old, now))));
        }
        return RenamedMaterials.carried(before, paths.equals(after.paths()) ? after : after.withPaths(paths));
    }

    /** The same with the path's board measured anew among the boards on hand too. */
    private static VentPath measured(VentPath before, VentPath after) {
        Board old = before.brief().construction().board();
        Board now = after.brief().construction().board();
        Choices choices = after.brief().choicesOrFree();
        if (old.equals(now)
                || !old.name().equals(now.name())
                || !choices.boards().contains(old)) {
            return after;
        }
        List<Board> boards = choices.boards().stream()
                .map(board -> board.equals(old) ? now : board)
                .distinct()
                .toList();
        return after.withBrief(after.brief().choosing(choices.withBoards(boards)));
    }

    /** The same with the facing of the path's liner over the liners on hand too, when another was chosen. */
    private static VentPath faced(VentPath before, VentPath after) {
        Liner old = before.brief().construction().liner();
        Liner now = after.brief().construction().liner();
        Choices choices = after.brief().choicesOrFree();
        if (choices.liners().isEmpty() || Objects.equals(old.facing(), now.facing())) {
            return after;
        }
        List<Liner> liners = choices.liners().stream()
                .map(liner -> liner.faced(now.facing()))
                .distinct()
                .toList();
        return after.withBrief(after.brief().choosing(choices.withLiners(liners)));
    }

    private static VentPath carried(VentPath before, VentPath after) {
        Construction old = before.brief().construction();
        Construction now = after.brief().construction();
        Box box = after.box();
        if (box == null || old.equals(now)) {
            return after;
        }
        Boards boards = new Boards(box, old, now);
        boolean broad = old.linedBroadFaces() != now.linedBroadFaces();
        LinedFaces faces = box.linedFaces();
        return after.withBox(new Box(
                box.form(),
                box.passes(),
                box.clearWidth(),
                box.clearHeight(),
                box.clearLength(),
                box.turnGap(),
                boards.shell(),
                boards.baffle(),
                old.baffleLayers() == now.baffleLayers() ? box.baffleLayers() : now.baffleLayers(),
                liner(box.liner(), old.liner(), now.liner()),
                broad ? faces.withBroad(now.linedBroadFaces() ? 1 : 0) : faces,
                box.openingPort(),
                box.roomPort(),
                joinery(box.joinery(), old.joineryOrPlain(), now.joineryOrPlain()),
                box.seams()));
    }

    /** Another facing comes over the liner a box has; any other change puts the new liner in its place. */
    private static Liner liner(Liner ofBox, Liner old, Liner now) {
        if (old.equals(now) || ofBox == null && alike(old, now)) {
            return ofBox;
        }
        return alike(old, now) ? ofBox.faced(now.facing()) : now;
    }

    /** Whether two liners differ by their facing at most. */
    private static boolean alike(Liner one, Liner other) {
        return one.faced(null).equals(other.faced(null));
    }

    /** A gap that was measured comes to the joints a box has; any other change puts new joints in their place. */
    private static Joinery joinery(Joinery ofBox, Joinery old, Joinery now) {
        if (old.equals(now)) {
            return ofBox;
        }
        return old.gapping(null).equals(now.gapping(null)) ? ofBox.gapping(now.coverGap()) : now;
    }

    /** Boards of a box after a change: what was the path's board is the new one, others stay as they are. */
    private record Boards(Box box, Construction old, Construction now) {
        List<Board> shell() {
            List<Board> shell = new ArrayList<>();
            int layers = old.shellLayers() == now.shellLayers() ? box.shell().size() : now.shellLayers();
            for (int layer = 0; layer < layers; layer++) {
                shell.add(layer < box.shell().size() ? after(box.shell().get(layer)) : now.board());
            }
            return shell;
        }

        Board baffle() {
            return after(box.baffleBoard());
        }

        private Board after(Board board) {
            boolean used =
                    box.shell().contains(old.board()) || box.baffleBoard().equals(old.board());
            boolean chosen = !old.board().equals(now.board());
            return chosen && (!used || board.equals(old.board())) ? now.board() : board;
        }
    }
}
