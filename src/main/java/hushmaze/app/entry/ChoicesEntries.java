package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.ChoicesModel;
import hushmaze.app.model.ChoicesModel.End;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EditModel;
import hushmaze.app.model.Texts;
import hushmaze.material.Board;
import hushmaze.material.Liner;
import hushmaze.project.PortFace;
import hushmaze.store.Presets;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

/** What a search for the best boxes may choose among. */
final class ChoicesEntries {
    private static final String LAYERS = "path.brief.choices.mostLayers";
    private static final String LINER_LAYERS = "path.brief.choices.mostLinerLayers";

    private final EditModel edit;
    private final ChoicesModel choices;
    private final Presets presets;
    private final Entries make;
    private final Function<Board, String> boardName;

    /** @param boardName a board in words, with its thickness if that is not the usual */
    ChoicesEntries(Designer designer, Entries make, Function<Board, String> boardName) {
        this.edit = designer.edit();
        this.choices = designer.choices();
        this.presets = designer.presets();
        this.make = make;
        this.boardName = boardName;
    }

    /** All of it, folded. */
    Entry all() {
        List<Entry> entries = new ArrayList<>(List.of(
                Words.heading("choices.boards"),
                none(() -> choices.boards().isEmpty(), "choices.noBoards"),
                boards(),
                Words.heading("choices.liners"),
                none(() -> choices.liners().isEmpty(), "choices.noLiners"),
                liners(),
                layers(LAYERS, choices::layers, choices::enterLayers),
                layers(LINER_LAYERS, choices::linerLayers, choices::enterLinerLayers)));
        for (End end : End.values()) {
            entries.addAll(faces(end));
        }
        return new FoldGroup("choices", choices::summary, entries);
    }

    private static Entry none(BooleanSupplier empty, String key) {
        return new Shown(empty, List.of(Words.quiet(key)));
    }

    private Entry boards() {
        CardList<Board, String> list = new CardList<>(
                "choice-board",
                choices::boards,
                Board::name,
                (number, name, remove) -> {
                    String of = "path.brief.choices.boards." + number;
                    return EntryCard.named(
                            "choice-board", number, name, remove, List.of(make.thickness(of, "choices.thickness")));
                },
                choices::removeBoard);
        return list.with(AddChoice.of(
                "choice-board",
                () -> choices.moreBoards(presets.boards()),
                boardName,
                board -> list.say(choices.add(board))));
    }

    private Entry liners() {
        CardList<Liner, String> list = new CardList<>(
                "choice-liner",
                choices::liners,
                Liner::name,
                (number, name, remove) -> EntryCard.named("choice-liner", number, name, remove, List.of()),
                choices::removeLiner);
        return list.with(AddChoice.of(
                "choice-liner",
                () -> choices.moreLiners(presets.liners()),
                Liner::name,
                liner -> list.say(choices.add(liner))));
    }

    private Entry layers(String name, Supplier<String> shown, BiFunction<String, String, Optional<String>> enter) {
        String label = Texts.of("entry." + name);
        return new TypedEntry(edit, name, name, Size.BESIDE, shown, () -> true, text -> enter.apply(label, text));
    }

    /** A switch for each face; one a search does not try by itself is there only while the project names it. */
    private List<Entry> faces(End end) {
        List<Entry> rows = new ArrayList<>();
        rows.add(Words.heading("choices." + end));
        rows.add(Words.quiet(() -> Texts.of(choices.isFree(end) ? "choices.anyFace" : "choices.theseFaces")));
        for (PortFace face : end.usual()) {
            rows.add(face(end, face));
        }
        for (PortFace face : PortFace.values()) {
            if (!end.usual().contains(face)) {
                rows.add(new Shown(() -> choices.isChosen(end, face), List.of(face(end, face))));
            }
        }
        return rows;
    }

    private Entry face(End end, PortFace face) {
        String key = "choices." + end + "." + face;
        return new SwitchEntry(key, () -> choices.isChosen(end, face), on -> choices.choose(end, face, on))
                .said(Texts.of("choices.said", Texts.of("choices." + end), Texts.of("entry." + key)));
    }
}
