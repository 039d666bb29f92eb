package hushmaze.app.model;

/** Steps that can be taken back, and taken again. */
public interface Steps {
    void undo();

    void redo();
}
