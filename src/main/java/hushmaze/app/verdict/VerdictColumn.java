package hushmaze.app.verdict;

import hushmaze.app.model.Cause;
import hushmaze.app.model.Designer;
import hushmaze.app.model.EntryPlace;
import hushmaze.app.model.ResultModel.State;
import hushmaze.app.model.Texts;
import hushmaze.assess.Assessment;
import hushmaze.assess.PathResult;
import hushmaze.wording.Wording;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Executor;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javafx.animation.PauseTransition;
import javafx.css.PseudoClass;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.CheckBox;
import javafx.scene.control.Hyperlink;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.Duration;

/** What the program says of the project: the room, four verdicts for each path, and the notices by severity. */
public final class VerdictColumn extends VBox {
    private static final PseudoClass STALE = PseudoClass.getPseudoClass("stale");
    private static final double MOST = 0.68;
    private static final double LEAST_NOTICES = 96;

    private static final List<String> VIEWS = List.of("spectra", "air", "sections", "pages");
    private static final List<String> LINKS = List.of("quiet", "air", "fits", "buildable");

    private final Designer designer;
    private final CauseLink.Ways ways;
    /** Whether good verdicts are told in full; what is not good always is. */
    private final CheckBox full = new CheckBox(Texts.of("verdict.full"));

    /** Results that come at once need not fade first. */
    private final PauseTransition patience = new PauseTransition(Duration.millis(150));

    private final Label state = new Label();
    private final Label problem = new Label();
    private final VBox verdicts = new VBox();
    /** The room first, then its paths. */
    private final List<VerdictBlock> blocks = new ArrayList<>();

    private final NoticeList notices;

    /**
     * @param view shows a view of the middle by its name
     * @param entry opens an entry
     * @param later for notices that are not in sight at first
     */
    public VerdictColumn(Designer designer, Consumer<String> view, Consumer<EntryPlace> entry, Executor later) {
        this.designer = designer;
        this.ways = new CauseLink.Ways(view, entry, designer.pages()::seek);
        this.notices = new NoticeList(designer, ways);
        getStyleClass().add("verdict-column");
        Label heading = new Label(Texts.of("verdict.heading"));
        heading.getStyleClass().add("column-heading");
        heading.setMinWidth(Region.USE_PREF_SIZE);
        Region gap = new Region();
        HBox.setHgrow(gap, Priority.ALWAYS);
        state.getStyleClass().add("state");
        state.setId("state");
        full.setId("verdict-full");
        full.getStyleClass().add("verdict-full");
        Tip.on(full, Texts.of("verdict.full.tip"));
        full.setMinWidth(Region.USE_PREF_SIZE);
        full.setOnAction(e -> show());
        HBox top = new HBox(heading, full, gap, state);
        top.setAlignment(Pos.BASELINE_LEFT);
        problem.setWrapText(true);
        problem.setMinHeight(Region.USE_PREF_SIZE);
        problem.getStyleClass().add("entry-wrong");
        problem.setId("problem");
        verdicts.getStyleClass().add("verdicts");
        verdicts.setId("verdicts");
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
        patience.setOnFinished(e -> fade(true));
        designer.results().assessmentProperty().addListener((p, before, after) -> show());
        designer.results().stateProperty().addListener((p, before, after) -> showState());
        designer.results().refiningProperty().addListener((p, before, after) -> showState());
        designer.results().problemProperty().addListener((p, before, after) -> showState());
        designer.edit().pathProperty().addListener((p, before, after) -> show());
        show();
        showState();
        later.execute(() -> {
            notices.showAll();
            show();
        });
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
        if (now == State.COMPUTING) {
            patience.playFromStart();
        } else {
            patience.stop();
            fade(now != State.CURRENT);
        }
    }

    private void fade(boolean stale) {
        for (Node node : List.of(verdicts, notices, state)) {
            node.pseudoClassStateChanged(STALE, stale);
        }
    }

    private void show() {
        Assessment all = designer.results().assessmentProperty().get();
        if (all == null) {
            verdicts.getChildren().clear();
            blocks.clear();
            notices.clear();
            return;
        }
        Wording wording = new Wording(all.project().units());
        while (blocks.size() > 1 + all.paths().size()) {
            blocks.remove(blocks.size() - 1);
        }
        while (blocks.size() < 1 + all.paths().size()) {
            blocks.add(new VerdictBlock());
        }
        VerdictBlock room = blocks.get(0);
        room.begin(Texts.of("verdict.room"), false);
        room.tell("room", all.roomQuiet(), wording.roomNoise(all), full.isSelected());
        room.tell("room-air", all.roomAired(), wording.roomFreshAir(all), full.isSelected(), link("room-air", "air"));
        room.end();
        for (int i = 0; i < all.paths().size(); i++) {
            path(
                    blocks.get(i + 1),
                    all.paths().get(i),
                    wording,
                    i == designer.edit().path());
        }
        if (!verdicts.getChildren().equals(blocks)) {
            verdicts.getChildren().setAll(blocks);
        }
        designer.results().pathResult().ifPresent(path -> notices.show(path, all, wording));
    }

    /** All four verdicts of the path looked at; of another, what is not good. */
    private void path(VerdictBlock block, PathResult path, Wording wording, boolean chosen) {
        block.begin(path.path().name(), chosen);
        boolean[] good = {
            path.quiet().ok(),
            path.air().ok(),
            path.fits().ok(),
            path.buildable().ok()
        };
        List<String> sentences = wording.verdicts(path);
        boolean none = true;
        for (int i = 0; i < good.length; i++) {
            String link = LINKS.get(i);
            if (chosen) {
                block.tell(link, good[i], sentences.get(i), full.isSelected(), link(link, VIEWS.get(i)));
            } else if (!good[i]) {
                block.tell(link + "-of-other", false, sentences.get(i), true);
            }
            none &= !chosen && good[i];
        }
        if (none) {
            block.tell("good", true, Texts.of("verdict.allGood"), true);
        }
        block.end();
    }

    private Supplier<Hyperlink> link(String id, String view) {
        return () -> {
            Hyperlink link = CauseLink.of(new Cause(null, view, null), ways);
            link.setId("why-" + id);
            return link;
        };
    }
}
