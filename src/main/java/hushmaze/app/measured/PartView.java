package hushmaze.app.measured;

import hushmaze.app.model.MeasuredModel;
import hushmaze.app.model.MeasuredModel.Pending;
import hushmaze.app.model.RecordingModel;
import hushmaze.app.model.Texts;
import hushmaze.app.recording.RecordingPane;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.WrappedWords;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.layout.BorderPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.VBox;

/** A recording of which a part is to be chosen. */
final class PartView extends BorderPane {
    private final Label head = WrappedWords.of("", "block-name");

    PartView(MeasuredModel model) {
        getStyleClass().add("measured-part");
        RecordingModel recording = model.recording();
        Button take = KeyedButton.of("measured.take", model::takePart);
        take.getStyleClass().add("accent");
        take.disableProperty().bind(recording.recordingProperty().isNull().or(recording.outdatedProperty()));
        Button leave = KeyedButton.of("measured.leave", model::dropPart);
        FlowPane buttons = new FlowPane(take, leave);
        buttons.getStyleClass().addAll("mends", "measured-part-buttons");
        VBox top = new VBox(head, WrappedWords.of(Texts.of("measured.part.how"), "quiet-words"));
        top.getStyleClass().add("measured-part-top");
        setTop(top);
        setCenter(new RecordingPane(recording));
        setBottom(buttons);
    }

    void show(Pending pending) {
        head.setText(Texts.of(
                "measured.part",
                String.valueOf(pending.file().getFileName()),
                Texts.of("measured.round." + pending.round())));
    }
}
