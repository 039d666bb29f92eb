package hushmaze.app.field;

import hushmaze.app.field.FieldCanvas.Look;
import hushmaze.app.model.Designer;
import hushmaze.app.model.SoundFieldModel;
import hushmaze.app.model.SoundFieldModel.State;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.Named;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.sound.section.PathField;
import java.util.Optional;
import java.util.Set;
import javafx.css.PseudoClass;
import javafx.geometry.Point2D;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.RadioButton;
import javafx.scene.control.Slider;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleGroup;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The sound in the box of the path looked at: a frequency, a map, and in words what it shows. */
public final class FieldView extends BorderPane {
    /** Height of the view from which on it tells what kind of picture the map is. */
    private static final double ROOM_FOR_SCOPE = 560;

    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");
    private static final Set<String> NAMED_BANDS = Set.of("50", "100", "200", "500", "1k", "2k", "5k");

    private final SoundFieldModel model;
    private final TextField typed = new TextField();
    private final Slider bands = new Slider(0, SoundFieldModel.BANDS.size() - 1, 0);
    private final Label wrong = WrappedWords.of("", "entry-wrong");
    private final Label state = WrappedWords.of("", "field-state");
    private final Button start = new Button(Texts.of("inside.start"));
    private final Button cancel = new Button(Texts.of("inside.cancel"));
    private final Button play = new Button();
    private final RadioButton level = new RadioButton(Texts.of("inside.show.level"));
    private final RadioButton pressure = new RadioButton(Texts.of("inside.show.pressure"));
    private final FieldCanvas canvas = new FieldCanvas(this::read);
    private final Label lesson = WrappedWords.of("", "field-lesson");
    private final Label scope = WrappedWords.of("", "quiet-words");
    private final Label reading = WrappedWords.of(Texts.of("inside.point"), "field-reading");
    private boolean refreshing;

    public FieldView(Designer designer) {
        this.model = designer.soundField();
        getStyleClass().add("field-view");
        // shown when chosen; until then nothing is worked out
        setVisible(false);
        setTop(top());
        setCenter(canvas);
        setBottom(foot());
        visibleProperty().addListener((p, before, now) -> {
            model.watchedProperty().set(now);
            canvas.onShowProperty().set(now);
        });
        model.stateProperty().addListener(o -> show());
        model.fieldProperty().addListener(o -> show());
        model.outdatedProperty().addListener(o -> show());
        model.frequencyProperty().addListener(o -> showFrequency());
        designer.edit().projectProperty().addListener(o -> show());
        designer.edit().pathProperty().addListener(o -> show());
        // in a low window the map needs the room more than what is always so
        heightProperty().addListener((p, before, now) -> Presence.set(scope, now.doubleValue() >= ROOM_FOR_SCOPE));
        Tip.on(lesson, () -> scope.isVisible() ? "" : scope.getText());
        showFrequency();
        show();
    }

    private VBox top() {
        Label name = new Label(Texts.of("inside.frequency"));
        name.setMnemonicParsing(true);
        name.setLabelFor(typed);
        name.setMinWidth(Region.USE_PREF_SIZE);
        typed.setId("inside-frequency");
        typed.setAccessibleText(Texts.of("inside.frequency.name"));
        Tip.on(typed, Texts.of("inside.frequency.tip"));
        typed.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                commit();
                e.consume();
            } else if (e.getCode() == KeyCode.ESCAPE) {
                showFrequency();
                e.consume();
            }
        });
        typed.focusedProperty().addListener((p, before, now) -> {
            if (!now) {
                commit();
            }
        });
        bands.setId("inside-bands");
        bands.setAccessibleText(Texts.of("inside.bands"));
        Tip.on(bands, Texts.of("inside.bands.tip"));
        bands.setMajorTickUnit(1);
        bands.setMinorTickCount(0);
        bands.setBlockIncrement(1);
        bands.setSnapToTicks(true);
        bands.setShowTickMarks(true);
        bands.setShowTickLabels(true);
        bands.setLabelFormatter(Named.by(FieldView::bandName));
        bands.valueProperty().addListener((p, before, now) -> {
            int band = (int) Math.round(now.doubleValue());
            if (!refreshing && band != (int) Math.round(before.doubleValue())) {
                model.choose(band);
            }
        });
        HBox.setHgrow(bands, Priority.ALWAYS);
        start.setId("inside-start");
        Tip.on(start, Texts.of("inside.start.tip"));
        start.setOnAction(e -> model.start());
        cancel.setId("inside-cancel");
        Tip.on(cancel, Texts.of("inside.cancel.tip"));
        cancel.setOnAction(e -> model.cancel());
        for (Button button : new Button[] {start, cancel, play}) {
            button.setMnemonicParsing(true);
            button.setMinWidth(Region.USE_PREF_SIZE);
        }
        state.setId("inside-state");
        wrong.setId("inside-wrong");
        HBox line = new HBox(name, typed, bands);
        line.getStyleClass().addAll("found-line", "field-line");
        line.setAlignment(Pos.CENTER_LEFT);
        state.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(state, Priority.ALWAYS);
        // below the slider, which would otherwise get shorter while it is dragged
        HBox told = new HBox(state, start, cancel);
        told.getStyleClass().addAll("found-line", "field-told");
        told.setAlignment(Pos.CENTER_LEFT);
        VBox top = new VBox(line, wrong, told);
        top.getStyleClass().add("found-top");
        say(Optional.empty());
        return top;
    }

    private VBox foot() {
        ToggleGroup group = new ToggleGroup();
        level.setId("inside-show-level");
        pressure.setId("inside-show-pressure");
        Tip.on(level, Texts.of("inside.show.level.tip"));
        Tip.on(pressure, Texts.of("inside.show.pressure.tip"));
        for (RadioButton button : new RadioButton[] {level, pressure}) {
            button.setMnemonicParsing(true);
            button.setToggleGroup(group);
        }
        level.setSelected(true);
        canvas.setId("inside-map");
        play.setId("inside-play");
        play.setOnAction(
                e -> canvas.playingProperty().set(!canvas.playingProperty().get()));
        canvas.playingProperty().addListener(o -> showPlay());
        group.selectedToggleProperty().addListener((p, before, after) -> {
            canvas.setLook(pressure.isSelected() ? Look.PRESSURE : Look.LEVEL);
            canvas.playingProperty().set(pressure.isSelected());
            showPlay();
            show();
        });
        Tip.on(play, () -> Texts.of(canvas.playingProperty().get() ? "inside.pause.tip" : "inside.play.tip"));
        showPlay();
        lesson.setId("inside-lesson");
        scope.setId("inside-scope");
        reading.setId("inside-reading");
        VBox words = new VBox(lesson, reading, scope);
        words.getStyleClass().add("field-words");
        FlowPane bar = new FlowPane(level, pressure, play);
        bar.setAlignment(Pos.CENTER_LEFT);
        bar.getStyleClass().add("view-controls");
        return new VBox(words, bar);
    }

    private void showPlay() {
        boolean runs = canvas.playingProperty().get();
        play.setText(Texts.of(runs ? "inside.pause" : "inside.play"));
        play.setDisable(!pressure.isSelected());
    }

    private void commit() {
        if (typed.getText().equals(model.frequencyText())) {
            say(Optional.empty());
            return;
        }
        Optional<String> problem = model.enter(typed.getText());
        if (problem.isEmpty()) {
            showFrequency();
        }
        say(problem);
    }

    private void say(Optional<String> problem) {
        wrong.setText(problem.orElse(""));
        Presence.set(wrong, problem.isPresent());
        typed.pseudoClassStateChanged(WRONG, problem.isPresent());
    }

    private void showFrequency() {
        refreshing = true;
        typed.setText(model.frequencyText());
        bands.setValue(model.nearestBand());
        refreshing = false;
        say(Optional.empty());
    }

    private void show() {
        State now = model.stateProperty().get();
        PathField field = model.fieldProperty().get();
        Presence.set(cancel, now == State.COMPUTING);
        Presence.set(start, now == State.STOPPED || now == State.FAILED);
        String words = model.stateWords();
        boolean told = !words.isEmpty() || field == null;
        state.setText(told ? words : caption());
        state.pseudoClassStateChanged(STALE, told);
        canvas.setField(field);
        canvas.setVisible(field != null);
        canvas.pseudoClassStateChanged(STALE, model.outdatedProperty().get());
        lesson.setText(model.lesson());
        lesson.pseudoClassStateChanged(STALE, model.outdatedProperty().get());
        scope.setText(model.scope());
        canvas.setAccessibleText(Texts.of("inside.map") + ". " + lesson.getText());
        Presence.set(reading, field != null);
        Point2D point = canvas.point();
        if (point == null) {
            reading.setText(Texts.of("inside.point"));
        } else {
            read(point.getX(), point.getY());
        }
    }

    /** What is looked at, when there is nothing else to tell. */
    private String caption() {
        return Texts.of(
                pressure.isSelected() ? "inside.caption.pressure" : "inside.caption.level", model.frequencyText());
    }

    private void read(double along, double across) {
        String words = model.at(along, across);
        reading.setText(words.isEmpty() ? Texts.of("inside.point") : words);
    }

    private static String bandName(double band) {
        String label = SoundFieldModel.BANDS.get((int) band).label();
        return NAMED_BANDS.contains(label) ? label : "";
    }
}
