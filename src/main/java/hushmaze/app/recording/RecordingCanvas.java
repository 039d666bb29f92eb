package hushmaze.app.recording;

import hushmaze.app.field.ColourMap;
import hushmaze.app.model.RecordingModel;
import hushmaze.app.model.Texts;
import hushmaze.measure.RecordingPicture;
import java.util.function.DoubleConsumer;
import javafx.beans.value.ObservableDoubleValue;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.canvas.Canvas;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.control.Label;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Region;

/**
 * The picture of a recording with the part that is chosen drawn over it. The mouse drags one edge of the part or a new part; the model is
 * told once, when it is let go. Each edge has a handle that takes the arrow keys.
 */
final class RecordingCanvas extends RecordingColours {
    private static final double LEAST_WIDTH = 200;
    private static final double LEAST_HEIGHT = 110;
    private static final double NEAR = 7;
    private static final double HANDLE = 11;
    /** A new part is one only if it is dragged so far, pixels. */
    private static final double DRAGGED = 4;

    private static final double[] KEY_STEPS = {0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 30, 60};
    private static final double KEY_SHARE = 0.01;
    private static final double FINE = 0.1;
    /** How much of what is not chosen is covered. */
    private static final double VEIL = 0.62;

    /** What is dragged. */
    private enum Dragged {
        NOTHING,
        FROM,
        TO,
        PART
    }

    private final RecordingModel model;
    private final Canvas under = new Canvas();
    private final Canvas over = new Canvas();
    private final Region fromHandle;
    private final Region toHandle;
    private final Label word = new Label();
    private final ColourMap map = ColourMap.level();
    private RecordingFrame frame;
    private Dragged dragged = Dragged.NOTHING;
    private double pressedX;
    /** Where the part would go. */
    private double wantedFrom;

    private double wantedTo;

    RecordingCanvas(RecordingModel model) {
        this.model = model;
        getStyleClass().add("recording-canvas");
        setId("recording-picture");
        setAccessibleRole(AccessibleRole.IMAGE_VIEW);
        setAccessibleText(Texts.of("recording.picture"));
        setMinSize(LEAST_WIDTH, LEAST_HEIGHT);
        setPrefSize(LEAST_WIDTH, LEAST_HEIGHT);
        fromHandle = handle("from", model.fromProperty(), model::moveFrom);
        toHandle = handle("to", model.toProperty(), model::moveTo);
        word.getStyleClass().add("plan-word");
        word.setMouseTransparent(true);
        word.setVisible(false);
        word.setManaged(false);
        getChildren().addAll(under, over, fromHandle, toHandle, word);
        model.pictureProperty().addListener(o -> requestLayout());
        model.offsetProperty().addListener(o -> requestLayout());
        model.fromProperty().addListener(o -> paintPart());
        model.toProperty().addListener(o -> paintPart());
        addEventHandler(MouseEvent.MOUSE_MOVED, e -> setCursor(cursor(grasped(e.getX(), e.getY()))));
        addEventHandler(MouseEvent.MOUSE_PRESSED, this::press);
        addEventHandler(MouseEvent.MOUSE_DRAGGED, this::drag);
        addEventHandler(MouseEvent.MOUSE_RELEASED, e -> drop());
    }

    private Region handle(String name, ObservableDoubleValue time, DoubleConsumer move) {
        Region handle = new Region();
        handle.setId("recording-edge-" + name);
        handle.getStyleClass().add("recording-handle");
        handle.setManaged(false);
        // the mouse takes the nearer of two edges that lie over each other
        handle.setMouseTransparent(true);
        handle.setFocusTraversable(true);
        handle.setAccessibleRole(AccessibleRole.SLIDER);
        handle.addEventHandler(KeyEvent.KEY_PRESSED, e -> key(e, time.get(), move));
        return handle;
    }

    private void key(KeyEvent e, double now, DoubleConsumer move) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        double step = e.isShiftDown() ? FINE * keyStep() : keyStep();
        switch (e.getCode()) {
            case LEFT -> move.accept(now - step);
            case RIGHT -> move.accept(now + step);
            case HOME -> move.accept(0);
            case END -> move.accept(model.seconds());
            default -> {
                return;
            }
        }
        e.consume();
    }

    private double keyStep() {
        double step = KEY_STEPS[0];
        for (double one : KEY_STEPS) {
            if (one <= KEY_SHARE * model.seconds()) {
                step = one;
            }
        }
        return step;
    }

    private Dragged grasped(double x, double y) {
        if (frame == null || y < frame.waveTop() || y > frame.bottom()) {
            return Dragged.NOTHING;
        }
        double toFrom = Math.abs(x - frame.x(model.fromProperty().get()));
        double toTo = Math.abs(x - frame.x(model.toProperty().get()));
        if (Math.min(toFrom, toTo) <= NEAR) {
            return toFrom < toTo ? Dragged.FROM : Dragged.TO;
        }
        return x >= frame.left() && x <= frame.left() + frame.width() ? Dragged.PART : Dragged.NOTHING;
    }

    private static Cursor cursor(Dragged over) {
        return switch (over) {
            case NOTHING -> Cursor.DEFAULT;
            case FROM, TO -> Cursor.H_RESIZE;
            case PART -> Cursor.CROSSHAIR;
        };
    }

    private void press(MouseEvent e) {
        dragged = e.getButton() == MouseButton.PRIMARY ? grasped(e.getX(), e.getY()) : Dragged.NOTHING;
        pressedX = e.getX();
        if (dragged == Dragged.FROM) {
            fromHandle.requestFocus();
        } else if (dragged == Dragged.TO) {
            toHandle.requestFocus();
        }
    }

    private void drag(MouseEvent e) {
        if (frame == null || dragged == Dragged.NOTHING) {
            return;
        }
        double here = frame.time(e.getX());
        switch (dragged) {
            case FROM -> want(here, model.toProperty().get());
            case TO -> want(model.fromProperty().get(), here);
            default -> {
                if (word.isVisible() || Math.abs(e.getX() - pressedX) >= DRAGGED) {
                    want(frame.time(pressedX), here);
                }
            }
        }
    }

    private void want(double one, double other) {
        wantedFrom = Math.min(one, other);
        wantedTo = Math.max(one, other);
        word.setText(Texts.of("recording.drag", model.timeText(wantedFrom), model.timeText(wantedTo)));
        word.setVisible(true);
        word.autosize();
        double middle = frame.x((wantedFrom + wantedTo) / 2) - word.getWidth() / 2;
        double most = getWidth() - word.getWidth() - 2;
        word.relocate(Math.round(Math.max(2, Math.min(most, middle))), frame.waveTop() + 4);
        paintPart(wantedFrom, wantedTo);
    }

    private void drop() {
        boolean moved = word.isVisible();
        word.setVisible(false);
        if (moved) {
            switch (dragged) {
                case FROM ->
                    model.choose(Math.min(wantedFrom, model.toProperty().get()), wantedTo);
                default -> model.choose(wantedFrom, wantedTo);
            }
            paintPart();
        }
        dragged = Dragged.NOTHING;
    }

    /** Where a time is on the picture, for whoever drags there. */
    Point2D at(double seconds) {
        return new Point2D(frame.x(seconds), frame.top() + frame.height() / 2);
    }

    @Override
    protected void layoutChildren() {
        double width = snapSizeX(getWidth());
        double height = snapSizeY(getHeight());
        for (Canvas canvas : new Canvas[] {under, over}) {
            canvas.setWidth(width);
            canvas.setHeight(height);
            canvas.getGraphicsContext2D().clearRect(0, 0, width, height);
        }
        RecordingPicture picture = model.pictureProperty().get();
        frame = null;
        if (picture != null && width >= LEAST_WIDTH && height >= LEAST_HEIGHT) {
            frame = RecordingFrame.of(width, height, picture.seconds());
            paint(picture);
        }
        fromHandle.setVisible(frame != null);
        toHandle.setVisible(frame != null);
        paintPart();
    }

    private void paint(RecordingPicture picture) {
        GraphicsContext to = under.getGraphicsContext2D();
        RecordingPainter painter = new RecordingPainter(picture, frame, this, to);
        LevelRange range = LevelRange.of(picture, model.added());
        painter.wave();
        painter.bands(range, model.added(), map);
        AxesPainter axes = new AxesPainter(to, frame, this);
        axes.frames();
        axes.frequencies();
        axes.times(model::axisText);
        axes.legend(range, map);
    }

    private void paintPart() {
        paintPart(model.fromProperty().get(), model.toProperty().get());
    }

    private void paintPart(double from, double end) {
        GraphicsContext to = over.getGraphicsContext2D();
        to.clearRect(0, 0, getWidth(), getHeight());
        if (frame == null) {
            return;
        }
        double left = Math.round(frame.x(from));
        double right = Math.round(frame.x(end));
        double high = frame.bottom() - frame.waveTop();
        to.setGlobalAlpha(VEIL);
        to.setFill(shade());
        to.fillRect(frame.left(), frame.waveTop(), left - frame.left(), high);
        to.fillRect(right, frame.waveTop(), frame.left() + frame.width() - right, high);
        to.setGlobalAlpha(1);
        to.setFill(edge());
        to.fillRect(left - 1, frame.waveTop(), 2, high);
        to.fillRect(right - 1, frame.waveTop(), 2, high);
        place(fromHandle, left, "recording.edge.from", from);
        place(toHandle, right, "recording.edge.to", end);
    }

    private void place(Region handle, double x, String key, double time) {
        double tall = Math.min(28, frame.waveHeight());
        double y = frame.waveTop() + Math.round((frame.waveHeight() - tall) / 2);
        handle.resizeRelocate(x - Math.floor(HANDLE / 2) - 0.5, y, HANDLE, tall);
        handle.setAccessibleText(Texts.of(key, model.timeText(time)));
    }
}
