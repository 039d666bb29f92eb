package hushmaze.app.entry;

import hushmaze.app.model.EditModel;
import hushmaze.app.model.Field;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One time of a timetable in two lines: how long, how many people, and whether the air is on. */
final class SessionCard implements Entry {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");

    private static final double FIELD_WIDTH = 70;

    private final EditModel edit;
    private final int number;
    private final GridPane grid = new GridPane();
    private final Label wrong = new Label();
    private final VBox box = new VBox(grid, wrong);
    private final List<TypedField> typed = new ArrayList<>();
    private final List<Optional<String>> problems = new ArrayList<>();
    private final CheckBox air = new CheckBox(Texts.of("entry.session.airOn"));
    private final Field airOn;

    /** @param remove what the button does that takes it out */
    SessionCard(EditModel edit, int number, Runnable remove) {
        this.edit = edit;
        this.number = number;
        this.airOn = field("airOn");
        box.getStyleClass().addAll("element-card", "session-card");
        wrong.getStyleClass().add("entry-wrong");
        wrong.setWrapText(true);
        grid.getStyleClass().add("octave-grid");
        typed("minutes", 0);
        typed("people", 1);
        Button away = AwayButton.of("session", number, remove);
        GridPane.setHalignment(away, HPos.RIGHT);
        grid.add(away, 2, 0);
        grid.add(airSwitch(), 2, 1);
        say(0, Optional.empty());
        refresh();
    }

    private Field field(String component) {
        return Field.of(name(component));
    }

    private String name(String component) {
        return "room.use.timetable." + number + "." + component;
    }

    private void typed(String component, int column) {
        Field field = field(component);
        String label = Texts.of("entry.session." + component);
        Label name = new Label(label);
        TextField control = new TextField();
        String tip = Texts.of("entry.session." + component + ".tip");
        name.setLabelFor(control);
        Tip.on(name, tip);
        Tip.on(control, tip);
        control.setId(name(component).replace('.', '-'));
        control.setAccessibleText(Texts.of("session.one", label, String.valueOf(number + 1)));
        int index = typed.size();
        typed.add(new TypedField(
                control,
                edit,
                () -> edit.shown(field),
                text -> edit.enter(field, label, text),
                problem -> say(index, problem)));
        problems.add(Optional.empty());
        ColumnConstraints share = new ColumnConstraints();
        share.setHgrow(Priority.ALWAYS);
        share.setPrefWidth(FIELD_WIDTH);
        grid.getColumnConstraints().add(share);
        grid.add(name, column, 0);
        grid.add(control, column, 1);
    }

    private CheckBox airSwitch() {
        air.setId(name("airOn").replace('.', '-'));
        Tip.on(air, Texts.of("entry.session.airOn.tip"));
        air.setMinWidth(CheckBox.USE_PREF_SIZE);
        air.setOnAction(e -> edit.set(airOn, air.getText(), air.isSelected()));
        return air;
    }

    /** One message at a time: that of the first field that has one. */
    private void say(int index, Optional<String> problem) {
        problems.set(index, problem);
        typed.get(index).field().pseudoClassStateChanged(WRONG, problem.isPresent());
        Optional<String> first = problems.stream().flatMap(Optional::stream).findFirst();
        wrong.setText(first.orElse(""));
        wrong.setVisible(first.isPresent());
        wrong.setManaged(first.isPresent());
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        typed.forEach(TypedField::refresh);
        air.setSelected(Boolean.TRUE.equals(airOn.get(edit.project(), edit.path())));
    }
}
