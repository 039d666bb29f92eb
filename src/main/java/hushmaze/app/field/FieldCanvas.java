package hushmaze.app.field;

import hushmaze.solid.Axis;
import hushmaze.sound.section.PathField;
import javafx.animation.AnimationTimer;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.image.Image;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.stage.Stage;

/**
 * The map of a field with the box drawn over it and its legend below. The mouse or the arrow keys choose the point that is read. The
 * wave runs only while it is asked to and the canvas is shown.
 */
final class FieldCanvas extends FieldColours {
    /** What the picture is of. */
    enum Look {
        LEVEL,
        PRESSURE
    }

    /** Told where the point that is read has got to. */
    interface Reader {
        /**
         * @param along from the box's near end, m
         * @param across from its first side, m
         */
        void read(double along, double across);
    }

    private static final double LEGEND = 58;
    private static final double LEAST = 120;
    /** A map lower than this is not drawn. */
    private static final double LEAST_MAP = 50;

    /** Seconds that one swing takes, and between two pictures of it. */
    private static final double PERIOD = 4;

    private static final double BETWEEN = 0.04;
    private static final double NANO = 1e-9;
    /** How far an arrow key moves the point, m. */
    private static final double KEY_STEP = 0.01;

    private final Canvas map = new Canvas();
    private final Canvas lines = new Canvas();
    private final BooleanProperty playing = new SimpleBooleanProperty();
    private final BooleanProperty onShow = new SimpleBooleanProperty();
    private final Reader reader;
    private final ColourMap levels = ColourMap.level();
    private ColourMap pressures = ColourMap.pressure(95);
    private Look look = Look.LEVEL;
    private PathField field;
    private FieldImage image;
    private BoxFrame frame;
    /** From the near end and the first side, m; null for none. */
    private Point2D point;

    private double turn;
    private double last = -1;
    private final AnimationTimer timer = new AnimationTimer() {
        @Override
        public void handle(long now) {
            step(now * NANO);
        }
    };

    FieldCanvas(Reader reader) {
        this.reader = reader;
        getStyleClass().add("field-canvas");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setFocusTraversable(true);
        setMinSize(LEAST, LEAST);
        getChildren().addAll(map, lines);
        playing.addListener(o -> run());
        onShow.addListener(o -> run());
        focusedProperty().addListener(o -> requestLayout());
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> pointAt(e.getX(), e.getY()));
        addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> pointAt(e.getX(), e.getY()));
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> requestFocus());
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    /** Whether the wave runs, when pressure is looked at. */
    BooleanProperty playingProperty() {
        return playing;
    }

    /** Whether anybody can see it. */
    BooleanProperty onShowProperty() {
        return onShow;
    }

    void setLook(Look look) {
        this.look = look;
        run();
        requestLayout();
    }

    /** @param field null for none */
    void setField(PathField field) {
        if (this.field != field) {
            this.field = field;
            image = field == null ? null : new FieldImage(field);
            if (field == null || point != null && !isInside(point.getX(), point.getY())) {
                point = null;
            }
            run();
            requestLayout();
        }
    }

    private void run() {
        if (playing.get() && onShow.get() && look == Look.PRESSURE && field != null) {
            last = -1;
            timer.start();
        } else {
            timer.stop();
        }
    }

    private void step(double now) {
        if (last < 0) {
            last = now;
        } else if (now - last >= BETWEEN) {
            turn = (turn + (now - last) / PERIOD) % 1;
            last = now;
            boolean away = getScene() != null && getScene().getWindow() instanceof Stage stage && stage.isIconified();
            if (!away) {
                paintMap();
            }
        }
    }

    private void pointAt(double x, double y) {
        if (frame != null) {
            move(frame.along(x), frame.across(y));
        }
    }

    private void key(KeyEvent e) {
        if (field == null || e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        double right;
        double up;
        switch (e.getCode()) {
            case LEFT -> {
                right = -KEY_STEP;
                up = 0;
            }
            case RIGHT -> {
                right = KEY_STEP;
                up = 0;
            }
            case UP -> {
                right = 0;
                up = KEY_STEP;
            }
            case DOWN -> {
                right = 0;
                up = -KEY_STEP;
            }
            default -> {
                return;
            }
        }
        Point2D from = point == null ? new Point2D(width() / 2, height() / 2) : point;
        move(within(from.getX() + right, width()), within(from.getY() + up, height()));
        e.consume();
    }

    private static double within(double value, double most) {
        return Math.max(0, Math.min(most, value));
    }

    private double width() {
        return field.solid().outer().size(Axis.X);
    }

    private double height() {
        return field.solid().outer().size(Axis.Y);
    }

    private void move(double along, double across) {
        if (field == null || !isInside(along, across)) {
            return;
        }
        point = new Point2D(along, across);
        reader.read(along, across);
        paintLines();
    }

    private boolean isInside(double along, double across) {
        return along >= 0 && across >= 0 && along <= width() && across <= height();
    }

    /** The point that is read, m; null for none. */
    Point2D point() {
        return point;
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth());
        double height = snapSizeY(getHeight());
        for (Canvas canvas : new Canvas[] {map, lines}) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        }
        frame = null;
        if (field != null && width >= LEAST && height >= LEAST_MAP) {
            pressures = ColourMap.pressure(100 * still().getBrightness() > 50 ? 95 : 24);
            frame = new BoxFrame(field.solid(), field.flat(), width, height - legend());
            new BoxPainter(map.getGraphicsContext2D(), this, field, frame).ground();
            paintMap();
            paintLines();
        }
    }

    /** Height of the legend; none where the map would be too small beside it. */
    private double legend() {
        return getHeight() >= LEAST + LEGEND ? LEGEND : 0;
    }

    private void paintMap() {
        if (frame == null) {
            return;
        }
        GraphicsContext to = map.getGraphicsContext2D();
        BoxPainter box = new BoxPainter(to, this, field, frame);
        to.save();
        box.clipToAir();
        if (look == Look.LEVEL) {
            Image levelsNow = image.levels((int) frame.width(), (int) frame.height(), levels);
            to.drawImage(levelsNow, frame.left(), frame.top());
        } else {
            double wide = image.width() * frame.scale();
            double high = image.height() * frame.scale();
            to.setImageSmoothing(true);
            to.drawImage(
                    image.pressure(turn, pressures), frame.left(), frame.top() + frame.height() - high, wide, high);
        }
        to.restore();
    }

    private void paintLines() {
        if (frame == null) {
            return;
        }
        GraphicsContext to = lines.getGraphicsContext2D();
        to.clearRect(0, 0, getWidth(), getHeight());
        BoxPainter box = new BoxPainter(to, this, field, frame);
        box.edges();
        box.ports(look == Look.LEVEL);
        if (look == Look.LEVEL) {
            box.levels();
        }
        if (legend() > 0) {
            Legend legend = new Legend(to, this, getWidth(), getHeight() - LEGEND);
            if (look == Look.LEVEL) {
                legend.levels(image.scale(), levels);
            } else {
                legend.pressures(image, pressures);
            }
        }
        if (point != null) {
            box.point(point);
        }
    }
}
