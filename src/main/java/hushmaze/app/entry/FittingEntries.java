package hushmaze.app.entry;

import hushmaze.app.model.AirModel;
import hushmaze.app.model.Texts;
import hushmaze.project.Fitting;
import java.util.Arrays;
import java.util.Optional;
import javafx.scene.Node;

/** Grilles, filters and ducts at the ends of a path: one card each, and a list of kinds to add more from. */
final class FittingEntries implements Entry {
    private final CardList<Fitting, Fitting.Kind> list;

    FittingEntries(AirModel air, Entries make) {
        list = new CardList<>(
                "fitting",
                air::fittings,
                Fitting::kind,
                (number, kind) -> new FittingCard(air, make, number, kind, () -> say(air.removeFitting(number))));
        list.with(AddChoice.of(
                "fitting", Arrays.asList(Fitting.Kind.values()), Texts::word, kind -> say(air.addFitting(kind))));
    }

    private void say(Optional<String> problem) {
        list.say(problem);
    }

    @Override
    public Node node() {
        return list.node();
    }

    @Override
    public void refresh() {
        list.refresh();
    }
}
