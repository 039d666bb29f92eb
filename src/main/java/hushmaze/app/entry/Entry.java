package hushmaze.app.entry;

import javafx.scene.Node;

/** One row of the entries. */
interface Entry {
    Node node();

    /** Shows what the project has now. */
    void refresh();
}
