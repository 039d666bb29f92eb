package hushmaze.app.entry;

import javafx.scene.Node;

/** One row of the entries. */
public interface Entry {
    Node node();

    /** Shows what the project has now. */
    void refresh();
}
