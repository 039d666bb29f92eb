package hushmaze.app.sheet;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Message;
import hushmaze.app.model.PlanSizes;
import hushmaze.app.model.PlanSizes.Grip;
import hushmaze.app.model.PlanSizes.Place;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.drawing.page.PlacedPlan;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.AccessibleRole;
import javafx.scene.Cursor;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;
import javafx.scene.shape.Line;

/**
 * Grips on the plan: a wall or a baffle is dragged, moved by the arrow keys, or its size typed after a double click or Enter. While
 * one is dragged a line shows where it would go; the box changes once, when it is let go.
 */
final class PlanGrips extends Pane {
    private static final double SIZE = 13;
    private static final double FIELD = 110;

    /** Turns millimetres on the page into pixels. */
    record OnScreen(double scale, double left, double top) {}

    private final Designer designer;
    private final PlanSizes sizes;
    private final Map<Grip, Region> grips = new EnumMap<>(Grip.class);
    private final Line ghost = new Line();
    private final Label word = new Label();
    private final TextField field = new TextField();
    private PlacedPlan plan;
    private OnScreen screen;
    private Grip dragged;
    private double wanted;
    private Grip typed;

    PlanGrips(Designer designer) {
        this.designer = designer;
        this.sizes = designer.planSizes();
        setPickOnBounds(false);
        ghost.getStyleClass().add("plan-ghost");
        ghost.setVisible(false);
        ghost.setMouseTransparent(true);
        word.getStyleClass().add("plan-word");
        word.setVisible(false);
        word.setMouseTransparent(true);
        field.setVisible(false);
        field.setId("plan-size");
        field.setPrefWidth(FIELD);
        getChildren().addAll(ghost);
        for (Grip grip : Grip.values()) {
            Region region = grip(grip);
            grips.put(grip, region);
            getChildren().add(region);
        }
        getChildren().addAll(word, field);
        listenToField();
    }

    private Region grip(Grip grip) {
        Region region = new Region();
        region.setId("grip-" + grip.name().toLowerCase(Locale.ROOT));
        region.getStyleClass().add("plan-grip");
        region.setPrefSize(SIZE, SIZE);
        region.setFocusTraversable(true);
        region.setVisible(false);
        region.setCursor(grip.isAlong() ? Cursor.H_RESIZE : Cursor.V_RESIZE);
        region.setAccessibleRole(AccessibleRole.SLIDER);
        Tip.on(region, Texts.of("plan.grip." + grip));
        region.setAccessibleText(Texts.of("plan.grip." + grip));
        region.addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            region.requestFocus();
            if (e.getClickCount() == 2) {
                type(grip);
            }
            e.consume();
        });
        region.addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> {
            drag(grip, e.getSceneX(), e.getSceneY());
            e.consume();
        });
        region.addEventHandler(MouseEvent.MOUSE_RELEASED, e -> {
            drop();
            e.consume();
        });
        region.addEventHandler(KeyEvent.KEY_PRESSED, e -> key(grip, e));
        region.focusedProperty().addListener((p, before, now) -> {
            if (now) {
                say(grip, sizes.now(grip));
            } else if (dragged == null) {
                word.setVisible(false);
            }
        });
        return region;
    }

    private void listenToField() {
        field.setOnAction(e -> {
            tell(sizes.enter(typed, field.getText()));
            hideField();
        });
        field.addEventFilter(KeyEvent.KEY_PRESSED, e -> {
            if (e.getCode() == KeyCode.ESCAPE) {
                hideField();
                e.consume();
            }
        });
        field.focusedProperty().addListener((p, before, now) -> {
            if (!now) {
                field.setVisible(false);
            }
        });
    }

    private void hideField() {
        field.setVisible(false);
        grips.get(typed).requestFocus();
    }

    /** Shows the grips on a plan; null for none. */
    void place(PlacedPlan on, OnScreen at) {
        plan = on;
        screen = at;
        grips.values().forEach(grip -> grip.setVisible(false));
        if (plan == null) {
            word.setVisible(false);
            return;
        }
        for (Place place : sizes.places()) {
            Region grip = grips.get(place.grip());
            grip.setVisible(true);
            grip.resizeRelocate(
                    Math.round(pixelX(place.x()) - SIZE / 2), Math.round(pixelY(place.y()) - SIZE / 2), SIZE, SIZE);
            if (grip.isFocused()) {
                say(place.grip(), sizes.now(place.grip()));
            }
        }
    }

    private double pixelX(double metres) {
        return screen.left() + plan.x(metres) * screen.scale();
    }

    private double pixelY(double metres) {
        return screen.top() + plan.y(metres) * screen.scale();
    }

    private void drag(Grip grip, double sceneX, double sceneY) {
        var at = sceneToLocal(sceneX, sceneY);
        double metres = grip.isAlong()
                ? plan.alongAt((at.getX() - screen.left()) / screen.scale())
                : plan.acrossAt((at.getY() - screen.top()) / screen.scale());
        dragged = grip;
        wanted = sizes.sizeAt(grip, metres);
        double to = sizes.placeOf(grip, wanted);
        Region region = grips.get(grip);
        if (grip.isAlong()) {
            ghost.setStartX(pixelX(to));
            ghost.setEndX(pixelX(to));
            ghost.setStartY(region.getLayoutY() - 40);
            ghost.setEndY(region.getLayoutY() + SIZE + 40);
        } else {
            ghost.setStartY(pixelY(to));
            ghost.setEndY(pixelY(to));
            ghost.setStartX(region.getLayoutX() - 80);
            ghost.setEndX(region.getLayoutX() + SIZE + 80);
        }
        ghost.setVisible(true);
        say(grip, wanted);
    }

    private void drop() {
        ghost.setVisible(false);
        if (dragged != null) {
            Grip grip = dragged;
            dragged = null;
            tell(sizes.set(grip, wanted));
        }
    }

    private void key(Grip grip, KeyEvent e) {
        int steps = switch (e.getCode()) {
            case RIGHT, UP -> 1;
            case LEFT, DOWN -> -1;
            default -> 0;
        };
        if (steps != 0) {
            int sense = grip == Grip.TIP && isTipAtFarEnd() ? -steps : steps;
            double now = Math.rint(sizes.now(grip) / sizes.step()) + sense;
            tell(sizes.set(grip, Math.max(1, now) * sizes.step()));
            e.consume();
        } else if (e.getCode() == KeyCode.ENTER || e.getCode() == KeyCode.F2) {
            type(grip);
            e.consume();
        } else if (e.getCode() == KeyCode.ESCAPE && dragged != null) {
            dragged = null;
            ghost.setVisible(false);
            say(grip, sizes.now(grip));
            e.consume();
        }
    }

    /** A tip at the far end moves to the right when its gap shrinks. */
    private boolean isTipAtFarEnd() {
        return sizes.placeOf(Grip.TIP, 0) > sizes.placeOf(Grip.TIP, 1);
    }

    private void type(Grip grip) {
        typed = grip;
        Region region = grips.get(grip);
        field.setText(sizes.typed(grip));
        field.setAccessibleText(Texts.of("plan.grip." + grip));
        field.autosize();
        field.relocate(inside(region.getLayoutX() + SIZE + 6, getWidth() - FIELD - 4), region.getLayoutY() - 8);
        field.setVisible(true);
        word.setVisible(false);
        field.requestFocus();
        field.selectAll();
    }

    private void say(Grip grip, double size) {
        Region region = grips.get(grip);
        word.setText(sizes.words(grip, size));
        word.applyCss();
        word.autosize();
        word.relocate(
                inside(region.getLayoutX() + SIZE + 8, getWidth() - word.getWidth() - 4), region.getLayoutY() - 26);
        word.setVisible(true);
    }

    private static double inside(double x, double most) {
        return Math.max(4, Math.min(x, most));
    }

    private void tell(Optional<String> problem) {
        problem.ifPresent(text -> designer.messageProperty().set(new Message(true, text)));
    }
}
