package hushmaze.app.model;

/** Steps that can be taken back, and taken again. */
public interface Undoing {
    void undo();

    void redo();
}
