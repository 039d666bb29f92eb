package hushmaze.app.recording;

import hushmaze.app.model.RecordingModel;
import hushmaze.app.model.RecordingModel.Figure;
import hushmaze.app.model.RecordingModel.State;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import java.util.Optional;
import java.util.function.Function;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ProgressBar;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** A recording: its picture, the part that is chosen, and the levels of that part. */
public final class RecordingPane extends BorderPane {
    private static final PseudoClass WRONG = PseudoClass.getPseudoClass("wrong");
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");

    private final RecordingModel model;
    private final TextField from = new TextField();
    private final TextField to = new TextField();
    private final ComboBox<Integer> channel = new ComboBox<>();
    private final HBox channelLine;
    private final Button whole;
    private final Button start;
    private final Button cancel;
    private final ProgressBar bar = new ProgressBar();
    private final Label state = WrappedWords.of("", "field-state");
    private final Label wrong = WrappedWords.of("", "entry-wrong");
    private final Label overload = WrappedWords.of("", "recording-overload");
    private final FlowPane figures = new FlowPane();
    private boolean refreshing;

    public RecordingPane(RecordingModel model) {
        this.model = model;
        getStyleClass().add("recording-pane");
        whole = KeyedButton.of("recording.whole", model::chooseWhole);
        start = KeyedButton.of("recording.start", model::start);
        cancel = KeyedButton.of("recording.cancel", model::cancel);
        channelLine = named("recording.channel", channel);
        setTop(top());
        setCenter(new RecordingCanvas(model));
        setBottom(foot());
        model.stateProperty().addListener(o -> show());
        model.fractionProperty().addListener(o -> showProgress());
        model.pictureProperty().addListener(o -> {
            show();
            showPart();
        });
        model.recordingProperty().addListener(o -> show());
        model.outdatedProperty().addListener(o -> show());
        model.offsetProperty().addListener(o -> show());
        model.channelProperty().addListener(o -> show());
        model.fromProperty().addListener(o -> showPart());
        model.toProperty().addListener(o -> showPart());
        show();
        showPart();
    }

    private VBox top() {
        field(from, "recording.from", model::enterFrom);
        field(to, "recording.to", model::enterTo);
        channel.setId("recording-channel");
        channel.setAccessibleText(Texts.of("recording.channel.name"));
        Tip.on(channel, Texts.of("recording.channel.tip"));
        channel.valueProperty().addListener((p, before, now) -> {
            if (!refreshing && now != null) {
                model.choose(now);
            }
        });
        FlowPane line = new FlowPane(named("recording.from", from), named("recording.to", to), channelLine);
        line.getStyleClass().add("recording-line");
        bar.setAccessibleText(Texts.of("recording.progress"));
        bar.getStyleClass().add("recording-progress");
        bar.setMinWidth(Region.USE_PREF_SIZE);
        state.setId("recording-state");
        state.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(state, Priority.ALWAYS);
        HBox told = new HBox(bar, state, start, cancel, whole);
        told.getStyleClass().addAll("found-line", "recording-told");
        told.setAlignment(Pos.CENTER_LEFT);
        wrong.setId("recording-wrong");
        VBox top = new VBox(line, wrong, told);
        top.getStyleClass().add("recording-top");
        say(from, Optional.empty());
        return top;
    }

    private static HBox named(String key, Region control) {
        Label name = new Label(Texts.of(key));
        name.setMnemonicParsing(true);
        name.setLabelFor(control);
        name.setMinWidth(Region.USE_PREF_SIZE);
        HBox both = new HBox(name, control);
        both.getStyleClass().add("entry-line");
        both.setAlignment(Pos.CENTER_LEFT);
        return both;
    }

    private void field(TextField field, String key, Function<String, Optional<String>> take) {
        field.setId(key.replace('.', '-'));
        field.setAccessibleText(Texts.of(key + ".name"));
        Tip.on(field, Texts.of(key + ".tip"));
        field.setOnKeyPressed(e -> {
            if (e.getCode() == KeyCode.ENTER) {
                commit(field, take);
                e.consume();
            } else if (e.getCode() == KeyCode.ESCAPE) {
                showPart();
                e.consume();
            }
        });
        field.focusedProperty().addListener((p, before, now) -> {
            if (!now) {
                commit(field, take);
            }
        });
    }

    private void commit(TextField field, Function<String, Optional<String>> take) {
        if (model.pictureProperty().get() == null) {
            return;
        }
        Optional<String> problem = take.apply(field.getText());
        if (problem.isEmpty()) {
            showPart();
        } else {
            say(field, problem);
        }
    }

    private void say(TextField field, Optional<String> problem) {
        wrong.setText(problem.orElse(""));
        Presence.set(wrong, problem.isPresent());
        from.pseudoClassStateChanged(WRONG, problem.isPresent() && field == from);
        to.pseudoClassStateChanged(WRONG, problem.isPresent() && field == to);
    }

    private VBox foot() {
        figures.getStyleClass().add("recording-figures");
        overload.setId("recording-overload");
        VBox foot = new VBox(figures, overload);
        foot.getStyleClass().add("recording-foot");
        return foot;
    }

    private void show() {
        boolean there = model.pictureProperty().get() != null;
        State now = model.stateProperty().get();
        Presence.set(cancel, now == State.READING);
        Presence.set(bar, now == State.READING);
        Presence.set(start, now == State.STOPPED || now == State.FAILED);
        from.setDisable(!there);
        to.setDisable(!there);
        Presence.set(channelLine, model.channels() > 1);
        refreshing = true;
        if (channel.getItems().size() != model.channels()) {
            channel.getItems().clear();
            for (int i = 1; i <= model.channels(); i++) {
                channel.getItems().add(i);
            }
        }
        channel.setValue(model.channelProperty().get());
        refreshing = false;
        showProgress();
        showFigures();
    }

    private void showProgress() {
        bar.setProgress(model.fractionProperty().get());
        String words = model.stateWords();
        state.setText(words.isEmpty() ? Texts.of("recording.hint") : words);
        state.pseudoClassStateChanged(STALE, !words.isEmpty());
    }

    private void showPart() {
        boolean there = model.pictureProperty().get() != null;
        from.setText(there ? model.timeText(model.fromProperty().get()) : "");
        to.setText(there ? model.timeText(model.toProperty().get()) : "");
        whole.setDisable(
                !there || model.fromProperty().get() == 0 && model.toProperty().get() == model.seconds());
        say(from, Optional.empty());
    }

    private void showFigures() {
        figures.getChildren().clear();
        for (Figure figure : model.figures()) {
            Label name = new Label(figure.name());
            name.getStyleClass().add("quiet-words");
            Label value = new Label(figure.value());
            value.getStyleClass().add("figure");
            value.setId("recording-" + figure.key());
            HBox pair = new HBox(name, value);
            pair.getStyleClass().add("figure-pair");
            pair.setAlignment(Pos.BASELINE_LEFT);
            Tip.on(name, figure.tip());
            Tip.on(value, figure.tip());
            figures.getChildren().add(pair);
        }
        quiet("recording-part", model.partWords(), Texts.of("recording.part.tip"));
        quiet("recording-claim", model.claim(), Texts.of("recording.claim.tip"));
        figures.pseudoClassStateChanged(STALE, model.outdatedProperty().get());
        overload.setText(model.overload());
        Presence.set(overload, !model.overload().isEmpty());
        Presence.set(figures, !figures.getChildren().isEmpty());
    }

    private void quiet(String id, String words, String tip) {
        if (!words.isEmpty()) {
            Label label = new Label(words);
            label.setId(id);
            label.getStyleClass().add("quiet-words");
            Tip.on(label, tip);
            figures.getChildren().add(label);
        }
    }
}
