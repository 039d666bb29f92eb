package hushmaze.app.entry;

import hushmaze.app.model.EditModel;
import hushmaze.app.model.Octaves;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Tip;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import javafx.css.PseudoClass;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** Eight octave values in two rows of four, each under the name of its band. */
final class OctaveGrid implements Entry {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final int COLUMNS = 4;

    private final Octaves octaves;
    private final String label;
    private final Label name = new Label();
    private final Label finer = new Label(Texts.of("octaves.finer"));
    private final Label wrong = new Label();
    private final VBox box = new VBox();
    private final List<TypedField> cells = new ArrayList<>();
    private final List<Optional<String>> problems;

    /**
     * @param key of its texts
     * @param id of the grid; its cells add the number of the band
     */
    OctaveGrid(EditModel edit, Octaves octaves, String key, String id) {
        this.octaves = octaves;
        this.label = Texts.of("entry." + key);
        List<String> bands = Octaves.bands();
        problems = new ArrayList<>(Collections.nCopies(bands.size(), Optional.empty()));
        GridPane grid = grid();
        grid.setId(id.replace('.', '-'));
        String tip = Texts.of("entry." + key + ".tip") + " " + Texts.of("octaves.tip");
        Tip.on(name, tip);
        for (int i = 0; i < bands.size(); i++) {
            TextField cell = cell(edit, i);
            cell.setId(grid.getId() + "-" + i);
            cell.setAccessibleText(Texts.of("octaves.one", label, bands.get(i)));
            Tip.on(cell, tip);
            Label band = new Label(bands.get(i));
            band.getStyleClass().add("band-name");
            band.setLabelFor(cell);
            grid.add(band, i % COLUMNS, 2 * (i / COLUMNS));
            grid.add(cell, i % COLUMNS, 2 * (i / COLUMNS) + 1);
        }
        List.of(name, finer, wrong).forEach(l -> l.setWrapText(true));
        name.getStyleClass().add("entry-name");
        finer.getStyleClass().add("quiet-words");
        wrong.getStyleClass().add("entry-wrong");
        box.getStyleClass().add("entry-row");
        box.getChildren().addAll(name, grid, finer, wrong);
        refresh();
    }

    private TextField cell(EditModel edit, int band) {
        TextField field = new TextField();
        TypedField cell = new TypedField(
                field,
                edit,
                () -> octaves.shown(band),
                text -> octaves.areThere() ? octaves.enter(band, label, text) : Optional.empty(),
                problem -> say(band, problem));
        cells.add(cell);
        return field;
    }

    private static GridPane grid() {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("octave-grid");
        for (int i = 0; i < COLUMNS; i++) {
            ColumnConstraints column = new ColumnConstraints();
            column.setPercentWidth(100.0 / COLUMNS);
            column.setHgrow(Priority.ALWAYS);
            column.setHalignment(HPos.CENTER);
            grid.getColumnConstraints().add(column);
        }
        return grid;
    }

    /** One message at a time: that of the lowest band that has one. */
    private void say(int band, Optional<String> problem) {
        problems.set(band, problem);
        Optional<String> first = problems.stream().flatMap(Optional::stream).findFirst();
        wrong.setText(first.orElse(""));
        show(wrong, first.isPresent());
        cells.get(band).field().pseudoClassStateChanged(WRONG, problem.isPresent());
    }

    private static void show(Node node, boolean visible) {
        node.setVisible(visible);
        node.setManaged(visible);
    }

    @Override
    public Node node() {
        return box;
    }

    @Override
    public void refresh() {
        name.setText(Texts.of("octaves.label", label, octaves.unit()));
        show(finer, octaves.areFiner());
        cells.forEach(TypedField::refresh);
    }
}
