package hushmaze.app.sheet;

import hushmaze.app.verdict.WrappedWords;
import hushmaze.drawing.Bounds;
import hushmaze.drawing.Page;
import hushmaze.drawing.Shape;
import hushmaze.drawing.Told;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.scene.control.Label;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.scene.shape.Line;

/**
 * Over a page: a line at the place that is pointed at, or gone to with the arrow keys, and a card with what it tells. Places
 * that lie below each other, each as wide as all, are gone through from top to bottom and underlined.
 */
final class PageHints extends Pane {
    private static final double CARD = 300;
    /** From the line to the card. */
    private static final double BESIDE = 12;
    /** From the foot of a chart to the card: the figures of its axis stay free. */
    private static final double BELOW = 26;
    /** What is so many times as wide as high is a row. */
    private static final double ROW = 4;

    /** A place in pixels. */
    private record Place(Bounds area, Told told) {
        double x() {
            return area.centreX();
        }

        /** Whether it is a row: the others lie above and below. */
        boolean isRow() {
            return area.width() > ROW * area.height();
        }
    }

    private final Line line = new Line();
    private final VBox card = new VBox();
    private List<Place> places = List.of();
    private Place shown;

    PageHints() {
        setMouseTransparent(true);
        line.getStyleClass().add("told-line");
        card.getStyleClass().add("told-card");
        card.setId("told");
        getChildren().addAll(line, card);
        hide();
    }

    /** Takes the hints of a page that was painted; null for none. */
    void place(Page page, double scale, double left, double top) {
        List<Place> now = new ArrayList<>();
        if (page != null) {
            for (Shape shape : page.shapes()) {
                if (shape instanceof Shape.Hint hint) {
                    Bounds a = hint.area();
                    now.add(new Place(
                            new Bounds(
                                    left + a.x0() * scale,
                                    top + a.y0() * scale,
                                    left + a.x1() * scale,
                                    top + a.y1() * scale),
                            hint.told()));
                }
            }
        }
        if (!now.equals(places)) {
            places = now;
            hide();
        }
    }

    boolean isEmpty() {
        return places.isEmpty();
    }

    /** What is told, or nothing. */
    Optional<Told> told() {
        return Optional.ofNullable(shown).map(Place::told);
    }

    /** Shows what is told at a place, if something is. */
    void point(double x, double y) {
        Optional<Place> there = places.stream()
                .filter(p -> x >= p.area().x0()
                        && x <= p.area().x1()
                        && y >= p.area().y0()
                        && y <= p.area().y1())
                .findFirst();
        there.ifPresentOrElse(this::show, this::hide);
    }

    /** Goes on by a key; gives back whether it was one to go on by. */
    boolean go(KeyCode key) {
        if (places.isEmpty()) {
            return false;
        }
        int at = shown == null ? -1 : places.indexOf(shown);
        int last = places.size() - 1;
        switch (key) {
            case RIGHT -> show(places.get(Math.min(last, at + 1)));
            case LEFT -> show(places.get(at < 0 ? last : Math.max(0, at - 1)));
            case HOME -> show(places.get(0));
            case END -> show(places.get(last));
            case UP -> other(places.get(Math.max(0, at - 1)));
            case DOWN -> other(places.get(Math.min(last, at + 1)));
            case ESCAPE -> hide();
            default -> {
                return false;
            }
        }
        return true;
    }

    /** The same place in the other chart, where there are two; the next row, where there are rows. */
    private void other(Place next) {
        Place from = shown == null ? places.get(0) : shown;
        if (from.isRow()) {
            show(next);
            return;
        }
        places.stream()
                .filter(p -> p.area().y0() != from.area().y0())
                .min(Comparator.comparingDouble(p -> Math.abs(p.x() - from.x())))
                .ifPresent(this::show);
    }

    void hide() {
        shown = null;
        line.setVisible(false);
        card.setVisible(false);
    }

    private void show(Place place) {
        if (place.equals(shown)) {
            return;
        }
        shown = place;
        Bounds area = place.area();
        if (place.isRow()) {
            draw(area.x0(), sharp(area.y1()), area.x1(), sharp(area.y1()));
        } else {
            draw(sharp(place.x()), area.y0(), sharp(place.x()), area.y1());
        }
        line.setVisible(true);
        fill(place.told());
        card.setVisible(true);
        requestLayout();
    }

    /** The middle of a pixel. */
    private static double sharp(double place) {
        return Math.round(place) + 0.5;
    }

    private void draw(double x0, double y0, double x1, double y1) {
        line.setStartX(x0);
        line.setStartY(y0);
        line.setEndX(x1);
        line.setEndY(y1);
    }

    private void fill(Told told) {
        Label head = new Label(told.head());
        head.getStyleClass().add("told-head");
        card.getChildren().setAll(head);
        for (Told.Item item : told.items()) {
            Label name = WrappedWords.of(item.name(), "told-name");
            Region gap = new Region();
            HBox.setHgrow(gap, Priority.ALWAYS);
            Label value = new Label(item.value());
            value.getStyleClass().add("told-value");
            value.setMinWidth(Region.USE_PREF_SIZE);
            HBox figures = new HBox(name, gap, value);
            figures.getStyleClass().add("told-figure");
            card.getChildren().add(new VBox(figures, WrappedWords.of(item.source(), "told-source")));
        }
    }

    /** The card over the other chart, so that this one stays in sight; beside the line where there is one chart only. */
    @Override
    protected void layoutChildren() {
        if (shown == null) {
            return;
        }
        double width = Math.min(CARD, getWidth());
        double height = card.prefHeight(width);
        double x;
        double y;
        if (shown.isRow()) {
            x = shown.area().x1() - width;
            double under = shown.area().y1() + BESIDE;
            y = under + height <= getHeight() ? under : shown.area().y0() - BESIDE - height;
        } else if (places.stream().anyMatch(p -> p.area().y0() > shown.area().y1())) {
            x = shown.x() - width / 2;
            y = shown.area().y1() + BELOW;
        } else if (places.stream().anyMatch(p -> p.area().y1() < shown.area().y0())) {
            x = shown.x() - width / 2;
            y = shown.area().y0() - BESIDE - height;
        } else {
            double right = shown.x() + BESIDE;
            x = right + width <= getWidth() ? right : shown.x() - BESIDE - width;
            y = shown.area().y0();
        }
        card.resizeRelocate(
                snapPositionX(Math.max(0, Math.min(x, getWidth() - width))),
                snapPositionY(Math.max(0, Math.min(y, getHeight() - height))),
                width,
                height);
    }
}
