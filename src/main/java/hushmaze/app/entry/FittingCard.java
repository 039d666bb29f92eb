package hushmaze.app.entry;

import hushmaze.app.entry.TypedEntry.Size;
import hushmaze.app.model.AirModel;
import hushmaze.app.model.Texts;
import hushmaze.project.Fitting;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javafx.scene.Node;
import javafx.scene.control.Label;

/** One grille, louvre, filter, flexible duct, collar or known loss: which end it is at, and what its kind needs. */
final class FittingCard implements Entry {
    private final int number;
    private final EntryCard card;
    private final List<Entry> entries = new ArrayList<>();

    /** @param remove what the button does that takes it out */
    FittingCard(AirModel air, Entries make, int number, Fitting.Kind kind, Runnable remove) {
        this.number = number;
        String end = Texts.of("entry.fitting.end");
        add(make.chosen(
                name("end"),
                "fitting.end",
                false,
                Arrays.asList(Fitting.End.values()),
                Texts::word,
                e -> air.setEnd(number, end, e)));
        for (String component : needs(kind)) {
            add(make.typed(name(component), "fitting." + component, Size.BESIDE));
        }
        add(make.typed(name("source"), "fitting.source", Size.LONG));
        Label title = new Label(Texts.word(kind));
        title.getStyleClass().add("card-name");
        card = EntryCard.titled(title, AwayButton.of("fitting", number, remove), entries);
    }

    private static List<String> needs(Fitting.Kind kind) {
        return switch (kind) {
            case GRILLE -> List.of("width", "height", "freeArea");
            case WEATHER_LOUVRE -> List.of("width", "height");
            case FILTER, KNOWN_LOSS -> List.of("pressure", "flow");
            case FLEXIBLE_DUCT -> List.of("diameter", "length", "compression", "projection");
            case ROUND_COLLAR -> List.of("diameter", "projection");
        };
    }

    private String name(String component) {
        return "path.brief.fittings." + number + "." + component;
    }

    private void add(Entry entry) {
        entries.add(entry);
    }

    @Override
    public Node node() {
        return card.node();
    }

    @Override
    public void refresh() {
        card.refresh();
    }
}
