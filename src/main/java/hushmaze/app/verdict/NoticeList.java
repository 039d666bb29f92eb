package hushmaze.app.verdict;

import hushmaze.app.model.Causes;
import hushmaze.app.model.Designer;
import hushmaze.app.model.MendsModel;
import hushmaze.app.model.MendsModel.Offer;
import hushmaze.app.model.Texts;
import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.quantity.Notice;
import hushmaze.quantity.Severity;
import hushmaze.wording.Wording;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.collections.MapChangeListener;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The notices of a path and its room by severity, each with the changes that would mend it and the way to its cause. */
final class NoticeList extends VBox {
    private static final List<Severity> ORDER = List.of(Severity.STOP, Severity.WARNING, Severity.NOTE);
    private static final double WRAP = 200;
    private static final double MEND_WIDTH = 270;

    private final Designer designer;
    private final CauseLink.Ways ways;
    private final Map<Notice, Pane> offers = new HashMap<>();

    NoticeList(Designer designer, CauseLink.Ways ways) {
        this.designer = designer;
        this.ways = ways;
        getStyleClass().add("notices");
        designer.mends().watchedProperty().set(true);
        designer.mends().offers().addListener((MapChangeListener<Notice, List<Offer>>) c -> showOffers(c.getKey()));
    }

    void clear() {
        getChildren().clear();
        offers.clear();
    }

    /** Shows those of a path and of the room, the gravest first; the same sentence once. */
    void show(PathResult path, Assessment all, Wording wording) {
        clear();
        for (Severity severity : ORDER) {
            Map<String, Notice> sentences = new LinkedHashMap<>();
            for (List<Notice> some : List.of(path.notices(), all.notices())) {
                some.stream()
                        .filter(n -> n.severity() == severity)
                        .forEach(n -> sentences.putIfAbsent(wording.notice(n), n));
            }
            sentences.forEach((sentence, notice) -> getChildren().add(line(sentence, notice)));
        }
    }

    private HBox line(String sentence, Notice notice) {
        Label word = new Label(Texts.word(notice.severity()));
        word.getStyleClass().addAll("severity", notice.severity().name().toLowerCase(Locale.ROOT));
        FlowPane below = new FlowPane();
        below.getStyleClass().add("mends");
        below.setPrefWrapLength(WRAP);
        offers.put(notice, below);
        VBox words = new VBox(WrappedWords.of(sentence, "sentence"), below);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(word, words);
        line.getStyleClass().add("notice-line");
        showOffers(notice);
        return line;
    }

    /** Buttons for what can be done about a notice; where nothing else helps, another box can be looked for. */
    private void showOffers(Notice notice) {
        Pane below = offers.get(notice);
        if (below == null) {
            return;
        }
        below.getChildren().clear();
        List<Offer> made = designer.mends().offers().getOrDefault(notice, List.of());
        for (Offer offer : made) {
            Button button = mend(offer.words());
            String tried = Texts.of(offer.enough() ? "mend.make.enough" : "mend.make.part");
            button.setTooltip(new Tooltip(Texts.of("mend.make.tip", tried)));
            button.setOnAction(e -> offer.make().run());
            below.getChildren().add(button);
        }
        if (MendsModel.isAboutTheBox(notice) && made.stream().noneMatch(Offer::enough)) {
            Button search = mend(Texts.of("mend.search"));
            search.setOnAction(e -> {
                ways.view().accept("found");
                designer.sizing().start();
            });
            below.getChildren().add(search);
        }
        Causes.of(notice).forEach(cause -> below.getChildren().add(CauseLink.of(cause, ways)));
        below.setVisible(!below.getChildren().isEmpty());
        below.setManaged(below.isVisible());
    }

    private static Button mend(String words) {
        Button button = new Button(words);
        button.setMnemonicParsing(false);
        button.setWrapText(true);
        button.setMaxWidth(MEND_WIDTH);
        button.setMinHeight(Region.USE_PREF_SIZE);
        button.getStyleClass().add("mend");
        return button;
    }
}
