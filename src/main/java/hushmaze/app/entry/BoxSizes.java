package hushmaze.app.entry;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Field;
import hushmaze.app.model.PortFaces;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import hushmaze.project.Box;
import hushmaze.project.PortFace;
import hushmaze.wording.Unbroken;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.VBox;

/** The box itself: laid out from the wishes on demand, its sizes free to change. */
final class BoxSizes implements Entry {
    private final Designer designer;
    private final Label words = new Label();
    private final VBox content = new VBox();
    private final List<Entry> rows = new ArrayList<>();

    BoxSizes(Designer designer, Entries make, JointEntries joints) {
        this.designer = designer;
        content.getStyleClass().add("entry-group");
        words.setWrapText(true);
        words.getStyleClass().add("quiet-words");
        Button layOut = new Button(Texts.of("box.layOut"));
        layOut.setId("lay-out");
        layOut.getStyleClass().add("accent");
        layOut.setMaxWidth(Double.MAX_VALUE);
        Tip.on(layOut, Texts.of("box.layOut.tip"));
        layOut.disableProperty().bind(designer.results().layingOutProperty());
        layOut.setOnAction(e -> designer.results().layOut());
        content.getChildren().addAll(layOut, words);
        add(make.wideChoice("path.box.form"));
        for (String size : List.of("passes", "clearWidth", "clearHeight", "clearLength", "turnGap")) {
            add(make.typed("path.box." + size));
        }
        heading("box.linedFaces");
        for (String face : List.of("walls", "baffles", "ends", "broad")) {
            add(make.typed("path.box.linedFaces." + face));
        }
        heading("box.openingPort");
        add(face(make, "path.box.openingPort.face"));
        for (String size : List.of("width", "height", "edgeDistance")) {
            add(make.typed("path.box.openingPort." + size));
        }
        heading("box.roomPort");
        add(face(make, "path.box.roomPort.face"));
        for (String size : List.of("width", "height", "edgeDistance")) {
            add(make.typed("path.box.roomPort." + size));
        }
        heading("box.seams");
        joints.seams().forEach(this::add);
        refresh();
    }

    private Entry face(Entries make, String name) {
        Field field = Field.of(name);
        String label = Texts.of("entry." + name);
        PortFaces faces = new PortFaces(designer.edit());
        return make.chosen(
                name, name, false, List.of(PortFace.values()), Texts::word, face -> faces.set(field, label, face));
    }

    private void heading(String key) {
        Label label = new Label(Texts.of(key));
        label.getStyleClass().add("small-heading");
        content.getChildren().add(label);
    }

    private void add(Entry row) {
        rows.add(row);
        content.getChildren().add(row.node());
    }

    @Override
    public VBox node() {
        return content;
    }

    @Override
    public void refresh() {
        rows.forEach(Entry::refresh);
        Box box = designer.edit().project().paths().get(designer.edit().path()).box();
        words.setText(
                box == null
                        ? Texts.of("box.none")
                        : Unbroken.of(new Wording(designer.edit().project().units()).box(box)));
    }
}
