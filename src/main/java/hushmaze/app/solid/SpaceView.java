package hushmaze.app.solid;

import java.util.function.Consumer;
import javafx.scene.AmbientLight;
import javafx.scene.Group;
import javafx.scene.Node;
import javafx.scene.PerspectiveCamera;
import javafx.scene.PointLight;
import javafx.scene.SceneAntialiasing;
import javafx.scene.SubScene;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseEvent;
import javafx.scene.transform.Rotate;

/** Something to look at from all sides: dragging or the arrow keys turn it, the wheel or plus and minus go nearer. */
final class SpaceView extends SpaceColours {
    private static final double YAW = 28;
    private static final double PITCH = 28;
    private static final double STEP = 6;
    private static final double NEARER = 0.9;
    private static final double DEGREES_PER_PIXEL = 0.4;
    private static final double FIELD = 22;

    private final Group thing = new Group();
    private final PerspectiveCamera camera = new PerspectiveCamera(true);
    private final Rotate yaw = new Rotate(YAW, Rotate.Y_AXIS);
    private final Rotate pitch = new Rotate(PITCH, Rotate.X_AXIS);
    private double size = 1000;
    private double spread = 1;
    private double zoom = 1;
    private double lastX;
    private double lastY;

    private Consumer<Node> picker = node -> {};

    SpaceView() {
        getStyleClass().add("space-view");
        setFocusTraversable(true);
        setMinSize(0, 0);
        thing.getTransforms().addAll(pitch, yaw);
        AmbientLight shade = new AmbientLight();
        shade.colorProperty().bind(observed(shade()));
        PointLight light = new PointLight();
        light.colorProperty().bind(observed(light()));
        light.setTranslateX(-1500);
        light.setTranslateY(-2500);
        light.setTranslateZ(-4000);
        SubScene scene = new SubScene(new Group(thing, shade, light), 100, 100, true, SceneAntialiasing.BALANCED);
        scene.setCamera(camera);
        scene.widthProperty().bind(widthProperty());
        scene.heightProperty().bind(heightProperty());
        scene.setManaged(false);
        camera.setFieldOfView(FIELD);
        camera.setNearClip(10);
        camera.setFarClip(50_000);
        getChildren().add(scene);
        widthProperty().addListener(o -> place());
        heightProperty().addListener(o -> place());
        listen();
    }

    private void listen() {
        addEventHandler(MouseEvent.MOUSE_PRESSED, e -> {
            requestFocus();
            lastX = e.getX();
            lastY = e.getY();
            if (e.getClickCount() == 2) {
                reset();
            }
        });
        addEventHandler(MouseEvent.MOUSE_DRAGGED, e -> {
            turn((lastX - e.getX()) * DEGREES_PER_PIXEL, (e.getY() - lastY) * DEGREES_PER_PIXEL);
            lastX = e.getX();
            lastY = e.getY();
        });
        addEventHandler(MouseEvent.MOUSE_CLICKED, e -> {
            if (e.isStillSincePress() && e.getClickCount() == 1) {
                picker.accept(e.getPickResult().getIntersectedNode());
            }
        });
        setOnScroll(e -> {
            zoom(e.getDeltaY() > 0 ? NEARER : 1 / NEARER);
            e.consume();
        });
        addEventHandler(KeyEvent.KEY_PRESSED, this::key);
    }

    private void key(KeyEvent e) {
        if (e.isShortcutDown() || e.isAltDown()) {
            return;
        }
        switch (e.getCode()) {
            case LEFT -> turn(STEP, 0);
            case RIGHT -> turn(-STEP, 0);
            case UP -> turn(0, STEP);
            case DOWN -> turn(0, -STEP);
            case PLUS, EQUALS, ADD -> zoom(NEARER);
            case MINUS, SUBTRACT -> zoom(1 / NEARER);
            case HOME -> reset();
            default -> {
                return;
            }
        }
        e.consume();
    }

    /** @param told which node was clicked, of what is shown or around it */
    void setOnPicked(Consumer<Node> told) {
        picker = told;
    }

    /** Shows a thing that lies about the origin. @param diagonal its longest way through, mm */
    void show(Node node, double diagonal) {
        thing.getChildren().setAll(node);
        size = diagonal;
        place();
    }

    /** Steps back from a thing that takes more room than it did. @param times as much */
    void stepBack(double times) {
        spread = times;
        place();
    }

    /** The first look, at an angle from above. */
    void reset() {
        yaw.setAngle(YAW);
        pitch.setAngle(PITCH);
        zoom = 1;
        place();
    }

    void turn(double right, double down) {
        yaw.setAngle(yaw.getAngle() + right);
        pitch.setAngle(Math.max(-90, Math.min(90, pitch.getAngle() + down)));
    }

    private void zoom(double factor) {
        zoom = Math.max(0.25, Math.min(4, zoom * factor));
        place();
    }

    private void place() {
        double aspect = getHeight() > 0 ? Math.min(1.25, getWidth() / getHeight()) : 1;
        double distance = spread * size / 2 / Math.tan(Math.toRadians(FIELD / 2)) * 1.02 / Math.max(0.2, aspect);
        camera.setTranslateZ(-distance * zoom);
    }
}
