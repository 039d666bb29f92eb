package hushmaze.app.found;

import hushmaze.app.model.Designer;
import hushmaze.app.model.SearchLimits;
import hushmaze.app.model.SizingModel;
import hushmaze.app.model.SizingModel.State;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.quantity.UnitSystem;
import hushmaze.size.Design;
import hushmaze.wording.Unbroken;
import java.util.ArrayList;
import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.RadioButton;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** Where the builder looks for the best boxes of the path at hand, sees them come in, and takes one. */
final class FoundView extends BorderPane {
    /** Room for the names of the limits. */
    private static final double NAMES = 150;

    private final Designer designer;
    private final SizingModel model;
    private final Button start = new Button();
    private final Button cancel = new Button(Texts.of("found.cancel"));
    private final ProgressBar bar = new ProgressBar(0);
    private final Label within = WrappedWords.of("", "quiet-words");
    private final Label progress = WrappedWords.of("", "found-state");
    private final Label outdated = WrappedWords.of("", "found-outdated");
    private final VBox empty = new VBox();
    private final GridPane limits = new GridPane();
    private List<SearchLimits.Line> told = List.of();
    private final Label waiting = WrappedWords.of("", "found-waiting");
    private final VBox results = new VBox();
    private final VBox cards = new VBox();
    private final VBox ways = new VBox();
    private final PageCanvas chart = new PageCanvas();
    private final VBox chartBox;
    private Cost cost = Cost.DEPTH;
    private List<Design> shown = List.of();
    private UnitSystem units;

    FoundView(Designer designer) {
        this.designer = designer;
        this.model = designer.sizing();
        getStyleClass().add("found-view");
        chartBox = chart();
        setTop(top());
        fillEmpty();
        waiting.setText(Texts.of("found.waiting"));
        results.getStyleClass().add("found-results");
        results.getChildren().addAll(ways, cards);
        ways.getStyleClass().add("found-ways");
        ways.setId("found-ways");
        cards.getStyleClass().add("found-cards");
        ScrollPane scroll = new ScrollPane(new VBox(empty, waiting, results));
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setMinHeight(0);
        setCenter(scroll);
        setBottom(chartBox);
        model.stateProperty().addListener((p, before, after) -> show());
        model.fractionProperty().addListener((p, before, after) -> showProgress());
        model.doingProperty().addListener((p, before, after) -> showProgress());
        model.outdatedProperty().addListener((p, before, after) -> show());
        model.designsProperty().addListener((p, before, after) -> show());
        model.outcomeProperty().addListener((p, before, after) -> show());
        model.selectedProperty().addListener((p, before, after) -> showSelected());
        designer.edit().projectProperty().addListener((p, before, after) -> show());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        show();
    }

    private VBox top() {
        start.setId("found-start");
        start.setMnemonicParsing(true);
        start.setMinWidth(Region.USE_PREF_SIZE);
        start.getStyleClass().add("accent");
        Tip.on(start, Texts.of("found.start.tip"));
        start.setOnAction(e -> model.start());
        cancel.setId("found-cancel");
        cancel.setMnemonicParsing(true);
        cancel.setMinWidth(Region.USE_PREF_SIZE);
        Tip.on(cancel, Texts.of("found.cancel.tip"));
        cancel.setOnAction(e -> model.cancel());
        bar.setMaxWidth(Double.MAX_VALUE);
        bar.setAccessibleText(Texts.of("found.progress"));
        HBox.setHgrow(bar, Priority.ALWAYS);
        HBox line = new HBox(start, cancel, bar);
        line.getStyleClass().add("found-line");
        line.setAlignment(Pos.CENTER_LEFT);
        within.setId("found-within");
        progress.setId("found-state");
        Tip.on(progress, model::looked);
        outdated.setText(Texts.of("found.outdated"));
        outdated.setId("found-outdated");
        VBox top = new VBox(line, within, progress, outdated);
        top.getStyleClass().add("found-top");
        return top;
    }

    private void fillEmpty() {
        empty.getChildren()
                .addAll(
                        WrappedWords.of(Texts.of("found.empty.head"), "column-heading"),
                        WrappedWords.of(Texts.of("found.empty"), "found-empty-words"),
                        WrappedWords.of(Texts.of("found.limits.head"), "column-heading"),
                        limits,
                        WrappedWords.of(Texts.of("found.limits.words"), "quiet-words"));
        limits.getStyleClass().add("found-limits");
        limits.setId("found-limits");
        ColumnConstraints names = new ColumnConstraints();
        names.setMinWidth(NAMES);
        ColumnConstraints values = new ColumnConstraints();
        values.setHgrow(Priority.ALWAYS);
        limits.getColumnConstraints().setAll(names, values);
        empty.getStyleClass().add("found-empty");
    }

    /** What a search keeps to, while there is none to show. */
    private void showLimits() {
        List<SearchLimits.Line> now = SearchLimits.of(designer);
        if (now.equals(told)) {
            return;
        }
        told = now;
        limits.getChildren().clear();
        int row = 0;
        for (SearchLimits.Line line : now) {
            limits.add(WrappedWords.of(line.name(), "quiet-words"), 0, row);
            limits.add(WrappedWords.of(line.value(), "sentence"), 1, row);
            row++;
        }
    }

    private VBox chart() {
        chart.setPrefHeight(0);
        chart.getStyleClass().add("found-chart");
        ToggleGroup group = new ToggleGroup();
        FlowPane choice = new FlowPane();
        choice.getStyleClass().add("view-controls");
        choice.setAlignment(Pos.CENTER_LEFT);
        choice.getChildren().add(new Label(Texts.of("found.chart.against")));
        for (Cost one : Cost.values()) {
            RadioButton button = new RadioButton(Texts.of("found.chart.by." + one));
            button.setMnemonicParsing(true);
            button.setId("found-by-" + one.name().toLowerCase(java.util.Locale.ROOT));
            button.setToggleGroup(group);
            button.setSelected(one == cost);
            button.setOnAction(e -> {
                cost = one;
                showSelected();
            });
            choice.getChildren().add(button);
        }
        VBox box = new VBox(choice, chart);
        box.getStyleClass().add("found-chart-box");
        return box;
    }

    private void show() {
        State state = model.stateProperty().get();
        List<Design> designs = model.designsProperty().get();
        boolean searching = state == State.SEARCHING;
        start.setText(Texts.of(state == State.NONE ? "found.start" : "found.again"));
        start.setDisable(searching);
        cancel.setDisable(!searching);
        Presence.set(cancel, searching);
        Presence.set(bar, searching);
        within.setText(Unbroken.of(model.limits()));
        Presence.set(within, state != State.NONE);
        Presence.set(outdated, model.outdatedProperty().get() && state != State.NONE);
        Presence.set(empty, state == State.NONE);
        if (state == State.NONE) {
            showLimits();
        }
        Presence.set(waiting, searching && designs.isEmpty());
        showProgress();
        showWays();
        showCards(designs);
        Presence.set(chartBox, designs.size() > 1);
        showSelected();
    }

    private void showProgress() {
        bar.setProgress(model.fractionProperty().get());
        int count = model.designsProperty().get().size();
        String percent =
                String.valueOf(Math.round(100 * model.fractionProperty().get()));
        String found = count == 0
                ? Texts.of("found.count.none")
                : count == 1 ? Texts.of("found.count.one") : Texts.of("found.count.many", String.valueOf(count));
        progress.setText(Unbroken.of(
                switch (model.stateProperty().get()) {
                    case NONE -> "";
                    case SEARCHING ->
                        Texts.of(
                                "found.searching",
                                percent,
                                model.doingProperty().get(),
                                found);
                    case STOPPED -> Texts.of("found.stopped", found);
                    case FAILED -> model.problemProperty().get();
                    case FINISHED -> model.head();
                }));
        Presence.set(progress, !progress.getText().isEmpty());
    }

    private void showWays() {
        List<Label> lines = model.ways().stream()
                .map(way -> WrappedWords.of(way, "sentence"))
                .toList();
        ways.getChildren().setAll(lines);
        Presence.set(ways, !lines.isEmpty());
    }

    /** Cards are made anew only for other designs or other units: their pictures take time. */
    private void showCards(List<Design> designs) {
        UnitSystem now = designer.edit().project().units();
        if (!designs.equals(shown) || now != units) {
            shown = designs;
            units = now;
            List<DesignCard> made = new ArrayList<>();
            for (Design design : designs) {
                made.add(new DesignCard(model, design, made.size()));
            }
            cards.getChildren().setAll(made);
        }
    }

    private void showSelected() {
        cards.getChildren().forEach(card -> ((DesignCard) card).refresh());
        boolean there = model.designsProperty().get().size() > 1;
        chart.setSource(there ? new TradeOff(model, cost, designer.measure()) : null);
        chart.setAccessibleText(Texts.of("found.chart"));
    }
}
