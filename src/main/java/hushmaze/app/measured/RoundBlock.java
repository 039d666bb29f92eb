package hushmaze.app.measured;

import hushmaze.app.model.MeasuredModel;
import hushmaze.app.model.Texts;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.Tip;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading;
import hushmaze.project.Reading.Round;
import java.io.File;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.application.Platform;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.input.TransferMode;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;

/** One round of readings: what it is, what there is of it, and a way to add more; files may be dropped on it. */
final class RoundBlock extends VBox {
    private final Round round;
    private final MeasuredModel model;
    private final Consumer<Supplier<Optional<String>>> tell;
    private final FlowPane tags = new FlowPane();

    /** @param tell makes a change and tells why it was not made */
    RoundBlock(Round round, MeasuredModel model, ReadingFiles files, Consumer<Supplier<Optional<String>>> tell) {
        this.round = round;
        this.model = model;
        this.tell = tell;
        getStyleClass().add("measured-round");
        String key = "measured.round." + round;
        Label name = new Label(Texts.of(key));
        name.getStyleClass().add("block-name");
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        Button add = KeyedButton.of("measured.add", () -> model.add(round, files.choose()));
        add.setId("measured-add-" + round);
        add.setAccessibleText(Texts.of("measured.add.name", Texts.of(key)));
        add.getStyleClass().add("mend");
        HBox head = new HBox(name, add);
        head.getStyleClass().add("entry-line");
        head.setAlignment(Pos.CENTER_LEFT);
        tags.getStyleClass().add("measured-tags");
        getChildren().addAll(head, WrappedWords.of(Texts.of(key + ".how"), "quiet-words"), tags);
        dropping();
    }

    private void dropping() {
        setOnDragOver(e -> {
            if (e.getDragboard().hasFiles()) {
                e.acceptTransferModes(TransferMode.COPY, TransferMode.MOVE, TransferMode.LINK);
                e.consume();
            }
        });
        setOnDragDropped(e -> {
            List<File> dropped = e.getDragboard().getFiles();
            e.setDropCompleted(!dropped.isEmpty());
            e.consume();
            // whoever dragged it is not kept waiting
            Platform.runLater(
                    () -> model.add(round, dropped.stream().map(File::toPath).toList()));
        });
    }

    /** Shows what there is now. */
    void show(PathReadings readings) {
        tags.getChildren().clear();
        for (int i = 0; i < readings.levels().size(); i++) {
            if (readings.levels().get(i).round() == round) {
                tags.getChildren().add(tag(i, readings.levels().get(i)));
            }
        }
        boolean some = !tags.getChildren().isEmpty();
        tags.setVisible(some);
        tags.setManaged(some);
    }

    private Node tag(int number, Reading reading) {
        Label name = new Label(reading.name());
        name.setId("measured-reading-" + number);
        Tip.on(
                name,
                Texts.of(
                        "measured.reading.tip",
                        reading.name(),
                        Texts.of("measured.scale." + reading.scale()),
                        reading.source()));
        Button away = KeyedButton.of("measured.remove", () -> tell.accept(() -> model.remove(number)));
        away.setId("measured-remove-" + number);
        away.setAccessibleText(Texts.of("measured.remove.name", reading.name()));
        away.getStyleClass().add("mend");
        HBox tag = new HBox(name, away);
        tag.setAlignment(Pos.CENTER_LEFT);
        tag.getStyleClass().add("measured-tag");
        return tag;
    }
}
