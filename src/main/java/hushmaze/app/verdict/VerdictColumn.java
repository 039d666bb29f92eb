package hushmaze.app.verdict;

import hushmaze.app.model.Designer;
import hushmaze.app.model.MendsModel;
import hushmaze.app.model.MendsModel.Offer;
import hushmaze.app.model.ResultModel.State;
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
import java.util.function.Consumer;
import javafx.collections.MapChangeListener;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Pane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;

/** What the program says of the project: the room, four sentences for each path, and the notices by severity. */
public final class VerdictColumn extends VBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");
    private static final PseudoClass CHOSEN = PseudoClass.getPseudoClass("chosen");
    private static final List<Severity> ORDER = List.of(Severity.STOP, Severity.WARNING, Severity.NOTE);
    private static final double MOST = 0.68;
    private static final double WRAP = 200;
    private static final double MEND_WIDTH = 270;
    private static final double LEAST_NOTICES = 96;

    private static final List<String> VIEWS = List.of("spectra", "air", "sections", "pages");
    private static final List<String> LINKS = List.of("quiet", "air", "fits", "buildable");

    private final Designer designer;
    private final Consumer<String> show;
    private final Map<Notice, Pane> offers = new HashMap<>();
    private final Label state = new Label();
    private final Label problem = new Label();
    private final VBox verdicts = new VBox();
    private final VBox notices = new VBox();

    /** @param show shows a view of the middle by its name */
    public VerdictColumn(Designer designer, Consumer<String> show) {
        this.designer = designer;
        this.show = show;
        getStyleClass().add("verdict-column");
        Label heading = new Label(Texts.of("verdict.heading"));
        heading.getStyleClass().add("column-heading");
        heading.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        state.getStyleClass().add("state");
        state.setId("state");
        HBox top = new HBox(heading, gap, state);
        top.setAlignment(Pos.BASELINE_LEFT);
        problem.setWrapText(true);
        problem.setMinHeight(Region.USE_PREF_SIZE);
        problem.getStyleClass().add("entry-wrong");
        problem.setId("problem");
        verdicts.getStyleClass().add("verdicts");
        verdicts.setId("verdicts");
        notices.getStyleClass().add("notices");
        Label noticeHeading = new Label(Texts.of("notices.heading"));
        noticeHeading.getStyleClass().add("column-heading");
        ScrollPane upper = scroll(verdicts);
        upper.maxHeightProperty().bind(heightProperty().multiply(MOST));
        verdicts.heightProperty().addListener((p, before, now) -> upper.setPrefHeight(now.doubleValue() + 2));
        upper.setMinHeight(0);
        ScrollPane lower = scroll(notices);
        lower.setPrefHeight(LEAST_NOTICES);
        lower.setMinHeight(LEAST_NOTICES);
        VBox.setVgrow(lower, Priority.ALWAYS);
        getChildren().addAll(top, problem, upper, noticeHeading, lower);
        designer.results().assessmentProperty().addListener((p, before, after) -> show());
        designer.results().stateProperty().addListener((p, before, after) -> showState());
        designer.results().refiningProperty().addListener((p, before, after) -> showState());
        designer.results().problemProperty().addListener((p, before, after) -> showState());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        designer.mends().watchedProperty().set(true);
        designer.mends().offers().addListener((MapChangeListener<Notice, List<Offer>>) c -> showOffers(c.getKey()));
        show();
        showState();
    }

    private static ScrollPane scroll(Node content) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        return scroll;
    }

    private void showState() {
        State now = designer.results().stateProperty().get();
        boolean refining = designer.results().refiningProperty().get();
        state.setText(now == State.CURRENT && refining ? Texts.of("state.refining") : Texts.word(now));
        String why = designer.results().problemProperty().get();
        problem.setText(why);
        problem.setVisible(!why.isEmpty());
        problem.setManaged(!why.isEmpty());
        for (Node node : List.of(verdicts, notices, state)) {
            node.pseudoClassStateChanged(STALE, now != State.CURRENT);
        }
    }

    private void show() {
        verdicts.getChildren().clear();
        notices.getChildren().clear();
        offers.clear();
        Assessment all = designer.results().assessmentProperty().get();
        if (all == null) {
            return;
        }
        Wording wording = new Wording(all.project().units());
        String heard = wording.room(all.room(), all.project().room().target()) + " " + wording.roomAir(all.room());
        VBox room = new VBox(name(Texts.of("verdict.room")), line(new Mark(all.roomOk()), heard, "verdict-line"));
        room.getStyleClass().add("verdict-block");
        verdicts.getChildren().add(room);
        for (int i = 0; i < all.paths().size(); i++) {
            verdicts.getChildren()
                    .add(path(all.paths().get(i), wording, i == designer.edit().path()));
        }
        designer.results().pathResult().ifPresent(path -> showNotices(path, all, wording));
    }

    /** All four verdicts of the path looked at; of another, what is not good. */
    private Node path(PathResult path, Wording wording, boolean chosen) {
        VBox block = new VBox(name(path.path().name()));
        block.getStyleClass().add("verdict-block");
        block.pseudoClassStateChanged(CHOSEN, chosen);
        boolean[] good = {
            path.quiet().ok(),
            path.air().ok(),
            path.fits().ok(),
            path.buildable().ok()
        };
        List<String> sentences = wording.verdicts(path);
        for (int i = 0; i < good.length; i++) {
            if (chosen || !good[i]) {
                HBox line = line(new Mark(good[i]), sentences.get(i), "verdict-line");
                if (chosen) {
                    line.getChildren().add(link(LINKS.get(i), VIEWS.get(i)));
                }
                block.getChildren().add(line);
            }
        }
        if (block.getChildren().size() == 1) {
            block.getChildren().add(line(new Mark(true), Texts.of("verdict.allGood"), "verdict-line"));
        }
        return block;
    }

    /** Notices of the path looked at and of the room, the gravest first; the same sentence once. */
    private void showNotices(PathResult path, Assessment all, Wording wording) {
        for (Severity severity : ORDER) {
            Map<String, Notice> sentences = new LinkedHashMap<>();
            for (List<Notice> some : List.of(path.notices(), all.notices())) {
                some.stream()
                        .filter(n -> n.severity() == severity)
                        .forEach(n -> sentences.putIfAbsent(wording.notice(n), n));
            }
            for (Map.Entry<String, Notice> sentence : sentences.entrySet()) {
                Label word = new Label(Texts.word(severity));
                word.getStyleClass().addAll("severity", severity.name().toLowerCase(Locale.ROOT));
                FlowPane below = new FlowPane();
                below.getStyleClass().add("mends");
                below.setPrefWrapLength(WRAP);
                offers.put(sentence.getValue(), below);
                HBox line = line(word, sentence.getKey(), "notice-line");
                VBox words = new VBox(line.getChildren().remove(1), below);
                words.setMinWidth(0);
                HBox.setHgrow(words, Priority.ALWAYS);
                line.getChildren().add(words);
                notices.getChildren().add(line);
                showOffers(sentence.getValue());
            }
        }
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
                show.accept("found");
                designer.sizing().start();
            });
            below.getChildren().add(search);
        }
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

    private Hyperlink link(String name, String view) {
        Hyperlink link = new Hyperlink(Texts.of("verdict.show." + name));
        link.setId("why-" + name);
        link.setMinWidth(Region.USE_PREF_SIZE);
        link.setTooltip(new Tooltip(Texts.of("verdict.show.tip")));
        link.getStyleClass().add("why");
        link.setOnAction(e -> {
            link.setVisited(false);
            show.accept(view);
        });
        return link;
    }

    private static Label name(String text) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.getStyleClass().add("block-name");
        return label;
    }

    /** A mark or a word with a sentence beside it. */
    private static HBox line(Node first, String text, String style) {
        Label words = WrappedWords.of(text, "sentence");
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox line = new HBox(first, words);
        line.getStyleClass().add(style);
        return line;
    }
}
