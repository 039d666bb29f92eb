package hushmaze.app.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/**
 * A list of cards, with a word on what is wrong with the list and something to add more below. The word stays until the
 * list changes.
 *
 * @param <T> what a card is about
 * @param <S> what decides which entries a card has
 */
final class CardList<T, S> implements Entry {
    /**
     * Makes the card of one thing in the list.
     *
     * @param <S> what decides which entries it has
     */
    interface Maker<S> {
        Entry card(int number, S shape, Runnable remove);
    }

    private final VBox box = new VBox();
    private final VBox cards = new VBox();
    private final Label wrong = new Label();
    private final List<Entry> rows = new ArrayList<>();
    private final Supplier<List<T>> list;
    private final Function<T, S> shaping;
    private final Maker<S> maker;
    private final IntFunction<Optional<String>> removing;
    private List<T> shown = List.of();
    private List<S> shapes = List.of();

    /**
     * @param key begins the id of the word on what is wrong
     * @param list as it is now
     * @param shaping what decides which entries a card has
     * @param maker of a card, given its number and what takes it out
     * @param removing takes one out by its number; gives back why not, if so
     */
    CardList(
            String key,
            Supplier<List<T>> list,
            Function<T, S> shaping,
            Maker<S> maker,
            IntFunction<Optional<String>> removing) {
        this.list = list;
        this.shaping = shaping;
        this.maker = maker;
        this.removing = removing;
        box.getStyleClass().add("entry-part");
        cards.getStyleClass().add("entry-part");
        wrong.getStyleClass().add("entry-wrong");
        wrong.setWrapText(true);
        wrong.setId(key + "-wrong");
        box.getChildren().addAll(cards, wrong);
    }

    /** Puts what adds more below the cards, and shows them. */
    CardList<T, S> with(Node more) {
        box.getChildren().add(more);
        say(Optional.empty());
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
        List<T> now = list.get();
        if (!now.equals(shown)) {
            say(Optional.empty());
        }
        shown = now;
        cards.setVisible(!now.isEmpty());
        cards.setManaged(!now.isEmpty());
        List<S> needed = now.stream().map(shaping).toList();
        if (needed.equals(shapes)) {
            rows.forEach(Entry::refresh);
        } else {
            shapes = needed;
            rows.clear();
            cards.getChildren().clear();
            for (int i = 0; i < needed.size(); i++) {
                int number = i;
                Entry card = maker.card(number, needed.get(i), () -> say(removing.apply(number)));
                rows.add(card);
                cards.getChildren().add(card.node());
            }
        }
    }
}
