package hushmaze.app.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * A list of cards, with a word on what is wrong with the list and something to add more below.
 *
 * @param <S> what decides which entries a card has
 */
final class CardList<S> implements Entry {
    /**
     * Makes the card of one thing in the list.
     *
     * @param <S> what decides which entries it has
     */
    interface Maker<S> {
        Entry card(int number, S shape);
    }

    private final VBox box = new VBox();
    private final VBox cards = new VBox();
    private final Label wrong = new Label();
    private final List<Entry> rows = new ArrayList<>();
    private final Supplier<List<S>> shapes;
    private final Maker<S> maker;
    private List<S> shown = List.of();

    /**
     * @param key begins the id of the word on what is wrong
     * @param shapes of what is in the list now
     */
    CardList(String key, Supplier<List<S>> shapes, Maker<S> maker) {
        this.shapes = shapes;
        this.maker = maker;
        box.getStyleClass().add("entry-part");
        cards.getStyleClass().add("entry-part");
        wrong.getStyleClass().add("entry-wrong");
        wrong.setWrapText(true);
        wrong.setId(key + "-wrong");
        box.getChildren().addAll(cards, wrong);
    }

    /** Puts what adds more below the cards, and shows them. */
    CardList<S> with(Node more) {
        box.getChildren().add(more);
        refresh();
        return this;
    }

    void say(Optional<String> problem) {
        wrong.setText(problem.orElse(""));
        wrong.setVisible(problem.isPresent());
        wrong.setManaged(problem.isPresent());
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        List<S> now = shapes.get();
        cards.setVisible(!now.isEmpty());
        cards.setManaged(!now.isEmpty());
        if (now.equals(shown)) {
            rows.forEach(Entry::refresh);
        } else {
            shown = now;
            rows.clear();
            cards.getChildren().clear();
            for (int i = 0; i < now.size(); i++) {
                Entry card = maker.card(i, now.get(i));
                rows.add(card);
                cards.getChildren().add(card.node());
            }
        }
        say(Optional.empty());
    }
}
