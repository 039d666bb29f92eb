package hushmaze.app.verdict;

import javafx.scene.Node;

/** Whether something is there at all: seen, and given room. */
public final class Presence {
    private Presence() {}

    /** Shows a node, or takes it and its room away. */
    public static void set(Node node, boolean is) {
        node.setVisible(is);
        node.setManaged(is);
    }
}
