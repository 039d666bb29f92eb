package hushmaze.app.model;

import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.Brief;
import hushmaze.project.Choices;
import hushmaze.project.PortFace;
import hushmaze.quantity.InvalidValue;
import hushmaze.quantity.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

/**
 * What a search for the path looked at may choose among: boards and liners on hand, layers, faces for the two ends. A project
 * that leaves all of it free says nothing of it.
 */
public final class ChoicesModel {
    private static final Field BOARDS = Field.of("path.brief.choices.boards");
    private static final Field LINERS = Field.of("path.brief.choices.liners");
    private static final Field LAYERS = Field.of("path.brief.choices.mostLayers");
    private static final Field LINER_LAYERS = Field.of("path.brief.choices.mostLinerLayers");
    private static final Field FACES = Field.of("path.brief.choices.openingFaces");

    /** An end of the box, with the faces it may be in. */
    public enum End {
        OPENING(PortFace.BACK, PortFace.END, PortFace.SIDE),
        ROOM(PortFace.FRONT, PortFace.END, PortFace.SIDE);

        private final List<PortFace> usual;

        End(PortFace... usual) {
            this.usual = List.of(usual);
        }

        /** Those a search tries where all are free, in its order. */
        public List<PortFace> usual() {
            return usual;
        }

        List<PortFace> chosen(Choices choices) {
            return this == OPENING ? choices.openingFaces() : choices.roomFaces();
        }
    }

    private final EditModel edit;

    ChoicesModel(EditModel edit) {
        this.edit = edit;
    }

    private Brief brief() {
        return edit.project().paths().get(edit.path()).brief();
    }

    private Choices now() {
        return brief().choicesOrFree();
    }

    /** Boards on hand; none for the board of the construction alone. */
    public List<Board> boards() {
        return now().boards();
    }

    /** Liners on hand; none for the liner of the construction alone. */
    public List<Liner> liners() {
        return now().liners();
    }

    /** Boards that may be added: those given and the one of the construction, without those there are. */
    public List<Board> moreBoards(List<Board> presets) {
        return more(presets, brief().construction().board(), boards());
    }

    /** Liners that may be added: those given, under the facing chosen, and the one of the construction, without those there are. */
    public List<Liner> moreLiners(List<Liner> presets) {
        Liner own = brief().construction().liner();
        return more(presets.stream().map(liner -> liner.faced(own.facing())).toList(), own, liners());
    }

    private static <T> List<T> more(List<T> presets, T own, List<T> there) {
        return Stream.concat(Stream.of(own), presets.stream())
                .distinct()
                .filter(one -> !there.contains(one))
                .toList();
    }

    /** Puts one more at the end; gives back why not, if so. */
    public Optional<String> add(Board board) {
        return setBoards("edit.choices.add", board.name(), with(boards(), board));
    }

    /** Puts one more at the end; gives back why not, if so. */
    public Optional<String> add(Liner liner) {
        return setLiners("edit.choices.add", liner.name(), with(liners(), liner));
    }

    private static <T> List<T> with(List<T> there, T one) {
        return Stream.concat(there.stream(), Stream.of(one)).distinct().toList();
    }

    /** Takes one out by its number. */
    public Optional<String> removeBoard(int number) {
        List<Board> all = new ArrayList<>(boards());
        return setBoards("edit.choices.remove", all.remove(number).name(), all);
    }

    /** Takes one out by its number. */
    public Optional<String> removeLiner(int number) {
        List<Liner> all = new ArrayList<>(liners());
        return setLiners("edit.choices.remove", all.remove(number).name(), all);
    }

    private Optional<String> setBoards(String what, String name, List<Board> all) {
        return change(BOARDS, Texts.of("field.boards"), Texts.of(what, name), c -> c.withBoards(all));
    }

    private Optional<String> setLiners(String what, String name, List<Liner> all) {
        return change(LINERS, Texts.of("field.liners"), Texts.of(what, name), c -> c.withLiners(all));
    }

    /** Most layers of a wall as its entry shows them; nothing for as many as there may be. */
    public String layers() {
        return shown(now().mostLayers());
    }

    /** Most layers of liner on a face as its entry shows them; nothing for as many as there may be. */
    public String linerLayers() {
        return shown(now().mostLinerLayers());
    }

    private String shown(Integer most) {
        return EntryText.show(
                most == null ? null : most.doubleValue(),
                Unit.NUMBER,
                edit.project().units());
    }

    /** Takes what was typed, a blank for as many as there may be; gives back why not, if so. */
    public Optional<String> enterLayers(String label, String text) {
        return enter(LAYERS, label, text, Choices::withMostLayers);
    }

    /** The same for layers of liner. */
    public Optional<String> enterLinerLayers(String label, String text) {
        return enter(LINER_LAYERS, label, text, Choices::withMostLinerLayers);
    }

    private Optional<String> enter(Field field, String label, String text, BiFunction<Choices, Integer, Choices> with) {
        Integer most;
        try {
            most = (Integer) edit.value(field, text);
        } catch (InvalidValue e) {
            return Optional.of(Refusal.sentence(e, field, label));
        }
        return change(field, label, label, c -> with.apply(c, most));
    }

    /** Whether a face is one of those chosen for an end. */
    public boolean isChosen(End end, PortFace face) {
        return end.chosen(now()).contains(face);
    }

    /** Whether all faces are free for an end: none is chosen, or all are. */
    public boolean isFree(End end) {
        List<PortFace> chosen = end.chosen(now());
        return chosen.isEmpty() || chosen.containsAll(end.usual());
    }

    /** Chooses a face for an end, or no longer; faces keep the order a search has them in. */
    public Optional<String> choose(End end, PortFace face, boolean on) {
        List<PortFace> faces = Stream.concat(end.usual().stream(), Stream.of(PortFace.values()))
                .distinct()
                .filter(one -> one == face ? on : isChosen(end, one))
                .toList();
        String label = Texts.of("choices." + end);
        return change(
                FACES,
                label,
                label,
                c -> c.withFaces(
                        end == End.OPENING ? faces : c.openingFaces(), end == End.ROOM ? faces : c.roomFaces()));
    }

    private Optional<String> change(Field field, String label, String what, UnaryOperator<Choices> change) {
        int path = edit.path();
        return edit.change(field, label, what, p -> {
            Brief brief = p.paths().get(path).brief();
            Choices after = change.apply(brief.choicesOrFree());
            Choices said = after.equals(Choices.FREE) ? null : after;
            return p.withPath(path, p.paths().get(path).withBrief(brief.choosing(said)));
        });
    }

    /** All of it in one line. */
    public String summary() {
        Choices now = now();
        List<String> parts = new ArrayList<>();
        count("boards", now.boards().size()).ifPresent(parts::add);
        count("liners", now.liners().size()).ifPresent(parts::add);
        if (now.mostLayers() != null && now.layers() < Choices.FREE.layers()) {
            parts.add(Texts.of("summary.choices.layers", layers()));
        }
        if (now.mostLinerLayers() != null && now.linerLayers() < Choices.FREE.linerLayers()) {
            parts.add(Texts.of("summary.choices.linerLayers", linerLayers()));
        }
        if (!isFree(End.OPENING) || !isFree(End.ROOM)) {
            parts.add(Texts.of("summary.choices.faces"));
        }
        return parts.isEmpty() ? Texts.of("summary.choices.free") : String.join(", ", parts);
    }

    private static Optional<String> count(String what, int count) {
        return count == 0
                ? Optional.empty()
                : Optional.of(Texts.of("summary.choices." + what + (count == 1 ? ".one" : ""), String.valueOf(count)));
    }
}
