package hushmaze.app.measured;

import hushmaze.app.entry.Entry;
import hushmaze.app.entry.MeasuredEntries;
import hushmaze.app.model.ComparedModel;
import hushmaze.app.model.ComparedModel.Held;
import hushmaze.app.model.Designer;
import hushmaze.app.model.MeasuredModel;
import hushmaze.app.model.MeasuredModel.Pending;
import hushmaze.app.model.Message;
import hushmaze.app.model.Texts;
import hushmaze.app.sheet.PageCanvas;
import hushmaze.app.sheet.PageSource;
import hushmaze.app.verdict.KeyedButton;
import hushmaze.app.verdict.Presence;
import hushmaze.app.verdict.WrappedWords;
import hushmaze.assess.Comparison;
import hushmaze.drawing.page.ScreenPages;
import hushmaze.project.PathReadings;
import hushmaze.project.Reading.Round;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;

/**
 * What was measured before and after: readings by rounds, what they come to beside what was predicted, measured air. While a
 * recording waits for its part to be chosen, that takes all the room.
 */
public final class MeasuredView extends StackPane {
    private static final double CHART = 285;

    private final Designer designer;
    private final MeasuredModel levels;
    private final ComparedModel compared;
    private final List<RoundBlock> rounds = new ArrayList<>();
    private final List<Entry> entries = new ArrayList<>();
    private final PageCanvas chart = new PageCanvas();
    private final Label missing = WrappedWords.of("", "quiet-words");
    private final Label uncalibrated = WrappedWords.of(Texts.of("measured.uncalibrated"), "quiet-words");
    private final BandWords words;
    private final AirWords airWords = new AirWords();
    private final Button noise;
    private final Button own;
    private final ScrollPane scroll;
    private PartView part;

    public MeasuredView(Designer designer, ReadingFiles files) {
        this.designer = designer;
        this.levels = designer.measured();
        this.compared = designer.compared();
        this.words = new BandWords(compared, this::tell);
        this.noise = KeyedButton.of("measured.useNoise", () -> tell(designer.measuredBrief()::useAsNoise));
        this.own = KeyedButton.of("measured.useOwn", () -> tell(designer.measuredBrief()::useAsOwnNoise));
        noise.getStyleClass().add("mend");
        own.getStyleClass().add("mend");
        getStyleClass().add("measured-view");
        VBox all = new VBox();
        all.getStyleClass().add("measured-all");
        all.getChildren().addAll(bands(), readings(files), calibration(files), air());
        scroll = new ScrollPane(all);
        scroll.setFitToWidth(true);
        scroll.setMinHeight(0);
        getChildren().add(scroll);
        designer.edit().projectProperty().addListener((p, before, after) -> show());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        levels.offsetProperty().addListener((p, before, after) -> show());
        compared.heldProperty().addListener((p, before, after) -> show());
        compared.fittingProperty().addListener((p, before, after) -> show());
        compared.fitsProperty().addListener((p, before, after) -> show());
        levels.pendingProperty().addListener((p, before, after) -> show());
        show();
    }

    private static Node heading(String key) {
        Label heading = new Label(Texts.of(key));
        heading.getStyleClass().add("column-heading");
        return heading;
    }

    private static VBox section(Node... parts) {
        VBox section = new VBox(parts);
        section.getStyleClass().add("measured-section");
        return section;
    }

    private Node bands() {
        chart.setMinHeight(CHART);
        chart.setPrefHeight(CHART);
        chart.setMaxHeight(CHART);
        chart.setAccessibleText(Texts.of("measured.chart"));
        missing.setId("measured-missing");
        return section(heading("measured.compared"), missing, chart, words);
    }

    private Node readings(ReadingFiles files) {
        VBox section = section(heading("measured.readings"), WrappedWords.of(Texts.of("measured.how"), "quiet-words"));
        for (Round round : Round.values()) {
            RoundBlock block = new RoundBlock(round, levels, files, this::tell);
            rounds.add(block);
            section.getChildren().add(block);
        }
        FlowPane uses = new FlowPane(noise, own);
        uses.getStyleClass().add("mends");
        section.getChildren().addAll(uses, uncalibrated);
        return section;
    }

    private Node calibration(ReadingFiles files) {
        MeasuredEntries made = new MeasuredEntries(designer.edit(), levels, designer.measuredAir());
        Entry offset = made.offset();
        Entry calibrator = made.calibrator();
        entries.add(offset);
        entries.add(calibrator);
        Button by = KeyedButton.of(
                "measured.calibrate", () -> files.choose().stream().findFirst().ifPresent(levels::calibrateBy));
        by.getStyleClass().add("mend");
        FlowPane buttons = new FlowPane(by);
        buttons.getStyleClass().add("mends");
        return section(
                heading("measured.calibration"),
                WrappedWords.of(Texts.of("measured.calibration.how"), "quiet-words"),
                offset.node(),
                calibrator.node(),
                buttons);
    }

    private Node air() {
        List<Entry> made = new MeasuredEntries(designer.edit(), levels, designer.measuredAir()).air();
        entries.addAll(made);
        VBox section = section(heading("measured.air"), WrappedWords.of(Texts.of("measured.air.how"), "quiet-words"));
        made.forEach(entry -> section.getChildren().add(entry.node()));
        section.getChildren().add(airWords);
        return section;
    }

    private void tell(Supplier<Optional<String>> change) {
        change.get().ifPresent(text -> designer.messageProperty().set(new Message(true, text)));
    }

    /** Made anew only while somebody looks. */
    private void show() {
        if (!compared.watchedProperty().get()) {
            return;
        }
        PathReadings readings = levels.readings();
        rounds.forEach(block -> block.show(readings));
        entries.forEach(Entry::refresh);
        noise.setDisable(!designer.measuredBrief().mayUseAsNoise());
        own.setDisable(!designer.measuredBrief().mayUseAsOwnNoise());
        Presence.set(uncalibrated, designer.measuredBrief().isUncalibrated());
        Held held = compared.heldProperty().get();
        Comparison comparison = held == null ? null : held.comparison();
        missing.setText(missing(readings, held));
        Presence.set(missing, !missing.getText().isEmpty());
        Presence.set(chart, comparison != null);
        chart.setSource(comparison == null ? null : chartOf(held));
        words.show(comparison, compared.fittingProperty().get());
        if (held != null) {
            airWords.show(held.air(), compared.words());
        }
        waiting(levels.pendingProperty().get());
    }

    private PageSource chartOf(Held held) {
        ScreenPages pages = new ScreenPages(
                held.assessment(), held.result(), designer.edit().project().units(), designer.measure());
        return (width, height) -> pages.reduction(held.comparison(), width, height);
    }

    private void waiting(Pending pending) {
        if (pending != null && part == null) {
            part = new PartView(levels);
            getChildren().add(part);
        }
        if (pending != null) {
            part.show(pending);
        }
        if (part != null) {
            Presence.set(part, pending != null);
        }
        // what lies under it must take no keys
        scroll.setVisible(pending == null);
    }

    private static String missing(PathReadings readings, Held held) {
        if (held == null) {
            return Texts.of("measured.noResults");
        }
        if (readings.comparable()) {
            return "";
        }
        boolean before = readings.has(Round.WITHOUT_BOX);
        boolean after = readings.has(Round.WITH_BOX);
        return Texts.of(
                before ? "measured.missing.after" : after ? "measured.missing.before" : "measured.missing.both");
    }
}
