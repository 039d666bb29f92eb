package hushmaze.app.model;

import hushmaze.assess.PathResult;
import hushmaze.build.CutItem;
import hushmaze.drawing.page.PartNames;
import hushmaze.quantity.UnitSystem;
import hushmaze.solid.Part;
import hushmaze.wording.Amounts;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;

/** One part of the box of the path looked at, chosen to be told about. */
public final class PartsModel {
    private final ResultModel results;
    private final PagesModel pages;
    private final ReadOnlyObjectWrapper<Part> chosen = new ReadOnlyObjectWrapper<>();

    PartsModel(EditModel edit, ResultModel results, PagesModel pages) {
        this.results = results;
        this.pages = pages;
        results.assessmentProperty().addListener((p, before, after) -> keep());
        edit.pathProperty().addListener((p, before, after) -> keep());
    }

    /** A part that is no longer there is no longer chosen. */
    private void keep() {
        if (item().isEmpty()) {
            chosen.set(null);
        }
    }

    /** The part; null for none. */
    public ReadOnlyObjectProperty<Part> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** @param part of the box looked at; null for none */
    public void choose(Part part) {
        chosen.set(part);
        keep();
    }

    /**
     * Chooses the next part of several, from the last on to the first.
     *
     * @param among parts to choose from
     * @param step 1 for the next, -1 for the one before
     */
    public void step(List<Part> among, int step) {
        if (among.isEmpty()) {
            choose(null);
            return;
        }
        int now = among.indexOf(chosen.get());
        int from = now < 0 && step < 0 ? 0 : now;
        choose(among.get(Math.floorMod(from + step, among.size())));
    }

    private Optional<CutItem> item() {
        Part part = chosen.get();
        return part == null
                ? Optional.empty()
                : results.pathResult()
                        .flatMap(result -> result.cutList()
                                .items()
                                .filter(item -> item.parts().contains(part))
                                .findFirst());
    }

    /** Its mark, place, size, material and count in a line; what to do when none is chosen. */
    public String words() {
        Optional<CutItem> item = item();
        if (item.isEmpty()) {
            return Texts.of("space.part.none");
        }
        PathResult result = results.pathResult().orElseThrow();
        CutItem cut = item.get();
        UnitSystem units = results.assessmentProperty().get().project().units();
        Amounts amounts = new Amounts(units);
        int count = cut.quantity();
        return Texts.of(
                count == 1 ? "space.part.one" : "space.part.several",
                cut.mark(),
                PartNames.of(chosen.get(), result.solid().box()),
                amounts.sizes(cut.length(), cut.width()),
                amounts.thickness(cut.thickness()),
                cut.material(),
                String.valueOf(count));
    }

    /** Turns the documents to the drawing of the part. */
    public void showDrawing() {
        item().ifPresent(item -> pages.seek(item.mark()));
    }
}
