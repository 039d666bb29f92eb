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
import hushmaze.wording.Unbroken;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.collections.MapChangeListener;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** The notices of a path and its room by severity, each with the changes that would mend it and the way to its cause. */
final class NoticeList extends VBox {
    private static final List<Severity> ORDER = List.of(Severity.STOP, Severity.WARNING, Severity.NOTE);
    /** As many as a small window shows. */
    private static final int AT_FIRST = 3;

    private static final double WRAP = 200;
    private static final double MEND_WIDTH = 270;

    private final Designer designer;
    private final CauseLink.Ways ways;
    private final Map<Notice, Ways> offers = new HashMap<>();
    private final Map<Told, Node> lines = new HashMap<>();
    private int most = AT_FIRST;

    /** What stands below a notice: changes that were found, then links to its cause. */
    private record Ways(Pane pane, List<Hyperlink> links) {}

    /** What a line says. */
    private record Told(Severity severity, String sentence) {}

    NoticeList(Designer designer, CauseLink.Ways ways) {
        this.designer = designer;
        this.ways = ways;
        getStyleClass().add("notices");
        designer.mends().watchedProperty().set(true);
        designer.mends().offers().addListener((MapChangeListener<Notice, List<Offer>>) c -> showOffers(c.getKey()));
    }

    /** Shows no longer the first few alone. */
    void showAll() {
        most = Integer.MAX_VALUE;
    }

    void clear() {
        getChildren().clear();
        offers.clear();
        lines.clear();
    }

    /** Shows those of a path and of the room, the gravest first; the same sentence once. Lines that say the same are kept. */
    void show(PathResult path, Assessment all, Wording wording) {
        Map<Told, Notice> now = new LinkedHashMap<>();
        for (Severity severity : ORDER) {
            for (List<Notice> some : List.of(path.notices(), all.notices())) {
                some.stream()
                        .filter(n -> n.severity() == severity)
                        .forEach(n -> now.putIfAbsent(new Told(severity, wording.notice(n)), n));
            }
        }
        now.keySet().retainAll(now.keySet().stream().limit(most).toList());
        lines.keySet().retainAll(now.keySet());
        offers.keySet().retainAll(now.values());
        List<Node> shown = new ArrayList<>();
        now.forEach((told, notice) -> {
            boolean same = lines.containsKey(told) && offers.containsKey(notice);
            shown.add(same ? lines.get(told) : line(told, notice));
        });
        if (!getChildren().equals(shown)) {
            getChildren().setAll(shown);
        }
    }

    private HBox line(Told told, Notice notice) {
        Label word = new Label(Texts.word(notice.severity()));
        word.getStyleClass().addAll("severity", notice.severity().name().toLowerCase(Locale.ROOT));
        FlowPane below = new FlowPane();
        below.getStyleClass().add("mends");
        below.setPrefWrapLength(WRAP);
        List<Hyperlink> links = Causes.of(notice).stream()
                .map(cause -> CauseLink.of(cause, ways))
                .toList();
        offers.put(notice, new Ways(below, links));
        VBox words = new VBox(WrappedWords.of(told.sentence(), "sentence"), below);
        words.setMinWidth(0);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(word, words);
        line.getStyleClass().add("notice-line");
        lines.put(told, line);
        showOffers(notice);
        return line;
    }

    /** Buttons for what can be done about a notice; where nothing else helps, another box can be looked for. */
    private void showOffers(Notice notice) {
        Ways below = offers.get(notice);
        if (below == null) {
            return;
        }
        List<Node> shown = new ArrayList<>();
        List<Offer> made = designer.mends().offers().getOrDefault(notice, List.of());
        for (Offer offer : made) {
            Button button = mend(offer.words());
            String tried = Texts.of(offer.enough() ? "mend.make.enough" : "mend.make.part");
            Tip.on(button, Texts.of("mend.make.tip", tried));
            button.setOnAction(e -> offer.make().run());
            shown.add(button);
        }
        if (MendsModel.isAboutTheBox(notice) && made.stream().noneMatch(Offer::enough)) {
            Button search = mend(Texts.of("mend.search"));
            search.setOnAction(e -> {
                ways.view().accept("found");
                designer.sizing().start();
            });
            shown.add(search);
        }
        shown.addAll(below.links());
        if (!below.pane().getChildren().equals(shown)) {
            below.pane().getChildren().setAll(shown);
        }
        Presence.set(below.pane(), !shown.isEmpty());
    }

    private static Button mend(String words) {
        Button button = new Button(Unbroken.of(words));
        button.setMnemonicParsing(false);
        button.setWrapText(true);
        button.setMaxWidth(MEND_WIDTH);
        button.setMinHeight(Region.USE_PREF_SIZE);
        button.getStyleClass().add("mend");
        return button;
    }
}
