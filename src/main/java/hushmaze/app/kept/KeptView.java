package hushmaze.app.kept;

import hushmaze.app.model.Designer;
import hushmaze.app.model.KeptModel;
import hushmaze.app.model.KeptModel.Column;
import hushmaze.app.model.KeptTable;
import hushmaze.app.model.KeptTable.Row;
import hushmaze.app.model.Message;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextField;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;

/** The box in the path beside those put by: what each comes to, what differs, and their levels in one chart. */
public final class KeptView extends BorderPane {
    private static final double CHART = 250;
    private static final double COLUMN = 116;

    private final Designer designer;
    private final KeptModel model;
    private final Button keep;
    private final CheckBox onlyDifferent = new CheckBox(Texts.of("kept.onlyDifferent"));
    private final Label empty = WrappedWords.of(Texts.of("kept.empty"), "found-empty");
    private final Label how = WrappedWords.of(Texts.of("kept.how"), "quiet-words");
    private final GridPane table = new GridPane();
    private final PageCanvas chart = new PageCanvas();

    public KeptView(Designer designer) {
        this.designer = designer;
        this.model = designer.kept();
        getStyleClass().add("kept-view");
        keep = KeyedButton.of("kept.keep", () -> tell(model::keep));
        keep.getStyleClass().add("accent");
        onlyDifferent.setId("kept-only-different");
        onlyDifferent.setMnemonicParsing(true);
        onlyDifferent.setOnAction(e -> show());
        HBox top = new HBox(keep, onlyDifferent);
        top.getStyleClass().add("kept-top");
        table.getStyleClass().add("kept-table");
        table.setId("kept-table");
        how.getStyleClass().add("kept-how");
        how.prefWidthProperty().bind(widthProperty().subtract(24));
        ScrollPane scroll = new ScrollPane(new VBox(empty, how, table));
        scroll.setFitToHeight(false);
        scroll.setMinHeight(0);
        chart.setMinHeight(CHART);
        chart.setPrefHeight(CHART);
        chart.setAccessibleText(Texts.of("kept.chart"));
        setTop(top);
        setCenter(scroll);
        setBottom(chart);
        empty.prefWidthProperty().bind(scroll.widthProperty().subtract(20));
        model.columnsProperty().addListener((p, before, after) -> show());
        designer.edit().projectProperty().addListener((p, before, after) -> show());
        model.watchedProperty().addListener((p, before, after) -> show());
        show();
    }

    /** Makes a change; tells why not, and whether it was made. */
    private boolean tell(Supplier<Optional<String>> change) {
        Optional<String> problem = change.get();
        problem.ifPresent(text -> designer.messageProperty().set(new Message(true, text)));
        return problem.isEmpty();
    }

    /** Made anew only while somebody looks. */
    private void show() {
        if (!model.watchedProperty().get()) {
            return;
        }
        List<Column> columns = model.columnsProperty().get();
        boolean some = columns.stream().anyMatch(c -> !c.isPresent());
        keep.setDisable(!model.mayKeep());
        Presence.set(empty, !some);
        Presence.set(table, !columns.isEmpty());
        Presence.set(how, some);
        Presence.set(onlyDifferent, some);
        fill(columns);
        List<Column> judged = columns.stream().filter(c -> c.result() != null).toList();
        boolean drawn = !judged.isEmpty();
        Presence.set(chart, drawn);
        chart.setSource(drawn ? new LevelsChart(judged, designer.measure()) : null);
    }

    private void fill(List<Column> columns) {
        table.getChildren().clear();
        for (int i = 0; i < columns.size(); i++) {
            table.add(head(columns.get(i)), i + 1, 0);
        }
        int line = 1;
        for (Row row : KeptTable.of(columns, designer.edit().project().units())) {
            if (onlyDifferent.isSelected() && row.alike()) {
                continue;
            }
            Label name = WrappedWords.of(row.name(), "quiet-words");
            name.setPrefWidth(COLUMN);
            table.add(name, 0, line);
            for (int i = 0; i < columns.size(); i++) {
                table.add(cell(row, i), i + 1, line);
            }
            line++;
        }
    }

    private static Label cell(Row row, int column) {
        boolean best = row.best().isPresent() && row.best().getAsInt() == column;
        Label cell = WrappedWords.of(
                best
                        ? Texts.of("kept.best", row.cells().get(column))
                        : row.cells().get(column),
                "kept-cell");
        if (best) {
            cell.getStyleClass().add("figure");
        }
        if (row.alike()) {
            cell.getStyleClass().add("quiet-words");
        }
        cell.setPrefWidth(COLUMN);
        return cell;
    }

    private Node head(Column column) {
        if (column.isPresent()) {
            Label name = WrappedWords.of(column.name(), "block-name");
            GridPane.setValignment(name, VPos.TOP);
            name.setPrefWidth(COLUMN);
            return name;
        }
        int number = column.number();
        TextField name = new TextField(column.name());
        name.setId("kept-name-" + number);
        name.setPrefWidth(COLUMN);
        name.setAccessibleText(Texts.of("kept.rename"));
        Tip.on(name, Texts.of("kept.rename.tip"));
        Runnable rename = () -> {
            boolean changed = !name.getText().equals(column.name());
            if (changed && !tell(() -> model.rename(number, name.getText()))) {
                name.setText(column.name());
            }
        };
        name.setOnAction(e -> rename.run());
        name.focusedProperty().addListener((p, before, now) -> {
            if (!now && name.getScene() != null) {
                rename.run();
            }
        });
        Button use = small("kept.use", number, () -> model.use(number));
        Button like = small("kept.duplicate", number, () -> model.duplicate(number));
        Button away = small("kept.remove", number, () -> model.remove(number));
        FlowPane buttons = new FlowPane(use, like, away);
        buttons.getStyleClass().add("mends");
        buttons.setPrefWrapLength(COLUMN);
        VBox head = new VBox(name, buttons);
        if (!column.problem().isEmpty()) {
            Label problem = WrappedWords.of(column.problem(), "entry-wrong");
            problem.setPrefWidth(COLUMN);
            head.getChildren().add(problem);
        }
        return head;
    }

    private Button small(String key, int number, Supplier<Optional<String>> change) {
        Button button = KeyedButton.of(key, () -> tell(change));
        button.setMnemonicParsing(false);
        button.setId(key.replace('.', '-') + "-" + number);
        button.getStyleClass().add("mend");
        return button;
    }
}
