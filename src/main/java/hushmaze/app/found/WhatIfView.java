package hushmaze.app.found;

import hushmaze.app.model.Designer;
import hushmaze.app.model.Swept;
import hushmaze.app.model.Texts;
import hushmaze.app.model.WhatIfModel;
import hushmaze.app.model.WhatIfModel.Course;
import hushmaze.app.model.WhatIfModel.State;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.verdict.Named;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/** What another value of one number would do to the box in the path looked at: a choice of numbers, and a chart. */
final class WhatIfView extends BorderPane {
    private final Designer designer;
    private final WhatIfModel model;
    private final ComboBox<Swept> number = new ComboBox<>();
    private final Button start = new Button(Texts.of("whatif.start"));
    private final Button cancel = new Button(Texts.of("whatif.cancel"));
    private final ProgressBar bar = new ProgressBar(0);
    private final Label about = WrappedWords.of("", "quiet-words");
    private final Label state = WrappedWords.of("", "found-state");
    private final Label outdated = WrappedWords.of(Texts.of("whatif.outdated"), "found-outdated");
    private final VBox empty = new VBox();
    private final PageCanvas chart = new PageCanvas();
    private final Label legend = WrappedWords.of(Texts.of("whatif.legend"), "quiet-words");
    private boolean refreshing;

    WhatIfView(Designer designer) {
        this.designer = designer;
        this.model = designer.whatIf();
        getStyleClass().add("found-view");
        setTop(top());
        empty.getChildren()
                .addAll(
                        WrappedWords.of(Texts.of("whatif.empty.head"), "column-heading"),
                        WrappedWords.of(Texts.of("whatif.empty"), "found-empty-words"));
        empty.getStyleClass().add("found-empty");
        chart.getStyleClass().add("whatif-chart");
        chart.setId("whatif-chart");
        StackPane stage = new StackPane(chart, empty);
        stage.setAlignment(Pos.TOP_LEFT);
        stage.setMinSize(0, 0);
        setCenter(stage);
        VBox foot = new VBox(legend, WrappedWords.of(Texts.of("whatif.methods"), "quiet-words"));
        foot.getStyleClass().add("whatif-foot");
        setBottom(foot);
        model.numberProperty().addListener((p, before, after) -> show());
        model.stateProperty().addListener((p, before, after) -> show());
        model.courseProperty().addListener((p, before, after) -> show());
        model.fractionProperty().addListener((p, before, after) -> show());
        model.outdatedProperty().addListener((p, before, after) -> show());
        designer.edit().projectProperty().addListener((p, before, after) -> show());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        show();
    }

    private VBox top() {
        number.setId("whatif-number");
        number.getStyleClass().add("whatif-number");
        number.setConverter(Named.by(one -> Texts.of("whatif." + one)));
        number.setAccessibleText(Texts.of("whatif.number"));
        Tip.on(number, Texts.of("whatif.number.tip"));
        number.setOnAction(e -> {
            if (!refreshing && number.getValue() != null) {
                model.numberProperty().set(number.getValue());
            }
        });
        Label name = new Label(Texts.of("whatif.number"));
        name.setMnemonicParsing(true);
        name.setLabelFor(number);
        name.setMinWidth(Region.USE_PREF_SIZE);
        start.setId("whatif-start");
        start.getStyleClass().add("accent");
        Tip.on(start, Texts.of("whatif.start.tip"));
        start.setOnAction(e -> model.start());
        cancel.setId("whatif-cancel");
        Tip.on(cancel, Texts.of("whatif.cancel.tip"));
        cancel.setOnAction(e -> model.cancel());
        for (Button button : List.of(start, cancel)) {
            button.setMnemonicParsing(true);
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText(Texts.of("whatif.progress"));
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox line = new HBox(name, number, start, cancel, bar);
        line.getStyleClass().add("found-line");
        line.setAlignment(Pos.CENTER_LEFT);
        about.setId("whatif-about");
        state.setId("whatif-state");
        outdated.setId("whatif-outdated");
        VBox top = new VBox(line, about, state, outdated);
        top.getStyleClass().add("found-top");
        return top;
    }

    private void show() {
        refreshing = true;
        List<Swept> numbers = model.numbers();
        if (!numbers.equals(number.getItems())) {
            number.getItems().setAll(numbers);
        }
        number.setValue(numbers.isEmpty() ? null : model.numberProperty().get());
        refreshing = false;
        boolean computing = model.stateProperty().get() == State.COMPUTING;
        number.setDisable(numbers.isEmpty());
        start.setDisable(!model.mayStart());
        Presence.set(cancel, computing);
        Presence.set(bar, computing);
        bar.setProgress(model.fractionProperty().get());
        about.setText(model.about());
        state.setText(model.words());
        Presence.set(state, !state.getText().isEmpty());
        Presence.set(outdated, model.outdatedProperty().get());
        Course course = model.courseProperty().get();
        boolean some = course != null && !course.points().isEmpty();
        Presence.set(empty, course == null);
        Presence.set(legend, some);
        chart.setVisible(some);
        chart.setAccessibleText(Texts.of("whatif.chart") + ": " + state.getText());
        chart.setSource(some ? new WhatIfChart(course, designer.edit().project().units(), designer.measure()) : null);
    }
}
