package hushmaze.app.sheet;

import hushmaze.drawing.Ink;
import hushmaze.drawing.Page;
import hushmaze.drawing.Told;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.beans.Observable;
import javafx.css.CssMetaData;
import javafx.css.Styleable;
import javafx.css.StyleableProperty;
import javafx.css.StyleablePropertyFactory;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;
import javafx.scene.paint.Color;

/**
 * Shows one page as large as the room allows, painted anew at every size. Its colours are the style sheet's: {@code
 * -ink-black}, {@code -ink-grey} and so on, one for each ink; {@code -ink-white} is the paper. {@code
 * -lettering} says how many times larger than normal drawings made for the screen are lettered.
 */
public final class PageCanvas extends Region {
    /** Pixels to a millimetre at which the lettering of a page made for the screen is easily read. */
    private static final double SCREEN_SCALE = 4.1;

    private static final double LEAST = 60;
    /** Width that drawings keep when they are lettered larger, mm. */
    private static final double ROOM = 120;

    private static final StyleablePropertyFactory<PageCanvas> STYLES =
            new StyleablePropertyFactory<>(Region.getClassCssMetaData());

    private final Canvas canvas = new Canvas();
    private final Map<Ink, StyleableProperty<Color>> inks = new EnumMap<>(Ink.class);
    private final StyleableProperty<Number> lettering =
            STYLES.createStyleableNumberProperty(this, "lettering", "-lettering", c -> c.lettering, 1);
    private PageSource source;
    private final PageHints hints = new PageHints();
    private PlaceListener placed = (page, scale, left, top) -> {};

    public PageCanvas() {
        getStyleClass().add("page-canvas");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setMinSize(LEAST, LEAST);
        for (Ink ink : Ink.values()) {
            String name = ink.name().toLowerCase(Locale.ROOT).replace('_', '-');
            inks.put(
                    ink,
                    STYLES.createStyleableColorProperty(
                            this, "ink-" + name, "-ink-" + name, c -> c.inks.get(ink), Color.web(ink.hex())));
        }
        ((Observable) lettering).addListener(o -> requestLayout());
        inks.values().forEach(p -> ((Observable) p).addListener(o -> requestLayout()));
        getChildren().addAll(canvas, hints);
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> hints.point(e.getX(), e.getY()));
        addEventHandler(MouseEvent.MOUSE_EXITED, e -> hints.hide());
        addEventHandler(KeyEvent.KEY_PRESSED, this::pressed);
        focusedProperty().addListener((p, before, now) -> hints.hide());
    }

    private void pressed(KeyEvent e) {
        if (!e.isShortcutDown() && hints.go(e.getCode())) {
            setAccessibleHelp(hints.told().map(Told::text).orElse(null));
            e.consume();
        }
    }

    /** Told where the page lies each time it was painted. */
    interface PlaceListener {
        /**
         * @param page null for none
         * @param scale pixels to a millimetre
         * @param left of the page, pixels
         * @param top of the page, pixels
         */
        void placed(Page page, double scale, double left, double top);
    }

    void whenPlaced(PlaceListener listener) {
        placed = listener;
    }

    /** What is shown; null for nothing. */
    public void setSource(PageSource source) {
        this.source = source;
        requestLayout();
    }

    @Override
    public List<CssMetaData<? extends Styleable, ?>> getCssMetaData() {
        return STYLES.getCssMetaData();
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth());
        double height = snapSizeY(getHeight());
        canvas.setWidth(width);
        canvas.setHeight(height);
        hints.resizeRelocate(0, 0, width, height);
        GraphicsContext to = canvas.getGraphicsContext2D();
        to.clearRect(0, 0, width, height);
        if (source == null || width < LEAST || height < LEAST) {
            placed(null, 0, 0, 0);
            return;
        }
        double larger = SCREEN_SCALE * lettering.getValue().doubleValue();
        // Larger letters only where a drawing has room for them: a chart of narrow width is worth less than small
        // letters.
        double screen = Math.min(larger, Math.max(SCREEN_SCALE, width / ROOM));
        Page page = source.page(width / screen, height / screen);
        double scale = Math.min(width / page.width(), height / page.height());
        double left = Math.round((width - page.width() * scale) / 2);
        double top = Math.round((height - page.height() * scale) / 2);
        to.setFill(colour(Ink.WHITE));
        to.fillRect(left, top, page.width() * scale, page.height() * scale);
        new PagePainter(to, page, scale, left, top, this::colour).paint();
        placed(page, scale, left, top);
    }

    private void placed(Page page, double scale, double left, double top) {
        hints.place(page, scale, left, top);
        // what tells something can be gone to by the keyboard
        setFocusTraversable(!hints.isEmpty());
        placed.placed(page, scale, left, top);
    }

    private Color colour(Ink ink) {
        return inks.get(ink).getValue();
    }
}
