package hushmaze.app.entry;

import hushmaze.app.model.PathsModel;
import hushmaze.app.model.Texts;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Tooltip;

/** Takes away the vent path that is looked at. */
final class RemovePath implements Entry {
    private final PathsModel paths;
    private final Button button = new Button(Texts.of("paths.remove"));

    RemovePath(PathsModel paths) {
        this.paths = paths;
        button.setId("path-remove");
        button.setTooltip(new Tooltip(Texts.of("paths.remove.tip")));
        button.setMaxWidth(Double.MAX_VALUE);
        button.setOnAction(e -> paths.remove());
        refresh();
    }

    @Override
    public Node node() {
        return button;
    }

    @Override
    public void refresh() {
        button.setDisable(!paths.mayRemove());
    }
}
