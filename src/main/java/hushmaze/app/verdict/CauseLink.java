package hushmaze.app.verdict;

import hushmaze.app.model.Cause;
import hushmaze.app.model.EntryPlace;
import hushmaze.app.model.Texts;
import java.util.function.Consumer;
import javafx.scene.control.Hyperlink;
import javafx.scene.layout.Region;

/** Links to where something comes from. */
final class CauseLink {
    /**
     * What can be shown.
     *
     * @param view by its name
     * @param entry opens one
     * @param part by its mark
     */
    record Ways(Consumer<String> view, Consumer<EntryPlace> entry, Consumer<String> part) {}

    private CauseLink() {}

    static Hyperlink of(Cause cause, Ways ways) {
        String tip = cause.entry() == null ? "cause.view.tip" : "cause.entry.tip";
        return of(cause.words(), tip, () -> {
            if (cause.entry() != null) {
                ways.entry().accept(cause.entry());
            } else if (cause.view() != null) {
                ways.view().accept(cause.view());
            } else {
                ways.part().accept(cause.mark());
            }
        });
    }

    private static Hyperlink of(String words, String tip, Runnable show) {
        Hyperlink link = new Hyperlink(words);
        link.setMinWidth(Region.USE_PREF_SIZE);
        Tip.on(link, Texts.of(tip));
        link.getStyleClass().add("why");
        link.setOnAction(e -> {
            link.setVisited(false);
            show.run();
        });
        return link;
    }
}
